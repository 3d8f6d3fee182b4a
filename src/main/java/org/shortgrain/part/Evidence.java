package org.shortgrain.part;

/**
 * Proof that the part is what it is said to be.
 *
 * @param conductivity electrical conductivity
 * @param hardness hardness with its scale
 * @param yield measured yield strength
 * @param grainFlowEtch macro-etch report
 * @param certificate mill or forger certificate and heat-treat chart
 * @param sccTest stress-corrosion lot test
 * @param ndt non-destructive test record
 * @param almen peening intensity record
 * @param bakeChart bake chart
 * @param embrittlementTest sustained-load test of the plated lot
 * @param firstArticle first-article inspection report
 * @param origin where the group stands, and its reference
 */
public record Evidence(
        @In(Dimension.CONDUCTIVITY) @Meaning("Electrical conductivity.") Stated<Range> conductivity,
        @Meaning("Hardness with its scale.") Stated<String> hardness,
        @Key("yield_strength") @In(Dimension.STRESS) @Limits(positive = true) @Meaning("Measured yield strength.")
        Stated<Range> yield,
        @Meaning("Macro-etch report.") Stated<String> grainFlowEtch,
        @Meaning("Mill or forger certificate and heat-treat chart.") Stated<String> certificate,
        @Meaning("Stress-corrosion lot test.") Stated<String> sccTest,
        @Meaning("Non-destructive test record.") Stated<String> ndt,
        @Meaning("Peening intensity record.") Stated<String> almen,
        @Meaning("Bake chart.") Stated<String> bakeChart,
        @Meaning("Sustained-load test of the plated lot, for hydrogen embrittlement.")
        Stated<String> embrittlementTest,
        @Meaning("First-article inspection report.") Stated<String> firstArticle,
        Origin origin) {
}
