package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.shortgrain.terms.GrainDirection;

/**
 * Brings the rows of several schemes to one level.
 *
 * <p>Rules, in this order:
 * <ol>
 * <li>Rows that apply are told from rows that only may apply (a datum open, or the row for a near relative). The latter
 * can lower the level but neither raise nor clear it.
 * <li>For L and LT a row for that very direction goes before a class given to the material as a whole, which speaks for
 * its worst direction. For ST all count.
 * <li>The lowest upper end caps the level. Under the cap the highest lower end counts, of firm rows if there are any:
 * so a class that spans two levels is narrowed by a letter, and an outlier on the good side is dropped.
 * <li>A row from memory can lower the level. It never narrows a span upwards and never clears.
 * </ol>
 */
final class LevelJudge {
    /** From this level on a material counts as resistant: letter B, which two schemes call high. */
    private static final int RESISTANT = SccLevel.LEVEL_3.number();
    private static final Set<OpenDatum> ONLY_SIZE = EnumSet.of(OpenDatum.THICKNESS);

    private final GrainDirection direction;
    private final Question question;
    private final List<Piece> pieces = new ArrayList<>();

    /** A row that speaks for the material, or may. */
    record Piece(RatingTable.Rating rating, Match match, Set<OpenDatum> open) {
        boolean direct() {
            return rating.direction().isPresent();
        }

        boolean firm() {
            return !rating.citation().status().needsConfirmation();
        }

        int worst() {
            return rating.word().worst().number();
        }

        int best() {
            return rating.word().best().number();
        }
    }

    /** {@return the level in a direction; where it hangs on an unknown width, the worse of both readings} */
    static LevelAnswer judge(GrainDirection direction, Question question, List<Piece> ofAllDirections) {
        LevelAnswer answer = new LevelJudge(direction, question, ofAllDirections).answer();
        if (!question.widthOpen() || direction != GrainDirection.LT) {
            return answer;
        }
        LevelAnswer wide = new LevelJudge(direction, question.ofWideBar(), ofAllDirections).answer();
        return wide.susceptibility().compareTo(answer.susceptibility()) > 0 ? wide : answer;
    }

    private LevelJudge(GrainDirection direction, Question question, List<Piece> ofAllDirections) {
        this.direction = direction;
        this.question = question;
        for (Piece piece : ofAllDirections) {
            if (piece.rating().direction().isEmpty()
                    || question.concerns(piece.rating().direction().get(), direction)) {
                pieces.add(piece);
            }
        }
    }

    LevelAnswer answer() {
        boolean directOnly = direction != GrainDirection.ST && hasDirect();
        List<Piece> sure = new ArrayList<>();
        List<Piece> unsure = new ArrayList<>();
        List<RatingHit> hits = new ArrayList<>();
        EnumSet<OpenDatum> open = EnumSet.noneOf(OpenDatum.class);
        for (Piece piece : pieces) {
            boolean counts = !directOnly || piece.direct();
            hits.add(hit(piece, counts));
            if (counts && piece.match() == Match.YES) {
                sure.add(piece);
            } else if (counts) {
                unsure.add(piece);
                open.addAll(piece.open());
            }
        }
        if (question.form().isEmpty()) {
            open.add(OpenDatum.PRODUCT_FORM);
        }
        if (question.alloyOpen()) {
            open.add(OpenDatum.ALLOY);
        }
        int level = worstCase(sure, unsure);
        List<Piece> firm = new ArrayList<>(sure);
        firm.removeIf(piece -> !piece.firm());
        int firmLevel = combine(firm);
        boolean memory = !(sure.isEmpty() && unsure.isEmpty()) && firm.isEmpty()
                && unsure.stream().noneMatch(Piece::firm);
        boolean cleared = level >= RESISTANT && firmLevel >= RESISTANT && open.isEmpty();
        return new LevelAnswer(SccLevel.of(level), cleared, memory, disagree(sure), open, hits);
    }

    /** Whether some row for this very direction surely applies, be it that only the size tells which. */
    private boolean hasDirect() {
        List<ThicknessBand> bySize = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.direct() && piece.match() == Match.YES) {
                return true;
            }
            boolean sureForm = question.forms().match(piece.rating().scope().forms(), question.form()) == Match.YES;
            if (piece.direct() && sureForm && piece.open().equals(ONLY_SIZE)) {
                bySize.add(piece.rating().scope().thickness());
            }
        }
        return ThicknessBand.coverAll(bySize);
    }

    /** The worst level over the cases that none or any one of the unsure rows applies; 0 when nothing is known. */
    private static int worstCase(List<Piece> sure, List<Piece> unsure) {
        int worst = combine(sure);
        for (Piece one : unsure) {
            List<Piece> with = new ArrayList<>(sure);
            with.add(one);
            int level = combine(with);
            if (sure.isEmpty() && level >= RESISTANT) {
                continue;
            }
            worst = worst == 0 ? level : Math.min(worst, level);
        }
        return worst;
    }

    private static int combine(List<Piece> rows) {
        int cap = 4;
        for (Piece row : rows) {
            cap = Math.min(cap, row.best());
        }
        int firm = 0;
        int any = 0;
        for (Piece row : rows) {
            if (row.worst() <= cap) {
                any = Math.max(any, row.worst());
                firm = row.firm() ? Math.max(firm, row.worst()) : firm;
            }
        }
        return firm > 0 ? firm : any;
    }

    private static boolean disagree(List<Piece> rows) {
        int low = 0;
        int high = 5;
        for (Piece row : rows) {
            low = Math.max(low, row.worst());
            high = Math.min(high, row.best());
        }
        return low > high;
    }

    private static RatingHit hit(Piece piece, boolean counts) {
        RatingTable.Rating r = piece.rating();
        RatingHit.Reading reading = !counts ? RatingHit.Reading.WORST_DIRECTION
                : piece.match() == Match.YES ? RatingHit.Reading.APPLIES : RatingHit.Reading.MAY_APPLY;
        return new RatingHit(r.word().scheme(), r.title(), r.word().word(), r.word().meaning(), r.word().worst(),
                r.word().best(), r.word().shareOfYield(), r.word().floor(), r.direction(), reading, r.row(),
                r.citation(), r.confidence(), r.remark());
    }
}
