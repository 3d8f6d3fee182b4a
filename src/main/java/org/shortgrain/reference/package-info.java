/**
 * What is published about materials, places, fluids and shop operations, read from the tables of the rulebook.
 *
 * <p>{@link org.shortgrain.reference.ReferenceTables} is the one door. Every row keeps the document it comes from, the
 * clause, and how it was seen; nothing is filled in where the documents are silent. Quantities are in SI base units
 * here (Pa, m, kg), whatever unit the head of a table column names; temperatures are in degrees Celsius.
 */
package org.shortgrain.reference;
