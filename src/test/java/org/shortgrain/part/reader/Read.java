package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.shortgrain.part.PartDescription;

/** Short ways to read in tests. */
final class Read {
    /** Descriptions that show every key of the form. */
    static final Path WHOLE_FORM = Path.of("src/test/resources/part/whole-form.yaml");
    private static final String IDENTITY = "schema: 1\npart: {number: EX-1}\n";

    private Read() {
    }

    static Reading file(Path file) {
        return new PartReader(new FewWords()).read(file);
    }

    static Reading text(String yaml) {
        return new PartReader(new FewWords()).read("part.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    }

    /** Reads lines that follow a schema and a part number, which are the first two lines. */
    static PartDescription lines(String yaml) {
        return description(text(IDENTITY + yaml));
    }

    static PartDescription description(Reading reading) {
        if (reading instanceof Reading.Refused refused) {
            return fail(Problem.text(refused.problems()));
        }
        return ((Reading.Read) reading).description();
    }

    static List<Problem> problems(Reading reading) {
        return reading instanceof Reading.Refused refused ? refused.problems()
                : fail("nothing was refused");
    }

    /** The only problem with lines that follow a schema and a part number. */
    static String problem(String yaml) {
        return only(text(IDENTITY + yaml));
    }

    static String only(Reading reading) {
        List<Problem> problems = problems(reading);
        return problems.size() == 1 ? problems.get(0).text() : fail(Problem.text(problems));
    }

    static List<Problem> warnings(String yaml) {
        return text(IDENTITY + yaml) instanceof Reading.Read read ? read.warnings() : fail("refused");
    }
}
