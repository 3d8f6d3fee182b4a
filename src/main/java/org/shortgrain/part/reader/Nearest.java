package org.shortgrain.part.reader;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * The word that was probably meant.
 *
 * <p>Distance: the fewest insertions, deletions, replacements and exchanges of neighbours (optimal string alignment).
 * Own code since no library on the class path offers it for use, and one for forty lines is not worth a dependency.
 */
public final class Nearest {
    /** One slip in three letters is still taken for the same word. */
    private static final int LETTERS_PER_SLIP = 3;
    /** No word of a description is longer; longer text is no slip of the pen. */
    private static final int LONGEST = 60;

    private Nearest() {
    }

    /**
     * {@return the word that was probably meant; empty if none is near: more than one slip in three letters}
     *
     * @param entered what was written
     * @param words   words that are known; case, blanks and hyphens do not matter
     */
    public static Optional<String> to(String entered, Collection<String> words) {
        if (entered.length() > LONGEST) {
            return Optional.empty();
        }
        String asked = plain(entered);
        int allowed = Math.max(1, asked.length() / LETTERS_PER_SLIP);
        return words.stream()
                .filter(word -> slips(asked, plain(word)) <= allowed)
                .min(Comparator.comparingInt((String word) -> slips(asked, plain(word)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** "Did you mean ...?", or the second text if nothing is near. */
    static String advice(String entered, Collection<String> words, String otherwise) {
        return to(entered, words).map(word -> "Did you mean \"" + word + "\"?").orElse(otherwise);
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    }

    private static int slips(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + same);
                boolean exchanged = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1);
                if (exchanged) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
            }
            int[] free = before;
            before = last;
            last = row;
            row = free;
        }
        return last[b.length()];
    }
}
