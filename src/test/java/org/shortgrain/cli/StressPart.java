package org.shortgrain.cli;

/**
 * A description that asks everything of the report's layout: twelve places, names of two hundred characters, Greek and
 * accented letters, both systems of units, and so much wrong that more than sixty findings and questions follow.
 * Invented for demonstration.
 */
final class StressPart {

    /** Places on the part. */
    static final int PLACES = 12;
    /** A name of two hundred characters. */
    static final String NAME = ("Ferrure d'articulation \u00e9l\u00e9v\u00e9e, \u03a3\u03cd\u03bd\u03b4\u03b5\u03c3\u03bc\u03bf\u03c2"
            + " \u03b1\u03b2\u03b3, Beschlag \u00e4u\u00dferer Tr\u00e4ger, \u010d\u00e1st, pi\u00e8ce_"
            + "long-name-without-a-space/".repeat(9)).substring(0, 200);

    private StressPart() {
    }

    static String yaml() {
        StringBuilder yaml = new StringBuilder(HEAD.replace("NAME", NAME));
        for (int i = 1; i <= PLACES; i++) {
            yaml.append((switch (i % 4) {
                case 0 -> LUG;
                case 1 -> POCKET;
                case 2 -> SEAT;
                default -> OPEN;
            }).replace("ID", id(i)));
        }
        return yaml.append(TAIL).toString();
    }

    static String id(int place) {
        return "PL\u00c4TZ-\u03a6" + place + "-on-the-outboard-side";
    }

    private static final String HEAD = """
            # Invented for demonstration: no such part exists.
            schema: 1
            review: {purpose: supplier_precheck, prepared_by: "Zo\u00eb \u0141ukasiewicz-\u00d8stergaard", date: 2026-01-15}
            part: {number: "\u0391-9001/\u00dc-1", revision: "AB", name: "NAME", criticality: primary}
            drawing: {number: "DR-9001", revision: "AB", changes: none}
            planning: {number: "RC-9001", revision: "4", drawing_revision_on_card: "AA"}
            material: {alloy: "7075", temper: "T6"}
            form: {product: die_forging, heat_treat_thickness: 3.5 in, heat_treat_shape: plate,
                   finished_thickness: {min: 0.2 in, max: 1.5 in}}
            grain: {basis: forging_drawing, L: X, LT: Y, ST: Z, parting_line: "plane Z=0"}
            route:
              - {op: "20", do: solution_heat_treat, temperature: 470 degC}
              - {op: "21", do: quench, medium: water, temperature: 20 degC}
              - {op: "30", do: age, steps: [{temperature: 121 degC, time: 24 h}]}
              - {op: "35", do: straighten}
              - {op: "40", do: install_bushing, method: press}
              - {op: "50", do: finish_machine, removes: 1 in}
              - {op: "55", do: anodize, spec: "MIL-A-8625 type IC"}
              - {op: "60", do: shot_peen}
              - {op: "70", do: drill}
            features:
            """;

    private static final String LUG = """
              - id: "ID"
                what: lug_bore
                stress_direction: ST
                as_quenched_depth: 1 in
                section_finished: 30 mm
                loads: [{source: one_g_ground, stress: 3 ksi, share_of_life: 0.9}]
                fit: {kind: press_bushing, hole: {min: 16.000 mm, max: 16.018 mm}, bush: {min: 16.048 mm, max: 16.066 mm},
                      bush_bore: 12 mm, outer_width: 34 mm, bush_material: "15-5PH H1025", installed_wet: false, coldest: -55 degC}
                clamp_up: none
                drainage: unknown
                surface: {peened: none, bare: true}
            """;

    private static final String POCKET = """
              - id: "ID"
                what: pocket
                stress_direction: ST
                as_quenched_depth: 1.2 in
                section_finished: 8 mm
                restraint: held
                loads: none
                fit: none
                clamp_up: none
                drainage: {opening: up, depth: 1 in, length: 200 mm, width: 50 mm, attitude: {ground: {pitch: 3 deg, roll: 0 deg},
                           flight: {pitch: -2 deg, roll: 0 deg}}, drain_holes: [{diameter: 0.25 in, at_lowest_point: false}]}
            """;

    private static final String SEAT = """
              - id: "ID"
                what: faying_surface
                stress_direction: ST
                as_quenched_depth: 30 mm
                section_finished: 12 mm
                loads: none
                fit: none
                clamp_up: [{gap: {max: 0.25 mm}, span: 70 mm, thickness: 12 mm, width: 40 mm, held: cantilever, shim: none}]
                drainage: none
            """;

    private static final String OPEN = """
              - {id: "ID", what: web, stress_direction: unknown, loads: unknown}
            """;

    private static final String TAIL = """
            surface: {pretreatment: "MIL-A-8625 type IC", primer: none, topcoat: none, areas_bare: unknown, peened: unknown}
            sealant: {faying: none, fillet: none, fasteners_wet: false, gap_fill: none}
            environment: {zone: wheel_well, salt: marine_deck, temperature: {min: -65 degF, max: 160 degF}, humidity: 85 %,
                          fluids: [rain, deicing, salt_water]}
            neighbours: [{what: "bush", material: "15-5PH", coating: none, area_ratio: 3, insulated: false}]
            inspection: {access: none_without_disassembly, method: visual}
            evidence: {conductivity: unknown, hardness: unknown, grain_flow_etch: unknown, certificate: unknown}
            """;
}
