/**
 * Sustained tension at a point: contributions added as tensors, turned into the grain directions, held against the
 * threshold.
 *
 * <p>Only what lasts counts. MIL-HDBK-5J 3.1.3.1 (secondary) leaves design stresses of functional loads mostly out of
 * the sum, as they are not continuous, and names residual and assembly stress as the usual culprits.
 */
package org.shortgrain.mechanics.sustained;
