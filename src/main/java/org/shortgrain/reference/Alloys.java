package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The materials by name, alias and UNS number. Case, blanks, hyphens and underscores do not matter. */
public final class Alloys {
    private static final Pattern TEMPER_BEHIND = Pattern.compile("(.+?)-((?:T\\d|H\\d|O$|W\\d|F$|HT-?\\d).*)");

    private final Map<String, Alloy> byName = new LinkedHashMap<>();
    private final Map<String, Alloy> byAlias = new HashMap<>();
    private final Set<String> families = new LinkedHashSet<>();

    private Alloys() {
    }

    static Alloys read(Csv csv) {
        Alloys alloys = new Alloys();
        for (Row row : csv.read("data/alloys.csv", "alloy", "uns", "family", "groups", "aliases")) {
            String uns = row.text("uns");
            Alloy alloy = new Alloy(row.required("alloy"), uns.isEmpty() ? Optional.empty() : Optional.of(uns),
                    row.required("family"), row.list("groups"), row.list("aliases"));
            if (alloys.byName.put(alloy.name(), alloy) != null) {
                row.fault(alloy.name() + " stands twice");
            }
            alloys.families.add(alloy.family());
            alloys.addAlias(row, alloy.name(), alloy);
            for (String alias : alloy.aliases()) {
                alloys.addAlias(row, alias, alloy);
            }
            if (!uns.isEmpty()) {
                alloys.byAlias.putIfAbsent(squeeze(uns), alloy);
            }
        }
        return alloys;
    }

    private void addAlias(Row row, String alias, Alloy alloy) {
        Alloy before = byAlias.put(squeeze(alias), alloy);
        if (before != null && before != alloy) {
            row.fault("'" + alias + "' stands for both " + before.name() + " and " + alloy.name());
        }
    }

    private static String squeeze(String text) {
        StringBuilder key = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != ' ' && c != '-' && c != '_') {
                key.append(Character.toUpperCase(c));
            }
        }
        return key.toString();
    }

    /**
     * {@return the material that a text names}
     *
     * <p>Prefixes AA, EN AW and UNS are read over.
     *
     * @param text a name, alias or UNS number
     */
    public Optional<Alloy> find(String text) {
        Alloy exact = byName.get(text);
        if (exact != null) {
            return Optional.of(exact);
        }
        String key = squeeze(text);
        Alloy alloy = byAlias.get(key);
        for (String prefix : new String[] {"AA", "ENAW", "AW", "UNS"}) {
            if (alloy == null && key.startsWith(prefix)) {
                alloy = byAlias.get(key.substring(prefix.length()));
            }
        }
        return Optional.ofNullable(alloy);
    }

    /** An alloy and the temper that was written behind it in one field. */
    record WithTemper(String alloy, String temper) {
    }

    /**
     * {@return alloy and temper, if the text holds both, as in 7075-T6}
     *
     * @param text text of the alloy field
     */
    static Optional<WithTemper> split(String text) {
        Matcher m = TEMPER_BEHIND.matcher(text.strip().toUpperCase(Locale.ROOT));
        return m.matches() ? Optional.of(new WithTemper(m.group(1), m.group(2))) : Optional.empty();
    }

    /** {@return all materials by their names} */
    public Collection<Alloy> all() {
        return Collections.unmodifiableCollection(byName.values());
    }

    /** {@return the families} */
    public Set<String> families() {
        return Collections.unmodifiableSet(families);
    }

    /**
     * {@return the materials of a family}
     *
     * @param family family
     */
    public List<Alloy> ofFamily(String family) {
        List<Alloy> members = new ArrayList<>();
        for (Alloy alloy : byName.values()) {
            if (alloy.family().equals(family)) {
                members.add(alloy);
            }
        }
        return members;
    }

    /** {@return the material families that a row names} */
    Set<String> familiesOf(Row row) {
        Set<String> named = row.set("families");
        for (String family : named) {
            if (!families.contains(family)) {
                row.fault("no material has the family '" + family + "'");
            }
        }
        return named;
    }

    Set<String> rowNames() {
        Set<String> names = new LinkedHashSet<>(byName.keySet());
        for (Alloy alloy : byName.values()) {
            names.addAll(alloy.groups());
        }
        return names;
    }

    /**
     * {@return the names nearest in spelling to a text that names no material}
     *
     * @param text text
     * @param most most names wanted
     */
    List<Alloy> nearest(String text, int most) {
        String key = squeeze(text);
        List<Alloy> near = new ArrayList<>(byName.values());
        near.sort((a, b) -> Integer.compare(distance(key, squeeze(a.name())), distance(key, squeeze(b.name()))));
        return near.subList(0, Math.min(most, near.size()));
    }

    /** Levenshtein's edit distance. */
    private static int distance(String a, String b) {
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = last[0];
            last[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int substitute = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = last[j];
                last[j] = Math.min(substitute, 1 + Math.min(last[j], last[j - 1]));
            }
        }
        return last[b.length()];
    }
}
