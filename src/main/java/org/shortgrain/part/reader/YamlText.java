package org.shortgrain.part.reader;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.shortgrain.part.Location;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * Bytes to YAML nodes with marks, and the refusal of everything that a description has no use for.
 *
 * <p>Nodes are only composed, never constructed: no tag can make an object, and what a scalar means is decided later,
 * by what is expected at its place.
 */
final class YamlText {
    /** Uses of aliases for groups and lists; a handful repeats a neighbour or two, more is an attack. */
    private static final int MOST_ALIASES = 20;
    /** The form of a description is some ten levels deep. */
    private static final int DEEPEST = 30;
    /** Nodes with all aliases followed; a long description has some thousand. */
    private static final int MOST_NODES = 100_000;
    private static final String FOREIGN_TAG = "Global tag is not allowed:";
    private static final char BYTE_ORDER_MARK = '\ufeff';

    private final Problems problems;

    YamlText(Problems problems) {
        this.problems = problems;
    }

    /** The one document of the file; empty if a problem was reported. */
    Optional<Node> compose(byte[] bytes) {
        Optional<String> text = decode(bytes);
        if (text.isEmpty() || !isPrintable(text.get())) {
            return Optional.empty();
        }
        Optional<Node> root = compose(text.get());
        return root.isPresent() && isFinite(root.get()) ? root : Optional.empty();
    }

    private Optional<String> decode(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            String octet = String.format(Locale.ROOT, "%02X", bytes[in.position()]);
            problems.add(ProblemCode.NOT_UTF8, place(text, text.length()), octet);
            return Optional.empty();
        }
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        return Optional.of(marked ? text.substring(1) : text);
    }

    private boolean isPrintable(String text) {
        int i = 0;
        while (i < text.length()) {
            int character = text.codePointAt(i);
            if (!StreamReader.isPrintable(character)) {
                problems.add(ProblemCode.CONTROL_CHARACTER, place(text, i), hex(character));
                return false;
            }
            i += Character.charCount(character);
        }
        return true;
    }

    static String hex(int character) {
        return String.format(Locale.ROOT, "%04X", character);
    }

    private Optional<Node> compose(String text) {
        LoaderOptions limits = new LoaderOptions();
        limits.setMaxAliasesForCollections(MOST_ALIASES);
        limits.setNestingDepthLimit(DEEPEST);
        limits.setAllowRecursiveKeys(false);
        limits.setCodePointLimit(PartReader.MOST_BYTES);
        try {
            StreamReader reader = new StreamReader(text);
            Node node = new Composer(new ParserImpl(reader, limits), new Resolver(), limits).getSingleNode();
            if (node == null || isNothing(node)) {
                problems.add(ProblemCode.EMPTY_FILE, new Location("", 1, 1));
                return Optional.empty();
            }
            return Optional.of(node);
        } catch (MarkedYAMLException e) {
            problems.add(malformed(e), place(e), explanation(e));
        } catch (YAMLException e) {
            unmarked(e);
        }
        return Optional.empty();
    }

    private static boolean isNothing(Node node) {
        return node instanceof ScalarNode scalar && scalar.isPlain() && scalar.getValue().isEmpty();
    }

    private static ProblemCode malformed(MarkedYAMLException e) {
        String problem = String.valueOf(e.getProblem());
        if (problem.contains("but found another document")) {
            return ProblemCode.SECOND_DOCUMENT;
        }
        if (problem.contains(FOREIGN_TAG)) {
            return ProblemCode.TAG;
        }
        return problem.contains("\\t(TAB)") ? ProblemCode.TAB : ProblemCode.NOT_YAML;
    }

    /** Where the fault shows; for a quote or bracket that is never closed, where it opens. */
    private static Location place(MarkedYAMLException e) {
        boolean neverClosed = String.valueOf(e.getProblem()).contains("end of stream") && e.getContextMark() != null;
        Mark mark = e.getProblemMark() == null || neverClosed ? e.getContextMark() : e.getProblemMark();
        return mark == null ? new Location("", 0, 0) : at("", mark);
    }

    private static String explanation(MarkedYAMLException e) {
        String problem = String.valueOf(e.getProblem()).strip().replaceAll("\\s+", " ");
        if (problem.startsWith(FOREIGN_TAG)) {
            return problem.substring(FOREIGN_TAG.length()).strip();
        }
        Mark begun = e.getContextMark();
        String context = e.getContext() == null || begun == null ? "" : ", %s begun in line %d, column %d".formatted(
                e.getContext().strip(), begun.getLine() + 1, begun.getColumn() + 1);
        return problem + context;
    }

    /** The two limits are reported by the parser without a place. */
    private void unmarked(YAMLException e) {
        String message = String.valueOf(e.getMessage());
        Location nowhere = new Location("", 0, 0);
        if (message.contains("aliases")) {
            problems.add(ProblemCode.TOO_MANY_ALIASES, nowhere, MOST_ALIASES);
        } else if (message.contains("Nesting Depth")) {
            problems.add(ProblemCode.TOO_DEEP, nowhere, DEEPEST);
        } else {
            problems.add(ProblemCode.NOT_YAML, nowhere, message.replaceAll("\\s+", " ").strip());
        }
    }

    /** Whether the tree can be walked: it has an end, and not too many nodes when its aliases are followed. */
    private boolean isFinite(Node root) {
        long nodes = new NodeCheck(problems).size(root);
        if (nodes > MOST_NODES && !problems.refuse()) {
            problems.add(ProblemCode.TOO_MANY_ALIASES, new Location("", 0, 0), MOST_ALIASES);
        }
        return nodes <= MOST_NODES;
    }

    static Location at(String path, Mark mark) {
        return new Location(path, mark.getLine() + 1, mark.getColumn() + 1);
    }

    private static Location place(String text, int index) {
        String before = text.substring(0, index);
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        int start = before.lastIndexOf('\n') + 1;
        return new Location("", line, 1 + before.codePointCount(start, before.length()));
    }
}
