/**
 * The outcome of a review as data: the one source of every output format.
 *
 * <p>Records and words only. What computes, judges or renders lives elsewhere.
 */
package org.shortgrain.review;
