package org.shortgrain.signoff;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shortgrain.report.pdf.SignatureRole;

/**
 * What was found of a report's signatures and contents.
 *
 * @param signatures each signature, the first one first
 * @param open       roles that have not signed
 * @param fileFaults what is wrong with the file as a whole
 */
public record Verification(List<SignatureCheck> signatures, List<SignatureRole> open, List<String> fileFaults) {

    /** Copies the lists. */
    public Verification {
        signatures = List.copyOf(signatures);
        open = List.copyOf(open);
        fileFaults = List.copyOf(fileFaults);
    }

    /** {@return whether the file is signed and is, to the last byte, what was signed} */
    public boolean isIntact() {
        return !signatures.isEmpty() && faults().isEmpty();
    }

    /** {@return all that is wrong} */
    public List<String> faults() {
        return Stream.concat(fileFaults.stream(), signatures.stream().flatMap(one -> one.faults().stream()
                .map(fault -> one.role().map(SignatureRole::word).orElse("a signature") + ": " + fault)))
                .collect(Collectors.toList());
    }
}
