package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shortgrain.mechanics.Given;
import org.shortgrain.mechanics.section.Resizing;
import org.shortgrain.mechanics.section.SizingMode;
import org.shortgrain.mechanics.section.StrengthChange;
import org.shortgrain.part.Form;
import org.shortgrain.part.PartDescription;
import org.shortgrain.reference.MaterialAnswer;
import org.shortgrain.reference.PhysicalData;
import org.shortgrain.reference.StrengthAnswer;
import org.shortgrain.terms.GrainDirection;

/**
 * What a change of alloy or temper costs in section and mass for the same load, mode by mode, and whether it stays in the
 * envelope. The strengths are the least published minima, each in its direction, of the old metal at the thickness of its stock
 * and of the new one at the thickness that it needs; the one that falls most governs, and nothing is credited where the new
 * metal is stronger.
 *
 * @param ratio    r = old over new strength, governing; 1 or more
 * @param governs  which strength governs, with basis and rows
 * @param mass     mass ratio of the mode that needs most, tension and lugs; includes the densities
 * @param lines    one sentence for each mode: dimension, mass, and every dimension against the envelope
 * @param fits     whether that mode stays in the envelope, in every dimension that can be checked; empty where none can
 */
record Resized(double ratio, String governs, double mass, List<String> lines, Optional<Boolean> fits) {

    private static final double MEGA = 1e6;
    private static final double GIGA = 1e9;
    /** Handbooks print moduli to 0.1 in some 10 million psi, so two that differ by less may be the same. */
    private static final double MODULUS_AS_PRINTED = 0.02;

    /**
     * {@return the new section; empty where a strength or density is not published on both sides}
     *
     * @param part the part
     * @param from material now
     * @param to   material proposed, looked up at the thickness that it needs
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
        Resized resized = of(part, changes, before.get(), after.get());
        return Optional.of(softer(from, to).map(resized::with).orElse(resized));
    }

    private static Resized of(PartDescription part, List<StrengthChange> changes, Given before, Given after) {
        StrengthChange governing = new Resizing(SizingMode.THICKNESS, changes, before, after).governing();
        double ratio = Math.max(1, governing.ratio().value());
        List<StrengthChange> counted = governing.ratio().value() >= 1 ? changes : List.of(new StrengthChange(
                governing.name() + ", no credit for strength gained", governing.before(), governing.before()));
        Optional<Boolean> fits = Optional.empty();
        List<String> lines = new ArrayList<>();
        double mass = 1;
        List<SizingMode> modes = ratio > 1 ? List.of(SizingMode.values()) : List.of(SizingMode.THICKNESS);
        for (SizingMode mode : modes) {
            Resizing resizing = new Resizing(mode, counted, before, after);
            double scale = resizing.dimensionScale().value().value();
            double massRatio = resizing.massRatio().value().value();
            List<Room> rooms = Room.of(part, mode, scale);
            lines.add(ratio > 1 ? line(mode, scale, massRatio, rooms)
                    : String.format(Locale.ROOT, "No strength is lost, so no dimension grows for it; mass x %.3f.", massRatio));
            mass = Math.max(mass, massRatio);
            if (mode == SizingMode.THICKNESS) {
                fits = rooms.stream().flatMap(room -> room.stays().stream()).reduce(Boolean::logicalAnd);
            }
        }
        if (ratio > 1 && !part.form().field(Form::envelope).isKnown()) {
            lines.add("No envelope is stated (form/envelope): the new sizes are not held against it.");
        }
        return new Resized(ratio, String.format(Locale.ROOT, "%s %.0f -> %.0f MPa", governing.name(),
                governing.before().value().value() / MEGA, governing.after().value().value() / MEGA), mass, lines, fits);
    }

    private static String line(SizingMode mode, double scale, double massRatio, List<Room> rooms) {
        String grows = mode == SizingMode.STIFFNESS ? "no dimension grows" : String.format(Locale.ROOT, "%s x %.3f", mode.dimension(),
                scale);
        return String.format(Locale.ROOT, "For %s: %s, mass x %.3f", words(mode), grows, massRatio)
                + rooms.stream().filter(Room::tells).map(room -> "; " + room.words()).collect(Collectors.joining()) + ".";
    }

    /** A softer metal bends more in the same section; for a rectangle whose width is kept I goes with h^3. */
    private static Optional<String> softer(MaterialAnswer from, MaterialAnswer to) {
        return from.physical().modulus().flatMap(stiff -> to.physical().modulus()
                .filter(soft -> stiff.value() / soft.value() > 1 + MODULUS_AS_PRINTED)
                .map(soft -> String.format(Locale.ROOT, "Young's modulus %.1f -> %.1f GPa: for the same stiffness in bending,"
                        + " width kept, the height needs x %.3f.", stiff.value() / GIGA, soft.value() / GIGA,
                        Math.cbrt(stiff.value() / soft.value()))));
    }

    private Resized with(String line) {
        return new Resized(ratio, governs, mass, Stream.concat(lines.stream(), Stream.of(line)).toList(), fits);
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
            case STIFFNESS -> "stiffness or buckling at equal modulus";
        };
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
}
