package org.shortgrain.rulebook;

import java.util.LinkedHashMap;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * What {@code rulebook.yaml} says.
 *
 * @param edition       edition of the rulebook
 * @param besideShipped whether it adds to the shipped rulebook instead of standing for itself
 * @param disabled      rules of the shipped rulebook that are not asked, each with the reason
 */
record RulebookAbout(String edition, boolean besideShipped, Map<String, String> disabled) {

    private static final String FORM = "; expected edition: TEXT and, beside the shipped rulebook, extends: shipped"
            + " and disabled: {RULE-ID: reason}";

    RulebookAbout {
        disabled = Map.copyOf(disabled);
    }

    /**
     * Reads the file.
     *
     * @param files the rulebook's files
     * @throws RulebookException if it is missing or says something else
     */
    static RulebookAbout of(RulebookFiles files) throws RulebookException {
        if (!files.names().contains(RulebookFiles.ABOUT)) {
            throw wrong(0, "is missing");
        }
        try {
            Object read = new Yaml(new SafeConstructor(new LoaderOptions())).load(files.text(RulebookFiles.ABOUT));
            return of(read);
        } catch (MarkedYAMLException malformed) {
            throw wrong(malformed.getProblemMark().getLine() + 1, malformed.getProblem());
        }
    }

    private static RulebookAbout of(Object read) throws RulebookException {
        if (!(read instanceof Map<?, ?> keys)) {
            throw wrong(0, "is no map of keys");
        }
        for (Object key : keys.keySet()) {
            if (!key.equals("edition") && !key.equals("extends") && !key.equals("disabled")) {
                throw wrong(0, "key '" + key + "' is not known");
            }
        }
        String edition = text(keys.get("edition"));
        if (edition.isEmpty()) {
            throw wrong(0, "names no edition");
        }
        String base = text(keys.get("extends"));
        if (!base.isEmpty() && !base.equals("shipped")) {
            throw wrong(0, "extends '" + base + "'");
        }
        Map<String, String> disabled = disabled(keys.get("disabled"));
        if (base.isEmpty() && !disabled.isEmpty()) {
            throw wrong(0, "disables rules but extends no rulebook");
        }
        return new RulebookAbout(edition, !base.isEmpty(), disabled);
    }

    private static Map<String, String> disabled(Object value) throws RulebookException {
        Map<String, String> reasons = new LinkedHashMap<>();
        if (value instanceof Map<?, ?> rules) {
            for (Map.Entry<?, ?> rule : rules.entrySet()) {
                String reason = text(rule.getValue());
                if (reason.isEmpty()) {
                    throw wrong(0, "disables " + rule.getKey() + " without a reason");
                }
                reasons.put(text(rule.getKey()), reason);
            }
        } else if (value != null) {
            throw wrong(0, "disabled is no map of rule ids");
        }
        return reasons;
    }

    private static String text(Object value) {
        return value == null ? "" : String.valueOf(value).strip();
    }

    private static RulebookException wrong(int line, String what) {
        return new RulebookException(new RulebookProblem(RulebookFiles.ABOUT, line, java.util.Optional.empty(),
                what + FORM));
    }
}
