package org.shortgrain.report.pdf.tagged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.Normalizer;
import org.junit.jupiter.api.Test;

class GlyphGuardTest {

    @Test
    void what_counts_as_composed_is_left_alone_beside_any_letter_of_its_kind() {
        for (char c = 0; c < Character.MAX_VALUE; c++) {
            for (String beside : new String[] {"", "e", "\u00c5", "\u0391", "\u03c9", "\u0418", "=", "\u2190"}) {
                String text = beside + c + beside;
                if (GlyphGuard.isComposed(text)) {
                    assertEquals(text, Normalizer.normalize(text, Normalizer.Form.NFC), "U+" + Integer.toHexString(c));
                }
            }
        }
    }

    @Test
    void the_signs_of_a_report_count_as_composed_and_marks_to_be_set_on_letters_do_not() {
        assertTrue(GlyphGuard.isComposed("\u03c3 \u2265 25 MPa \u00b7 \u22121 \u2013 \u00b0C \u2026 \u221a\u00b5"));
        assertFalse(GlyphGuard.isComposed("e\u0301"));
        assertFalse(GlyphGuard.isComposed("\u212b"));
    }
}
