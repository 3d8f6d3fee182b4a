package org.shortgrain.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Review;

/**
 * Ten parts that published guides, standards and handbooks speak of, one document each, described in own words and with
 * invented numbers. The first lines of each file name the document, the section and how it was seen, say what it asks for,
 * and what a review owes therefore: verdict, rules that speak (with the place, where it matters) and rules that must not.
 * All of that was written down and committed before the rulebook was asked; what came out then stands in the contributor's
 * guide, and the rulebook was mended where it did not, never the expectation.
 */
class GuidePartsTest {

    private static final Path PARTS = Path.of("src", "test", "resources", "guide-parts");
    private static final int TEN = 10;
    /** More findings than this on one part are more than a designer reads. */
    private static final int READABLE = 15;

    private static ShippedReview reviewer;

    @BeforeAll
    static void load() {
        reviewer = ShippedReview.ofShipped();
    }

    @TestFactory
    Stream<DynamicTest> eachPartGetsWhatItsGuideAsksFor() {
        return files().stream().map(file -> DynamicTest.dynamicTest(
                file.getFileName().toString().replace(".yaml", "").replace('-', ' '),
                () -> assertEquals(List.of(), departures(file))));
    }

    @Test
    void tenPartsFromTenDocumentsAreHeldAndCounted() {
        TreeMap<String, List<String>> missed = new TreeMap<>();
        for (Path file : files()) {
            List<String> departures = departures(file);
            if (!departures.isEmpty()) {
                missed.put(file.getFileName().toString(), departures);
            }
        }
        assertEquals(TEN, files().stream().map(file -> guide(text(file)).get(0)).distinct().count(), "documents");
        assertEquals(TEN + " of " + TEN, TEN - missed.size() + " of " + TEN, () -> "did not come out: " + missed);
    }

    @Test
    void eachGuideIsADocumentOfTheRulebook() throws IOException {
        String documents = Files.readString(Path.of("rules", "sources.yaml"));
        for (Path file : files()) {
            List<String> guide = guide(text(file));
            assertTrue(documents.contains("\n" + guide.get(0) + ":\n"), () -> guide + " in " + file);
            assertTrue(Set.of("read", "secondary", "memory").contains(guide.get(2)), guide::toString);
        }
    }

    /** {@return where a review departs from what is owed; empty if it came out} */
    private static List<String> departures(Path file) {
        String text = text(file);
        Review review = reviewer.review(text);
        List<String> departures = new ArrayList<>();
        String verdict = line(text, "verdict");
        if (!review.verdict().name().equals(verdict)) {
            departures.add("verdict " + review.verdict() + " in place of " + verdict + ": " + review.because());
        }
        Set<String> spoke = spoke(review);
        for (String owed : words(line(text, "speaks"))) {
            if (!spoke.contains(owed)) {
                departures.add(owed + " is silent; raised " + spoke);
            }
        }
        words(line(text, "quiet")).stream().filter(spoke::contains).forEach(one -> departures.add(one + " speaks"));
        if (text.contains("\n# grave: none\n")) {
            review.findings().stream().filter(one -> one.grade() != Grade.ADVICE)
                    .forEach(one -> departures.add("on a good design: " + one.rule() + ": " + one.statement()));
        }
        if (review.findings().size() > READABLE) {
            departures.add(review.findings().size() + " findings");
        }
        return departures;
    }

    /** Rules that speak, alone and with the place; what was folded in has spoken as well. */
    private static Set<String> spoke(Review review) {
        Set<String> spoke = new HashSet<>(ShippedReview.raised(review));
        for (Finding finding : review.findings()) {
            Stream.concat(Stream.of(finding.rule()), finding.foldedIn().stream())
                    .forEach(rule -> finding.feature().ifPresent(place -> spoke.add(rule + "@" + place)));
        }
        return spoke;
    }

    private static List<String> guide(String text) {
        return Arrays.stream(line(text, "guide").split("\\|")).map(String::strip).toList();
    }

    private static List<String> words(String line) {
        return Arrays.stream(line.split(" +")).filter(word -> !word.isEmpty()).toList();
    }

    private static String line(String text, String word) {
        Matcher line = Pattern.compile("(?m)^# " + word + ":(.*)$").matcher(text);
        if (!line.find()) {
            throw new IllegalArgumentException("no line '# " + word + ":'");
        }
        return line.group(1).strip();
    }

    private static List<Path> files() {
        try (Stream<Path> files = Files.list(PARTS)) {
            return files.sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
