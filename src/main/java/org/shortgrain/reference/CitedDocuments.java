package org.shortgrain.reference;

import java.util.ArrayList;
import java.util.List;

/** The documents that rows cite, noted while tables are read and checked once the list of documents is read too. */
final class CitedDocuments {
    private final List<Cited> noted = new ArrayList<>();

    private record Cited(String id, String file, long line) {
    }

    synchronized void add(String id, String file, long line) {
        noted.add(new Cited(id, file, line));
    }

    /** Notes a fault for each row that cites a document that is not listed. */
    synchronized void check(Sources listed, Faults faults) {
        for (Cited cited : noted) {
            if (!listed.has(cited.id())) {
                faults.add(cited.file(), cited.line(), "source '" + cited.id() + "' is not in " + Sources.FILE);
            }
        }
        noted.clear();
    }
}
