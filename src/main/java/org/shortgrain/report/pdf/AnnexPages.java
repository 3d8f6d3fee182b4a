package org.shortgrain.report.pdf;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.shortgrain.report.pdf.tagged.Attachment;
import org.shortgrain.report.pdf.tagged.Attachment.Relationship;
import org.shortgrain.report.pdf.tagged.Block;
import org.shortgrain.report.pdf.tagged.Text;
import org.shortgrain.review.StatedLine;

/** The description as it was handed in, its values as read, and the files that the document carries. */
final class AnnexPages {

    private static final int VALUE_COLUMNS = 4;

    private AnnexPages() {
    }

    static List<Block> blocks(Report report) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(report.heading(Section.ANNEX_DESCRIPTION));
        report.attachments().stream().filter(file -> file.relationship() == Relationship.SOURCE)
                .forEach(file -> blocks.add(listing(file)));
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

    private static Block listing(Attachment file) {
        return new Block.Listing(new String(file.bytes(), StandardCharsets.UTF_8).lines().toList());
    }

    /** Two values in a row, read along the rows: a list of a hundred short values. */
    private static Block values(Report report) {
        List<StatedLine> lines = report.review().stated();
        Set<String> named = new HashSet<>();
        List<Block.Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i += 2) {
            List<Block.Cell> cells = new ArrayList<>();
            List<String> anchors = new ArrayList<>();
            for (StatedLine line : lines.subList(i, Math.min(lines.size(), i + 2))) {
                cells.add(Block.Cell.of(line.path()));
                cells.add(value(report, line));
                if (named.add(line.path())) {
                    anchors.add(Links.value(line.path()));
                }
            }
            while (cells.size() < VALUE_COLUMNS) {
                cells.add(new Block.Cell(List.of()));
            }
            rows.add(new Block.Row(cells, anchors));
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_PATH, 28), report.column(Label.COLUMN_ENTERED, 22),
                report.column(Label.COLUMN_PATH, 28), report.column(Label.COLUMN_ENTERED, 22)), Block.Headings.TOP,
                rows);
    }

    private static Block.Cell value(Report report, StatedLine line) {
        List<Text> texts = new ArrayList<>();
        texts.add(line.si().isEmpty() ? Text.of(line.value())
                : report.say(Label.IN_SI, Text.of(line.value()), Text.of(line.si())));
        if (!line.note().isEmpty()) {
            texts.add(Text.EMPTY.italic(line.note()));
        }
        return new Block.Cell(texts);
    }

    private static Block files(Report report) {
        List<Block.Row> rows = new ArrayList<>();
        for (Attachment file : report.attachments()) {
            rows.add(Block.Row.of(Block.Cell.of(file.name()), Block.Cell.of(file.description()),
                    Block.Cell.of(Text.EMPTY.mono(sha256(file.bytes())))));
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_FILE, 18), report.column(Label.COLUMN_DESCRIPTION, 15),
                report.column(Label.COLUMN_HASH, 67)), Block.Headings.TOP_AND_SIDE, rows);
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
