package org.shortgrain.report.pdf;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shortgrain.report.pdf.tagged.Attachment;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.StatedLine;

/** The values of the description as read, and the files that the document carries; the description is among them. */
final class AnnexPages {

    /** Steps of a path down to a group within an item of a list, such as {@code features/0/fit}. */
    private static final int ITEM_DEPTH = 3;

    private AnnexPages() {
    }

    static List<Block> blocks(Report report) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.ANNEX_VALUES));
        blocks.add(report.paragraph(Sentence.ANNEX_VALUES_TEXT));
        if (!report.review().stated().isEmpty()) {
            blocks.add(values(report));
        }
        blocks.add(report.heading(Section.ANNEX_FILES));
        if (report.attachments().isEmpty()) {
            blocks.add(report.paragraph(Label.NONE_WORD));
        } else {
            blocks.add(files(report));
        }
        return blocks;
    }

    /** The values of one group of the description in a row, in the order entered. */
    private static Block values(Report report) {
        Map<String, List<StatedLine>> groups = new LinkedHashMap<>();
        for (StatedLine line : report.review().stated()) {
            String group = group(line.path());
            groups.putIfAbsent(group, new ArrayList<>());
            groups.get(group).add(line);
        }
        Set<String> named = new HashSet<>();
        List<Block.Row> rows = new ArrayList<>();
        for (Map.Entry<String, List<StatedLine>> group : groups.entrySet()) {
            List<String> anchors = new ArrayList<>();
            List<Text> values = new ArrayList<>();
            for (StatedLine line : group.getValue()) {
                if (named.add(line.path())) {
                    anchors.add(Links.value(line.path()));
                }
                values.add(value(report, group.getKey(), line));
            }
            rows.add(new Block.Row(List.of(Block.Cell.of(group.getKey()), Block.Cell.of(Links.joined(values, "; "))),
                    anchors));
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_PATH, 23), report.column(Label.COLUMN_ENTERED, 77)),
                Block.Headings.TOP_AND_SIDE, rows).dense();
    }

    /** {@return the place whose values stand together: a top-level key, an item of a list, or a group within an item} */
    private static String group(String path) {
        String[] steps = path.substring(1).split("/");
        boolean item = steps.length > 1 && Character.isDigit(steps[1].charAt(0));
        int kept = !item ? 1 : steps.length > ITEM_DEPTH ? ITEM_DEPTH : 2;
        return "/" + String.join("/", List.of(steps).subList(0, kept));
    }

    private static Text value(Report report, String group, StatedLine line) {
        String key = line.path().substring(Math.min(line.path().length(), group.length() + 1)).replace('/', ' ');
        Text text = Text.of(key + (key.isEmpty() ? "" : "\u00a0")).bold(line.value());
        if (!line.si().isEmpty() && !units(line.si()).equals(units(line.value()))) {
            text = text.plain(" ").then(report.say(Label.IN_SI, Text.of(line.si())));
        }
        return line.note().isEmpty() ? text : text.plain(", ").italic(line.note());
    }

    /** {@return a value without its numbers, which is its units and the words between them} */
    private static String units(String value) {
        StringBuilder units = new StringBuilder();
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (!Character.isDigit(c) && " .+-".indexOf(c) < 0) {
                units.append(c);
            }
        }
        return units.toString();
    }

    private static Block files(Report report) {
        List<Block.Row> rows = new ArrayList<>();
        for (Attachment file : report.attachments()) {
            rows.add(Block.Row.of(Block.Cell.of(file.name()), Block.Cell.of(file.description()),
                    Block.Cell.of(Text.EMPTY.mono(sha256(file.bytes())))));
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_FILE, 18), report.column(Label.COLUMN_DESCRIPTION, 15),
                report.column(Label.COLUMN_HASH, 67)), Block.Headings.TOP_AND_SIDE, rows).dense();
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
