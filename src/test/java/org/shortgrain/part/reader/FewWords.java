package org.shortgrain.part.reader;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.shortgrain.part.Vocabulary;

/** A few words in place of the rulebook's tables. */
final class FewWords implements Vocabularies {
    private static final Map<Vocabulary.List, List<String>> WORDS = Map.of(
            Vocabulary.List.OPERATIONS, List.of("solution_heat_treat", "quench", "age", "straighten", "finish_machine",
                    "anodize", "prime", "install_bushing", "shot_peen"),
            Vocabulary.List.ZONES, List.of("wheel_well", "exterior_lower", "exterior_upper", "cabin_dry", "bilge"),
            Vocabulary.List.FLUIDS, List.of("rain", "deicing", "hydraulic_fluid", "methanol"),
            Vocabulary.List.FAMILIES, List.of("aluminium_2xxx", "aluminium_7xxx", "low_alloy_steel", "ph_steel"));

    @Override
    public List<String> words(Vocabulary.List list) {
        return WORDS.get(list);
    }

    @Override
    public Optional<String> canonical(Vocabulary.List list, String entered) {
        String word = entered.toLowerCase(Locale.ROOT).replace("anodise", "anodize");
        return WORDS.get(list).contains(word) ? Optional.of(word) : Optional.empty();
    }
}
