package org.shortgrain.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.Given;
import org.shortgrain.part.Form;
import org.shortgrain.part.Material;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Product;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;
import org.shortgrain.reference.DirectionAnswer;
import org.shortgrain.reference.LevelAnswer;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.reference.MaterialTable;
import org.shortgrain.reference.PhysicalData;
import org.shortgrain.reference.RatingHit;
import org.shortgrain.reference.SccLevel;
import org.shortgrain.reference.SccStress;
import org.shortgrain.reference.Strength;
import org.shortgrain.reference.Susceptibility;
import org.shortgrain.reference.Temper;
import org.shortgrain.review.FactorState;
import org.shortgrain.review.MaterialLine;
import org.shortgrain.rulebook.facts.Metal;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;
import org.shortgrain.terms.SourceStatus;

/**
 * Looks the material up. Where the description leaves a choice of alloy, temper or form, every candidate is looked up
 * and the most susceptible one stands for all.
 */
final class MaterialReading {

    /** Below this short-transverse stress a level-3 material counts as susceptible (Pa): 25 ksi, below which
     * MIL-STD-1568C 5.2.3.1.4 (read) asks for surfaces free of residual tension. */
    private static final double LOW_THRESHOLD = 25 * 6.894757293168361e6;

    private final MaterialTable table;

    MaterialReading(MaterialTable table) {
        this.table = table;
    }

    /**
     * What was found.
     *
     * @param answer  what the tables say of the candidate that governs
     * @param metal   the same for the rules
     * @param elastic its elastic behaviour; empty if the tables do not hold it
     * @param lines   the same for the report
     */
    record Found(MaterialAnswer answer, Metal metal, Optional<Elastic> elastic, List<MaterialLine> lines) {
    }

    /**
     * {@return the material of a part}
     *
     * @param description the part
     */
    Found read(PartDescription description) {
        List<MaterialAnswer> candidates = queries(description).stream().map(table::lookUp).toList();
        MaterialAnswer worst = candidates.stream().min(Comparator.comparingInt(MaterialReading::resistance)).orElseThrow();
        String stated = stated(description);
        List<MaterialLine> lines = new ArrayList<>();
        for (MaterialAnswer candidate : candidates) {
            lines.addAll(lines(candidate, candidate == worst));
        }
        return new Found(worst, metal(description, worst, stated), elastic(stated, worst), lines);
    }

    /**
     * {@return the elastic behaviour of a material by its name and condition, such as {@code 15-5PH H1025}}
     *
     * @param name name, and condition behind a blank
     */
    Optional<Elastic> elastic(String name) {
        int blank = name.indexOf(' ');
        MaterialQuery query = blank < 0 ? MaterialQuery.ofAlloy(name)
                : MaterialQuery.ofAlloy(name.substring(0, blank)).temper(name.substring(blank + 1).strip());
        Optional<Elastic> found = elastic(name, table.lookUp(query));
        return found.isPresent() || blank < 0 ? found : elastic(name, table.lookUp(MaterialQuery.ofAlloy(name)));
    }

    private static List<MaterialQuery> queries(PartDescription description) {
        Stated<Material> material = description.material();
        Stated<Form> form = description.form();
        List<Optional<String>> alloys = optional(material.field(Material::alloy));
        List<Optional<String>> tempers = optional(material.field(Material::temper));
        List<Optional<String>> products = optional(form.field(Form::product).map(Product::word));
        Optional<String> family = material.field(Material::family).single();
        List<MaterialQuery> queries = new ArrayList<>();
        for (Optional<String> alloy : alloys) {
            for (Optional<String> temper : tempers) {
                for (Optional<String> product : products) {
                    queries.add(new MaterialQuery(alloy, family, temper, product, thickness(form),
                            OptionalDouble.empty(), slenderness(form), least(material), most(material)));
                }
            }
        }
        return queries;
    }

    private static <T> List<Optional<T>> optional(Stated<T> stated) {
        return stated.candidates().isEmpty() ? List.of(Optional.empty())
                : stated.candidates().stream().map(Optional::of).toList();
    }

    private static OptionalDouble thickness(Stated<Form> form) {
        return Range.greatest(form.field(Form::heatTreatThickness));
    }

    private static OptionalDouble slenderness(Stated<Form> form) {
        OptionalDouble thickness = thickness(form);
        OptionalDouble width = Range.least(form.field(Form::heatTreatWidth));
        return thickness.isPresent() && width.isPresent()
                ? OptionalDouble.of(width.getAsDouble() / thickness.getAsDouble()) : OptionalDouble.empty();
    }

    private static OptionalDouble least(Stated<Material> material) {
        return material.field(Material::strength).candidates().stream().flatMap(range -> range.min().stream())
                .mapToDouble(one -> one.si()).min();
    }

    private static OptionalDouble most(Stated<Material> material) {
        return material.field(Material::strength).candidates().stream().flatMap(range -> range.max().stream())
                .mapToDouble(one -> one.si()).max();
    }

    /** Order of candidates: susceptible before unknown before resistant, then by level. */
    static int resistance(MaterialAnswer answer) {
        LevelAnswer level = answer.inUnknownDirection().level();
        int rank = switch (level.susceptibility()) {
            case SUSCEPTIBLE -> 0;
            case UNKNOWN -> 10;
            case RESISTANT -> 20;
        };
        return rank + level.level().number();
    }

    private static String stated(PartDescription description) {
        Stated<Material> material = description.material();
        String alloy = String.join(" or ", material.field(Material::alloy).candidates());
        String temper = String.join(" or ", material.field(Material::temper).candidates());
        return temper.isEmpty() ? alloy : alloy + "-" + temper;
    }

    private static Metal metal(PartDescription description, MaterialAnswer answer, String stated) {
        Map<GrainDirection, FactorState> susceptible = new EnumMap<>(GrainDirection.class);
        Map<GrainDirection, Integer> level = new EnumMap<>(GrainDirection.class);
        Map<GrainDirection, Double> yieldStrength = new EnumMap<>(GrainDirection.class);
        for (GrainDirection direction : GrainDirection.values()) {
            DirectionAnswer in = answer.in(direction);
            susceptible.put(direction, state(in));
            if (in.level().level() != SccLevel.UNKNOWN) {
                level.put(direction, in.level().level().number());
            }
            if (in.strength().fty().isPresent()) {
                yieldStrength.put(direction, in.strength().fty().getAsDouble());
            }
        }
        boolean covered = answer.alloy().isPresent() && !level.isEmpty();
        return new Metal(answer.alloy().map(alloy -> alloy.name())
                .orElseGet(() -> description.material().field(Material::alloy).single().orElse("")),
                answer.temper() instanceof Temper.NotStated ? "" : answer.temper().normal(), answer.family().orElse(""),
                stated, covered, temper(answer.temper()), susceptible, level, yieldStrength,
                least(description.material()), most(description.material()));
    }

    /**
     * {@return whether the material is susceptible along a direction}
     *
     * <p>Levels 1 and 2 are, unless a missing datum leaves rows of level 3 or 4 standing beside them: then nobody knows.
     * Level 3 is where its published stress lies below 25 ksi.
     *
     * @param in what the tables say
     */
    static FactorState state(DirectionAnswer in) {
        LevelAnswer level = in.level();
        if (level.susceptibility() == Susceptibility.SUSCEPTIBLE) {
            boolean better = !level.open().isEmpty()
                    && level.hits().stream().anyMatch(hit -> hit.best().number() >= SccLevel.LEVEL_3.number());
            return better ? FactorState.UNKNOWN : FactorState.PRESENT;
        }
        if (level.susceptibility() == Susceptibility.UNKNOWN) {
            return FactorState.UNKNOWN;
        }
        boolean low = level.level() == SccLevel.LEVEL_3 && in.stress().low().orElse(Double.MAX_VALUE) < LOW_THRESHOLD;
        return low ? FactorState.PRESENT : FactorState.ABSENT;
    }

    private static Optional<Metal.Temper> temper(Temper temper) {
        if (temper instanceof Temper.HeatTreated t) {
            return Optional.of(new Metal.Temper("T" + t.base() + t.digits(), t.overaged(),
                    t.open() == Temper.OpenDigits.NONE, t.relief(), t.userTreated()));
        }
        return temper instanceof Temper.Unreadable unreadable
                ? Optional.of(new Metal.Temper(unreadable.normal(), false, false, "", false)) : Optional.empty();
    }

    private static Optional<Elastic> elastic(String name, MaterialAnswer answer) {
        PhysicalData data = answer.physical();
        if (data.modulus().isEmpty() || data.poisson().isEmpty() || data.expansion().isEmpty()) {
            return Optional.empty();
        }
        Map<GrainDirection, Given> yieldStrength = new EnumMap<>(GrainDirection.class);
        for (GrainDirection direction : GrainDirection.values()) {
            Optional<Strength> row = answer.in(direction).strength().governing();
            if (row.isPresent() && row.get().fty().isPresent()) {
                yieldStrength.put(direction, yieldStrength(row.get()));
            }
        }
        return Optional.of(new Elastic(name, given(data.modulus().get()), given(data.poisson().get()),
                given(data.expansion().get()), yieldStrength));
    }

    private static Given yieldStrength(Strength row) {
        return new Given(Band.exact(row.fty().getAsDouble()), "minimum, basis " + row.basis() + ", " + row.row(),
                Optional.of(row.citation()));
    }

    private static Given given(PhysicalData.Value value) {
        return new Given(Band.exact(value.value()), "table, " + value.row(), Optional.of(value.citation()));
    }

    private static List<MaterialLine> lines(MaterialAnswer answer, boolean governs) {
        List<MaterialLine> lines = new ArrayList<>();
        String name = answer.alloy().map(alloy -> alloy.name()).orElse("alloy not in the tables") + " "
                + answer.temper().normal();
        for (GrainDirection direction : GrainDirection.values()) {
            DirectionAnswer in = answer.in(direction);
            for (RatingHit hit : in.level().hits()) {
                boolean decides = governs && hit.worst() == in.level().level();
                lines.add(new MaterialLine(name + ", " + direction + ", " + hit.title(), hit.word() + " (" + hit.row()
                        + ")", hit.meaning(), decides, hit.citation()));
            }
            if (in.stress().governing().isPresent()) {
                lines.add(stress(name, direction, in.stress().governing().get(), governs));
            }
            if (in.strength().fty().isPresent() && in.strength().governing().isPresent()) {
                lines.add(strength(name, direction, in.strength().governing().get(), governs));
            }
        }
        if (lines.isEmpty()) {
            String near = String.join(", ", answer.neighbours().stream().map(one -> one.alloy() + " " + one.row()).limit(5).toList());
            lines.add(new MaterialLine(name, "no row", near.isEmpty() ? "not covered by the tables"
                    : "not covered by the tables; near rows: " + near, governs,
                    new Citation("own-derivation", "tables of this rulebook", SourceStatus.DERIVED)));
        }
        return lines;
    }

    private static MaterialLine strength(String name, GrainDirection direction, Strength row, boolean governs) {
        return new MaterialLine(name + ", " + direction + ", minimum yield strength",
                String.format(Locale.ROOT, "%.0f MPa, basis %s (%s)", row.fty().orElse(0) / 1e6, row.basis(), row.row()),
                "lowest minimum that fits what is stated", governs, row.citation());
    }

    private static MaterialLine stress(String name, GrainDirection direction, SccStress stress, boolean governs) {
        String numbers = stress.low().isPresent() ? String.format(Locale.ROOT, "%.0f to %.0f MPa",
                stress.low().getAsDouble() / 1e6, stress.high().orElse(stress.low().getAsDouble()) / 1e6) : "no number";
        return new MaterialLine(name + ", " + direction + ", " + stress.kind().word(), numbers + " (" + stress.row()
                + ")", stress.statement(), governs, stress.citation());
    }
}
