package org.shortgrain.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compiled rulebooks of a user, each under the hash of all that it was made of. Compiling takes seconds; reading takes
 * none.
 *
 * <p>The folder is private: who can write to it can run code as the user. A folder that others can write to is not used,
 * and neither is one that cannot be made; the rulebook is then compiled for this run only.
 */
final class RuleCache {

    private static final Set<PosixFilePermission> OWNER_ONLY = PosixFilePermissions.fromString("rwx------");
    private static final Set<PosixFilePermission> OTHERS_WRITE = Set.of(PosixFilePermission.GROUP_WRITE,
            PosixFilePermission.OTHERS_WRITE);

    private final Path root;

    RuleCache(Path root) {
        this.root = root;
    }

    /** {@return the cache of the user, where the operating system keeps such things} */
    static RuleCache ofUser() {
        return new RuleCache(userCaches(System.getProperty("os.name"), System.getProperty("user.home"),
                name -> Optional.ofNullable(System.getenv(name)).filter(value -> !value.isBlank()))
                .resolve("shortgrain").resolve("rulebooks"));
    }

    static Path userCaches(String system, String home, Function<String, Optional<String>> variable) {
        String os = system.toLowerCase(Locale.ROOT);
        if (os.startsWith("windows")) {
            return Path.of(variable.apply("LOCALAPPDATA").orElse(home));
        }
        Path usual = os.startsWith("mac") ? Path.of(home, "Library", "Caches") : Path.of(home, ".cache");
        return variable.apply("XDG_CACHE_HOME").map(Path::of).orElse(usual);
    }

    /**
     * {@return rules as classes, compiled at most once for each content}
     *
     * @param texts  file name to text
     * @param api    hash over the classes that rules are compiled against
     * @param source checks and compiles the rules when they are not in the cache
     * @throws RulebookException if they do not compile
     */
    CompiledRules compiled(SortedMap<String, String> texts, String api, Source source) throws RulebookException {
        String key = key(texts, api);
        Path place = root.resolve(key);
        try {
            makePrivate(root);
            if (CompiledRules.isIn(place)) {
                return CompiledRules.readFrom(place);
            }
        } catch (IOException unusable) {
            return source.compile();
        }
        CompiledRules compiled = source.compile();
        keep(compiled, place);
        return compiled;
    }

    /** How rules are compiled. */
    @FunctionalInterface
    interface Source {
        CompiledRules compile() throws RulebookException;
    }

    private static String key(SortedMap<String, String> texts, String api) {
        return Sha256.of("tool " + version(Rulebook.class) + "\nengine " + version(org.kie.api.KieServices.class)
                + "\njava " + Runtime.version().feature() + "\napi " + api + "\n" + texts.entrySet().stream()
                        .map(file -> Sha256.of(file.getValue()) + "  " + file.getKey() + "\n")
                        .collect(Collectors.joining()));
    }

    static String version(Class<?> of) {
        return Optional.ofNullable(of.getPackage().getImplementationVersion()).orElse("unknown");
    }

    private static void makePrivate(Path folder) throws IOException {
        Files.createDirectories(folder.getParent());
        if (!Files.exists(folder)) {
            try {
                Files.createDirectory(folder, PosixFilePermissions.asFileAttribute(OWNER_ONLY));
            } catch (UnsupportedOperationException notPosix) {
                Files.createDirectories(folder);
            }
        }
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            boolean shared = Files.getPosixFilePermissions(folder).stream().anyMatch(OTHERS_WRITE::contains);
            boolean foreign = !Files.getOwner(folder).equals(Files.getOwner(Path.of(System.getProperty("user.home"))));
            if (shared || foreign) {
                throw new FileSystemException(folder.toString(), null, "others may write to it");
            }
        }
    }

    /** Written aside and moved whole: another process never sees half of it. A cache that cannot be written is none. */
    private void keep(CompiledRules compiled, Path place) {
        Optional<Path> aside = Optional.empty();
        try {
            aside = Optional.of(Files.createTempDirectory(root, "making-"));
            compiled.writeTo(aside.get());
            Files.move(aside.get(), place, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException lost) {
            // another process was first, or there is no room: what was compiled serves this run all the same
            aside.ifPresent(RuleCache::delete);
        }
    }

    static void delete(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> found = Files.walk(folder)) {
            List<Path> deepestFirst = found.sorted(Comparator.reverseOrder()).toList();
            for (Path path : deepestFirst) {
                Files.deleteIfExists(path);
            }
        } catch (IOException stays) {
            throw new UncheckedIOException("cannot delete " + folder, stays);
        }
    }
}
