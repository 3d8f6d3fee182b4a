package org.shortgrain.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.shortgrain.part.reader.PartReader;
import org.shortgrain.part.reader.Reading;
import org.shortgrain.review.Review;
import org.shortgrain.review.RouteLine;

class RouteProposalTest {

    private static final Knowledge KNOWLEDGE = Knowledge.shipped();
    private static final Reviewer REVIEWER = new Reviewer(KNOWLEDGE, Wording.shipped(), "test");
    private static final String ROUTE = "(?s)route:\n.*?route_complete";
    /** Operations that the table of orders ties to one another, for aluminium. */
    private static final List<String> OPERATIONS = List.of("solution_heat_treat", "quench", "straighten", "age",
            "finish_machine", "penetrant", "shot_peen", "anodize", "prime", "install_bushing", "assemble", "seal");

    /** The strut fitting with another card. */
    private static List<RouteLine> card(List<String> operations) throws IOException {
        String rows = IntStream.range(0, operations.size())
                .mapToObj(i -> "  - {op: \"" + (i + 1) * 10 + "\", do: " + operations.get(i) + "}\n")
                .collect(Collectors.joining());
        String text = Files.readString(Path.of("sample-reviews", "strut-end-fitting.yaml"))
                .replaceFirst(ROUTE, "route:\n" + rows + "route_complete");
        Reading.Read read = (Reading.Read) new PartReader(KNOWLEDGE.vocabularies()).read("part.yaml",
                text.getBytes(StandardCharsets.UTF_8));
        return REVIEWER.review(read.description(), new Review.InputId("part.yaml", read.source().sha256()), read.paths(),
                "2026-01-15").route();
    }

    private static List<String> proposed(List<RouteLine> route) {
        return route.stream().sorted(Comparator.comparingInt(RouteLine::proposed)).map(RouteLine::operation).toList();
    }

    /** MIL-STD-1568C 5.7.6 and MIL-DTL-5002E 3.4 want the bath before the joint; the pair is O18 of the table. */
    @Test
    void aBathAfterTheBushingMovesBeforeIt() throws IOException {
        assertEquals(List.of("finish_machine", "anodize", "install_bushing", "prime"),
                proposed(card(List.of("finish_machine", "install_bushing", "anodize", "prime"))));
    }

    @Test
    void aCardInOrderIsLeftAlone() throws IOException {
        List<String> good = List.of("solution_heat_treat", "quench", "straighten", "age", "finish_machine", "penetrant",
                "shot_peen", "anodize", "prime", "install_bushing", "seal");
        assertEquals(good, proposed(card(good)));
    }

    /** Forty shuffles with fixed seeds: what is proposed holds every operation once and is itself left alone. */
    @Test
    void aProposalKeepsEveryOperationAndNeedsNoOther() throws IOException {
        Random random = new Random(20260115);
        int changed = 0;
        for (int i = 0; i < 40; i++) {
            List<String> shuffled = new ArrayList<>(OPERATIONS);
            Collections.shuffle(shuffled, random);
            List<String> proposed = proposed(card(shuffled));
            assertEquals(shuffled.stream().sorted().toList(), proposed.stream().sorted().toList());
            assertEquals(proposed, proposed(card(proposed)), shuffled.toString());
            assertTrue(proposed.indexOf("anodize") < proposed.indexOf("install_bushing"), proposed.toString());
            assertTrue(proposed.indexOf("straighten") < proposed.indexOf("age"), proposed.toString());
            changed += proposed.equals(shuffled) ? 0 : 1;
        }
        assertTrue(changed > 30, changed + " of 40 shuffles were put right");
    }
}
