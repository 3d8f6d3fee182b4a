package org.shortgrain.reference;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Words with aliases. Case, blanks, hyphens and underscores do not matter. */
final class Words {
    private final Map<String, String> byAlias = new HashMap<>();
    private final Set<String> names = new LinkedHashSet<>();

    void add(Row row, String name) {
        if (!names.add(name)) {
            row.fault("'" + name + "' stands twice");
        }
        alias(row, name, name);
    }

    void alias(Row row, String alias, String name) {
        String before = byAlias.put(key(alias), name);
        if (before != null && !before.equals(name)) {
            row.fault("'" + alias + "' stands for both " + before + " and " + name);
        }
    }

    static String key(String text) {
        StringBuilder key = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean gap = c == '_' || c == '-' || Character.isWhitespace(c);
            if (!gap) {
                key.append(Character.toLowerCase(c));
            } else if (key.length() > 0 && key.charAt(key.length() - 1) != ' ') {
                key.append(' ');
            }
        }
        return key.toString().strip();
    }

    Optional<String> find(String text) {
        return Optional.ofNullable(byAlias.get(key(text)));
    }

    Set<String> names() {
        return names;
    }

    Set<String> aliases() {
        return byAlias.keySet();
    }
}
