/**
 * A review as JSON: the master of which the other formats are made, and what is attached to a signed report.
 *
 * <p>The form is published as a JSON Schema, {@link org.shortgrain.report.json.ReviewJson#SCHEMA}. It is written key by
 * key instead of by reflection: the form is a promise to other programs and must not move with a record, its bytes are
 * hashed, and a review starts faster without a mapper.
 */
package org.shortgrain.report.json;
