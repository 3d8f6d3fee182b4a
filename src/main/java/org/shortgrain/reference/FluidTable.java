package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shortgrain.terms.Citation;

/** Fluids and solids that wet or touch a part, and the material families that each attacks. */
public final class FluidTable {
    private final Map<String, Fluid> fluids = new LinkedHashMap<>();
    private final List<Attack> attacks = new ArrayList<>();
    private final Words words = new Words();

    private FluidTable() {
    }

    /** Whether a fluid lets stress corrosion of the common kind go on. */
    public enum Electrolyte {
        /** It is or holds water. */
        YES,
        /** It does not. */
        NO,
        /** Not told by its name. */
        UNKNOWN
    }

    /**
     * A fluid or solid.
     *
     * @param word        canonical word
     * @param aliases     other names
     * @param electrolyte whether it is or holds water
     * @param remark      remark; empty when none
     * @param source      source
     */
    public record Fluid(String word, List<String> aliases, Electrolyte electrolyte, String remark, Citation source) {

        /** Copies the list. */
        public Fluid {
            aliases = List.copyOf(aliases);
        }
    }

    /** How much an attack weighs. */
    public enum Concern {
        /** Sign-off stops while it can happen. */
        STOP,
        /** Sign-off only with the condition met. */
        CONDITION,
        /** Carries stress corrosion of the common kind. */
        CARRIER,
        /** Good to know. */
        ADVICE,
        /** Cannot be judged without more data. */
        ASK
    }

    /**
     * What a fluid does to a family of materials.
     *
     * @param fluid        canonical word
     * @param families     families attacked
     * @param mechanism    mechanism
     * @param condition    when it happens
     * @param aboveCelsius temperature above which it happens (degC), if one is known
     * @param unless       what prevents it; empty when nothing is known
     * @param concern      how much it weighs
     * @param source       source
     */
    public record Attack(String fluid, Set<String> families, String mechanism, String condition,
            OptionalDouble aboveCelsius, String unless, Concern concern, Citation source) {

        /** Copies the set. */
        public Attack {
            families = Set.copyOf(families);
        }
    }

    static FluidTable read(Csv csv, Alloys alloys) {
        FluidTable table = new FluidTable();
        for (Row row : csv.read("data/fluids.csv", "fluid", "aliases", "electrolyte", "remark", "source", "clause",
                "status")) {
            String word = row.required("fluid");
            Electrolyte electrolyte = row.constant("electrolyte", Electrolyte.values());
            table.fluids.put(word, new Fluid(word, row.list("aliases"), electrolyte, row.text("remark"),
                    row.citation()));
            table.words.add(row, word);
            for (String alias : row.list("aliases")) {
                table.words.alias(row, alias, word);
            }
        }
        for (Row row : csv.read("data/fluid-attacks.csv", "fluid", "families", "mechanism", "condition", "above_degC",
                "unless", "concern", "source", "clause", "status")) {
            Set<String> families = alloys.familiesOf(row);
            Concern concern = row.constant("concern", Concern.values());
            table.attacks.add(new Attack(row.oneOf("fluid", table.fluids.keySet()), families,
                    row.required("mechanism"), row.required("condition"), row.number("above_degC", -273, 1000, 1),
                    row.text("unless"), concern, row.citation()));
        }
        return table;
    }

    /**
     * {@return a fluid}
     *
     * @param name a word or alias; case, blanks and hyphens do not matter
     */
    public Optional<Fluid> find(String name) {
        return words.find(name).map(fluids::get);
    }

    /**
     * {@return what a fluid does to a family}
     *
     * @param fluid  canonical word
     * @param family material family
     */
    public List<Attack> attacks(String fluid, String family) {
        List<Attack> found = new ArrayList<>();
        for (Attack attack : attacks) {
            if (attack.fluid().equals(fluid) && attack.families().contains(family)) {
                found.add(attack);
            }
        }
        return found;
    }

    /** {@return all attacks} */
    public List<Attack> attacks() {
        return Collections.unmodifiableList(attacks);
    }

    /** {@return all fluids} */
    public Collection<Fluid> all() {
        return Collections.unmodifiableCollection(fluids.values());
    }

    /** {@return the canonical words} */
    public Set<String> words() {
        return Collections.unmodifiableSet(words.names());
    }
}
