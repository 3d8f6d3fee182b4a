package org.shortgrain.review;

import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Disposition;

/**
 * The outcome of a review.
 *
 * @param tool               version of the tool
 * @param rulebook           the rulebook that judged
 * @param input              the description that was judged
 * @param contentHash        SHA-256 over the input, the rulebook and everything below, in hexadecimal
 * @param part               which part
 * @param purpose            why it was reviewed, a word of the description
 * @param preparedBy         who prepared it; empty text if not stated
 * @param date               date of the review, ISO 8601; empty text if not stated
 * @param verdict            the verdict
 * @param because            what led to the verdict, one sentence each
 * @param features           the features, in the order of the description
 * @param findings           the findings, the gravest first
 * @param questions          open questions, the decisive ones first
 * @param assumptions        what was taken for granted
 * @param computations       the calculations
 * @param material           what the tables say of the material
 * @param route              the card as understood
 * @param stated             the description, value by value
 * @param rulesApplied       rules that were asked and raised nothing
 * @param rulesNotApplicable rules that do not apply
 * @param readNotJudged      keys that nothing judges yet
 * @param sources            documents that the review cites
 * @param cautions           what a reader must know before relying on this
 * @param inService          cracks that were found, own tests, and when to look
 * @param dispositions       what people decided on findings and questions; it changes neither grade nor verdict
 */
public record Review(Tool tool, RulebookId rulebook, InputId input, String contentHash, PartId part, String purpose,
        String preparedBy, String date, Verdict verdict, List<String> because, List<FeatureReview> features,
        List<Finding> findings, List<Question> questions, List<Assumption> assumptions, List<Calculation> computations,
        List<MaterialLine> material, List<RouteLine> route, List<StatedLine> stated, List<RuleUse> rulesApplied,
        List<RuleUse> rulesNotApplicable, List<String> readNotJudged, List<SourceLine> sources,
        List<String> cautions, InService inService, List<Disposition> dispositions) {

    /**
     * Makes a review that has nothing to say of service and on which nobody has decided.
     *
     * @param tool               version of the tool
     * @param rulebook           the rulebook that judged
     * @param input              the description that was judged
     * @param contentHash        SHA-256 of the content, in hexadecimal
     * @param part               which part
     * @param purpose            why it was reviewed
     * @param preparedBy         who prepared it
     * @param date               date of the review
     * @param verdict            the verdict
     * @param because            what led to the verdict
     * @param features           the features
     * @param findings           the findings
     * @param questions          open questions
     * @param assumptions        what was taken for granted
     * @param computations       the calculations
     * @param material           what the tables say of the material
     * @param route              the card as understood
     * @param stated             the description, value by value
     * @param rulesApplied       rules that were asked
     * @param rulesNotApplicable rules that do not apply
     * @param readNotJudged      keys that nothing judges yet
     * @param sources            documents that the review cites
     * @param cautions           what a reader must know
     */
    public Review(Tool tool, RulebookId rulebook, InputId input, String contentHash, PartId part, String purpose,
            String preparedBy, String date, Verdict verdict, List<String> because, List<FeatureReview> features,
            List<Finding> findings, List<Question> questions, List<Assumption> assumptions,
            List<Calculation> computations, List<MaterialLine> material, List<RouteLine> route, List<StatedLine> stated,
            List<RuleUse> rulesApplied, List<RuleUse> rulesNotApplicable, List<String> readNotJudged,
            List<SourceLine> sources, List<String> cautions) {
        this(tool, rulebook, input, contentHash, part, purpose, preparedBy, date, verdict, because, features, findings,
                questions, assumptions, computations, material, route, stated, rulesApplied, rulesNotApplicable,
                readNotJudged, sources, cautions, InService.NONE, List.of());
    }

    /** Copies the lists. */
    public Review {
        because = List.copyOf(because);
        features = List.copyOf(features);
        findings = List.copyOf(findings);
        questions = List.copyOf(questions);
        assumptions = List.copyOf(assumptions);
        computations = List.copyOf(computations);
        material = List.copyOf(material);
        route = List.copyOf(route);
        stated = List.copyOf(stated);
        rulesApplied = List.copyOf(rulesApplied);
        rulesNotApplicable = List.copyOf(rulesNotApplicable);
        readNotJudged = List.copyOf(readNotJudged);
        sources = List.copyOf(sources);
        cautions = List.copyOf(cautions);
        dispositions = List.copyOf(dispositions);
    }

    /**
     * {@return the same review with its content hash}
     *
     * @param hash the hash, in hexadecimal
     */
    public Review withContentHash(String hash) {
        return new Review(tool, rulebook, input, hash, part, purpose, preparedBy, date, verdict, because, features,
                findings, questions, assumptions, computations, material, route, stated, rulesApplied,
                rulesNotApplicable, readNotJudged, sources, cautions, inService, dispositions);
    }

    /**
     * {@return the same review with what it says of service}
     *
     * @param more cracks that were found, own tests, and when to look
     */
    public Review withInService(InService more) {
        return new Review(tool, rulebook, input, contentHash, part, purpose, preparedBy, date, verdict, because,
                features, findings, questions, assumptions, computations, material, route, stated, rulesApplied,
                rulesNotApplicable, readNotJudged, sources, cautions, more, dispositions);
    }

    /**
     * {@return the same review with what people decided, to be sealed again}
     *
     * @param decided dispositions of its findings and questions
     */
    public Review withDispositions(List<Disposition> decided) {
        return new Review(tool, rulebook, input, contentHash, part, purpose, preparedBy, date, verdict, because, features,
                findings, questions, assumptions, computations, material, route, stated, rulesApplied,
                rulesNotApplicable, readNotJudged, sources, cautions, inService, decided);
    }

    /**
     * {@return what was decided on a finding or question}
     *
     * @param id its number in this report
     */
    public Optional<Disposition> disposition(String id) {
        for (Disposition one : dispositions) {
            if (one.finding().equals(id)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    /** {@return the objections on which nobody has decided} */
    public List<Finding> openObjections() {
        return findings.stream().filter(one -> one.grade() == Grade.OBJECTION)
                .filter(one -> disposition(one.id()).isEmpty()).toList();
    }

    /** {@return the questions that can change the verdict and on which nobody has decided} */
    public List<Question> openDecisiveQuestions() {
        return questions.stream().filter(Question::decisive).filter(one -> disposition(one.id()).isEmpty()).toList();
    }

    /**
     * {@return the same review with its verdict drawn, not sealed}
     *
     * @param drawn   the verdict
     * @param reasons what led to it
     * @param open    the questions, the decisive ones first
     */
    public Review judged(Verdict drawn, List<String> reasons, List<Question> open) {
        return new Review(tool, rulebook, input, "", part, purpose, preparedBy, date, drawn, reasons, features, findings,
                open, assumptions, computations, material, route, stated, rulesApplied, rulesNotApplicable, readNotJudged,
                sources, cautions, inService, dispositions);
    }

    /**
     * {@return the calculation with a number}
     *
     * @param id number, such as C-01
     */
    public Optional<Calculation> calculation(String id) {
        for (Calculation one : computations) {
            if (one.id().equals(id)) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }

    /**
     * {@return how many findings bear a grade}
     *
     * @param grade the grade
     */
    public long count(Grade grade) {
        long count = 0;
        for (Finding finding : findings) {
            count += finding.grade() == grade ? 1 : 0;
        }
        return count;
    }

    /**
     * The tool.
     *
     * @param version its version
     */
    public record Tool(String version) {
    }

    /**
     * The rulebook.
     *
     * @param edition its edition
     * @param sha256  hash over its files, in hexadecimal
     */
    public record RulebookId(String edition, String sha256) {
    }

    /**
     * The description.
     *
     * @param file   name of the file, without folders
     * @param sha256 hash over its bytes, in hexadecimal
     */
    public record InputId(String file, String sha256) {
    }

    /**
     * The part.
     *
     * @param number   part number
     * @param revision revision; empty text if not stated
     * @param name     name; empty text if not stated
     */
    public record PartId(String number, String revision, String name) {
    }
}
