package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shortgrain.part.Location;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Stated;

/** Which fields of the minimum set a description leaves open. */
public final class MinimumSet {
    private final Forms forms;

    /** Prepares the set; one serves many descriptions and threads. */
    public MinimumSet() {
        this(new Forms());
    }

    MinimumSet(Forms forms) {
        this.forms = forms;
    }

    /**
     * {@return the fields left open, in the order of the form; those of a group that is missing count one by one}
     *
     * @param description the description
     */
    public List<Missing> of(PartDescription description) {
        List<Missing> missing = new ArrayList<>();
        inside(description, missing);
        return List.copyOf(missing);
    }

    private void inside(Record group, List<Missing> missing) {
        for (Expected.Field field : forms.of(group.getClass()).all()) {
            Stated<?> stated = (Stated<?>) Records.value(group, field.accessor());
            field.minimum().flatMap(minimum -> open(minimum, stated, field.meaning())).ifPresent(missing::add);
            if (field.expected() instanceof Expected.Group inner && !stated.isKnown()) {
                emptyGroup(inner, stated, missing);
            }
            stated.candidates().stream().flatMap(value -> value instanceof List<?> list ? list.stream()
                    : Stream.of(value)).forEach(value -> {
                        if (value instanceof Record record && forms.isGroup(field.expected())) {
                            inside(record, missing);
                        }
                    });
        }
    }

    /** A group that does not stand: its fields are as open as it is. */
    private void emptyGroup(Expected.Group group, Stated<?> state, List<Missing> missing) {
        for (Expected.Field field : forms.of(group.type()).all()) {
            field.minimum().ifPresent(minimum -> {
                Location at = new Location(state.at().path() + "/" + field.key(), state.at().line(), state.at().column());
                missing.add(new Missing(minimum.value(), at, state(state), field.meaning()));
            });
        }
    }

    private static Optional<Missing> open(Minimum minimum, Stated<?> stated, String meaning) {
        boolean answered = stated.isKnown() || stated.isNone() && minimum.noneAnswers();
        return answered ? Optional.empty()
                : Optional.of(new Missing(minimum.value(), stated.at(), state(stated), meaning));
    }

    private static Missing.State state(Stated<?> stated) {
        if (stated.isNone()) {
            return Missing.State.NONE;
        }
        return stated instanceof Stated.Unknown ? Missing.State.UNKNOWN : Missing.State.ABSENT;
    }
}
