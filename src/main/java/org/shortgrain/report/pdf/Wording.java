package org.shortgrain.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shortgrain.report.pdf.tagged.Text;

/**
 * The report's wording, read from plain-text files and checked as a whole: an entry that is missing or not known, a
 * placeholder that is missing or not known, stop the report before the first page.
 *
 * <p>The substitution is our own. None of the libraries on board substitutes named placeholders: {@code MessageFormat}
 * numbers them and gives the apostrophe a meaning, and no template engine is worth its size for this. Values are set in
 * after the marks of the template were read, so that nothing in a part description can be taken for a mark.
 */
public final class Wording {

    private static final String FOLDER = "/templates/report/";
    private static final Map<String, Phrase[]> FILES = files();

    private final Map<Phrase, Template> templates = new HashMap<>();

    private Wording() {
    }

    private static Map<String, Phrase[]> files() {
        Map<String, Phrase[]> files = new LinkedHashMap<>();
        files.put("words.txt", Label.values());
        files.put("sections.txt", Sentence.values());
        files.put("signatures.txt", Signing.values());
        files.put("figures.txt", FigureWords.values());
        files.put("service.txt", ServiceWords.values());
        files.put("remedies.txt", RemedyWords.values());
        files.put("followup.txt", FollowUp.values());
        return files;
    }

    /** {@return the wording that the tool ships with} */
    public static Wording shipped() {
        Wording wording = new Wording();
        for (Map.Entry<String, Phrase[]> file : FILES.entrySet()) {
            wording.add(file.getKey(), shipped(FOLDER + file.getKey()), file.getValue());
        }
        return wording;
    }

    private static String shipped(String name) {
        try (InputStream file = Wording.class.getResourceAsStream(name)) {
            if (file == null) {
                throw new IllegalArgumentException("no " + name + " on the class path");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(name + " cannot be read", broken);
        }
    }

    /**
     * {@return a wording of one's own}
     *
     * @param folder folder with all the files that the shipped wording has
     * @throws IOException              if a file cannot be read
     * @throws IllegalArgumentException if an entry or a placeholder is missing or not known
     */
    public static Wording of(Path folder) throws IOException {
        Wording wording = new Wording();
        for (Map.Entry<String, Phrase[]> file : FILES.entrySet()) {
            wording.add(file.getKey(), Files.readString(folder.resolve(file.getKey())), file.getValue());
        }
        return wording;
    }

    private void add(String file, String text, Phrase[] phrases) {
        Map<String, Phrase> known = new HashMap<>();
        for (Phrase phrase : phrases) {
            known.put(phrase.key(), phrase);
        }
        for (Entry entry : entries(file, text)) {
            String where = file + ":" + entry.line();
            Phrase phrase = known.get(entry.key());
            if (phrase == null) {
                throw new IllegalArgumentException(where + ": no entry of the report is called [" + entry.key() + "]");
            }
            if (templates.put(phrase, Template.read(where, entry.paragraphs(), phrase.placeholders())) != null) {
                throw new IllegalArgumentException(where + ": [" + entry.key() + "] stands there a second time");
            }
        }
        for (Phrase phrase : phrases) {
            if (!templates.containsKey(phrase)) {
                throw new IllegalArgumentException(file + ": the entry [" + phrase.key() + "] is missing");
            }
        }
    }

    /**
     * An entry as it stands in a file.
     *
     * @param key        its name
     * @param line       the line of its name
     * @param paragraphs its words
     */
    private record Entry(String key, int line, List<String> paragraphs) {
    }

    /** An entry is its name in brackets and the lines below it; an empty line ends a paragraph, # begins a comment. */
    private static List<Entry> entries(String file, String text) {
        List<Entry> entries = new ArrayList<>();
        StringBuilder paragraph = new StringBuilder();
        int number = 0;
        for (String full : text.replace("\r\n", "\n").split("\n")) {
            number++;
            String line = full.stripTrailing();
            if (line.startsWith("#")) {
                continue;
            }
            boolean names = line.startsWith("[") && line.endsWith("]");
            if (line.isEmpty() || names) {
                end(paragraph, entries);
            }
            if (names) {
                entries.add(new Entry(line.substring(1, line.length() - 1), number, new ArrayList<>()));
            } else if (line.startsWith("[") || entries.isEmpty() && !line.isEmpty()) {
                throw new IllegalArgumentException(file + ":" + number + ": text before the first [entry]");
            } else {
                paragraph.append(paragraph.isEmpty() ? "" : "\n").append(line);
            }
        }
        end(paragraph, entries);
        return entries;
    }

    private static void end(StringBuilder paragraph, List<Entry> entries) {
        if (!paragraph.isEmpty()) {
            entries.get(entries.size() - 1).paragraphs().add(paragraph.toString().strip());
            paragraph.setLength(0);
        }
    }

    /**
     * {@return an entry of one paragraph}
     *
     * @param phrase which
     * @param values its values, in the order of its placeholders
     */
    Text say(Phrase phrase, Text... values) {
        List<Text> paragraphs = paragraphs(phrase, values);
        if (paragraphs.size() != 1) {
            throw new IllegalArgumentException("[" + phrase.key() + "] is to be one paragraph");
        }
        return paragraphs.get(0);
    }

    /**
     * {@return the paragraphs of an entry}
     *
     * @param phrase which
     * @param values its values, in the order of its placeholders
     */
    List<Text> paragraphs(Phrase phrase, Text... values) {
        List<String> names = phrase.placeholders();
        if (names.size() != values.length) {
            throw new IllegalArgumentException("[" + phrase.key() + "] takes " + names + ", not " + values.length
                    + " values");
        }
        Map<String, Text> byName = new HashMap<>();
        for (int i = 0; i < values.length; i++) {
            byName.put(names.get(i), values[i]);
        }
        return templates.get(phrase).filled(byName);
    }

    /**
     * {@return the letters of an entry of one paragraph}
     *
     * @param phrase which
     * @param values its values, in the order of its placeholders
     */
    String words(Phrase phrase, String... values) {
        Text[] texts = new Text[values.length];
        for (int i = 0; i < values.length; i++) {
            texts[i] = Text.of(values[i]);
        }
        return say(phrase, texts).letters();
    }
}
