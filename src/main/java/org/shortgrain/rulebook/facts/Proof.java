package org.shortgrain.rulebook.facts;

import org.shortgrain.part.Evidence;
import org.shortgrain.part.Stated;

/**
 * What is proved by measurement or record.
 *
 * @param stated what is stated of the evidence
 */
public record Proof(Stated<Evidence> stated) {

    /** {@return whether conductivity, or both hardness and yield strength, are not stated: what shows an over-aged temper} */
    public boolean isTemperUnproven() {
        boolean strength = stated.field(Evidence::hardness).isKnown() || stated.field(Evidence::yield).isKnown();
        return !stated.field(Evidence::conductivity).isKnown() || !strength;
    }

    /** {@return whether no report shows the grain flow} */
    public boolean isGrainFlowUnproven() {
        return !stated.field(Evidence::grainFlowEtch).isKnown();
    }

    /** {@return whether no peening record is stated} */
    public boolean isPeeningUnproven() {
        return !stated.field(Evidence::almen).isKnown();
    }

    /** {@return whether it is stated that there is no bake chart} */
    public boolean isWithoutBakeChart() {
        return stated.field(Evidence::bakeChart).isNone();
    }

    /** {@return whether nothing is stated of a bake chart} */
    public boolean isBakeChartOpen() {
        return stated.field(Evidence::bakeChart).isMissing();
    }

    /** {@return whether it is stated that there is no certificate} */
    public boolean isWithoutCertificate() {
        return stated.field(Evidence::certificate).isNone();
    }

    /** {@return whether no record of an inspection is stated} */
    public boolean isInspectionUnproven() {
        return !stated.field(Evidence::ndt).isKnown();
    }

    /** {@return whether it is stated that there is no first article} */
    public boolean isWithoutFirstArticle() {
        return stated.field(Evidence::firstArticle).isNone();
    }

    /** {@return whether a sustained-load test of the plated lot is stated} */
    public boolean hasEmbrittlementTest() {
        return stated.field(Evidence::embrittlementTest).isKnown();
    }
}
