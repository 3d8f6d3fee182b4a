package org.shortgrain.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PlainTextTest {

    @Test
    void aTextIsBrokenBetweenWords() {
        assertEquals(List.of("F-01  The groove", "      holds water."),
                PlainText.lines("F-01  ", "      ", "The groove holds water.", 18));
    }

    @Test
    void aWordThatIsLongerThanALineStaysWhole() {
        assertEquals(List.of("see", "  MIL-STD_that_is_long", "  now"),
                PlainText.lines("", "  ", "see MIL-STD_that_is_long now", 10));
    }

    @Test
    void whatATerminalWouldObeyIsShownInstead() {
        assertEquals("red \uFFFD[31m bell\uFFFD next turned\uFFFD",
                PlainText.clean("red \u001b[31m bell\u0007\nnext\tturned\u202e"));
    }

    @Test
    void anEmptyTextIsOneLine() {
        assertEquals(List.of("F-01"), PlainText.lines("F-01  ", "", "", 20));
    }

    @Property
    void nothingIsLostAndNoLineIsLongerThanItsWidthOrItsWord(@ForAll String text, @ForAll @IntRange(min = 1, max = 60) int width) {
        List<String> lines = PlainText.lines("", "", text, width);
        assertEquals(PlainText.clean(text).replace(" ", ""), String.join("", lines).replace(" ", ""));
        lines.stream().filter(line -> line.length() > width)
                .forEach(line -> assertTrue(!line.contains(" ") , () -> "'" + line + "' could be broken"));
    }
}
