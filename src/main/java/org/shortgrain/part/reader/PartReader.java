package org.shortgrain.part.reader;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shortgrain.part.Location;
import org.shortgrain.part.Minimum;
import org.shortgrain.part.PartDescription;
import org.yaml.snakeyaml.nodes.Node;

/**
 * Reads a part description and says everything that is wrong with it at once.
 *
 * <p>Holds no state of a file; one reader serves many files and threads.
 */
public final class PartReader {
    /** Largest file that is read (bytes); a long description has some ten thousand. */
    public static final int MOST_BYTES = 1_000_000;

    private final Vocabularies vocabularies;
    private final Forms forms = new Forms();

    /**
     * Makes a reader.
     *
     * @param vocabularies words that are data of the rulebook
     */
    public PartReader(Vocabularies vocabularies) {
        this.vocabularies = vocabularies;
    }

    /**
     * {@return the description in a file, or the problems that stand against it; nothing is thrown for a bad file}
     *
     * @param file the file
     */
    public Reading read(Path file) {
        Problems problems = new Problems(file.toString());
        Optional<byte[]> bytes = bytes(file, problems);
        return bytes.isPresent() ? read(file.toString(), bytes.get()) : new Reading.Refused(problems.inFileOrder());
    }

    /**
     * {@return the description in the bytes of a file, or the problems that stand against it}
     *
     * @param name  name for messages
     * @param bytes content of the file
     */
    public Reading read(String name, byte[] bytes) {
        Problems problems = new Problems(name);
        if (bytes.length > MOST_BYTES) {
            problems.add(ProblemCode.TOO_LARGE, wholeFile(), MOST_BYTES);
            return new Reading.Refused(problems.inFileOrder());
        }
        Optional<Node> root = new YamlText(problems).compose(bytes);
        return root.isPresent() ? bind(name, bytes, Spot.root(root.get()), problems)
                : new Reading.Refused(problems.inFileOrder());
    }

    /**
     * {@return a changed description, read like a file; its source is empty, since there is no file yet}
     *
     * @param name   name for messages
     * @param edited the description
     */
    public Reading read(String name, EditableDescription edited) {
        return bind(name, new byte[0], Spot.root(edited.root()), new Problems(name));
    }

    private Reading bind(String name, byte[] bytes, Spot root, Problems problems) {
        if (!root.isGroup()) {
            problems.add(ProblemCode.NOT_A_DESCRIPTION, root.at(), root.isList() ? "a list" : "text only");
            return new Reading.Refused(problems.inFileOrder());
        }
        SchemaVersion.check(root, problems);
        Binder binder = new Binder(problems, forms, vocabularies);
        PartDescription description = binder.description(root);
        new CrossChecks(problems).check(description);
        refuseWhatIsIndispensable(description, problems);
        List<Problem> found = problems.inFileOrder();
        return problems.refuse() ? new Reading.Refused(found)
                : new Reading.Read(description, found, new SourceFile(name, bytes), binder.paths());
    }

    private void refuseWhatIsIndispensable(PartDescription description, Problems problems) {
        for (Missing missing : new MinimumSet(forms).of(description)) {
            if (missing.role() == Minimum.Role.REFUSED && !problems.standAt(missing.at().path())) {
                String key = missing.at().path().substring(1).replace('/', '.');
                problems.add(ProblemCode.MISSING_FIELD, missing.at(), key,
                        missing.state() == Missing.State.ABSENT ? "missing" : "not stated",
                        missing.meaning().replaceFirst("\\.$", ""));
            }
        }
    }

    private static Optional<byte[]> bytes(Path file, Problems problems) {
        if (!Files.exists(file)) {
            problems.add(ProblemCode.MISSING_FILE, wholeFile());
            return Optional.empty();
        }
        if (!Files.isRegularFile(file)) {
            problems.add(ProblemCode.NOT_A_FILE, wholeFile());
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            return Optional.of(bytes);
        } catch (IOException e) {
            problems.add(ProblemCode.UNREADABLE, wholeFile(), reason(e));
            return Optional.empty();
        }
    }

    private static String reason(IOException e) {
        return e instanceof AccessDeniedException ? "permission denied" : "input or output error";
    }

    private static Location wholeFile() {
        return new Location("", 0, 0);
    }
}
