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
            if (templates.put(phrase, Template.read(where, entry.text(), phrase.placeholders())) != null) {
                throw new IllegalArgumentException(where + ": [" + entry.key() + "] stands there a second time");
            }
        }
        for (Phrase phrase : phrases) {
            if (!templates.containsKey(phrase)) {
                throw new IllegalArgumentException(file + ": the entry [" + phrase.key() + "] is missing");
            }
        }
    }

    private record Entry(String key, int line, String text) {
    }

    private static List<Entry> entries(String file, String text) {
        List<Entry> entries = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).stripTrailing();
            if (line.startsWith("[") && line.endsWith("]")) {
                int last = i + 1;
                StringBuilder body = new StringBuilder();
                while (last < lines.size() && !lines.get(last).startsWith("[")) {
                    if (!lines.get(last).startsWith("#")) {
                        body.append(lines.get(last)).append('\n');
                    }
                    last++;
                }
                entries.add(new Entry(line.substring(1, line.length() - 1), i + 1, body.toString()));
                i = last - 1;
            } else if (!line.isEmpty() && !line.startsWith("#")) {
                throw new IllegalArgumentException(file + ":" + (i + 1) + ": text before the first [entry]");
            }
        }
        return entries;
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
