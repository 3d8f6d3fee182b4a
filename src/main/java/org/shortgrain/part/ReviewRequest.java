package org.shortgrain.part;

/**
 * What is asked of the review, and by whom.
 *
 * @param purpose why the part is reviewed. Absent: judged as a design
 * @param preparedBy role or name of who prepared the description
 * @param date date of the review, ISO 8601
 * @param thresholdFactor factor on the threshold that the project allows for sustained tension, above 0 and up to
 *        1. Absent: a stand-in is used and listed as an assumption
 * @param remarks anything a reader should know
 * @param origin where the group stands, and its reference
 */
public record ReviewRequest(
        @Minimum(Minimum.Role.JUDGING) @Meaning("Why the part is reviewed. Absent: judged as a design.")
        Stated<Purpose> purpose,
        @Minimum(Minimum.Role.IDENTITY) @Verbatim @Meaning("Role or name of who prepared the description.")
        Stated<String> preparedBy,
        @Minimum(Minimum.Role.IDENTITY) @IsoDate @Meaning("Date of the review, ISO 8601.") Stated<String> date,
        @Limits(positive = true, max = 1)
        @Meaning("Factor on the threshold that the project allows for sustained tension, above 0 and up to 1. "
                + "Absent: a stand-in is used and listed as an assumption.")
        Stated<Double> thresholdFactor,
        @Meaning("Anything a reader should know.") Stated<String> remarks,
        Origin origin) {
}
