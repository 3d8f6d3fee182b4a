/** Two reviews held against each other: what came, what went, what moved, and whether anything got worse. */
package org.shortgrain.report.change;
