package org.shortgrain.report.pdf.tagged;

/** The four faces of the report's one font family, DejaVu, embedded as subsets. */
public enum Face {
    /** Running text. */
    REGULAR("DejaVuSans.ttf"),
    /** Headings, labels, what must not be overlooked. */
    BOLD("DejaVuSans-Bold.ttf"),
    /** Symbols of equations, quoted wording. */
    OBLIQUE("DejaVuSans-Oblique.ttf"),
    /** Hashes, paths, input text. */
    MONO("DejaVuSansMono.ttf");

    private final String file;

    Face(String file) {
        this.file = file;
    }

    /** {@return the name of the font file on the class path, under {@code /fonts}} */
    String file() {
        return file;
    }
}
