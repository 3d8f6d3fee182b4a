package org.shortgrain.rulebook;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Which accessors of the description's records some compiled classes call, read off the constant pools of the class files
 * (Java Virtual Machine Specification, section 4.4): calls and method references both stand there as method entries.
 *
 * <p>Own code: the libraries that read class files are on the test class path only, where a test holds this against one.
 */
final class AccessorCalls {
    private static final String RECORDS = "org/shortgrain/part/";
    /** Length of the file's beginning before the pool: magic number and version (bytes). */
    private static final int HEAD = 8;
    private static final byte TEXT = 1;
    private static final byte LONG = 5;
    private static final byte DOUBLE = 6;
    private static final byte METHOD = 10;

    private final String[] texts;
    private final int[] first;
    private final int[] second;
    private final byte[] tags;

    private AccessorCalls(DataInputStream in) throws IOException {
        in.skipNBytes(HEAD);
        int count = in.readUnsignedShort();
        texts = new String[count];
        first = new int[count];
        second = new int[count];
        tags = new byte[count];
        for (int i = 1; i < count; i++) {
            tags[i] = in.readByte();
            i += read(in, i);
        }
    }

    /**
     * {@return the calls of accessors, as {@code Fit.hole}, in the alphabet's order}
     *
     * @param folders folders of class files; those that do not exist are passed over
     * @param except  simple names of classes that do not count
     */
    static Set<String> in(List<Path> folders, Set<String> except) throws IOException {
        Set<String> calls = new TreeSet<>();
        for (Path folder : folders.stream().filter(Files::isDirectory).toList()) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(path -> counts(path.getFileName().toString(), except)).toList()) {
                    try (DataInputStream in = new DataInputStream(new BufferedInputStream(
                            Files.newInputStream(file)))) {
                        new AccessorCalls(in).collect(calls);
                    }
                }
            }
        }
        return calls;
    }

    private static boolean counts(String file, Set<String> except) {
        return file.endsWith(".class") && !except.contains(file.replaceFirst("(\\$.*)?\\.class$", ""));
    }

    /** Reads an entry and answers how many further places of the pool it takes. */
    private int read(DataInputStream in, int index) throws IOException {
        switch (tags[index]) {
            case TEXT -> texts[index] = in.readUTF();
            case 3, 4 -> in.skipNBytes(4);
            case LONG, DOUBLE -> in.skipNBytes(8);
            case 7, 8, 16, 19, 20 -> first[index] = in.readUnsignedShort();
            case 9, METHOD, 11, 12, 17, 18 -> {
                first[index] = in.readUnsignedShort();
                second[index] = in.readUnsignedShort();
            }
            case 15 -> in.skipNBytes(3);
            default -> throw new IOException("unknown tag " + tags[index] + " in a class file");
        }
        return tags[index] == LONG || tags[index] == DOUBLE ? 1 : 0;
    }

    private void collect(Set<String> calls) {
        for (int i = 1; i < tags.length; i++) {
            if (tags[i] == METHOD) {
                String owner = texts[first[first[i]]];
                String method = texts[first[second[i]]];
                if (owner.startsWith(RECORDS)) {
                    calls.add(owner.substring(RECORDS.length()) + "." + method);
                }
            }
        }
    }
}
