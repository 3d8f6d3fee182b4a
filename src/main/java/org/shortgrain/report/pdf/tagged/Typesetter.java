package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;

/** Turns blocks into pieces; a heading of the first level opens a section of the structure tree. */
final class Typesetter {

    private Typesetter() {
    }

    static List<Piece> pieces(List<Block> blocks, Setting setting) {
        List<Piece> pieces = new ArrayList<>();
        Setting here = setting;
        boolean newPage = false;
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            if (block instanceof Block.NewPage) {
                newPage = true;
                continue;
            }
            if (block instanceof Block.Heading heading && heading.level() == 1) {
                here = setting.in(setting.section().child("Sect"));
            }
            List<Piece> added = new ArrayList<>(set(block, here));
            if (i + 1 < blocks.size() && introduces(block, blocks.get(i + 1)) && !added.isEmpty()) {
                int last = added.size() - 1;
                added.set(last, added.get(last).holdingNext());
            }
            for (Piece piece : added) {
                pieces.add(newPage ? piece.onNewPage() : piece);
                newPage = false;
            }
        }
        return pieces;
    }

    /** A paragraph above a table, a list or small print speaks of it and stays with it. */
    private static boolean introduces(Block block, Block next) {
        return block instanceof Block.Paragraph paragraph
                && (next instanceof Block.Table || next instanceof Block.Items || next instanceof Block.Signatures
                || next instanceof Block.Paragraph small && small.tone() == Block.Tone.FINE
                        && paragraph.tone() != Block.Tone.FINE);
    }

    private static List<Piece> set(Block block, Setting setting) {
        if (block instanceof Block.Heading heading) {
            return ProseSetter.heading(heading, setting);
        } else if (block instanceof Block.Paragraph paragraph) {
            return ProseSetter.paragraph(paragraph, setting);
        } else if (block instanceof Block.Items items) {
            return ProseSetter.items(items, setting);
        } else if (block instanceof Block.Table table) {
            return TableSetter.pieces(table, setting);
        } else if (block instanceof Block.TitleBlock title) {
            return BoxSetter.titleBlock(title, setting);
        } else if (block instanceof Block.Callout callout) {
            return BoxSetter.callout(callout, setting);
        } else if (block instanceof Block.Verdict verdict) {
            return BoxSetter.verdict(verdict, setting);
        } else if (block instanceof Block.Picture picture) {
            return FigureSetter.pieces(picture, setting);
        } else if (block instanceof Block.Signatures signatures) {
            return SignatureSetter.pieces(signatures, setting);
        } else if (block instanceof Block.Contents contents) {
            return ProseSetter.contents(contents, setting);
        }
        throw new IllegalArgumentException("no setter for " + block.getClass());
    }
}
