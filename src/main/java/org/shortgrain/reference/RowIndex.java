package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Rows by the material or group they name, and within one by tempers and forms, so that a look-up passes over most rows
 * without touching them.
 *
 * @param <R> kind of row
 */
final class RowIndex<R> {
    private final Map<String, List<Group<R>>> byName = new HashMap<>();
    private final List<R> all = new ArrayList<>();

    /** Rows of one material with the same tempers and forms. */
    private record Group<R>(TemperPattern tempers, Set<String> forms, List<Entry<R>> entries) {
    }

    private record Entry<R>(Scope scope, R row) {
    }

    /**
     * Receives the rows that speak for what is asked, or may.
     *
     * @param <R> kind of row
     */
    interface Sink<R> {
        /**
         * Takes a row.
         *
         * @param row   the row
         * @param match YES or MAYBE
         * @param open  the data on which a MAYBE hangs; not to be changed
         */
        void take(R row, Match match, Set<OpenDatum> open);
    }

    void add(Scope scope, R row) {
        all.add(row);
        for (String name : scope.alloys()) {
            List<Group<R>> groups = byName.get(name);
            if (groups == null) {
                groups = new ArrayList<>();
                byName.put(name, groups);
            }
            group(groups, scope).entries().add(new Entry<>(scope, row));
        }
    }

    private static <R> Group<R> group(List<Group<R>> groups, Scope scope) {
        for (Group<R> group : groups) {
            if (group.tempers().text().equals(scope.tempers().text()) && group.forms().equals(scope.forms())) {
                return group;
            }
        }
        Group<R> group = new Group<>(scope.tempers(), scope.forms(), new ArrayList<>());
        groups.add(group);
        return group;
    }

    List<R> all() {
        return all;
    }

    /** {@return the rows that name a material or one of its groups} */
    List<R> of(Alloy alloy) {
        List<R> rows = new ArrayList<>();
        collect(alloy.name(), rows);
        alloy.groups().forEach(name -> collect(name, rows));
        return rows;
    }

    private void collect(String name, List<R> rows) {
        for (Group<R> group : byName.getOrDefault(name, List.of())) {
            group.entries().forEach(entry -> rows.add(entry.row()));
        }
    }

    /** Hands over every row that speaks for a material as asked, or may. */
    void matching(Alloy alloy, Question q, Sink<R> sink) {
        matching(alloy.name(), q, sink);
        for (String name : alloy.groups()) {
            matching(name, q, sink);
        }
    }

    private void matching(String name, Question q, Sink<R> sink) {
        for (Group<R> group : byName.getOrDefault(name, List.of())) {
            Match temper = group.tempers().match(q.temper());
            if (temper == Match.NO) {
                continue;
            }
            Match form = q.forms().match(group.forms(), q.form());
            if (form == Match.NO) {
                continue;
            }
            for (Entry<R> entry : group.entries()) {
                offer(entry, q, temper, form, sink);
            }
        }
    }

    /** Rows for all section areas are taken when the area is not stated: the lowest of them then counts. */
    private static <R> void offer(Entry<R> entry, Question q, Match temper, Match form, Sink<R> sink) {
        Match thick = entry.scope().thickness().match(q.thickness());
        Match area = q.area().isEmpty() ? Match.YES : entry.scope().area().match(q.area());
        Match strength = q.matchStrength(entry.scope().uts());
        Match all = temper.and(form).and(thick).and(area).and(strength);
        if (all == Match.YES) {
            sink.take(entry.row(), all, Collections.emptySet());
        } else if (all == Match.MAYBE) {
            EnumSet<OpenDatum> open = EnumSet.noneOf(OpenDatum.class);
            note(open, temper, q.openTemper());
            note(open, form, q.openForm());
            note(open, thick, OpenDatum.THICKNESS);
            note(open, strength, OpenDatum.STRENGTH);
            sink.take(entry.row(), all, open);
        }
    }

    private static void note(EnumSet<OpenDatum> open, Match match, Set<OpenDatum> why) {
        if (match == Match.MAYBE) {
            open.addAll(why);
        }
    }

    private static void note(EnumSet<OpenDatum> open, Match match, OpenDatum why) {
        if (match == Match.MAYBE) {
            open.add(why);
        }
    }
}
