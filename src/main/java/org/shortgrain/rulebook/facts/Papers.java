package org.shortgrain.rulebook.facts;

import java.util.List;
import java.util.Locale;
import org.shortgrain.part.Drawing;
import org.shortgrain.part.Identity;
import org.shortgrain.part.Material;
import org.shortgrain.part.Planning;
import org.shortgrain.part.Purpose;
import org.shortgrain.part.ReviewRequest;
import org.shortgrain.part.Stated;
import org.shortgrain.part.UserThreshold;

/**
 * The papers of a part: drawing, card, who asks and who decides.
 *
 * @param part the part
 */
public record Papers(Part part) {

    private static final String[] GRAVE = {"loss of the aircraft", "loss of aircraft", "loss of the vehicle",
        "loss of control", "loss of life", "loss of the crew", "fatal", "catastroph"};

    /** {@return change notices, deviations and concessions in force} */
    public Stated<List<String>> changes() {
        return part.drawing().field(Drawing::changes);
    }

    /**
     * {@return whether a change in force certainly names one of some things}
     *
     * @param words what to look for
     */
    public boolean changesName(String... words) {
        return changes().any(all -> all.stream().anyMatch(one -> Wording.contains(one, words)));
    }

    /** {@return whether the card certainly was written to another revision of the drawing} */
    public boolean isCardOutOfStep() {
        return differ(part.planning().field(Planning::drawingRevisionOnCard), part.drawing().field(Drawing::revision));
    }

    /** {@return whether whoever prepared the description certainly is the one who decides on the design} */
    public boolean isOwnJudge() {
        Stated<String> author = part.description().review().field(ReviewRequest::preparedBy);
        Stated<String> judge = designAuthority();
        return author.isKnown() && judge.isKnown() && !differ(author, judge);
    }

    /** {@return whether nothing is stated of who decides on the design} */
    public boolean isAuthorityOpen() {
        return designAuthority().isMissing();
    }

    private Stated<String> designAuthority() {
        return part.identity().field(Identity::designAuthority);
    }

    /** {@return whether function or effect of failure is not stated} */
    public boolean isEffectOpen() {
        return part.identity().field(Identity::function).isMissing() || effectOfFailure().isMissing();
    }

    /** {@return whether the effect of failure is grave, and the part certainly is stated to matter little} */
    public boolean isBelittled() {
        return Wording.names(effectOfFailure(), GRAVE) && part.isMinor();
    }

    private Stated<String> effectOfFailure() {
        return part.identity().field(Identity::effectOfFailure);
    }

    /** {@return whether parts that exist are reviewed, and neither serial numbers nor effectivity is stated} */
    public boolean isScopeOpen() {
        boolean exists = part.purpose() == Purpose.AUDIT || part.purpose() == Purpose.CONCESSION_SUPPORT
                || part.purpose() == Purpose.IN_SERVICE;
        return exists && part.identity().field(Identity::serials).isMissing()
                && part.identity().field(Identity::effectivity).isMissing();
    }

    /** {@return whether own test results certainly are of another alloy or temper} */
    public boolean isTestOfOtherMetal() {
        return Stated.items(part.description().testData()).stream()
                .anyMatch(test -> differ(test.alloy(), part.material().field(Material::alloy))
                        || differ(test.temper(), part.material().field(Material::temper)));
    }

    /** {@return own thresholds that refer to no report} */
    public List<UserThreshold> thresholdsWithoutReport() {
        return Stated.items(part.material().field(Material::userThreshold)).stream()
                .filter(one -> one.origin().ref().isEmpty()).toList();
    }

    private static boolean differ(Stated<String> one, Stated<String> other) {
        return one.single().isPresent() && other.single().isPresent()
                && !plain(one.single().get()).equals(plain(other.single().get()));
    }

    private static String plain(String text) {
        return text.strip().toUpperCase(Locale.ROOT);
    }
}
