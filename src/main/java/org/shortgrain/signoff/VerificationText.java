package org.shortgrain.signoff;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.shortgrain.report.pdf.SignatureRole;
import org.shortgrain.terms.PlainText;

/** A verification for a terminal, in plain words. */
final class VerificationText {

    private static final int WIDTH = 110;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss xxx", Locale.ROOT);

    private VerificationText() {
    }

    static String of(Verification found) {
        List<String> lines = new ArrayList<>();
        for (SignatureCheck one : found.signatures()) {
            lines.addAll(signature(one));
        }
        if (!found.signatures().isEmpty() && !found.open().isEmpty()) {
            lines.add("Not signed: " + found.open().stream().map(SignatureRole::word).collect(Collectors.joining(", ")));
        }
        for (String fault : found.fileFaults()) {
            lines.addAll(PlainText.lines("FAULT: ", "  ", fault + ".", WIDTH));
        }
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private static List<String> signature(SignatureCheck one) {
        List<String> lines = new ArrayList<>();
        lines.add(PlainText.clean(one.role().map(SignatureRole::word).orElse("in no field of the report") + ": "
                + one.name() + (one.organisation().isEmpty() ? "" : ", " + one.organisation())));
        lines.addAll(PlainText.lines("  states   ", "           ", one.statement(), WIDTH));
        lines.add("  when     " + time(one.claimed()) + " by the signer's clock"
                + one.stamped().map(stamp -> "; " + time(stamp) + " by a time-stamp server").orElse(""));
        lines.add("  level    " + one.level() + (one.certifies() ? "; certifies the report: only signatures may follow" : ""));
        lines.addAll(PlainText.lines("  by       ", "           ", one.subject() + ", SHA-256 " + one.fingerprint(), WIDTH));
        String covers = one.wholeFile() ? "covers the whole file" : "covers the file as it was when it was signed";
        lines.addAll(PlainText.lines("  result   ", "           ", one.isIntact()
                ? "unchanged since signing; " + one.identity().words() + "; " + covers
                : "NOT INTACT: " + String.join("; ", one.faults()), WIDTH));
        one.notes().forEach(note -> lines.addAll(PlainText.lines("  note     ", "           ", note, WIDTH)));
        return lines;
    }

    private static String time(Instant instant) {
        return TIME.format(instant.atZone(ZoneId.systemDefault()));
    }
}
