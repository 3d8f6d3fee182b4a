package org.shortgrain.rulebook.facts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.part.Crack;
import org.shortgrain.part.Range;
import org.shortgrain.part.Service;
import org.shortgrain.part.Stated;

/**
 * Service so far, and what was found.
 *
 * @param stated what is stated of it
 */
public record ServiceRecord(Stated<Service> stated) {

    /** {@return whether the part certainly has been in service} */
    public boolean isThere() {
        return stated.isKnown();
    }

    /** {@return cracks that were found} */
    public List<Crack> cracks() {
        return Stated.items(stated.field(Service::cracks));
    }

    /** {@return whether cracks certainly were found} */
    public boolean hasCracks() {
        return !cracks().isEmpty();
    }

    /** {@return whether service is stated, but not whether cracks were found} */
    public boolean areCracksOpen() {
        return isThere() && stated.field(Service::cracks).isMissing();
    }

    /**
     * {@return events that name one of some things}
     *
     * @param words what to look for
     */
    public Optional<String> event(String... words) {
        for (String one : Stated.items(stated.field(Service::events))) {
            if (Wording.contains(one, words)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    /** {@return the cracks, for texts} */
    public String say() {
        return cracks().stream().map(ServiceRecord::say).collect(Collectors.joining("; "));
    }

    private static String say(Crack crack) {
        String where = "crack at " + crack.feature().single().orElse("a place not stated");
        String length = crack.length().single().map(Range::entered).map(text -> ", length " + text).orElse("");
        return where + length + crack.found().single().map(date -> ", found " + date).orElse("");
    }
}
