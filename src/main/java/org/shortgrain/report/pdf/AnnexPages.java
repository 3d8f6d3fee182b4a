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

    private static Block values(Report report) {
        List<Block.Row> rows = new ArrayList<>();
        Set<String> named = new HashSet<>();
        for (StatedLine line : report.review().stated()) {
            Block.Row row = Block.Row.of(Block.Cell.of(line.path()), Block.Cell.of(line.value()),
                    Block.Cell.of(line.si()), Block.Cell.of(line.note()));
            rows.add(named.add(line.path()) ? row.named(Links.value(line.path())) : row);
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_PATH, 36), report.column(Label.COLUMN_ENTERED, 30),
                report.column(Label.COLUMN_SI, 14), report.column(Label.COLUMN_NOTE, 20)),
                Block.Headings.TOP_AND_SIDE, rows);
    }

    private static Block files(Report report) {
        List<Block.Row> rows = new ArrayList<>();
        for (Attachment file : report.attachments()) {
            rows.add(Block.Row.of(Block.Cell.of(file.name()), Block.Cell.of(file.description()),
                    Block.Cell.of(Text.EMPTY.mono(sha256(file.bytes())))));
        }
        return new Block.Table(List.of(report.column(Label.COLUMN_FILE, 17), report.column(Label.COLUMN_DESCRIPTION, 16),
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
