package org.shortgrain.assessment;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.ReviewRequest;
import org.shortgrain.review.Verdict;

/** The cautions of a report, in the words of {@code templates/cautions.txt}. */
public final class Wording {

    private static final String FILE = "/templates/cautions.txt";
    private static final Pattern CONDITION = Pattern.compile("\\[([a-z_]+)] (.*)", Pattern.DOTALL);
    private static final Set<String> CONDITIONS = Set.of("objection", "supplier_precheck", "in_service");

    private final List<Caution> cautions;

    /**
     * A caution.
     *
     * @param onlyIf word that must hold; empty text for always
     * @param text   the caution
     */
    private record Caution(String onlyIf, String text) {
    }

    private Wording(List<Caution> cautions) {
        this.cautions = List.copyOf(cautions);
    }

    /** {@return the wording that ships with the tool} */
    public static Wording shipped() {
        try (InputStream in = Wording.class.getResourceAsStream(FILE)) {
            return of(new String(Objects.requireNonNull(in, FILE).readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(FILE, e);
        }
    }

    /**
     * {@return the wording in a text: paragraphs parted by empty lines}
     *
     * @param text the text
     * @throws IllegalArgumentException if a paragraph names a condition that does not exist
     */
    static Wording of(String text) {
        List<Caution> cautions = new ArrayList<>();
        StringBuilder paragraph = new StringBuilder();
        for (String line : text.lines().toList()) {
            if (line.isBlank()) {
                end(paragraph, cautions);
            } else if (!line.startsWith("#")) {
                paragraph.append(line).append(' ');
            }
        }
        end(paragraph, cautions);
        return new Wording(cautions);
    }

    private static void end(StringBuilder paragraph, List<Caution> cautions) {
        if (!paragraph.isEmpty()) {
            cautions.add(caution(paragraph.toString().strip()));
            paragraph.setLength(0);
        }
    }

    private static Caution caution(String paragraph) {
        Matcher conditional = CONDITION.matcher(paragraph);
        if (!conditional.matches()) {
            return new Caution("", paragraph);
        }
        if (!CONDITIONS.contains(conditional.group(1))) {
            throw new IllegalArgumentException("cautions: unknown condition [" + conditional.group(1)
                    + "]; expected one of " + new TreeSet<>(CONDITIONS));
        }
        return new Caution(conditional.group(1), conditional.group(2));
    }

    /**
     * {@return the cautions for a review}
     *
     * @param description the part
     * @param verdict     the verdict
     */
    List<String> cautions(PartDescription description, Verdict verdict) {
        String purpose = description.review().field(ReviewRequest::purpose).single().map(one -> one.word())
                .orElse("design");
        return cautions.stream().filter(one -> one.onlyIf().isEmpty() || one.onlyIf().equals(purpose)
                || one.onlyIf().equals("objection") && verdict == Verdict.OBJECTION).map(Caution::text).toList();
    }
}
