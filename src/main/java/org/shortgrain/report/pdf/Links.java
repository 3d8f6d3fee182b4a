package org.shortgrain.report.pdf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shortgrain.report.pdf.tagged.Inline;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.Calculation;
import org.shortgrain.review.FeatureReview;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.review.SourceLine;
import org.shortgrain.terms.Citation;

/**
 * Cross-references of the report. A name that the review does not list is printed without a link: the report must not
 * fail over it, and the reader sees the name.
 */
final class Links {

    private final Set<String> places = new HashSet<>();
    private final StatedValues stated;
    private final List<Calculation> calculations;

    Links(Review review, StatedValues stated) {
        this.stated = stated;
        this.calculations = review.computations();
        for (Finding finding : review.findings()) {
            places.add(finding(finding.id()));
        }
        for (Question question : review.questions()) {
            places.add(question(question.id()));
        }
        for (Calculation calculation : review.computations()) {
            places.add(calculation(calculation.id()));
        }
        for (SourceLine source : review.sources()) {
            places.add(source(source.id()));
        }
        for (FeatureReview feature : review.features()) {
            if (!feature.directions().isEmpty()) {
                places.add(stress(feature.id()));
            }
        }
    }

    static String finding(String id) {
        return "finding " + id;
    }

    static String question(String id) {
        return "question " + id;
    }

    static String calculation(String id) {
        return "calculation " + id;
    }

    static String source(String id) {
        return "source " + id;
    }

    static String stress(String feature) {
        return "stress " + feature;
    }

    static String value(String path) {
        return "value " + path;
    }

    static String figure(int number) {
        return "figure " + number;
    }

    Text toFinding(String id) {
        return link(id, finding(id));
    }

    Text toQuestion(String id) {
        return link(id, question(id));
    }

    Text toCalculation(String id) {
        return link(id, calculation(id));
    }

    /** {@return words that lead to the stresses of a feature, if there are any} */
    Text toStress(String words, String feature) {
        return link(words, stress(feature));
    }

    private Text link(String words, String anchor) {
        return places.contains(anchor) ? Text.EMPTY.link(words, anchor) : Text.of(words);
    }

    /** {@return a place of the description, leading to the value as read} */
    Text toValue(String path) {
        Optional<String> near = stated.nearest(path);
        return near.isPresent() ? Text.EMPTY.link(path, value(near.get())) : Text.EMPTY.mono(path);
    }

    /**
     * {@return where a number came from: a place of the description leads to the value there, the name of a calculation
     * to the last one of that name at the same place}
     *
     * @param origin where it came from
     * @param into   the calculation that it went into
     */
    Text origin(String origin, Calculation into) {
        if (origin.startsWith("/")) {
            return toValue(origin);
        }
        String named = origin;
        for (Calculation one : calculations) {
            if (one == into) {
                break;
            }
            if (one.computed().id().equals(origin) && one.feature().equals(into.feature())) {
                named = one.id();
            }
        }
        return toCalculation(named);
    }

    Text toSource(Citation citation) {
        String clause = citation.clause().isEmpty() ? "" : ", " + citation.clause();
        return link(citation.id(), source(citation.id())).plain(clause + " (" + citation.status().word() + ")");
    }

    /** {@return citations, one below the other} */
    List<Text> toSources(List<Citation> citations) {
        List<Text> links = new ArrayList<>();
        for (Citation citation : citations) {
            links.add(toSource(citation));
        }
        return links;
    }

    /** {@return texts in one line with commas} */
    static Text joined(List<Text> texts) {
        return joined(texts, ", ");
    }

    /** {@return texts in one line with a sign between them} */
    static Text joined(List<Text> texts, String sign) {
        List<Inline> parts = new ArrayList<>();
        for (Text text : texts) {
            if (!parts.isEmpty()) {
                parts.add(new Inline.Run(sign, Inline.Style.PLAIN));
            }
            parts.addAll(text.parts());
        }
        return new Text(parts);
    }

    Text toFindings(List<String> ids) {
        List<Text> links = new ArrayList<>();
        for (String id : ids) {
            links.add(toFinding(id));
        }
        return joined(links);
    }
}
