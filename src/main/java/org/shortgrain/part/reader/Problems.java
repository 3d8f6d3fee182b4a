package org.shortgrain.part.reader;

import java.util.ArrayList;
import java.util.List;
import org.shortgrain.part.Location;

/** Collects what is wrong with one file. */
final class Problems {
    private final String file;
    private final List<Problem> all = new ArrayList<>();

    Problems(String file) {
        this.file = file;
    }

    void add(ProblemCode code, Location at, Object... values) {
        all.add(Problem.of(code, file, at, values));
    }

    boolean refuse() {
        for (Problem problem : all) {
            if (!problem.code().isWarning()) {
                return true;
            }
        }
        return false;
    }

    boolean standAt(String path) {
        return all.stream().anyMatch(problem -> !problem.code().isWarning() && problem.at().path().equals(path));
    }

    List<Problem> inFileOrder() {
        return all.isEmpty() ? List.of() : all.stream().sorted(Problem.IN_FILE_ORDER).toList();
    }
}
