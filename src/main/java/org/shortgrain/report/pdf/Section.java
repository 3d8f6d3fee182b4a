package org.shortgrain.report.pdf;

import java.util.Locale;

/** The sections of the report in their order. */
enum Section {
    CAUTIONS(Sentence.SECTION_CAUTIONS), SCOPE(Sentence.SECTION_SCOPE), INPUTS(Sentence.SECTION_INPUTS),
    ASSUMPTIONS(Sentence.SECTION_ASSUMPTIONS), PART(Sentence.SECTION_PART), ROUTE(Sentence.SECTION_ROUTE),
    FINDINGS(Sentence.SECTION_FINDINGS), RULES(Sentence.SECTION_RULES), QUESTIONS(Sentence.SECTION_QUESTIONS),
    STRESS(Sentence.SECTION_STRESS), SERVICE(ServiceWords.SECTION_SERVICE), CALCULATIONS(Sentence.SECTION_CALCULATIONS), FIGURES(Sentence.SECTION_FIGURES),
    ACTIONS(Sentence.SECTION_ACTIONS), OPINIONS(Sentence.SECTION_OPINIONS), LIMITS(Sentence.SECTION_LIMITS),
    SOURCES(Sentence.SECTION_SOURCES), SIGNATURES(Sentence.SECTION_SIGNATURES),
    ANNEX_VALUES(Sentence.SECTION_ANNEX_VALUES),
    ANNEX_FILES(Sentence.SECTION_ANNEX_FILES), ANNEX_CHANGES(FollowUp.SECTION_CHANGES);

    private final Phrase title;

    Section(Phrase title) {
        this.title = title;
    }

    String anchor() {
        return "section " + name().toLowerCase(Locale.ROOT);
    }

    /** {@return the heading; annexes bear letters of their own in the wording} */
    String heading(Wording wording) {
        String words = wording.words(title);
        return compareTo(ANNEX_VALUES) < 0 ? ordinal() + 1 + "\u2002" + words : words;
    }
}
