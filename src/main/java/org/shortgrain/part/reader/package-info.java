/**
 * From YAML text to a {@link org.shortgrain.part.PartDescription}, or to a list of problems with line and column.
 *
 * <p>The steps in their order: bytes to text to YAML nodes ({@code YamlText}); nodes to records, driven by the records'
 * own components and annotations ({@code Expected}, {@code Binder}, {@code Values}). The build writes down what these say
 * ({@code RecordForms}, {@code FormTable}), since annotations are slow to read. The published JSON Schema is made from the
 * same components, so that what an editor underlines and what the reader refuses are the same; tests hold all three
 * together.
 */
package org.shortgrain.part.reader;
