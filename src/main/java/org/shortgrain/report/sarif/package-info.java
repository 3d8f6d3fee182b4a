/**
 * A review as SARIF 2.1.0, the exchange format of static-analysis results, for tools that show and compare findings.
 *
 * <p>Source: OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0, committee specification of
 * 7 July 2019 (read). An export only: quantities, factors and dispositions have no place in it; the master is
 * {@code org.shortgrain.report.json}.
 */
package org.shortgrain.report.sarif;
