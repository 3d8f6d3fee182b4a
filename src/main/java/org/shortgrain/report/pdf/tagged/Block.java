package org.shortgrain.report.pdf.tagged;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.shortgrain.report.pdf.figure.Figure;

/** A block of the document, set below the one before. */
public sealed interface Block {

    /**
     * A heading; also a bookmark.
     *
     * @param level   1 to 3; a level may only follow itself, a lower one, or the one above
     * @param text    the heading
     * @param anchors the names by which links reach it
     */
    record Heading(int level, Text text, List<String> anchors) implements Block {
        private static final int DEEPEST = 3;

        /** Refuses levels that have no form. */
        public Heading {
            if (level < 1 || level > DEEPEST) {
                throw new IllegalArgumentException("no heading of level " + level);
            }
            Objects.requireNonNull(text, "text");
            anchors = List.copyOf(anchors);
        }

        /**
         * A heading under one name.
         *
         * @param level  its level
         * @param text   the heading
         * @param anchor the name by which links reach it
         */
        public Heading(int level, Text text, String anchor) {
            this(level, text, List.of(anchor));
        }
    }

    /** Purpose of a paragraph. */
    enum Tone {
        /** Running text. */
        BODY,
        /** Larger text for the few sentences that everyone reads. */
        LEAD,
        /** Notes. */
        SMALL,
        /** What is looked up rather than read: small letters across the whole page. */
        FINE
    }

    /**
     * A paragraph.
     *
     * @param text the text
     * @param tone its purpose
     */
    record Paragraph(Text text, Tone tone) implements Block {
        /** Refuses missing parts. */
        public Paragraph {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(tone, "tone");
        }
    }

    /**
     * A list.
     *
     * @param numbered whether the items are counted
     * @param items    the items
     * @param tone     its purpose
     */
    record Items(boolean numbered, List<Text> items, Tone tone) implements Block {
        /** Copies the list. */
        public Items {
            items = List.copyOf(items);
            Objects.requireNonNull(tone, "tone");
        }

        /**
         * A list in running text.
         *
         * @param numbered whether the items are counted
         * @param items    the items
         */
        public Items(boolean numbered, List<Text> items) {
            this(numbered, items, Tone.BODY);
        }
    }

    /** How the text of a column lies. */
    enum Align {
        /** Ragged right. */
        LEFT,
        /** Ragged left, for numbers. */
        RIGHT
    }

    /**
     * A column of a table.
     *
     * @param title heading, may be empty letters only in a table without headings
     * @param share share of the width, against the other columns
     * @param align how its text lies
     */
    record Column(String title, double share, Align align) {
        /** Refuses columns without width. */
        public Column {
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(align, "align");
            if (!(share > 0)) {
                throw new IllegalArgumentException("column share " + share);
            }
        }

        /**
         * {@return a column of text}
         *
         * @param title heading
         * @param share share of the width
         */
        public static Column text(String title, double share) {
            return new Column(title, share, Align.LEFT);
        }

        /**
         * {@return a column of numbers}
         *
         * @param title heading
         * @param share share of the width
         */
        public static Column number(String title, double share) {
            return new Column(title, share, Align.RIGHT);
        }
    }

    /**
     * A cell.
     *
     * @param paragraphs its paragraphs; none for an empty cell
     */
    record Cell(List<Text> paragraphs) {
        /** Copies the list. */
        public Cell {
            paragraphs = List.copyOf(paragraphs);
        }

        /**
         * {@return a cell of one paragraph}
         *
         * @param text the paragraph
         */
        public static Cell of(Text text) {
            return new Cell(List.of(text));
        }

        /**
         * {@return a cell of plain letters}
         *
         * @param text the letters
         */
        public static Cell of(String text) {
            return of(Text.of(text));
        }
    }

    /**
     * A row of a table.
     *
     * @param cells   one cell for each column
     * @param anchors names by which links reach it
     */
    record Row(List<Cell> cells, List<String> anchors) {
        /** Copies the lists. */
        public Row {
            cells = List.copyOf(cells);
            anchors = List.copyOf(anchors);
        }

        /**
         * {@return a row without a name}
         *
         * @param cells its cells
         */
        public static Row of(Cell... cells) {
            return new Row(List.of(cells), List.of());
        }

        /**
         * {@return the same row under names}
         *
         * @param names the names
         */
        public Row named(String... names) {
            return new Row(cells, List.of(names));
        }
    }

    /** How close the rows of a table stand. */
    enum Spacing {
        /** To be read from top to bottom. */
        OPEN,
        /** To be looked up. */
        DENSE
    }

    /** Where a table has its headings. */
    enum Headings {
        /** In the first row, repeated on each page. */
        TOP,
        /** In the first column. */
        SIDE,
        /** In both. */
        TOP_AND_SIDE
    }

    /**
     * A table.
     *
     * @param columns  its columns
     * @param headings where its headings are
     * @param rows     its rows
     * @param spacing  how close its rows stand
     */
    record Table(List<Column> columns, Headings headings, List<Row> rows, Spacing spacing) implements Block {
        /** Copies the lists and refuses ragged rows. */
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            Objects.requireNonNull(headings, "headings");
            Objects.requireNonNull(spacing, "spacing");
            for (Row row : rows) {
                if (row.cells().size() != columns.size()) {
                    throw new IllegalArgumentException(
                            "a row of " + row.cells().size() + " cells in a table of " + columns.size() + " columns");
                }
            }
        }

        /**
         * A table to be read from top to bottom.
         *
         * @param columns  its columns
         * @param headings where its headings are
         * @param rows     its rows
         */
        public Table(List<Column> columns, Headings headings, List<Row> rows) {
            this(columns, headings, rows, Spacing.OPEN);
        }

        /** {@return the same table in small letters, its rows close together} */
        public Table dense() {
            return new Table(columns, headings, rows, Spacing.DENSE);
        }
    }

    /**
     * A labelled value.
     *
     * @param label the label
     * @param value the value
     */
    record Field(String label, Text value) {
        /** Refuses missing parts. */
        public Field {
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(value, "value");
        }
    }

    /**
     * A grid of small labelled boxes, as a drawing has in its corner.
     *
     * @param columns boxes side by side
     * @param fields  the boxes in reading order
     */
    record TitleBlock(int columns, List<Field> fields) implements Block {
        /** Copies the list. */
        public TitleBlock {
            fields = List.copyOf(fields);
            if (columns < 1) {
                throw new IllegalArgumentException("a title block of " + columns + " columns");
            }
        }
    }

    /**
     * A text that must not be overlooked.
     *
     * @param label      what it is, such as "Caution"
     * @param frame      how strongly it stands out
     * @param paragraphs the text
     */
    record Callout(String label, Inline.Frame frame, List<Text> paragraphs) implements Block {
        /** Copies the list. */
        public Callout {
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(frame, "frame");
            paragraphs = List.copyOf(paragraphs);
        }
    }

    /**
     * The one sentence of the document.
     *
     * @param word        the verdict in capitals
     * @param frame       its frame
     * @param explanation what it means here
     */
    record Verdict(String word, Inline.Frame frame, Text explanation) implements Block {
        /** Refuses missing parts. */
        public Verdict {
            Objects.requireNonNull(word, "word");
            Objects.requireNonNull(frame, "frame");
            Objects.requireNonNull(explanation, "explanation");
        }
    }

    /**
     * A figure with its number and conclusion above and its note below.
     *
     * @param label  number of the figure, such as "Figure 3"
     * @param figure the figure
     * @param anchor the name by which links reach it
     */
    record Picture(String label, Figure figure, String anchor) implements Block {
        /** Refuses missing parts. */
        public Picture {
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(figure, "figure");
            Objects.requireNonNull(anchor, "anchor");
        }
    }

    /**
     * A place for one signature.
     *
     * @param field       name of the signature field in the file
     * @param role        the role in the words of the reader
     * @param meaning     what signing in this role states
     * @param placeholder what stands in the box as long as nobody has signed
     */
    record Slot(String field, String role, String meaning, String placeholder) {
        /** Refuses missing parts. */
        public Slot {
            Objects.requireNonNull(field, "field");
            Objects.requireNonNull(role, "role");
            Objects.requireNonNull(meaning, "meaning");
            Objects.requireNonNull(placeholder, "placeholder");
        }
    }

    /**
     * Empty signature fields, made before the first signature so that signing changes nothing else.
     *
     * @param slots the fields in the order of signing
     */
    record Signatures(List<Slot> slots) implements Block {
        /** Copies the list. */
        public Signatures {
            slots = List.copyOf(slots);
        }
    }

    /**
     * One line of a table of contents.
     *
     * @param text   the heading
     * @param anchor where it leads
     */
    record Entry(String text, String anchor) {
        /** Refuses missing parts. */
        public Entry {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(anchor, "anchor");
        }
    }

    /**
     * A table of contents with page numbers.
     *
     * @param entries its lines
     */
    record Contents(List<Entry> entries) implements Block {
        /** Copies the list. */
        public Contents {
            entries = List.copyOf(entries);
        }

        /**
         * {@return the same with one more line at its end}
         *
         * @param entry the line
         */
        public Contents and(Entry entry) {
            List<Entry> more = new ArrayList<>(entries);
            more.add(entry);
            return new Contents(more);
        }
    }

    /** The next block begins on a new page. */
    record NewPage() implements Block {
    }
}
