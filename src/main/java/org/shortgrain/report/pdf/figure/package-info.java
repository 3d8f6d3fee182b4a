/**
 * Figures of the report: what they show as plain records, how they are drawn on a {@link
 * org.shortgrain.report.pdf.figure.Pen}.
 *
 * <p>Knows nothing of PDF: a test records the strokes of a figure with a pen of its own. Lengths on the sheet are
 * points (1/72 inch) from the top left corner of the figure, y downwards. Every figure can be read in grey: what
 * matters is told by line style, hatching and words; colour only repeats it.
 */
package org.shortgrain.report.pdf.figure;
