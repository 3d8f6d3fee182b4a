package org.shortgrain.part.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shortgrain.part.Minimum;
import org.shortgrain.reference.ReferenceTables;
import org.shortgrain.reference.RulebookWords;

class BlankDescriptionTest {
    private static final PartReader READER = new PartReader(new RulebookWords(ReferenceTables.builtIn()));

    static Set<String> kinds() {
        return BlankDescription.kinds().keySet();
    }

    private static Reading read(String text) {
        return READER.read("blank.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    private static String text(String kind) {
        return BlankDescription.text(kind).orElseThrow();
    }

    @Test
    void everyTemplateIsInTheIndex() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("templates"))) {
            Set<String> blanks = files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.replace(".yaml", "")).collect(Collectors.toSet());
            assertEquals(blanks, kinds());
        }
    }

    @Test
    void anUnknownKindHasNoBlank() {
        assertTrue(BlankDescription.text("../schema/part-description.schema.json").isEmpty());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aBlankIsReadAndLeavesOnlyQuestions(String kind) {
        Reading.Read read = (Reading.Read) read(text(kind));
        assertEquals(List.of(), read.warnings());
        List<Missing> missing = new MinimumSet().of(read.description());
        assertFalse(missing.isEmpty());
        assertTrue(missing.stream().noneMatch(field -> field.role() == Minimum.Role.REFUSED));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aBlankAsksForEveryFieldOfTheMinimumSet(String kind) {
        Reading.Read read = (Reading.Read) read(text(kind));
        assertEquals(List.of(), new MinimumSet().of(read.description()).stream()
                .filter(field -> field.state() != Missing.State.UNKNOWN).toList());
    }

    /** Keys in comments: one or two characters, then a key with a value. */
    @ParameterizedTest
    @MethodSource("kinds")
    void theCommentedExamplesAreReadAsWell(String kind) {
        String text = text(kind);
        String examples = text.substring(text.indexOf("schema: 1"));
        for (String group : List.of("loads", "drainage", "fit", "clamp_up", "neighbours", "route")) {
            boolean shown = examples.contains("# " + group + ":");
            examples = shown ? examples.replaceAll("(?m)^( *)" + group + ": (unknown|none).*\n", "") : examples;
        }
        examples = examples.replaceAll("(?m)^( *)# ", "$1");
        Reading reading = read(examples);
        assertTrue(reading instanceof Reading.Read, () -> Problem.text(((Reading.Refused) reading).problems()));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theFirstLineTellsEditorsTheSchema(String kind) {
        assertTrue(text(kind).startsWith("# yaml-language-server: $schema=" + PartSchema.FILE_NAME + "\n"));
        assertEquals(List.of(), SchemaTest.refusals(text(kind)));
        assertTrue(text(kind).lines().allMatch(line -> line.length() <= 120));
    }
}
