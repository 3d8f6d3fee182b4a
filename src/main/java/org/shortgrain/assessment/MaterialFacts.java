package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shortgrain.part.Evidence;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.reference.SectionLimits;
import org.shortgrain.reference.TemperEvidence;
import org.shortgrain.rulebook.facts.Thickness;
import org.shortgrain.terms.GrainDirection;

/** What the tables say against the temper and the section as stated, for the rules. */
final class MaterialFacts {

    private static final double PER_CENT = 100;
    /** A number and a scale, either first: 82 HRB, HRB 82. */
    private static final Pattern HARDNESS = Pattern.compile("([A-Z]+) *(\\d+(?:\\.\\d+)?)|(\\d+(?:\\.\\d+)?) *([A-Z]+)");

    private final ReferenceTables tables;

    MaterialFacts(ReferenceTables tables) {
        this.tables = tables;
    }

    /**
     * {@return remarks on the temper, the judgement of its proof where a conductivity is stated, and the thickness}
     *
     * @param description the part
     * @param answer      what the tables say of its material
     */
    List<Object> of(PartDescription description, MaterialAnswer answer) {
        List<Object> facts = new ArrayList<>(tables.temperRules().check(answer));
        measured(description, answer).ifPresent(measured -> facts.add(tables.temperEvidence().judge(answer, measured)));
        facts.add(thickness(answer));
        return facts;
    }

    private static Optional<TemperEvidence.Measured> measured(PartDescription description, MaterialAnswer answer) {
        Stated<Evidence> evidence = description.evidence();
        OptionalDouble conductivity = Range.least(evidence.field(Evidence::conductivity));
        if (conductivity.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble minimum = answer.in(GrainDirection.L).strength().fty();
        return Optional.of(new TemperEvidence.Measured(OptionalDouble.of(conductivity.getAsDouble() * PER_CENT),
                hardness(evidence.field(Evidence::hardness)), Range.greatest(evidence.field(Evidence::yield)), minimum));
    }

    private static Map<String, Double> hardness(Stated<String> stated) {
        Map<String, Double> byScale = new HashMap<>();
        stated.single().ifPresent(text -> {
            Matcher found = HARDNESS.matcher(text);
            if (found.find()) {
                boolean scaleFirst = found.group(1) != null;
                byScale.put(scaleFirst ? found.group(1) : found.group(4),
                        Double.valueOf(scaleFirst ? found.group(2) : found.group(3)));
            }
        });
        return byScale;
    }

    private Thickness thickness(MaterialAnswer answer) {
        double atQuench = answer.query().thickness().orElse(Double.NaN);
        double published = tables.sectionLimits().greatest(answer).stream().mapToDouble(SectionLimits.Limit::thickness)
                .max().orElse(Double.NaN);
        double fullStrength = answer.alloy().flatMap(alloy -> tables.sectionLimits().sensitivity(alloy))
                .map(SectionLimits.Sensitivity::fullStrength).orElse(Double.NaN);
        return new Thickness(atQuench, published, fullStrength);
    }
}
