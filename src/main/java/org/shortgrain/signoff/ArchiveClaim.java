package org.shortgrain.signoff;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a report claims to be in its metadata (XMP): PDF/A (ISO 19005) and PDF/UA (ISO 14289). A claim is no proof: an
 * independent validator of these standards says whether it is kept.
 */
final class ArchiveClaim {

    private static final Pattern ARCHIVE = Pattern.compile("<pdfaid:part>(\\d)</pdfaid:part>");
    private static final Pattern CONFORMANCE = Pattern.compile("<pdfaid:conformance>([ABU])</pdfaid:conformance>");
    private static final Pattern ACCESS = Pattern.compile("<pdfuaid:part>(\\d)</pdfuaid:part>");

    private ArchiveClaim() {
    }

    static List<String> in(byte[] packet) {
        String text = new String(packet, StandardCharsets.UTF_8);
        List<String> claims = new ArrayList<>();
        Matcher archive = ARCHIVE.matcher(text);
        Matcher conformance = CONFORMANCE.matcher(text);
        if (archive.find() && conformance.find()) {
            claims.add("PDF/A-" + archive.group(1) + conformance.group(1).toLowerCase(Locale.ROOT));
        }
        Matcher access = ACCESS.matcher(text);
        if (access.find()) {
            claims.add("PDF/UA-" + access.group(1));
        }
        return List.copyOf(claims);
    }
}
