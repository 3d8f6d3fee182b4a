package org.shortgrain.rulebook.facts;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.shortgrain.part.Access;
import org.shortgrain.part.Inspection;
import org.shortgrain.part.InspectionMethod;
import org.shortgrain.part.IntervalBasis;
import org.shortgrain.part.Range;
import org.shortgrain.part.Stated;

/**
 * Inspection in service as planned.
 *
 * @param stated what is stated of it
 */
public record InspectionPlan(Stated<Inspection> stated) {

    private static final double SECONDS_PER_YEAR = 365.25 * 86_400;
    private static final double PER_METRE = 1000;

    /** {@return whether inspection by some method certainly is planned} */
    public boolean isThere() {
        return !methods().isEmpty();
    }

    /** {@return whether it is stated that nothing is inspected} */
    public boolean isNone() {
        return stated.isNone() || method().isNone();
    }

    /** {@return the methods planned} */
    public Set<InspectionMethod> methods() {
        Set<InspectionMethod> methods = EnumSet.noneOf(InspectionMethod.class);
        methods.addAll(Stated.items(method()));
        return methods;
    }

    private Stated<List<InspectionMethod>> method() {
        return stated.field(Inspection::method);
    }

    /**
     * {@return whether a method is planned}
     *
     * @param method the method
     */
    public boolean uses(InspectionMethod method) {
        return methods().contains(method);
    }

    /**
     * {@return whether these methods, and no other, are planned}
     *
     * @param only the methods
     */
    public boolean restsOnlyOn(InspectionMethod... only) {
        return isThere() && Arrays.asList(only).containsAll(methods());
    }

    /** {@return whether the place certainly cannot be reached without taking a joint apart} */
    public boolean isOutOfReach() {
        return access().is(Access.NONE_WITHOUT_DISASSEMBLY) || stated.field(Inspection::afterAssembly).is(false);
    }

    /** {@return whether the intervals certainly rest on the growth of fatigue cracks} */
    public boolean isBorrowedFromFatigue() {
        return stated.field(Inspection::intervalBasis).is(IntervalBasis.FATIGUE);
    }

    /** {@return access} */
    public Stated<Access> access() {
        return stated.field(Inspection::access);
    }

    /** {@return interval between inspections} */
    public Stated<Range> repeat() {
        return stated.field(Inspection::repeat);
    }

    /** {@return time to the first inspection} */
    public Stated<Range> first() {
        return stated.field(Inspection::first);
    }

    /** {@return whether it is stated that nothing is inspected again} */
    public boolean isUnrepeated() {
        return isNone() || repeat().isNone();
    }

    /** {@return the longest time to the first inspection (years); NaN if not stated, which no comparison holds for} */
    public double yearsToFirst() {
        return greatest(first()) / SECONDS_PER_YEAR;
    }

    /** {@return the longest interval (years); NaN if not stated, which no comparison holds for} */
    public double yearsBetween() {
        return greatest(repeat()) / SECONDS_PER_YEAR;
    }

    /** {@return whether the interval certainly is counted in hours} */
    public boolean isCountedInHours() {
        return repeat().surely(range -> range.entered().endsWith(" h"));
    }

    /** {@return smallest crack that the method finds, upper end (mm); NaN if not stated, which no comparison holds for} */
    public double detectable() {
        return greatest(stated.field(Inspection::detectable)) * PER_METRE;
    }

    /** {@return the plan, for texts} */
    public String say() {
        String by = isThere() ? methods().stream().map(one -> one.word().replace('_', ' '))
                .collect(Collectors.joining(", ")) : isNone() ? "no inspection" : "method not stated";
        return by + ", first " + say(first()) + ", repeat " + say(repeat());
    }

    private static String say(Stated<Range> time) {
        return time.single().map(Range::entered).orElse(time.isNone() ? "none" : "not stated");
    }

    private static double greatest(Stated<Range> stated) {
        return Range.greatest(stated).orElse(Double.NaN);
    }
}
