package org.shortgrain.report.pdf.tagged;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colour profile that an archivable PDF must carry, made here so that it is the same on every machine and free of
 * others' rights: a three-component matrix profile for a display with the primaries of IEC 61966-2-1 (sRGB), adapted to
 * D50, in the format of ICC.1:2001-04 (version 2).
 */
final class SrgbProfile {

    private static final int HEADER = 128;
    private static final int TAG_ENTRY = 12;
    private static final int VERSION = 0x02100000;
    /** Stamp of the profile's form; a fixed date keeps the bytes the same. */
    private static final int[] MADE = {2026, 1, 1, 0, 0, 0};
    /** Media white D50 and the sRGB primaries adapted to it, CIE XYZ; ICC.1:2001-04, and the published sRGB matrices. */
    private static final double[] WHITE = {0.9642, 1.0, 0.8249};
    private static final double[] RED = {0.43607, 0.22249, 0.01392};
    private static final double[] GREEN = {0.38515, 0.71687, 0.09708};
    private static final double[] BLUE = {0.14307, 0.06061, 0.71410};
    private static final int CURVE_POINTS = 1024;
    private static final int CURVE_TOP = 0xFFFF;
    private static final double FIXED_ONE = 65536;

    private SrgbProfile() {
    }

    /** {@return the profile as it stands in a file} */
    static byte[] bytes() {
        byte[] curve = curve();
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", description("sRGB primaries, D50"));
        tags.put("cprt", text("No copyright is claimed"));
        tags.put("wtpt", colour(WHITE));
        tags.put("rXYZ", colour(RED));
        tags.put("gXYZ", colour(GREEN));
        tags.put("bXYZ", colour(BLUE));
        tags.put("rTRC", curve);
        tags.put("gTRC", curve);
        tags.put("bTRC", curve);
        return assembled(tags);
    }

    /** The three curves are one and the same array and are stored once. */
    private static byte[] assembled(Map<String, byte[]> tags) {
        Map<byte[], Integer> offsets = new LinkedHashMap<>(); // arrays are equal only to themselves, as wanted
        int end = HEADER + Integer.BYTES + tags.size() * TAG_ENTRY;
        for (byte[] data : tags.values()) {
            if (!offsets.containsKey(data)) {
                offsets.put(data, end);
                end += data.length;
            }
        }
        ByteBuffer file = ByteBuffer.allocate(end);
        writeHeader(file);
        file.position(HEADER).putInt(tags.size());
        for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
            byte[] data = tag.getValue();
            file.put(ascii(tag.getKey())).putInt(offsets.get(data)).putInt(data.length);
        }
        for (byte[] data : offsets.keySet()) {
            file.put(data);
        }
        return file.array();
    }

    private static void writeHeader(ByteBuffer file) {
        file.putInt(file.capacity()).putInt(0).putInt(VERSION);
        file.put(ascii("mntr")).put(ascii("RGB ")).put(ascii("XYZ "));
        for (int part : MADE) {
            file.putShort((short) part);
        }
        file.put(ascii("acsp"));
        int illuminant = 68;
        file.position(illuminant);
        putColour(file, WHITE);
    }

    private static byte[] curve() {
        ByteBuffer tag = ByteBuffer.allocate(3 * Integer.BYTES + CURVE_POINTS * Short.BYTES);
        tag.put(ascii("curv")).putInt(0).putInt(CURVE_POINTS);
        for (int i = 0; i < CURVE_POINTS; i++) {
            tag.putShort((short) Math.round(linear(i / (CURVE_POINTS - 1.0)) * CURVE_TOP));
        }
        return tag.array();
    }

    /** Transfer function of IEC 61966-2-1. */
    private static double linear(double encoded) {
        return encoded <= 0.04045 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4);
    }

    private static byte[] colour(double[] xyz) {
        ByteBuffer tag = ByteBuffer.allocate(5 * Integer.BYTES);
        tag.put(ascii("XYZ ")).putInt(0);
        putColour(tag, xyz);
        return tag.array();
    }

    private static void putColour(ByteBuffer buffer, double[] xyz) {
        for (double component : xyz) {
            buffer.putInt((int) Math.round(component * FIXED_ONE));
        }
    }

    private static byte[] text(String text) {
        ByteBuffer tag = ByteBuffer.allocate(padded(2 * Integer.BYTES + text.length() + 1));
        return tag.put(ascii("text")).putInt(0).put(ascii(text)).array();
    }

    private static byte[] description(String text) {
        int unicodeAndScriptParts = 2 * Integer.BYTES + Short.BYTES + 1 + 67;
        ByteBuffer tag = ByteBuffer.allocate(padded(3 * Integer.BYTES + text.length() + 1 + unicodeAndScriptParts));
        return tag.put(ascii("desc")).putInt(0).putInt(text.length() + 1).put(ascii(text)).array();
    }

    private static int padded(int length) {
        return (length + Integer.BYTES - 1) / Integer.BYTES * Integer.BYTES;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
