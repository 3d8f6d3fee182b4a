package org.shortgrain.rulebook.facts;

import java.util.List;
import org.shortgrain.part.TestData;

/**
 * Own stress and time results.
 *
 * @param stated     what is stated of them
 * @param specimens  how many results are whole
 * @param fitted     whether they are enough for a fit
 * @param identified whether they identify a threshold
 * @param outside    what of their scope is not that of the part; empty if all of it is
 */
public record OwnTest(TestData stated, int specimens, boolean fitted, boolean identified, List<String> outside) {

    /** Copies the list. */
    public OwnTest {
        outside = List.copyOf(outside);
    }

    /** {@return whether they are results of something else than the part, or may be} */
    public boolean isOutOfScope() {
        return !outside.isEmpty();
    }

    /** {@return whether a fit was made and does not settle the threshold} */
    public boolean isUnsettled() {
        return fitted && !identified;
    }

    /** {@return what of the scope is not that of the part, in words} */
    public String sayOutside() {
        return String.join("; ", outside);
    }

    /** {@return the results, for texts} */
    public String say() {
        return specimens + " specimens" + stated.exposure().single().map(one -> ", " + one).orElse("");
    }
}
