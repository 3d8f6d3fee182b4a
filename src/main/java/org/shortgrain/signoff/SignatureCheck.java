package org.shortgrain.signoff;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.shortgrain.report.pdf.SignatureRole;

/**
 * What was found of one signature.
 *
 * @param role         the role, by the field that it fills; empty for a field that is none of the report's
 * @param name         printed name, as the signer gave it
 * @param organisation for whom, as the signer gave it; empty text if not said
 * @param statement    what the signer states
 * @param claimed      time by the signer's clock
 * @param stamped      time that a time-stamp server vouches for
 * @param level        level of the signature as it is made, such as PAdES-BASELINE-B
 * @param subject      whom the certificate names
 * @param fingerprint  SHA-256 of the certificate, in hexadecimal
 * @param identity     how far the signer is proven
 * @param certifies    whether it forbids every later change but further signatures
 * @param wholeFile    whether it covers the file to its last byte
 * @param notes        what a reader should know; no fault
 * @param faults       what is wrong; empty if nothing changed since signing
 */
public record SignatureCheck(Optional<SignatureRole> role, String name, String organisation, String statement,
        Instant claimed, Optional<Instant> stamped, String level, String subject, String fingerprint, Identity identity,
        boolean certifies, boolean wholeFile, List<String> notes, List<String> faults) {

    /** How far it is proven who signed. */
    public enum Identity {
        /** The certificate leads to one that the verifier named as trusted. */
        TRUSTED("signer traced to a certificate that you trust; whether it was revoked was not looked up"),
        /** The certificate is its own issuer: anyone can make one in any name. */
        SELF_MADE("signer not proven: the certificate is self-made"),
        /** The certificate's issuer is not among those that the verifier trusts. */
        UNKNOWN_ISSUER("signer not proven: the issuer of the certificate is not among those that you trust");

        private final String words;

        Identity(String words) {
            this.words = words;
        }

        /** {@return in words} */
        public String words() {
            return words;
        }
    }

    /** Copies the lists. */
    public SignatureCheck {
        notes = List.copyOf(notes);
        faults = List.copyOf(faults);
    }

    /** {@return whether nothing of what was signed has changed, and only signing came after} */
    public boolean isIntact() {
        return faults.isEmpty();
    }
}
