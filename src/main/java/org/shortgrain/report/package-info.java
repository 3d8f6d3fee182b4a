/** The outputs of a review, all made of one {@link org.shortgrain.review.Review}. */
package org.shortgrain.report;
