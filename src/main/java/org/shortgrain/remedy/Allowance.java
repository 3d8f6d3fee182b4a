package org.shortgrain.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shortgrain.mechanics.Band;
import org.shortgrain.mechanics.machining.MachiningAllowance;

/**
 * The stock that rough machining leaves on each face for after the heat treatment: enough to clean up the bow, and less than a
 * fifth of the rough section, so that the finished face stays in the compressed skin ({@link MachiningAllowance}).
 *
 * @param stock  stock on a face (m)
 * @param enough whether it cleans up the bow; empty where the bow is not estimated for every section
 * @param notes  what the engineer must know of it, a sentence each
 */
record Allowance(double stock, Optional<Boolean> enough, List<String> notes) {

    /** Step in which it is changed (m). Common practice. */
    private static final double STEP = 0.5e-3;
    /** What is left first, in steps: 2 mm a face, somewhat under a tenth of an inch. Common practice. */
    private static final int USUAL = 4;
    /** More is not tried, in steps: 5 mm a face, the most that the comparison of process orders was computed for. */
    private static final int MOST = 10;
    private static final double MILLI = 1e-3;
    private static final String BASIS = "A part does not bow in the quench where both faces cool alike, and most where they cool as"
            + " unlike as the model scatters; an equal cut of the second face takes the bow of the first away again"
            + " (residual.bow-quench, residual.bow-finish: own derivation on the quench model, no relief counted).";

    /** Copies the list. */
    Allowance {
        notes = List.copyOf(notes);
    }

    private record Tried(double stock, List<RoughBow.Answer> bows) {

        List<RoughBow.Answer.Estimated> estimated() {
            return bows.stream().filter(RoughBow.Answer.Estimated.class::isInstance).map(RoughBow.Answer.Estimated.class::cast)
                    .toList();
        }

        double needed() {
            return estimated().stream().mapToDouble(RoughBow.Answer.Estimated::needed).max().orElse(0);
        }

        double spare() {
            return stock - needed();
        }
    }

    /**
     * {@return the allowance for the sections of a part; empty where even the smallest step is a fifth of the thinnest}
     *
     * <p>The usual one, or more in steps until the bow is cleaned up, or less in steps where a section is too thin for it.
     * Where none cleans the bow up, that which comes nearest.
     *
     * @param sections finished thicknesses (m); empty where none is stated
     * @param bow      estimates the bow
     */
    static Optional<Allowance> of(List<Double> sections, RoughBow bow) {
        List<Tried> tried = new ArrayList<>();
        for (double stock : allowed(sections)) {
            Tried one = new Tried(stock, sections.stream().map(section -> bow.of(section, stock)).toList());
            tried.add(one);
            if (one.spare() >= 0) {
                break;
            }
        }
        return tried.stream().max(Comparator.comparingDouble(Tried::spare)).map(one -> new Allowance(one.stock(),
                one.bows().isEmpty() || one.estimated().size() < one.bows().size() && one.spare() >= 0 ? Optional.empty()
                        : Optional.of(one.spare() >= 0), notes(sections, one)));
    }

    private static List<Double> allowed(List<Double> sections) {
        List<Double> usualOrMore = steps(IntStream.rangeClosed(USUAL, MOST), sections);
        return usualOrMore.isEmpty() ? steps(IntStream.rangeClosed(1, USUAL - 1).map(i -> USUAL - i), sections).stream().limit(1)
                .toList() : usualOrMore;
    }

    /** Where no section is stated, nothing speaks against any of them. */
    private static List<Double> steps(IntStream steps, List<Double> sections) {
        return steps.mapToObj(step -> step * STEP).filter(stock -> sections.stream().allMatch(section ->
                MachiningAllowance.share(stock, section + 2 * stock).validity().inside())).toList();
    }

    private static List<String> notes(List<Double> sections, Tried one) {
        List<String> notes = new ArrayList<>();
        notes.add(share(sections, one.stock()));
        if (one.stock() < USUAL * STEP) {
            notes.add(String.format(Locale.ROOT, "The usual %s would be a fifth or more of the thinnest rough section, so less is left.",
                    Lengths.said(USUAL * STEP)));
        }
        one.estimated().stream().map(Allowance::bow).distinct().forEach(notes::add);
        one.bows().stream().filter(RoughBow.Answer.NotEstimated.class::isInstance)
                .map(bow -> ((RoughBow.Answer.NotEstimated) bow).why()).distinct().forEach(why -> notes.add(
                        "The bow of the rough part cannot be estimated: " + why + "; it is measured on the first article."));
        if (sections.isEmpty()) {
            notes.add("The bow of the rough part cannot be estimated: no finished section is stated (features/*/section_finished or"
                    + " form/finished_thickness); it is measured on the first article.");
        }
        if (!one.estimated().isEmpty()) {
            notes.add(BASIS);
            notes.add(cleaned(one));
        }
        return notes;
    }

    private static String share(List<Double> sections, double stock) {
        if (sections.isEmpty()) {
            return "An allowance of " + Lengths.said(stock) + " a side is left for after the heat treatment; whether it is less than"
                    + " a fifth of the rough section (residual.allowance) is to be shown.";
        }
        return String.format(Locale.ROOT, "An allowance of %s a side is left for after the heat treatment, at most %.2f of the rough"
                + " section (residual.allowance, below %.1f), so that the finished face stays in the compressed skin.",
                Lengths.said(stock), sections.stream().mapToDouble(section -> stock / (section + 2 * stock)).max().orElseThrow(),
                MachiningAllowance.LARGEST_SHARE);
    }

    private static String bow(RoughBow.Answer.Estimated bow) {
        Band quench = bow.quench().value();
        Band first = bow.firstFace().value();
        double length = bow.quench().inputs().stream().filter(input -> input.symbol().equals("L")).findFirst().orElseThrow().value()
                .value();
        return String.format(Locale.ROOT, "Bow of the rough section of %s over %.0f mm: up to %.2f mm in the quench, and %.2f mm"
                + " (%.2f to %.2f) with one face finished.", Lengths.said(bow.section()), length / MILLI, quench.high() / MILLI,
                first.value() / MILLI, first.low() / MILLI, first.high() / MILLI);
    }

    private static String cleaned(Tried one) {
        String needs = String.format(Locale.ROOT, "To clean up, a face needs up to %.2f mm of stock: ", one.needed() / MILLI);
        if (one.spare() < 0) {
            return needs + "no allowance that stays in the skin is enough, so the part must be straightened before ageing, which adds"
                    + " stress of its own.";
        }
        return needs + Lengths.said(one.stock()) + (one.stock() > USUAL * STEP ? " is enough, the usual "
                + Lengths.said(USUAL * STEP) + " is not." : " is enough.");
    }
}
