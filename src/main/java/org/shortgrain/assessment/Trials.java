package org.shortgrain.assessment;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.review.Grade;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.Verdict;

/**
 * Reviews of changed descriptions. Equal descriptions are reviewed once; several threads may use one.
 *
 * <p>A changed description goes through the same reader and the same review as a file. Only what is drawn at random for the
 * reader of the report is left out, since it decides nothing.
 */
public final class Trials {

    private final Reviewer reviewer;
    private final PartReader reader;
    private final DecisiveQuestions questions;
    private final Map<String, Optional<Trial>> done = new ConcurrentHashMap<>();

    /**
     * Prepares trials.
     *
     * @param reviewer who reviews
     */
    public Trials(Reviewer reviewer) {
        this.reviewer = reviewer;
        this.reader = new PartReader(reviewer.knowledge().vocabularies());
        this.questions = new DecisiveQuestions(this);
    }

    Reviewer reviewer() {
        return reviewer;
    }

    /**
     * {@return the review of a description; empty if the reader refuses it}
     *
     * @param part the description
     */
    public Optional<Trial> of(EditableDescription part) {
        String key = part.canonical();
        Optional<Trial> known = done.get(key);
        if (known != null) {
            return known;
        }
        Optional<Trial> made = made(part);
        done.put(key, made);
        return made;
    }

    private Optional<Trial> made(EditableDescription part) {
        return reader.read("trial", part) instanceof Reading.Read read
                ? Optional.of(new Trial(part, read, reviewer.trial(read.description()))) : Optional.empty();
    }

    /**
     * {@return a description as it is read, without a review; empty if the reader refuses it}
     *
     * @param part the description
     */
    public Optional<PartDescription> read(EditableDescription part) {
        return reader.read("trial", part) instanceof Reading.Read read ? Optional.of(read.description()) : Optional.empty();
    }

    /**
     * {@return the verdict of a description with its open questions decided, as a review of it draws it}
     *
     * @param trial the description
     */
    public Verdict verdict(Trial trial) {
        return questions.verdict(trial);
    }

    /**
     * {@return what the tables say of the material of a description}
     *
     * @param trial the description
     */
    public MaterialAnswer material(Trial trial) {
        return reviewer.materials().read(trial.read().description()).answer();
    }

    /**
     * {@return what pulls at one place of a description, computed as a review of it does; empty if the reader refuses it}
     *
     * @param part    the description
     * @param feature number of the place in the description, from 0
     */
    public Optional<PlaceStress> stressAt(EditableDescription part, int feature) {
        return read(part).map(one -> reviewer.stressAt(one, feature));
    }

    /** {@return the reference tables} */
    public ReferenceTables tables() {
        return reviewer.knowledge().tables();
    }

    /** {@return how many different descriptions were reviewed} */
    public int count() {
        return done.size();
    }

    /**
     * One review of a changed description.
     *
     * @param part   the description
     * @param read   what was read
     * @param review the review, in which every open question counts as decisive
     */
    public record Trial(EditableDescription part, Reading.Read read, Review review) {

        /** {@return the part as described} */
        public PartDescription description() {
            return read.description();
        }

        /** {@return the verdict if no question were open} */
        public Verdict free() {
            if (review.count(Grade.OBJECTION) > 0) {
                return Verdict.OBJECTION;
            }
            return review.count(Grade.CONDITION) > 0 ? Verdict.NO_OBJECTION_SUBJECT_TO_CONDITIONS : Verdict.NO_OBJECTION;
        }

        /** {@return the questions that may change the verdict} */
        public List<Question> asked() {
            return review.questions().stream().filter(one -> one.role() == Question.Role.JUDGING).toList();
        }
    }
}
