package org.shortgrain.rulebook.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

/**
 * Invented part descriptions, drawn with a seed: every key that the rules of the oracle read takes each of its states,
 * a value, none, unknown and not there. They need not make sense as parts; they must be readable.
 */
final class GeneratedPart {

    private static final String[] METALS = {
        "alloy: \"7075\", temper: T7351", "alloy: \"7075\", temper: T651", "alloy: \"7075\", temper: T73511",
        "alloy: \"7075\", temper: T7352", "alloy: \"7075\", temper: T7354", "alloy: \"7050\", temper: T7451",
        "alloy: \"7079\", temper: T651", "alloy: \"7178\", temper: T6", "alloy: \"7178\", temper: T7651",
        "alloy: \"2024\", temper: T351", "alloy: \"2219\", temper: T851", "alloy: \"6061\", temper: T651",
        "alloy: \"5083\", temper: H116", "alloy: \"5083\", temper: H32", "alloy: \"5086\", temper: H32",
        "alloy: \"5086\", temper: H34", "alloy: \"5456\", temper: H36", "alloy: \"5454\", temper: H32",
        "alloy: \"Ti-6Al-4V\", temper: annealed", "alloy: \"Ti-6Al-4V\", temper: annealed",
        "alloy: \"Ti-6Al-4V\", temper: annealed", "alloy: \"Ti-6Al-4V\", temper: annealed",
        "alloy: \"4340\", temper: \"quenched and tempered\", strength: {min: 1241 MPa, max: 1379 MPa}",
        "alloy: \"316\", temper: annealed"};
    private static final String[] ZONES = {"cabin_dry", "avionics_conditioned", "hangar_dry", "orbit_vacuum", "crown",
        "inland_temperate", "fuel_tank_ullage", "engine_bay_hot", "wing_external", "behind_lining", "exhaust_trail",
        "battery_bay", "wheel_well", "fuselage_bilge", "under_galley", "fuel_tank_bottom", "coastal_base",
        "airframe_interior", "deck_carrier", "engine_bay_hot", "exhaust_trail"};
    private static final String ANGLES = "3 deg|0.5 deg|-3 deg";

    private final Random random;

    private GeneratedPart(Random random) {
        this.random = random;
    }

    /** {@return the text of the next part} */
    static String next(Random random) {
        return new GeneratedPart(random).text();
    }

    private String text() {
        List<String> ids = chance(0.3) ? List.of("A") : List.of("A", "B");
        return String.join("\n", "schema: 1",
                "review: " + map(key("purpose", 0.8, "design|supplier_precheck|audit|in_service"),
                        key("threshold_factor", 0.8, "0.5|0.5|1"), "date: 2026-01-15", "prepared_by: checker"),
                "part: {number: \"G-1\", revision: \"A\", name: \"Generated (invented)\", criticality: secondary}",
                "material: {" + pick(METALS) + "}",
                "form: " + map(key("product", 0.95,
                        "plate|sheet|die_forging|die_forging|hand_forging|extrusion|bar_rolled|tube"),
                        key("heat_treat_thickness", 0.9, "none|none|5 mm|6.35 mm|60 mm|60 mm"),
                        key("length", 0.5, "200 mm|800 mm|800 mm")),
                "grain: {basis: drawing_arrow, L: X, LT: Y, ST: Z}", route(ids),
                key("route_complete", 0.8, "true|true|false"),
                "features:", ids.stream().map(this::feature).collect(Collectors.joining("\n")),
                "surface: " + surface(0.85), "sealant: " + sealant(0.85), environment(), neighbours("neighbours", 0.8),
                "inspection: " + map(key("method", 0.7, "visual|[eddy_current]|none"),
                        key("repeat", 0.6, "2 years|unknown|none"))) + "\n";
    }

    private String route(List<String> ids) {
        List<String> steps = new ArrayList<>(List.of("do: saw"));
        add(steps, 0.35, "do: rough_machine, removes: 2 mm", at(ids));
        add(steps, 0.35, "do: solution_heat_treat, temperature: 470 degC");
        add(steps, 0.6, "do: quench", key("medium", 0.85, "water|water|moving air|polymer"),
                key("temperature", 0.85, "25 degC|25 degC|95 degC|95 degC|65 degC"),
                key("delay", 0.6, "8 s|25 s"), done());
        add(steps, 0.2, "do: stretch", key("set", 0.8, "0.5 %|2 %|6 %"), done());
        add(steps, 0.2, "do: compress", key("set", 0.8, "0.4 %|2 %|6 %"), done());
        add(steps, 0.3, "do: age, steps: [{temperature: 107 degC, time: 7 h}, {temperature: 177 degC, time: 9 h}]");
        add(steps, 0.15, "do: stress_relieve, temperature: 110 degC", done());
        add(steps, 0.3, "do: shot_peen", at(ids), done());
        add(steps, 0.4, "do: finish_machine", key("removes", 0.8, "0.5 mm|0.5 mm|2 mm"), at(ids));
        add(steps, 0.2, "do: install_bushing, method: shrink", at(ids));
        add(steps, 0.5, "do: anodize", at(ids), done());
        add(steps, 0.2, "do: plate", at(ids));
        add(steps, 0.25, "do: straighten", at(ids), done());
        add(steps, 0.25, "do: bake, time: 2 h", key("temperature", 0.9, "93 degC|130 degC|150 degC"), done());
        add(steps, 0.5, "do: prime");
        add(steps, 0.4, "do: seal", key("product", 0.5, "\"AMS-S-8802 B-2\"|unknown"),
                key("spec", 0.4, "\"AMS-S-8802 class B\""),
                key("remarks", 0.5, "\"squeeze-out all round\"|\"by hand\""));
        add(steps, 0.3, "do: leak_test", key("medium", 0.7, "\"tap water\"|\"deionised water\"|\"dry air\""),
                key("delay", 0.7, "24 h|200 h"));
        add(steps, 0.4, "do: assemble", key("delay", 0.5, "1 h|5 h"));
        for (int swaps = random.nextInt(3); swaps > 0 && steps.size() > 2; swaps--) {
            steps.add(1 + random.nextInt(steps.size() - 1), steps.remove(1 + random.nextInt(steps.size() - 1)));
        }
        StringBuilder rows = new StringBuilder("route:");
        for (int i = 0; i < steps.size(); i++) {
            rows.append("\n  - {op: \"").append(10 * (i + 1)).append("\", ").append(steps.get(i)).append("}");
        }
        return rows.toString();
    }

    private void add(List<String> steps, double share, String... keys) {
        if (chance(share)) {
            String step = map(keys);
            steps.add(step.substring(1, step.length() - 1));
        }
    }

    private String at(List<String> ids) {
        return chance(0.4) ? "at: [" + pick(ids.toArray(String[]::new)) + "]" : "";
    }

    private String done() {
        return chance(0.1) ? "done: no" : "";
    }

    private String feature(String id) {
        return "  - " + map("id: " + id, key("what", 0.95,
                "web|web|pocket|groove|lug_bore|bolt_hole|threaded_hole|shaft|fillet|weld"
                        + "|faying_surface|faying_surface|faying_surface"),
                "stress_direction: " + pick("L|LT|ST"),
                "residual_stress: {value: 5 MPa, kind: measured, method: x-ray}",
                key("loads", 0.9, "none|[{source: one_g_flight, stress: 5 MPa}]|[{source: one_g_ground, stress: 5 MPa}]"
                        + "|[{source: one_g_flight, stress: 5 MPa}, {source: rigging, stress: 3 MPa}]"),
                "stress_concentration: none", "clamp_up: none", fit(), fasteners(), drainage(),
                key("zone", 0.15, String.join("|", ZONES)), chance(0.3) ? "surface: " + surface(0.3) : "",
                chance(0.3) ? "sealant: " + sealant(0.4) : "", chance(0.15) ? neighbours("neighbours", 1) : "");
    }

    private String fit() {
        String limits = ", hole: 20 mm, bush: 20.001 mm, bush_bore: 16 mm, outer_width: " + pick("30 mm|60 mm")
                + ", bush_material: \"15-5PH H1025\", coldest: 20 degC";
        String kind = pick("none|clearance|close_fit_bolt|press_bushing|press_bushing|taper_pin|taper_thread"
                + "|interference_fastener");
        String ends = key("sealed_ends", 0.6, "true|false");
        String role = key("role", 0.3, "inner|outer");
        if (kind.equals("none")) {
            return "fit: none";
        }
        return "fit: " + (kind.startsWith("cl") ? map("kind: " + kind) : map("kind: " + kind + limits, ends, role));
    }

    private String fasteners() {
        String one = map("type: bolt, material: A286, plating: none", key("installed_wet", 0.6, "true|false|unknown"),
                key("lubrication", 0.7, "none|\"solid film\""));
        return chance(0.35) ? "fasteners: [" + one + "]" : chance(0.5) ? "fasteners: none" : "";
    }

    private String drainage() {
        if (chance(0.15)) {
            return pick("drainage: none|drainage: unknown");
        }
        String attitude = chance(0.6) ? "attitude: " + map(
                chance(0.8) ? "ground: " + map(key("pitch", 0.9, ANGLES), key("roll", 0.8, "0 deg|2 deg")) : "",
                chance(0.8) ? "flight: " + map(key("pitch", 0.9, ANGLES), "roll: 0 deg") : "") : "";
        List<String> holes = new ArrayList<>();
        for (int n = random.nextInt(4) % 3; n > 0; n--) {
            holes.add(map(key("diameter", 0.9, "6.35 mm|9.5 mm|9.525 mm|12.7 mm"),
                    key("at_lowest_point", 0.85, "true|true|false"), key("path_continues", 0.85, "true|true|false"),
                    chance(0.2) ? "waiver: \"letter 12\"" : "waiver: none"));
        }
        String drains = holes.isEmpty() ? key("drain_holes", 0.9, "none")
                : "drain_holes: [" + String.join(", ", holes) + "]";
        return "drainage: " + map(key("opening", 0.9, "up|up|side|down|closed|closed"),
                key("holds_water", 0.4, "true|false|false|unknown"), "depth: 20 mm", attitude, drains,
                key("vented", 0.7, "true|false"), key("filled_with", 0.4, "none|sealant|closed_cell_foam"));
    }

    private String surface(double share) {
        return map(key("pretreatment", share, "none|none"
                + "|\"MIL-PRF-8625 type IC\"|\"MIL-PRF-8625 type IC, sealed\"|anodize"
                + "|\"MIL-DTL-5541 class 1A\"|unknown"),
                key("primer", share, "none|none|\"MIL-PRF-23377\"|\"MIL-PRF-23377 class N\"|unknown"),
                key("topcoat", share, "none|none|\"MIL-PRF-85285\"|\"acid-proof enamel\""),
                key("plating", share / 2, "{kind: cadmium}|{kind: cadmium}|{kind: \"MIL-DTL-83488 type II\"}|none"),
                key("bare", share / 6, "true|false"), key("cpc", share / 2, "\"MIL-PRF-81309 type II\"|none"),
                key("faying_surfaces_primed", share / 2, "yes_before_assembly|after|no"));
    }

    private String sealant(double share) {
        String kinds = "none|none|\"AMS3276 class B\"|\"AMS-S-8802 class A\""
                + "|\"acetoxy silicone\"|\"MIL-PRF-81733\"|unknown";
        return map(key("faying", share, kinds), key("fillet", share, kinds),
                key("fasteners_wet", share, "true|false|unknown"));
    }

    private String environment() {
        String fluids = pick("none|unknown|[rain]|[rain, deicing]|[waste]|[battery_acid]|[battery_alkali]"
                + "|[runway_deicer]|[runway_deicer]|[phosphate_ester]|[phosphate_ester]|[mercury]|[fuel]|[rain, cleaning_agent]|[hydrazine]|[ammonia]");
        return "environment: " + map(key("zone", 0.95, String.join("|", ZONES)),
                key("salt", 0.8, "coastal|inland|none_sealed|marine_deck"),
                key("temperature", 0.9, "{min: -55 degC, max: 60 degC}|{min: 10 degC, max: 80 degC}"
                        + "|{min: 15 degC, max: 180 degC}|{min: -20 degC, max: 350 degC}"
                        + "|{min: 15 degC, max: 350 degC}"),
                key("humidity", 0.8, "moist|dry|35 %|80 %"), chance(0.9) ? "fluids: " + fluids : "");
    }

    private String neighbours(String name, double share) {
        return key(name, share, "none|none|unknown|[{what: skin, compatible: true}]|[{what: packing, material: felt}]"
                + "|[{what: clip, material: \"316\", coating: none, insulated: true}]");
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private String pick(String alternatives) {
        return pick(alternatives.split("\\|"));
    }

    private String pick(String... alternatives) {
        return alternatives[random.nextInt(alternatives.length)];
    }

    /** A key with one of its values, or nothing. */
    private String key(String name, double share, String values) {
        return chance(share) ? name + ": " + pick(values) : "";
    }

    /** A group of keys; unknown if it has none. */
    private static String map(String... keys) {
        List<String> there = List.of(keys).stream().filter(key -> !key.isEmpty()).toList();
        return there.isEmpty() ? "unknown" : "{" + String.join(", ", there) + "}";
    }
}
