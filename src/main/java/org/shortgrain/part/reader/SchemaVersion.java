package org.shortgrain.part.reader;

import java.util.Optional;
import org.shortgrain.part.Location;

/** The version of the form, the first key of a description. */
final class SchemaVersion {
    static final String KEY = "schema";
    /** The only version so far. */
    static final int READ = 1;

    private SchemaVersion() {
    }

    static void check(Spot root, Problems problems) {
        Optional<Spot> spot = Optional.ofNullable(root.entries().get(KEY));
        if (spot.isEmpty()) {
            problems.add(ProblemCode.NO_SCHEMA_VERSION, new Location("/" + KEY, 1, 1));
            return;
        }
        Optional<Scalar> version = Scalar.of(spot.get());
        if (version.isEmpty() || !version.get().text().equals(Integer.toString(READ))) {
            String found = version.map(scalar -> '"' + Values.shown(scalar.text()) + '"').orElse("a list or a group");
            problems.add(ProblemCode.SCHEMA_VERSION, spot.get().at(), found + " stands here");
        }
    }
}
