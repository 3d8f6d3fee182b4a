package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Location;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Stated;

/**
 * What a description leaves open: fields of the minimum set that hold no answer, and keys, of the minimum set or not, at
 * which several values stand of which one holds.
 */
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
        return open(description).missing();
    }

    /**
     * What is left open.
     *
     * @param missing      fields of the minimum set without an answer
     * @param alternatives keys with several values of which one holds
     */
    public record Open(List<Missing> missing, List<Alternatives> alternatives) {

        /** Copies the lists. */
        public Open {
            missing = List.copyOf(missing);
            alternatives = List.copyOf(alternatives);
        }
    }

    /**
     * {@return all that is left open, in the order of the form}
     *
     * @param description the description
     */
    public Open open(PartDescription description) {
        List<Missing> missing = new ArrayList<>();
        List<Alternatives> alternatives = new ArrayList<>();
        inside(description, Expected.Group.DESCRIPTION, missing, alternatives);
        return new Open(missing, alternatives);
    }

    private void inside(Record record, Expected.Group group, List<Missing> missing, List<Alternatives> alternatives) {
        Iterator<Stated<?>> stated = Groups.stated(record).iterator();
        for (Expected.Field field : forms.of(group).all()) {
            at(field, stated.next(), missing, alternatives);
        }
    }

    private void at(Expected.Field field, Stated<?> stated, List<Missing> missing, List<Alternatives> alternatives) {
        if (field.need().isPresent() && isOpen(field.need().get(), stated)) {
            missing.add(new Missing(field.need().get().role(), stated.at(), state(stated), field.meaning()));
        }
        if (field.expected() instanceof Expected.Group inner && !stated.isKnown()) {
            emptyGroup(inner, stated, missing);
        }
        List<?> values = stated.candidates().size() > 1 ? stated.candidates().stream().distinct().toList() : List.of();
        if (values.size() > 1) {
            alternatives.add(new Alternatives(field.need().map(Expected.Need::role).orElse(Minimum.Role.JUDGING),
                    stated.at(), values, field.meaning()));
        }
        Optional<Expected.Group> inner = Forms.inside(field);
        if (inner.isPresent()) {
            for (Object value : stated.candidates()) {
                for (Object one : value instanceof List<?> list ? list : List.of(value)) {
                    inside((Record) one, inner.get(), missing, alternatives);
                }
            }
        }
    }

    /** A group that does not stand: its fields are as open as it is. */
    private void emptyGroup(Expected.Group group, Stated<?> state, List<Missing> missing) {
        for (Expected.Field field : forms.of(group).all()) {
            if (field.need().isPresent()) {
                Location at = new Location(state.at().path() + "/" + field.key(), state.at().line(), state.at().column());
                missing.add(new Missing(field.need().get().role(), at, state(state), field.meaning()));
            }
        }
    }

    private static boolean isOpen(Expected.Need need, Stated<?> stated) {
        return !stated.isKnown() && !(stated.isNone() && need.noneAnswers());
    }

    private static Missing.State state(Stated<?> stated) {
        if (stated.isNone()) {
            return Missing.State.NONE;
        }
        return stated instanceof Stated.Unknown ? Missing.State.UNKNOWN : Missing.State.ABSENT;
    }
}
