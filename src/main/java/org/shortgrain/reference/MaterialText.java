package org.shortgrain.reference;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;

/** What the tables hold about a material, as plain text of 80 columns; every line names source, clause and status. */
public final class MaterialText {
    private static final double MPA = 1e6;

    private final ReferenceTables tables;

    /**
     * Makes a writer.
     *
     * @param tables tables that the answers come from
     */
    public MaterialText(ReferenceTables tables) {
        this.tables = tables;
    }

    /**
     * {@return the text}
     *
     * @param answer answer of the look-up
     */
    public String of(MaterialAnswer answer) {
        TextPage page = new TextPage();
        Set<Citation> cited = new LinkedHashSet<>();
        identity(page, answer);
        temper(page, answer, cited);
        resistance(page, answer, cited);
        new StrengthText(page, cited).write(answer);
        physical(page, answer.physical(), cited);
        fracture(page, answer, cited);
        statements(page, answer, cited);
        sections(page, answer, cited);
        neighbours(page, answer);
        words(page, answer);
        sources(page, cited);
        return page.toString();
    }

    private static void identity(TextPage page, MaterialAnswer answer) {
        MaterialQuery query = answer.query();
        String name = answer.alloy().map(Alloy::name).or(query::alloy).orElse("alloy unknown");
        StringBuilder title = new StringBuilder(name);
        query.temper().ifPresent(t -> title.append(' ').append(t));
        query.productForm().ifPresent(f -> title.append(", ").append(f.replace('_', ' ')));
        query.thickness().ifPresent(t -> title.append(", ").append(number(t * 1e3)).append(" mm when heat treated"));
        query.maxUts().ifPresent(u -> title.append(", to ").append(number(u / MPA)).append(" MPa"));
        page.line(0, 2, title.toString());
        page.line(0, 2, "-".repeat(Math.min(TextPage.WIDTH, title.length())));
        answer.alloy().flatMap(Alloy::uns).ifPresent(uns -> page.line(0, 2, "UNS " + uns));
        answer.family().ifPresent(family -> page.line(0, 2, "family " + family));
        if (answer.alloy().isEmpty() && answer.query().alloy().isPresent()) {
            page.line(0, 2, "The tables do not name this alloy.");
        }
        answer.notes().forEach(note -> page.line(0, 2, "Note: " + note + "."));
    }

    private void temper(TextPage page, MaterialAnswer answer, Set<Citation> cited) {
        List<TemperRemark> remarks = tables.temperRules().check(answer);
        List<Ageing.Cycle> cycles = answer.temper() instanceof Temper.NotStated ? List.of()
                : tables.ageing().cycles(answer);
        Optional<Tempers.Listed> listed = answer.temper() instanceof Temper.HeatTreated t
                ? tables.tempers().find(t) : Optional.empty();
        if (remarks.isEmpty() && cycles.isEmpty() && listed.isEmpty()) {
            return;
        }
        page.heading("Temper " + answer.temper().normal());
        listed.ifPresent(l -> page.line(2, 4, l.meaning() + " " + cite(l.source(), cited)));
        for (TemperRemark remark : remarks) {
            page.line(2, 4, (remark.kind().contradiction() ? "Contradiction: " : "Mind: ") + remark.statement()
                    + remark.source().map(s -> " " + cite(s, cited)).orElse(""));
        }
        for (Ageing.Cycle cycle : cycles) {
            page.line(2, 4, "ageing: " + cycle.steps().stream().map(MaterialText::step)
                    .collect(Collectors.joining(", then ")) + " " + cite(cycle.source(), cited));
        }
    }

    private static String step(Ageing.Step step) {
        String heat = step.natural() ? "room temperature" : span(step.minCelsius(), step.maxCelsius()) + " degC";
        if (step.minHours().isEmpty()) {
            return heat;
        }
        String time = step.maxHours().isEmpty() ? "at least " + number(step.minHours().getAsDouble())
                : span(step.minHours().getAsDouble(), step.maxHours().getAsDouble());
        return heat + " " + time + " h";
    }

    private void resistance(TextPage page, MaterialAnswer answer, Set<Citation> cited) {
        page.heading("Resistance to stress corrosion");
        for (GrainDirection direction : new GrainDirection[] {GrainDirection.ST, GrainDirection.LT,
            GrainDirection.L}) {
            LevelAnswer level = answer.in(direction).level();
            page.labelled(0, 4, direction.name(), verdict(level));
            for (RatingHit hit : level.hits()) {
                if (hit.reading() != RatingHit.Reading.WORST_DIRECTION) {
                    rating(page, hit, direction, cited);
                }
            }
            stresses(page, answer.in(direction).stress(), cited);
        }
        page.line(0, 0, "4 is the best level, 1 the worst. The words of two schemes must not be compared.");
    }

    private static void rating(TextPage page, RatingHit hit, GrainDirection asked, Set<Citation> cited) {
        StringBuilder words = new StringBuilder(hit.title()).append(": ").append(hit.row());
        hit.direction().filter(d -> d != asked).ifPresent(d -> words.append(", row for ").append(d));
        if (hit.reading() == RatingHit.Reading.MAY_APPLY) {
            words.append(" (may apply)");
        }
        if (!hit.remark().isEmpty()) {
            words.append(" (").append(hit.remark()).append(')');
        }
        page.labelled(4, 12, hit.word(), words + " " + cite(hit.citation(), cited));
    }

    private static String verdict(LevelAnswer level) {
        StringBuilder words = new StringBuilder(switch (level.susceptibility()) {
            case SUSCEPTIBLE -> "susceptible, " + level.level().word();
            case RESISTANT -> "resistant, " + level.level().word();
            case UNKNOWN -> level.level() == SccLevel.UNKNOWN ? "not covered"
                    : level.level().word() + ", not confirmed";
        });
        if (level.restsOnMemory()) {
            words.append("; rests on memory alone: confirm against the source");
        }
        if (level.sourcesDisagree()) {
            words.append("; the sources disagree, the worse counts");
        }
        if (!level.open().isEmpty()) {
            words.append("; open: ").append(level.open().stream().sorted().map(OpenDatum::word)
                    .collect(Collectors.joining(", ")));
        }
        return words.toString();
    }

    private void stresses(TextPage page, StressAnswer stress, Set<Citation> cited) {
        for (SccStress hit : stress.hits()) {
            String figure = hit.low().isEmpty() ? "-" : span(hit.low().getAsDouble() / MPA,
                    hit.high().orElse(hit.low().getAsDouble()) / MPA) + " MPa";
            boolean governs = stress.governing().isPresent() && stress.governing().get() == hit;
            page.labelled(4, 12, figure, (governs ? "lowest: " : "") + hit.statement() + "; " + hit.row()
                    + (hit.mayApply() ? " (may apply)" : "")
                    + (hit.kind().limits() || hit.remark().isEmpty() ? "" : " (" + hit.remark() + ")") + " "
                    + cite(hit.citation(), cited));
        }
    }

    private void physical(TextPage page, PhysicalData data, Set<Citation> cited) {
        Map<String, Optional<PhysicalData.Value>> rows = new LinkedHashMap<>();
        rows.put("modulus, GPa", scaled(data.modulus(), 1e-9));
        rows.put("Poisson's ratio", data.poisson());
        rows.put("density, kg/m3", data.density());
        rows.put("expansion, 1e-6/K", scaled(data.expansion(), 1e6));
        rows.put("conductivity, W/(m K)", data.conductivity());
        rows.put("specific heat, J/(kg K)", data.specificHeat());
        if (rows.values().stream().allMatch(Optional::isEmpty)) {
            return;
        }
        page.heading("Physical data at room temperature");
        rows.forEach((name, value) -> value.ifPresent(v -> page.labelled(2, 24, name, padded(number(v.value()), 8)
                + v.row() + " " + cite(v.citation(), cited))));
    }

    private static Optional<PhysicalData.Value> scaled(Optional<PhysicalData.Value> value, double factor) {
        return value.map(v -> new PhysicalData.Value(v.value() * factor, v.row(), v.citation()));
    }

    private void fracture(TextPage page, MaterialAnswer answer, Set<Citation> cited) {
        if (answer.toughness().isEmpty() && answer.growth().isEmpty()) {
            return;
        }
        page.heading("Fracture, MPa sqrt(m)");
        for (Toughness t : answer.toughness()) {
            page.labelled(2, 14, "KIc " + t.orientation(), number(t.average() / MPA) + " average"
                    + t.least().stream().mapToObj(l -> ", least " + number(l / MPA)).findFirst().orElse("") + "; "
                    + t.row() + " " + cite(t.citation(), cited));
        }
        for (CrackGrowth g : answer.growth()) {
            page.labelled(2, 14, "SCC cracks", g.statement() + "; " + g.row() + " " + cite(g.citation(), cited));
        }
    }

    private void statements(TextPage page, MaterialAnswer answer, Set<Citation> cited) {
        if (answer.statements().isEmpty()) {
            return;
        }
        page.heading("In words");
        for (MaterialStatement s : answer.statements()) {
            page.line(2, 4, s.row() + ": " + s.statement() + (s.remark().isEmpty() ? "" : " (" + s.remark() + ")")
                    + (s.mayApply() ? " (may apply)" : "") + " " + cite(s.citation(), cited));
        }
    }

    private void sections(TextPage page, MaterialAnswer answer, Set<Citation> cited) {
        List<SectionLimits.Limit> limits = answer.temper() instanceof Temper.NotStated ? List.of()
                : tables.sectionLimits().greatest(answer);
        Optional<SectionLimits.Sensitivity> quench = answer.alloy().flatMap(tables.sectionLimits()::sensitivity);
        if (limits.isEmpty() && quench.isEmpty()) {
            return;
        }
        page.heading("Size");
        for (SectionLimits.Limit limit : limits) {
            page.line(2, 4, "greatest thickness with a published minimum: " + number(limit.thickness() * 1e3) + " mm; "
                    + limit.row() + " " + cite(limit.source(), cited));
        }
        quench.ifPresent(q -> page.line(2, 4, "quench sensitivity " + q.word() + ": full strength to about "
                + number(q.fullStrength() * 1e3) + " mm " + cite(q.source(), cited)));
    }

    private static void neighbours(TextPage page, MaterialAnswer answer) {
        if (answer.neighbours().isEmpty()) {
            return;
        }
        page.heading("Covered near it");
        answer.neighbours().forEach(n -> page.line(2, 4, n.row() + " (" + n.reason() + ")"));
    }

    private void words(TextPage page, MaterialAnswer answer) {
        Map<String, RatingHit> used = new LinkedHashMap<>();
        answer.directions().values().forEach(d -> d.level().hits()
                .forEach(h -> used.putIfAbsent(h.title() + " " + h.word(), h)));
        if (used.isEmpty()) {
            return;
        }
        page.heading("What the words mean");
        used.forEach((key, hit) -> page.line(2, 4, key + ": " + hit.meaning()));
    }

    private void sources(TextPage page, Set<Citation> cited) {
        Set<String> ids = new TreeSet<>();
        cited.forEach(c -> ids.add(c.id()));
        if (ids.isEmpty()) {
            return;
        }
        page.heading("Sources");
        for (String id : ids) {
            page.labelled(2, 24, id, tables.sources().find(id).map(s -> s.reference() + "; " + s.seen()).orElse("?"));
        }
    }

    static String cite(Citation citation, Set<Citation> cited) {
        cited.add(citation);
        return "[" + citation.id() + (citation.clause().isEmpty() ? "" : ", " + citation.clause()) + ", "
                + citation.status().word() + "]";
    }

    private static String span(double low, double high) {
        return number(low).equals(number(high)) ? number(low) : number(low) + "-" + number(high);
    }

    private static String padded(String text, int width) {
        return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
    }

    /** Four figures at most, without trailing zeros. */
    static String number(double value) {
        if (value == Math.rint(value) || Math.abs(value) >= 1000) {
            return String.valueOf(Math.round(value));
        }
        String text = String.format(Locale.ROOT, Math.abs(value) >= 100 ? "%.0f" : Math.abs(value) >= 10 ? "%.1f"
                : "%.3f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    /** {@return a figure in whole MPa, or a dash} */
    static String mpa(OptionalDouble stress) {
        return stress.isEmpty() ? "-" : String.valueOf(Math.round(stress.getAsDouble() / MPA));
    }
}
