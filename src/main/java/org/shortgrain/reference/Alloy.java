package org.shortgrain.reference;

import java.util.List;
import java.util.Optional;

/**
 * A material that the tables name.
 *
 * @param name    name used in the tables
 * @param uns     number of the unified numbering system, if known
 * @param family  family, such as {@code aluminium_7xxx} or {@code ph_steel}
 * @param groups  further row names that speak for it, such as {@code 300 series}
 * @param aliases other spellings
 */
public record Alloy(String name, Optional<String> uns, String family, List<String> groups, List<String> aliases) {

    /** Copies the lists. */
    public Alloy {
        groups = List.copyOf(groups);
        aliases = List.copyOf(aliases);
    }

    /**
     * {@return whether a row speaks for it, by its name or by a group}
     *
     * @param rowNames names in the row
     */
    boolean isNamedBy(List<String> rowNames) {
        return rowNames.contains(name) || groups.stream().anyMatch(rowNames::contains);
    }
}
