package org.shortgrain.signoff;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shortgrain.part.Withdrawal;
import org.shortgrain.report.pdf.SignatureRole;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Question;
import org.shortgrain.review.Review;
import org.shortgrain.signoff.SigningRefusedException.Reason;

/** What must hold before a role may sign a report. */
final class SigningRules {

    private final ReportFile file;
    private final Review review;

    SigningRules(ReportFile file) {
        this.file = file;
        this.review = file.review();
    }

    void check(SigningRequest request, SigningKey key, Withdrawals withdrawals) throws SigningRefusedException {
        refuseWithdrawn(withdrawals);
        Verification before = refuseChanged();
        refuseTurn(request.role());
        refuseOpenFindings(request.role());
        refuseOneHand(request, key, before);
    }

    private void refuseWithdrawn(Withdrawals withdrawals) throws SigningRefusedException {
        Optional<Withdrawal> withdrawn = withdrawals.of(review.contentHash());
        if (withdrawn.isPresent()) {
            throw new SigningRefusedException(Reason.WITHDRAWN, "this issue was " + Withdrawals.text(withdrawn.get())
                    + "; sign the issue that stands");
        }
    }

    private Verification refuseChanged() throws SigningRefusedException {
        Verification before = new Verifier(List.of()).verify(file.bytes());
        boolean unsigned = file.signed().isEmpty();
        List<String> faults = unsigned ? ContentCheck.faults(file) : before.faults();
        if (!faults.isEmpty() || unsigned && ContentCheck.isAppendedTo(file.bytes()) || !unsigned && !before.isIntact()) {
            String what = faults.isEmpty() ? "something was appended to it" : faults.get(0);
            throw new SigningRefusedException(Reason.CHANGED, "this file is not as it was "
                    + (unsigned ? "written" : "signed") + ": " + what + "; review the part again and sign that report");
        }
        return before;
    }

    private void refuseTurn(SignatureRole role) throws SigningRefusedException {
        if (!file.fields().containsKey(role)) {
            throw new SigningRefusedException(Reason.ROLE, file.fields().isEmpty()
                    ? "it is a draft without fields to sign in; review the part again without --draft and sign that report"
                    : "this report has no field for the role " + role);
        }
        Set<SignatureRole> signed = file.signed();
        if (signed.contains(role)) {
            throw new SigningRefusedException(Reason.ROLE, "the role " + role + " is already signed by "
                    + file.fields().get(role).signature().map(ReportFile.Signature::name).orElse("")
                    + "; a correction is a new issue of the report");
        }
        if (role != SignatureRole.PREPARED && !signed.contains(SignatureRole.PREPARED)) {
            throw new SigningRefusedException(Reason.ROLE, "nobody has signed as prepared yet; whoever prepared the report"
                    + " signs first and certifies it");
        }
        Optional<SignatureRole> later = signed.stream().filter(one -> one.compareTo(role) > 0).findFirst();
        if (later.isPresent()) {
            throw new SigningRefusedException(Reason.ROLE, "the role " + later.get() + " has signed already, and " + role
                    + " comes before it; the order is " + Arrays.stream(SignatureRole.values())
                            .map(SignatureRole::word).collect(Collectors.joining(", ")));
        }
        if (role.compareTo(SignatureRole.CHECKED) > 0 && !signed.contains(SignatureRole.CHECKED)) {
            throw new SigningRefusedException(Reason.ROLE, "nobody has signed as checked yet; " + role + " comes after it");
        }
    }

    private void refuseOpenFindings(SignatureRole role) throws SigningRefusedException {
        List<String> objections = review.openObjections().stream().map(Finding::id).toList();
        if (!objections.isEmpty()) {
            throw new SigningRefusedException(Reason.OPEN_FINDINGS, "open objections: " + String.join(", ", objections)
                    + ". Mend the part, or record for each a disposition with its reason in findings.yaml beside the"
                    + " description and review again; the new issue can be signed");
        }
        List<String> questions = review.openDecisiveQuestions().stream().map(Question::id).toList();
        if (role == SignatureRole.APPROVED && !questions.isEmpty()) {
            throw new SigningRefusedException(Reason.OPEN_FINDINGS, "open decisive questions: "
                    + String.join(", ", questions) + ". Answer them in the description, or record a disposition for each"
                    + " in findings.yaml, and review again");
        }
    }

    /** Maker and checker must differ: it is the one task in which nobody may vouch for himself. */
    private void refuseOneHand(SigningRequest request, SigningKey key, Verification before)
            throws SigningRefusedException {
        if (request.role() != SignatureRole.CHECKED) {
            return;
        }
        for (SignatureCheck one : before.signatures()) {
            if (one.role().equals(Optional.of(SignatureRole.PREPARED))) {
                if (one.fingerprint().equals(Subject.fingerprint(key.certificate()))) {
                    throw new SigningRefusedException(Reason.ROLE, "the report was prepared with this very certificate;"
                            + " prepared and checked must be different persons");
                }
                if (plain(one.name()).equals(plain(request.name()))) {
                    throw new SigningRefusedException(Reason.ROLE, "the report was prepared by " + one.name()
                            + "; prepared and checked must be different persons");
                }
            }
        }
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }
}
