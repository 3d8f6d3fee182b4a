package org.shortgrain.report.pdf.tagged;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shortgrain.report.pdf.figure.Figure;
import org.shortgrain.report.pdf.figure.SampleFigures;
import org.shortgrain.report.pdf.tagged.Block.Cell;
import org.shortgrain.report.pdf.tagged.Block.Column;
import org.shortgrain.report.pdf.tagged.Block.Field;
import org.shortgrain.report.pdf.tagged.Block.Headings;
import org.shortgrain.report.pdf.tagged.Block.Row;
import org.shortgrain.report.pdf.tagged.Block.Tone;
import org.shortgrain.report.pdf.tagged.Inline.Frame;

/** An invented document that asks everything of the writer: long, wide, many-lettered, cross-linked. */
final class StressDocument {

    static final int FINDINGS = 60;
    static final String LONG_NAME = "EX-2001-7/" + "Hinge_fitting-outboard.left-hand+".repeat(5) + "ENDOFNAME".repeat(3);
    static final String HASH = "3f2a91bc77d01e45a0c2".repeat(4).substring(0, 64);

    private StressDocument() {
    }

    static Metadata metadata() {
        return new Metadata("Stress-corrosion review of EX-2001-7", "M&P checker <invented>",
                "A document made to test the writer", "stress corrosion, review", "en-GB", "Shortgrain test",
                OffsetDateTime.of(2026, 1, 15, 10, 30, 0, 0, ZoneOffset.ofHours(1)), HASH);
    }

    static Manuscript manuscript(Paper paper) {
        return new Manuscript(metadata(),
                new Running("Stress-corrosion review " + LONG_NAME, "SUPPLIER PRE-CHECK", "content 3f2a91bc77d01e45",
                        "SR-EX-2001 issue 1, 2026-01-15", "page {page} of {pages}"),
                paper, blocks(), attachments());
    }

    private static List<Attachment> attachments() {
        return List.of(
                new Attachment("part.yaml", "application/x-yaml", "part description",
                        Attachment.Relationship.SOURCE, "schema: 1\n".getBytes(StandardCharsets.UTF_8)),
                new Attachment("findings.json", "application/json", "review in full precision",
                        Attachment.Relationship.DATA, "{}\n".getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        firstPage(blocks);
        findings(blocks);
        calculations(blocks);
        figures(blocks);
        annex(blocks);
        return blocks;
    }

    private static void firstPage(List<Block> blocks) {
        blocks.add(new Block.Heading(1, Text.of("Stress-corrosion review"), "top"));
        blocks.add(new Block.TitleBlock(3, List.of(
                new Field("part number", Text.of(LONG_NAME)), new Field("revision", Text.of("C")),
                new Field("name", Text.of("Beschlag, Scharnier \u00e4u\u00dferes; charni\u00e8re \u03b1\u03b2\u03b3")),
                new Field("report", Text.of("SR-EX-2001")), new Field("issue", Text.of("1")),
                new Field("date", Text.of("2026-01-15")), new Field("content hash", Text.EMPTY.mono(HASH)))));
        blocks.add(new Block.Verdict("OBJECTION", Frame.SOLID,
                Text.of("Material, stress and environment meet at 2 of 12 features. ").bold("Sign-off stops ")
                        .plain("until the findings ").link("F-001", "F-001").plain(" and ").link("F-002", "F-002")
                        .plain(" (page ").pageOf("F-002").plain(") are answered.")));
        blocks.add(new Block.Verdict("CANNOT BE JUDGED", Frame.DASHED, Text.of("One decisive question is open.")));
        blocks.add(new Block.Verdict("NO OBJECTION SUBJECT TO CONDITIONS", Frame.HEAVY, Text.of("Two conditions.")));
        blocks.add(new Block.Verdict("NO OBJECTION FROM THE RULES APPLIED", Frame.THIN, Text.of("Limits apply.")));
        blocks.add(new Block.Paragraph(Text.of("A lead paragraph says what everybody must know about this part."),
                Tone.LEAD));
        blocks.add(new Block.Paragraph(Text.of("Grades: ").badge("OBJECTION", Frame.SOLID).plain(" ")
                .badge("CONDITION", Frame.HEAVY).plain(" ").badge("ADVICE", Frame.THIN).plain(" ")
                .badge("QUESTION", Frame.DASHED).plain(" and then text goes on with \u03c3 \u2264 0.5 ")
                .italic("R").plain("\u2080\u2082, K\u209c = 1.8, \u00b15 \u00b0C, 25 \u00b5m, \u2300 9.5 mm, "
                        + "and a pair of letters that could tie, fi and fl, in a fit."), Tone.BODY));
        blocks.add(new Block.Callout("CAUTION", Frame.HEAVY, List.of(
                Text.of("This review is a screening made by software from the data listed in it. It is advice. "
                        + "It does not approve a design, a repair, a part or a flight."),
                Text.of("No finding does not mean no risk: what was not declared was not judged. ".repeat(6)))));
        blocks.add(new Block.Contents(List.of(new Block.Entry("Findings", "findings"),
                new Block.Entry("Calculations", "calculations"), new Block.Entry("Annex", "annex"))));
    }

    private static void findings(List<Block> blocks) {
        blocks.add(new Block.Heading(1, Text.of("Findings"), "findings"));
        for (int i = 1; i <= FINDINGS; i++) {
            String id = String.format(Locale.ROOT, "F-%03d", i);
            blocks.add(new Block.Heading(2, Text.of(id + "  ").badge("OBJECTION", Frame.SOLID)
                    .plain("  Sustained tension above the threshold at feature GROOVE-" + i), id));
            List<Row> rows = new ArrayList<>();
            rows.add(Row.of(Cell.of("Evidence"), new Cell(List.of(
                    Text.EMPTY.mono("/features/" + i + "/fit/hole").plain(" line 31, drawing note 4"),
                    Text.of("Hole 19.00 mm to 19.02 mm, bush 19.05 mm to 19.06 mm, steel in 7075-T6.")))));
            rows.add(Row.of(Cell.of("Why"), Cell.of(Text.of("The bore keeps " + (90 + i) + " MPa of hoop tension for "
                    + "life. ".repeat(1 + i % 7)).link("Calculation C-01", "C-01").plain(", page ").pageOf("C-01"))));
            rows.add(Row.of(Cell.of("Remedies"), Cell.of("Over-age to T73; or ream and fit the bush with less "
                    + "interference; each needs a stress check. ".repeat(1 + i % 3))));
            blocks.add(new Block.Table(List.of(Column.text("", 18), Column.text("", 82)), Headings.SIDE, rows));
        }
    }

    private static void calculations(List<Block> blocks) {
        blocks.add(new Block.Heading(1, Text.of("Calculations"), "calculations"));
        blocks.add(new Block.Heading(2, Text.of("C-01 Hoop stress of the fit"), "C-01"));
        for (int t = 0; t < 6; t++) {
            List<Row> rows = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                rows.add(Row.of(Cell.of(Text.EMPTY.italic("d").plain("" + i)), Cell.of("diameter of the hole number " + i
                                + (i == 5 ? " " + LONG_NAME : "")),
                        Cell.of("19." + i), Cell.of("mm"), Cell.of("specified, /features/0/fit"),
                        Cell.of(Text.EMPTY.link("S-3", "sources"))));
            }
            blocks.add(new Block.Paragraph(Text.of("Inputs of the equation in their order, table " + t), Tone.BODY));
            blocks.add(new Block.Table(List.of(Column.text("symbol", 8), Column.text("meaning", 34),
                    Column.number("value", 12), Column.text("unit", 8), Column.text("origin", 26),
                    Column.text("source", 12)), Headings.TOP_AND_SIDE, rows));
        }
        blocks.add(new Block.Heading(3, Text.of("A row higher than a page"), "high-row"));
        blocks.add(new Block.Table(List.of(Column.text("item", 20), Column.text("text", 80)), Headings.TOP,
                List.of(Row.of(Cell.of("long text"), Cell.of("The quick brown fox reads the planning card. ".repeat(150))),
                        Row.of(Cell.of("short"), Cell.of("end")))));
        blocks.add(new Block.Heading(1, Text.of("Sources"), "sources"));
        blocks.add(new Block.Items(true, List.of(Text.of("ASTM G64, read."), Text.of("Lam\u00e9, derived. ".repeat(20)))));
        blocks.add(new Block.Items(false, List.of(Text.of("one"), Text.of("two"))));
    }

    private static void figures(List<Block> blocks) {
        blocks.add(new Block.Heading(1, Text.of("Figures"), "figures"));
        int number = 1;
        for (Figure figure : SampleFigures.all()) {
            blocks.add(new Block.Picture("Figure " + number, figure, "figure-" + number));
            number++;
        }
    }

    private static void annex(List<Block> blocks) {
        blocks.add(new Block.Heading(1, Text.of("Signatures"), "signatures"));
        List<Block.Slot> slots = new ArrayList<>();
        for (String role : List.of("Prepared", "Checked", "MpReview", "StressReview", "Quality", "Approved")) {
            slots.add(new Block.Slot("sig" + role, role, "I ran the tool and own the input listed in section 4.",
                    "Not signed. Field sig" + role + ", for a digital signature or for ink."));
        }
        blocks.add(new Block.Signatures(slots));
        blocks.add(new Block.NewPage());
        blocks.add(new Block.Heading(1, Text.of("Annex: input"), "annex"));
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < 90; i++) {
            lines.add("  - {op: \"" + i + "\", do: solution_heat_treat, temperature: 470 degC}" + (i == 9 ? LONG_NAME : ""));
        }
        lines.set(3, "");
        lines.add("hidden \u202e turned, tab \t, bell \u0007, emoji \ud83d\ude00, CJK \u4e2d");
        lines.forEach(line -> blocks.add(new Block.Paragraph(Text.EMPTY.mono(line), Block.Tone.FINE)));
    }
}
