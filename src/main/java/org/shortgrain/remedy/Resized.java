package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.section.Resizing;
import org.shortgrain.mechanics.section.SizingMode;
import org.shortgrain.mechanics.section.StrengthChange;
import org.shortgrain.part.Envelope;
import org.shortgrain.part.Form;
import org.shortgrain.part.PartDescription;
import org.shortgrain.part.Range;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.PhysicalData;
import org.shortgrain.reference.StrengthAnswer;
import org.shortgrain.terms.GrainDirection;

/**
 * What a change of alloy or temper costs in section and mass for the same load, mode by mode, and whether it stays in the
 * envelope. The strengths are the least published minima at the thickness of the stock, each in its direction; the one that
 * falls most governs, and nothing is credited where the new metal is stronger.
 *
 * @param ratio    r = old over new strength, governing; 1 or more
 * @param governs  which strength governs, with basis and rows
 * @param mass     mass ratio of the mode that needs most, tension and lugs; includes the densities
 * @param lines    one line for each mode: dimension, mass, envelope
 * @param fits     whether the worst mode stays in the envelope; empty where no envelope is stated
 */
record Resized(double ratio, String governs, double mass, List<String> lines, Optional<Boolean> fits) {

    private static final double MEGA = 1e6;
    private static final double MILLI = 1e-3;

    /**
     * {@return the new section; empty where a strength or density is not published on both sides}
     *
     * @param part the part
     * @param from material now
     * @param to   material proposed
     */
    static Optional<Resized> of(PartDescription part, MaterialAnswer from, MaterialAnswer to) {
        List<StrengthChange> changes = new ArrayList<>();
        for (GrainDirection direction : GrainDirection.values()) {
            add(changes, "Ftu " + direction, from.in(direction).strength(), from.in(direction).strength().ftu(),
                    to.in(direction).strength(), to.in(direction).strength().ftu());
            add(changes, "Fty " + direction, from.in(direction).strength(), from.in(direction).strength().fty(),
                    to.in(direction).strength(), to.in(direction).strength().fty());
        }
        Optional<Given> before = density(from);
        Optional<Given> after = density(to);
        if (changes.isEmpty() || before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(of(part, changes, before.get(), after.get()));
    }

    private static Resized of(PartDescription part, List<StrengthChange> changes, Given before, Given after) {
        StrengthChange governing = new Resizing(SizingMode.THICKNESS, changes, before, after).governing();
        double ratio = Math.max(1, governing.ratio().value());
        List<StrengthChange> counted = governing.ratio().value() >= 1 ? changes : List.of(new StrengthChange(
                governing.name() + ", no credit for strength gained", governing.before(), governing.before()));
        Optional<Boolean> fits = Optional.empty();
        List<String> lines = new ArrayList<>();
        double mass = 1;
        for (SizingMode mode : SizingMode.values()) {
            Resizing resizing = new Resizing(mode, counted, before, after);
            double scale = resizing.dimensionScale().value().value();
            double massRatio = resizing.massRatio().value().value();
            Optional<Boolean> here = fits(part, mode, scale);
            lines.add(String.format(Locale.ROOT, "%s: %s x %.3f, mass x %.3f%s", words(mode), mode.dimension(), scale,
                    massRatio, here.map(fit -> fit ? ", stays in the envelope" : ", LEAVES the envelope").orElse("")));
            mass = Math.max(mass, massRatio);
            if (here.isPresent() && mode == SizingMode.THICKNESS) {
                fits = here;
            }
        }
        return new Resized(ratio, String.format(Locale.ROOT, "%s %.0f -> %.0f MPa", governing.name(),
                governing.before().value().value() / MEGA, governing.after().value().value() / MEGA), mass, lines, fits);
    }

    private static void add(List<StrengthChange> changes, String name, StrengthAnswer from, OptionalDouble before,
            StrengthAnswer to, OptionalDouble after) {
        if (before.isPresent() && after.isPresent()) {
            changes.add(new StrengthChange(name + basis(from, to), given(from, before), given(to, after)));
        }
    }

    private static String basis(StrengthAnswer from, StrengthAnswer to) {
        return from.governing().flatMap(a -> to.governing().map(b -> " (basis " + a.basis() + " -> " + b.basis() + ")"))
                .orElse("");
    }

    private static Given given(StrengthAnswer answer, OptionalDouble strength) {
        return Given.exact(strength.getAsDouble(), answer.governing().map(row -> row.row()).orElse("tables"));
    }

    private static Optional<Given> density(MaterialAnswer answer) {
        return answer.physical().density().map((PhysicalData.Value value) -> Given.exact(value.value(), value.row()));
    }

    private static String words(SizingMode mode) {
        return switch (mode) {
            case THICKNESS -> "tension, shear or lug";
            case BENDING_WIDTH_KEPT -> "bending, width kept";
            case BENDING_HEIGHT_KEPT -> "bending, height kept";
            case BENDING_IN_PROPORTION -> "bending, in proportion";
            case STIFFNESS -> "stiffness or buckling";
        };
    }

    /** The thickest finished section against the height, and for a wider section the width of the envelope. */
    private static Optional<Boolean> fits(PartDescription part, SizingMode mode, double scale) {
        Optional<Range> thickness = part.form().field(Form::finishedThickness).single();
        Optional<Double> room = part.form().field(Form::envelope).field(Envelope::height).single().map(Range::lowest);
        boolean widened = mode == SizingMode.BENDING_HEIGHT_KEPT;
        if (thickness.isEmpty() || room.isEmpty() || widened || mode == SizingMode.STIFFNESS) {
            return Optional.empty();
        }
        return Optional.of(thickness.get().highest() * scale <= room.get());
    }

    /**
     * {@return the mass that the change adds (kg); empty where no mass is stated}
     *
     * @param part the part
     */
    OptionalDouble added(PartDescription part) {
        return part.form().field(Form::mass).single().map(range -> OptionalDouble.of(range.highest() * (mass - 1)))
                .orElse(OptionalDouble.empty());
    }

    /**
     * {@return a length scaled for tension or a lug, as text}
     *
     * @param metres the length (m)
     */
    String scaled(double metres) {
        return String.format(Locale.ROOT, "%.3f mm", metres * ratio / MILLI);
    }
}
