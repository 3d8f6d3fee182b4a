package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.terms.Citation;

/** Where a metal, plating or composite of a part description stands in the anodic index. */
public final class GalvanicMembers {
    private static final String SERIES = "anodic_index";

    private final List<Member> members = new ArrayList<>();
    private final Alloys alloys;

    private GalvanicMembers(Alloys alloys) {
        this.alloys = alloys;
    }

    /** What a member of a couple is made of. */
    public enum Kind {
        /** Solid metal. */
        METAL,
        /** Metallic plating. */
        PLATING,
        /** Composite with carbon fibres. */
        CARBON,
        /** No conductor: no couple. */
        INSULATOR
    }

    /** What the trade knows of a member beyond its potential. */
    public enum Trait {
        /** A plating that is meant to be used up in place of the structure. */
        SACRIFICIAL,
        /** Corrodes by itself where it is moist. */
        RUSTS,
        /** Is used up by carbon. */
        EATEN_BY_CARBON,
        /** Stays passive against carbon, which is as noble. */
        PASSIVE_ON_CARBON,
        /** Cracks titanium that it touches, whatever the voltage. */
        HARMS_TITANIUM
    }

    /**
     * A member of a couple.
     *
     * @param name     name for texts
     * @param kind     what it is made of
     * @param traits   what is known of it beyond its potential
     * @param families material families that it stands for
     * @param words    words that name it in a description
     * @param rows     rows of the anodic index, of which one holds; empty if the index has none for it
     * @param source   source of the placing
     */
    public record Member(String name, Kind kind, Set<Trait> traits, Set<String> families, List<String> words,
            List<GalvanicTable.Entry> rows, Citation source) {

        /** Copies the collections. */
        public Member {
            traits = Set.copyOf(traits);
            families = Set.copyOf(families);
            words = List.copyOf(words);
            rows = List.copyOf(rows);
        }

        private boolean isNamedIn(String lower) {
            return words.stream().anyMatch(word -> lower.contains(word.toLowerCase(Locale.ROOT)));
        }
    }

    static GalvanicMembers read(Csv csv, GalvanicTable series, Alloys alloys) {
        GalvanicMembers table = new GalvanicMembers(alloys);
        Map<String, GalvanicTable.Entry> anodicIndex = new HashMap<>();
        for (GalvanicTable.Entry entry : series.series(SERIES)) {
            anodicIndex.putIfAbsent(entry.group(), entry);
        }
        for (Row row : csv.read("data/galvanic-members.csv", "member", "kind", "traits", "families", "words",
                "groups", "source", "clause", "status", "remark")) {
            table.members.add(new Member(row.required("member"), row.constant("kind", Kind.values()),
                    row.constants("traits", Trait.class), alloys.familiesOf(row), row.list("words"),
                    rows(row, anodicIndex), row.citation()));
        }
        return table;
    }

    private static List<GalvanicTable.Entry> rows(Row row, Map<String, GalvanicTable.Entry> anodicIndex) {
        List<GalvanicTable.Entry> rows = new ArrayList<>();
        for (String group : row.list("groups")) {
            GalvanicTable.Entry entry = anodicIndex.get(group);
            if (entry == null) {
                row.fault("the anodic index has no group '" + group + "'");
            } else {
                rows.add(entry);
            }
        }
        return rows;
    }

    /**
     * {@return the member that a metal or composite of a description is}
     *
     * @param text alloy with or without temper, or a word such as "stainless steel"
     */
    public Optional<Member> metal(String text) {
        return alloy(text).flatMap(alloy -> ofFamily(alloy.family()))
                .or(() -> named(text, Set.of(Kind.CARBON, Kind.INSULATOR, Kind.METAL)));
    }

    /**
     * {@return the member that a plating of a description is; empty for paint, film and every plating not listed}
     *
     * @param text plating, with or without specification
     */
    public Optional<Member> plating(String text) {
        return named(text, Set.of(Kind.PLATING));
    }

    /**
     * {@return the member that stands for a material family}
     *
     * @param family the family
     */
    public Optional<Member> ofFamily(String family) {
        return members.stream().filter(member -> member.families().contains(family)).findFirst();
    }

    /**
     * {@return the family of the alloy that a text names; empty if it names none}
     *
     * @param text alloy with or without temper or condition behind it
     */
    public Optional<String> family(String text) {
        return alloy(text).map(Alloy::family);
    }

    /** The text may carry a temper or condition: words are dropped from the end until an alloy is named. */
    private Optional<Alloy> alloy(String text) {
        String rest = text.strip();
        while (!rest.isEmpty()) {
            Optional<Alloy> found = alloys.find(rest);
            if (found.isEmpty()) {
                found = Alloys.split(rest).flatMap(parts -> alloys.find(parts.alloy()));
            }
            if (found.isPresent() || !rest.contains(" ")) {
                return found;
            }
            rest = rest.substring(0, rest.lastIndexOf(' ')).strip();
        }
        return Optional.empty();
    }

    private Optional<Member> named(String text, Set<Kind> kinds) {
        String lower = text.toLowerCase(Locale.ROOT);
        return members.stream().filter(member -> kinds.contains(member.kind()) && member.isNamedIn(lower)).findFirst();
    }

    /** {@return all members, in the order in which they are looked for} */
    public List<Member> all() {
        return List.copyOf(members);
    }
}
