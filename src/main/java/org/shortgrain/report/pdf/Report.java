package org.shortgrain.report.pdf;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.shortgrain.report.pdf.tagged.Attachment;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Factor;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;

/**
 * What every section of one report draws on.
 *
 * @param review      the review
 * @param attachments files that the report carries
 * @param options     how it is printed
 * @param wording     its words
 * @param numbers     prints numbers
 * @param stated      values of the description by place
 * @param links       cross-references
 */
record Report(Review review, List<Attachment> attachments, ReviewPdf.Options options, Wording wording, Numbers numbers,
        StatedValues stated, Links links) {

    static Report of(Review review, List<Attachment> attachments, ReviewPdf.Options options, Wording wording) {
        StatedValues stated = new StatedValues(review.stated());
        return new Report(review, attachments, options, wording, new Numbers(options.units()), stated,
                new Links(review, stated));
    }

    Text say(Phrase phrase, Text... values) {
        return wording.say(phrase, values);
    }

    String words(Phrase phrase, String... values) {
        return wording.words(phrase, values);
    }

    Block.Heading heading(Section section) {
        return new Block.Heading(1, Text.of(section.heading(wording)), section.anchor());
    }

    Text link(Section section) {
        return Text.EMPTY.link(section.heading(wording).replace('\u2002', ' '), section.anchor());
    }

    Block paragraph(Phrase phrase, Text... values) {
        return new Block.Paragraph(say(phrase, values), Block.Tone.BODY);
    }

    Block small(Text text) {
        return new Block.Paragraph(text, Block.Tone.SMALL);
    }

    Block.Column column(Label title, double share) {
        return Block.Column.text(words(title), share);
    }

    Block.Column numberColumn(Label title, double share) {
        return Block.Column.number(words(title), share);
    }

    /** {@return a row of a table whose first column labels the second} */
    Block.Row labelled(Phrase label, Text... paragraphs) {
        return Block.Row.of(Block.Cell.of(words(label)), new Block.Cell(Arrays.asList(paragraphs)));
    }

    Block.Row labelled(Phrase label, List<Text> paragraphs) {
        return Block.Row.of(Block.Cell.of(words(label)), new Block.Cell(paragraphs));
    }

    /** {@return a badge that tells the grade by its word and by its frame} */
    Text badge(Grade grade) {
        return switch (grade) {
            case OBJECTION -> Text.EMPTY.badge(words(Label.GRADE_OBJECTION), Inline.Frame.SOLID);
            case CONDITION -> Text.EMPTY.badge(words(Label.GRADE_CONDITION), Inline.Frame.HEAVY);
            case QUESTION -> Text.EMPTY.badge(words(Label.GRADE_QUESTION), Inline.Frame.DASHED);
            case ADVICE -> Text.EMPTY.badge(words(Label.GRADE_ADVICE), Inline.Frame.THIN);
        };
    }

    Text state(FactorState state) {
        return switch (state) {
            case PRESENT -> Text.EMPTY.bold(words(Label.STATE_PRESENT));
            case ABSENT -> Text.of(words(Label.STATE_ABSENT));
            case UNKNOWN -> Text.of(words(Label.STATE_UNKNOWN));
        };
    }

    static Inline.Frame frame(Verdict verdict) {
        return switch (verdict) {
            case OBJECTION -> Inline.Frame.SOLID;
            case CANNOT_BE_JUDGED -> Inline.Frame.DASHED;
            case NO_OBJECTION_SUBJECT_TO_CONDITIONS -> Inline.Frame.HEAVY;
            case NO_OBJECTION -> Inline.Frame.THIN;
        };
    }

    /** {@return which of the reviewers a finding is for, as a proposal: the roles are those of the signatures} */
    String answers(Factor factor) {
        return words(switch (factor) {
            case RECORD -> Label.WHO_RECORD;
            case STRESS -> Label.WHO_STRESS;
            case MATERIAL, ENVIRONMENT, COMBINED -> Label.WHO_OTHER;
        });
    }

    String factor(Factor factor) {
        return factor.word();
    }

    /** {@return a declared value, or the words for a key that is absent} */
    String declared(String path) {
        Optional<String> entered = stated.entered(path);
        return entered.isPresent() ? entered.get() : words(Label.NOT_DECLARED);
    }

    /** {@return the feature, or the words for the whole part} */
    String place(Optional<String> feature) {
        return feature.isPresent() ? feature.get() : words(Label.WHOLE_PART);
    }

    /** {@return the page on which a place lies, for readers of the printed sheet} */
    Text onPage(String anchor) {
        return say(Label.PAGE_REFERENCE, Text.EMPTY.pageOf(anchor));
    }
}
