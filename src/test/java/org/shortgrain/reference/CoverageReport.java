package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.shortgrain.terms.Citation;
import org.shortgrain.terms.GrainDirection;
import org.shortgrain.terms.SourceStatus;

/** Counts the rows of the tables by family, scheme and status, and lists what is not covered. */
final class CoverageReport {
    private static final List<String> MILL_FORMS = List.of("sheet", "plate", "bar_rolled", "extrusion", "tube",
            "die_forging", "hand_forging", "ring_rolled");

    private final ReferenceTables tables;
    private final MaterialTable materials;
    private final StringBuilder text = new StringBuilder();

    CoverageReport(ReferenceTables tables) {
        this.tables = tables;
        this.materials = tables.materials();
    }

    String write() {
        rowsByTable();
        ratingsByFamily();
        notRated();
        memoryOnly();
        formsNotCovered();
        return text.toString();
    }

    private void rowsByTable() {
        line("Rows by table and status:").line("");
        line("| table | " + String.join(" | ", statusWords()) + " | rows |");
        line("|---" + "|---".repeat(statusWords().size() + 1) + "|");
        count("ratings", materials.ratings().all(), RatingTable.Rating::citation);
        count("SCC stresses", materials.stresses().all(), r -> r.stress().citation());
        count("statements", materials.statements().all(), r -> r.statement().citation());
        count("crack growth", materials.fracture().allGrowth(), r -> r.value().citation());
        count("toughness", materials.fracture().allToughness(), r -> r.value().citation());
        count("strengths", materials.strengths().all(), r -> r.strength().citation());
        count("physical data", materials.physical().all(), PhysicalTable.PhysicalRow::citation);
        count("galvanic series", tables.galvanic().entries(), GalvanicTable.Entry::source);
        count("zones", List.copyOf(tables.zones().all()), ZoneTable.Zone::source);
        count("fluids", List.copyOf(tables.fluids().all()), FluidTable.Fluid::source);
        count("attacks of fluids", tables.fluids().attacks(), FluidTable.Attack::source);
        count("route order", tables.routeOrder().before(), RouteOrder.Pair::source);
        line("");
    }

    private static List<String> statusWords() {
        List<String> words = new ArrayList<>();
        for (SourceStatus status : SourceStatus.values()) {
            words.add(status.word());
        }
        return words;
    }

    private <R> void count(String table, List<R> rows, Function<R, Citation> citation) {
        Map<SourceStatus, Integer> counts = new TreeMap<>();
        rows.forEach(row -> counts.merge(citation.apply(row).status(), 1, Integer::sum));
        StringBuilder cells = new StringBuilder("| ").append(table);
        for (SourceStatus status : SourceStatus.values()) {
            cells.append(" | ").append(counts.getOrDefault(status, 0));
        }
        line(cells.append(" | ").append(rows.size()).append(" |").toString());
    }

    private void ratingsByFamily() {
        line("Ratings by family and scheme, rows that speak for at least one alloy of the family; in brackets those that"
                + " are not from memory:").line("");
        List<String> schemes = List.copyOf(tables.crosswalk().schemes());
        line("| family | alloys | " + String.join(" | ", schemes) + " |");
        line("|---|---" + "|---".repeat(schemes.size()) + "|");
        for (String family : new TreeSet<>(materials.alloys().families())) {
            List<Alloy> members = materials.alloys().ofFamily(family);
            Set<RatingTable.Rating> rows = new java.util.LinkedHashSet<>();
            members.forEach(alloy -> rows.addAll(materials.ratings().of(alloy)));
            StringBuilder cells = new StringBuilder("| ").append(family).append(" | ").append(members.size());
            for (String scheme : schemes) {
                long all = rows.stream().filter(r -> r.word().scheme().equals(scheme)).count();
                long firm = rows.stream().filter(r -> r.word().scheme().equals(scheme)
                        && !r.citation().status().needsConfirmation()).count();
                cells.append(" | ").append(all == 0 ? "-" : all + " (" + firm + ")");
            }
            line(cells.append(" |").toString());
        }
        line("");
    }

    private void notRated() {
        list("Not rated at all, listed so that they are recognised", alloy -> materials.ratings().of(alloy).isEmpty());
    }

    private void memoryOnly() {
        list("Rated from memory alone, hence never cleared", alloy -> !materials.ratings().of(alloy).isEmpty()
                && materials.ratings().of(alloy).stream().allMatch(r -> r.citation().status().needsConfirmation()));
        list("With no published minimum strength here", alloy -> materials.strengths().of(alloy).stream()
                .noneMatch(r -> r.strength().basis().minimum()));
    }

    private void list(String title, java.util.function.Predicate<Alloy> which) {
        Map<String, List<String>> byFamily = new TreeMap<>();
        materials.alloys().all().stream().filter(which)
                .forEach(a -> byFamily.computeIfAbsent(a.family(), f -> new ArrayList<>()).add(a.name()));
        line(title + ":").line("");
        byFamily.forEach((family, names) -> line("- " + family + ": " + String.join(", ", names)));
        line("");
    }

    /** For alloys with a letter: the mill forms for which no direction has a letter or class that applies. */
    private void formsNotCovered() {
        line("Letters (A to D) are given for plate, bar, extrusion and forging only. Of the alloys that have any, these"
                + " tempers and forms have none:").line("");
        Map<String, Set<String>> missing = new TreeMap<>();
        for (RatingTable.Rating rating : materials.ratings().all()) {
            boolean letter = rating.word().scheme().equals("g64_letter");
            if (letter) {
                String key = String.join("/", rating.scope().alloys()) + "-" + rating.scope().tempers().describe();
                missing.computeIfAbsent(key, k -> formsWithout(rating));
            }
        }
        missing.forEach((key, forms) -> line("- " + key + ": " + String.join(", ", forms)));
    }

    private Set<String> formsWithout(RatingTable.Rating like) {
        Set<String> without = new TreeSet<>();
        for (String form : MILL_FORMS) {
            boolean covered = materials.ratings().all().stream().anyMatch(r -> r.word().scheme().equals("g64_letter")
                    && r.scope().alloys().equals(like.scope().alloys())
                    && r.scope().tempers().text().equals(like.scope().tempers().text())
                    && r.direction().equals(Optional.of(GrainDirection.ST))
                    && materials.forms().match(r.scope().forms(), Optional.of(form)) == Match.YES);
            if (!covered) {
                without.add(form.replace('_', ' '));
            }
        }
        return without;
    }

    private CoverageReport line(String words) {
        text.append(words).append('\n');
        return this;
    }
}
