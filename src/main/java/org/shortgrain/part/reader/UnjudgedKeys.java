package org.shortgrain.part.reader;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Which keys of a description are read but judged by nothing, so that nobody takes an entry for a verdict.
 *
 * <p>A key counts as judged if some rule or computation asks for it. The list of those is not kept by hand: the
 * build finds them by looking, in the compiled classes of the rules and of the assessment, for calls of the records'
 * accessors. It says that a key is asked for somewhere, not
 * that it bore on this part. Keys that only a rule of an edited rulebook asks for still count as unjudged.
 */
public final class UnjudgedKeys {
    /** Where the list lies among the tool's classes: a record and a key of it on each line. */
    public static final String LIST = "schema/judged-keys.txt";
    /** Groups whose text is carried into the report and never judged. */
    private static final Set<String> RECORD_KEEPING = Set.of("ReviewRequest", "Identity", "Drawing", "Planning",
            "ForgingDrawing");
    private static final String REMARKS = "remarks";
    /** Any item of a list, in a path. */
    private static final String ITEM = "/*";

    private final Forms forms = new Forms();
    private final Set<String> judged;

    UnjudgedKeys(Set<String> judged) {
        this.judged = Set.copyOf(judged);
    }

    /**
     * {@return the keys that nothing judges, in the order of the file, as paths with a star for the number of a list item,
     * such as sides in any row of the route}
     *
     * @param paths the paths of a {@link Reading.Read}
     */
    public static List<String> among(List<String> paths) {
        return new UnjudgedKeys(shipped()).of(paths);
    }

    /**
     * {@return the lines of the list}
     *
     * @param accessors accessors of the records that are called, as {@code Fit.bushBore}
     */
    public static List<String> asked(Set<String> accessors) {
        List<String> asked = new ArrayList<>();
        RecordForms.read().forEach((record, fields) -> fields.all().forEach(field -> {
            if (accessors.contains(record + "." + field.component())) {
                asked.add(record + "." + field.key());
            }
        }));
        return asked;
    }

    static Set<String> shipped() {
        try (InputStream in = UnjudgedKeys.class.getResourceAsStream("/" + LIST)) {
            return Set.of(new String(Objects.requireNonNull(in, "the build writes " + LIST).readAllBytes(),
                    StandardCharsets.UTF_8).split("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<String> of(List<String> paths) {
        Set<String> unjudged = new LinkedHashSet<>();
        for (String path : paths) {
            Optional<String> general = unjudged(path);
            if (general.isPresent()) {
                unjudged.add(general.get());
            }
        }
        return List.copyOf(unjudged);
    }

    /** The path with stars, if it leads to a value that nothing asks for. */
    private Optional<String> unjudged(String path) {
        Expected.Group group = Expected.Group.DESCRIPTION;
        StringBuilder general = new StringBuilder();
        boolean asked = true;
        for (String key : path.substring(1).split("/")) {
            Optional<Expected.Field> field = group == null ? Optional.empty() : forms.of(group).named(key);
            general.append(field.isPresent() ? "/" + key : ITEM);
            if (field.isPresent()) {
                asked = isAsked(group, field.get());
                group = Forms.inside(field.get()).orElse(null);
            }
        }
        boolean isValue = group == null;
        if (general.lastIndexOf(ITEM) == general.length() - ITEM.length()) {
            general.setLength(general.length() - ITEM.length());
        }
        return isValue && !asked ? Optional.of(general.toString()) : Optional.empty();
    }

    private boolean isAsked(Expected.Group group, Expected.Field field) {
        boolean text = field.expected().item() instanceof Expected.Text;
        boolean recordKeeping = text && (RECORD_KEEPING.contains(group.name()) || field.key().equals(REMARKS));
        return recordKeeping || judged.contains(group.name() + "." + field.key());
    }
}
