package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.shortgrain.part.Location;

/**
 * Where a rule says what it found: the global {@code findings} of every rule file.
 *
 * <p>Which rule speaks is known to the engine; a rule never names itself. What is raised counts at once, evidence and
 * places are added to it:
 * <pre>{@code findings.raise($place.id(), "The groove holds water.").evidence("depth 20 mm").at($place.at());}</pre>
 *
 * <p>Belongs to one review; not for use by several threads.
 */
public final class Findings {

    /** Name of the global in a rule file. */
    static final String GLOBAL = "findings";

    private final List<Raised> raised = new ArrayList<>();
    private String speaking = "";

    Findings() {
    }

    /**
     * Raises a finding on the whole part.
     *
     * @param statement what is wrong, in one or two sentences, with the values
     * @return the finding, for evidence and places
     */
    public Raised raise(String statement) {
        return add(Optional.empty(), statement);
    }

    /**
     * Raises a finding at a feature.
     *
     * @param feature   id of the feature
     * @param statement what is wrong, in one or two sentences, with the values
     * @return the finding, for evidence and places
     */
    public Raised raise(String feature, String statement) {
        return add(Optional.of(feature), statement);
    }

    /**
     * Raises a finding at a feature, or on the whole part: where the statement that decides belongs.
     *
     * @param feature   id of the feature; empty for the whole part
     * @param statement what is wrong, in one or two sentences, with the values
     * @return the finding, for evidence and places
     */
    public Raised raise(Optional<String> feature, String statement) {
        return add(feature, statement);
    }

    private Raised add(Optional<String> feature, String statement) {
        Raised one = new Raised(speaking, feature, Objects.requireNonNull(statement, "statement"));
        raised.add(one);
        return one;
    }

    List<Raised> raised() {
        return raised;
    }

    /** {@return the rule that speaks, or spoke last; empty text before the first} */
    String speaking() {
        return speaking;
    }

    /** {@return what tells these findings which rule speaks} */
    DefaultAgendaEventListener listener() {
        return new DefaultAgendaEventListener() {
            @Override
            public void beforeMatchFired(BeforeMatchFiredEvent event) {
                speaking = event.getMatch().getRule().getName();
            }
        };
    }

    /** One finding as raised. */
    public static final class Raised {
        private final String rule;
        private final Optional<String> feature;
        private final String statement;
        private final List<String> evidence = new ArrayList<>();
        private final List<Location> at = new ArrayList<>();

        private Raised(String rule, Optional<String> feature, String statement) {
            this.rule = rule;
            this.feature = feature;
            this.statement = statement;
        }

        /**
         * Adds what shows it.
         *
         * @param texts one piece of evidence each: a value, and where it comes from
         * @return this
         */
        public Raised evidence(String... texts) {
            return evidence(List.of(texts));
        }

        /**
         * Adds what shows it.
         *
         * @param texts one piece of evidence each: a value, and where it comes from
         * @return this
         */
        public Raised evidence(Collection<String> texts) {
            evidence.addAll(texts);
            return this;
        }

        /**
         * Adds where it shows in the description.
         *
         * @param places places in the description
         * @return this
         */
        public Raised at(Location... places) {
            return at(List.of(places));
        }

        /**
         * Adds where it shows in the description.
         *
         * @param places places in the description
         * @return this
         */
        public Raised at(Collection<Location> places) {
            at.addAll(places);
            return this;
        }

        String rule() {
            return rule;
        }

        Optional<String> feature() {
            return feature;
        }

        String statement() {
            return statement;
        }

        List<String> evidence() {
            return evidence;
        }

        List<Location> at() {
            return at;
        }
    }
}
