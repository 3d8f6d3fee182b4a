/**
 * The findings report as a PDF: a {@link org.shortgrain.review.Review} put into words, tables and figures.
 *
 * <p>Every sentence that the report adds of its own comes from the plain-text files in {@code templates/report}; the
 * rest is the review's. How a document is set and written is the business of {@code tagged}, how a figure is drawn that
 * of {@code figure}.
 */
package org.shortgrain.report.pdf;
