/**
 * Tagged, archivable PDF: a document as records, set into pages and written.
 *
 * <p>Three layers: the text of a document as records ({@link org.shortgrain.report.pdf.tagged.Block},
 * {@link org.shortgrain.report.pdf.tagged.Inline}), a typesetter that turns blocks into unbreakable strips and strips
 * into pages, and a thin writer on PDFBox that adds what PDFBox leaves to its user: the structure tree, the archive
 * metadata, attachments and empty signature fields. The result claims PDF/A-3a (ISO 19005-3) and PDF/UA-1
 * (ISO 14289-1); the tests hold it to that with an independent validator. Knows nothing of reviews.
 *
 * <p>Same input, same bytes: no clock, no locale, no random number is used; dates and the document identifier are
 * handed in. Lengths are PDF points (1/72 inch) measured from the top left corner, y downwards.
 */
package org.shortgrain.report.pdf.tagged;
