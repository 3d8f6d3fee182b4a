package org.shortgrain.part.reader;

import java.util.List;
import org.shortgrain.part.PartDescription;

/** What came of reading a file: a description, or the problems that stand against it. */
public sealed interface Reading {

    /**
     * The file was read.
     *
     * @param description what it says
     * @param warnings    what should be looked at, in the order of the file
     * @param source      the file itself
     * @param paths       JSON pointer of every key and list item that stands in it, in the order of the file
     */
    record Read(PartDescription description, List<Problem> warnings, SourceFile source, List<String> paths)
            implements Reading {
        /** Copies the lists. */
        public Read {
            warnings = List.copyOf(warnings);
            paths = List.copyOf(paths);
        }
    }

    /**
     * The file was not read.
     *
     * @param problems why, in the order of the file; warnings are among them
     */
    record Refused(List<Problem> problems) implements Reading {
        /** Copies the list. */
        public Refused {
            problems = List.copyOf(problems);
        }

        /** {@return whether there was nothing to read at all} */
        public boolean isInputMissing() {
            return problems.stream().anyMatch(problem -> problem.code().isInputMissing());
        }
    }
}
