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

    /** Columns that would stay empty are left out; two columns alone are set twice side by side. */
    private static Block values(Report report) {
        List<StatedLine> lines = report.review().stated();
        boolean si = lines.stream().anyMatch(line -> !line.si().isEmpty());
        boolean notes = lines.stream().anyMatch(line -> !line.note().isEmpty());
        Set<String> named = new HashSet<>();
        List<Block.Row> rows = new ArrayList<>();
        for (StatedLine line : lines) {
            List<Block.Cell> cells = new ArrayList<>(List.of(Block.Cell.of(line.path()), Block.Cell.of(line.value())));
            if (si) {
                cells.add(Block.Cell.of(line.si()));
            }
            if (notes) {
                cells.add(Block.Cell.of(line.note()));
            }
            rows.add(new Block.Row(cells, named.add(line.path()) ? List.of(Links.value(line.path())) : List.of()));
        }
        List<Block.Column> columns = new ArrayList<>(List.of(report.column(Label.COLUMN_PATH, 30),
                report.column(Label.COLUMN_ENTERED, 26)));
        if (si) {
            columns.add(report.column(Label.COLUMN_SI, 14));
        }
        if (notes) {
            columns.add(report.column(Label.COLUMN_NOTE, 20));
        }
        return si || notes ? new Block.Table(columns, Block.Headings.TOP_AND_SIDE, rows) : twoUp(columns, rows);
    }

    private static Block twoUp(List<Block.Column> columns, List<Block.Row> rows) {
        List<Block.Column> twice = new ArrayList<>(columns);
        twice.addAll(columns);
        List<Block.Row> pairs = new ArrayList<>();
        for (int i = 0; i < rows.size(); i += 2) {
            List<Block.Cell> cells = new ArrayList<>(rows.get(i).cells());
            List<String> anchors = new ArrayList<>(rows.get(i).anchors());
            if (i + 1 < rows.size()) {
                cells.addAll(rows.get(i + 1).cells());
                anchors.addAll(rows.get(i + 1).anchors());
            } else {
                columns.forEach(column -> cells.add(new Block.Cell(List.of())));
            }
            pairs.add(new Block.Row(cells, anchors));
        }
        return new Block.Table(twice, Block.Headings.TOP, pairs);
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
