package org.shortgrain.reference;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shortgrain.terms.Citation;

/**
 * Reads temper designations: T tempers of aluminium by the forms of ANSI H35.1 (as MIL-HDBK-5J Table 3.1.2 repeats
 * them), conditions of precipitation-hardening steel, strength levels of low-alloy steel, and words.
 *
 * <p>A text that fits no form is not refused here: it becomes {@link Temper.Unreadable} with the reason, so that a
 * review can ask about it.
 */
public final class Tempers {
    private static final Pattern HEAT_TREATED = Pattern.compile("T(10|[1-9])(\\d{0,2}?)(51[01]?|52|54)?");
    private static final Pattern OPEN_GROUP = Pattern.compile("T([1-9])(\\d{0,2})([X_]+)(51[01]?|52|54)?");
    private static final Pattern BASIC = Pattern.compile("W(51[01]?|52|54)?|O[123]?|F");
    private static final Pattern STRAIN_HARDENED = Pattern.compile("H[1-9]\\d{0,2}");
    private static final Pattern AGED = Pattern.compile("(H|SCT|RH|TH|CH|SRH)(\\d{3,4})([MD]?)");
    private static final Pattern HARDENED = Pattern.compile("HT(\\d{3})");
    private static final Pattern COLD_WORKED = Pattern.compile("(?:CW)?(\\d{1,2})(?:%.*|CW)?");
    /** The word for conditions that tell nothing. */
    private static final String NOT_STATED = "not_stated";
    private static final Set<String> OF_ALUMINIUM = Set.of("as_cast", "annealed");
    private static final Set<String> RELIEVED_BASES = Set.of("3", "4", "6", "7", "8", "9");

    private final Map<String, Listed> listed = new HashMap<>();
    private final Map<String, String> words = new HashMap<>();

    /**
     * What the list of tempers holds about the digits after the T.
     *
     * @param state       where the ageing ends
     * @param overAgeing  order within T7
     * @param userTreated whether the user heat treated it
     * @param takesRelief whether digits of a mechanical stress relief are usual behind it; not where cold work is part
     *                    of the treatment, as in T87
     * @param nowWritten  the digits that replaced these, empty when in use
     * @param meaning     the treatment in words
     * @param source      source
     */
    public record Listed(Temper.State state, int overAgeing, boolean userTreated, boolean takesRelief,
            String nowWritten, String meaning,
            Citation source) {
    }

    static Tempers read(Csv csv) {
        Tempers tempers = new Tempers();
        for (Row row : csv.read("data/tempers.csv", "base_and_digits", "state", "overageing_rank", "user_treated",
                "takes_relief_digits", "now_written", "meaning", "source", "clause", "status")) {
            Temper.State state = row.constant("state", Temper.State.values());
            Listed entry = new Listed(state, (int) row.number("overageing_rank", 1, 4, 1).orElse(0),
                    row.yes("user_treated"), row.yes("takes_relief_digits"), row.text("now_written"),
                    row.required("meaning"), row.citation());
            if (tempers.listed.put(row.required("base_and_digits"), entry) != null) {
                row.fault("the temper stands twice");
            }
        }
        for (Row row : csv.read("data/condition-words.csv", "word", "aliases")) {
            String word = row.required("word");
            tempers.addWord(row, word, word);
            for (String alias : row.list("aliases")) {
                tempers.addWord(row, alias, word);
            }
        }
        return tempers;
    }

    private void addWord(Row row, String alias, String word) {
        String before = words.put(squeeze(alias), word);
        if (before != null && !before.equals(word)) {
            row.fault("'" + alias + "' stands for both " + before + " and " + word);
        }
    }

    private static String squeeze(String text) {
        StringBuilder key = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != '_' && c != '-' && c != '.' && !Character.isWhitespace(c)) {
                key.append(Character.toUpperCase(c));
            }
        }
        return key.toString();
    }

    /**
     * {@return what the list of tempers holds about the treatment of a temper, its stress relief aside}
     *
     * @param temper temper
     */
    public Optional<Listed> find(Temper.HeatTreated temper) {
        return Optional.ofNullable(listed.get(temper.base() + temper.digits()));
    }

    /** Whether digits of a mechanical stress relief are usual behind a treatment. */
    boolean takesRelief(Temper.HeatTreated temper) {
        return find(temper).map(Listed::takesRelief).orElse(false);
    }

    /** {@return the digits after the T that are listed, with their meaning} */
    public Map<String, Listed> listed() {
        return Collections.unmodifiableMap(new LinkedHashMap<>(listed));
    }

    /**
     * {@return a temper, taken apart}
     *
     * @param text   text as the drawing gives it
     * @param family material family, since H900 and H116 are told apart by it; empty when unknown
     */
    public Temper read(Optional<String> text, Optional<String> family) {
        String written = text.orElse("").strip();
        String code = squeeze(written);
        if (code.isEmpty()) {
            return new Temper.NotStated(written);
        }
        boolean aluminium = family.map(f -> f.startsWith("aluminium")).orElse(false);
        boolean copper = family.map(f -> f.equals("copper_alloy")).orElse(false);
        if (words.containsKey(code) && !(aluminium && BASIC.matcher(code).matches())) {
            return condition(written, words.get(code), aluminium);
        }
        Matcher m = AGED.matcher(code);
        if (!aluminium && m.matches()) {
            return new Temper.AgedCondition(written, m.group(), m.group(1), Integer.parseInt(m.group(2)));
        }
        m = HARDENED.matcher(code);
        if (m.matches()) {
            return new Temper.HardenedTo(written, "HT-" + m.group(1), Integer.parseInt(m.group(1)));
        }
        m = COLD_WORKED.matcher(code);
        if (copper && m.matches()) {
            return new Temper.ColdWorked(written, "CW" + m.group(1), Integer.parseInt(m.group(1)));
        }
        return readAluminium(written, written.toUpperCase(Locale.ROOT).replaceAll("[\\s\\-.]", ""));
    }

    /** A word such as "heat treated" tells no temper, nor does a word for steel or titanium on aluminium. */
    private static Temper condition(String written, String word, boolean aluminium) {
        boolean tells = !word.equals(NOT_STATED) && (!aluminium || OF_ALUMINIUM.contains(word));
        return tells ? new Temper.Condition(written, word) : new Temper.NotStated(written);
    }

    private Temper readAluminium(String written, String code) {
        if (BASIC.matcher(code).matches()) {
            return new Temper.Basic(written, code);
        }
        if (STRAIN_HARDENED.matcher(code).matches()) {
            return new Temper.StrainHardened(written, code);
        }
        Matcher m = OPEN_GROUP.matcher(code);
        if (m.matches()) {
            return openGroup(written, m);
        }
        String plain = code.replace("_", "");
        m = HEAT_TREATED.matcher(plain);
        if (!m.matches()) {
            return new Temper.Unreadable(written, "'" + written + "' is no temper designation");
        }
        return heatTreated(written, m.group(1), m.group(2), m.group(3) == null ? "" : m.group(3));
    }

    private Temper openGroup(String written, Matcher m) {
        String base = m.group(1);
        String digits = m.group(2);
        String relief = m.group(4) == null ? "" : m.group(4);
        boolean second = base.equals("7") && digits.isEmpty();
        Listed entry = listed.get(base + digits);
        return new Temper.HeatTreated(written, "T" + base + digits + "x".repeat(m.group(3).length()) + relief, base,
                digits, relief, second ? Temper.OpenDigits.SECOND : Temper.OpenDigits.RELIEF,
                entry == null ? Temper.State.UNLISTED : entry.state(), second || entry == null ? 0 : entry.overAgeing(),
                entry != null && entry.userTreated(), Optional.empty());
    }

    private Temper heatTreated(String written, String base, String digits, String relief) {
        Listed entry = listed.get(base + digits);
        if (entry != null && !relief.isEmpty() && !RELIEVED_BASES.contains(base)) {
            return new Temper.Unreadable(written, "stress relief digits " + relief + " do not go with T" + base);
        }
        Optional<String> former = Optional.empty();
        if (entry != null && !entry.nowWritten().isEmpty()) {
            former = Optional.of("T" + base + digits + relief);
            return renamed(written, entry.nowWritten(), relief, former);
        }
        Temper.State state = entry == null ? Temper.State.UNLISTED : entry.state();
        Temper.OpenDigits open = base.equals("7") && digits.isEmpty() ? Temper.OpenDigits.SECOND
                : Temper.OpenDigits.NONE;
        return new Temper.HeatTreated(written, "T" + base + digits + relief, base, digits, relief, open, state,
                entry == null ? 0 : entry.overAgeing(), entry != null && entry.userTreated(), former);
    }

    private Temper renamed(String written, String now, String relief, Optional<String> former) {
        Listed entry = listed.get(now);
        return new Temper.HeatTreated(written, "T" + now + relief, now.substring(0, 1), now.substring(1), relief,
                Temper.OpenDigits.NONE, entry.state(), entry.overAgeing(), entry.userTreated(), former);
    }
}
