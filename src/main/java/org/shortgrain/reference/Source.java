package org.shortgrain.reference;

/**
 * A document behind the tables and rules.
 *
 * @param id      key by which rows and rules cite it
 * @param title   title, or a description where it prints none
 * @param number  number as printed; empty where it has none
 * @param edition edition, revision or date as printed; empty where it has none
 * @param year    year; empty where unknown
 * @param kind    standard, specification, handbook, paper ...; {@code practice} where no document stands behind it
 * @param seen    how its text was seen by the authors of the tables
 */
public record Source(String id, String title, String number, String edition, String year, String kind, String seen) {

    /** {@return number, title and edition on one line, as a list of references prints them} */
    public String reference() {
        StringBuilder line = new StringBuilder(number.isEmpty() ? "" : number + ", ").append(title);
        if (!edition.isEmpty() && !line.toString().contains(edition)) {
            line.append(", ").append(edition);
        }
        if (!year.isEmpty() && !line.toString().contains(year)) {
            line.append(", ").append(year);
        }
        return line.toString();
    }
}
