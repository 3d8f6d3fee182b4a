package org.shortgrain.signoff;

import java.time.ZonedDateTime;
import java.util.Optional;
import org.shortgrain.report.pdf.SignatureRole;
import org.shortgrain.terms.PlainText;

/**
 * What a signer asks for.
 *
 * @param role         in which role
 * @param name         printed name
 * @param organisation for whom; empty text if not said
 * @param statement    what signing states
 * @param time         time of signing by the signer's clock, with its zone
 * @param timeStamps   where a trusted time-stamp is to be had; empty for none
 */
public record SigningRequest(SignatureRole role, String name, String organisation, String statement, ZonedDateTime time,
        Optional<TimeStampServer> timeStamps) {

    /** Cleans what people wrote of control characters. */
    public SigningRequest {
        name = PlainText.clean(name);
        organisation = PlainText.clean(organisation);
        statement = PlainText.clean(statement);
    }
}
