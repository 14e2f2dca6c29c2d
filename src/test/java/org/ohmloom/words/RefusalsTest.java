package org.ohmloom.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.ElementId;

/** Whatever is refused where a person may see it stands in the bundle, word for word as in the code. */
class RefusalsTest {

    private static final Path SOURCES = Path.of("src/main/java/org/ohmloom");
    private static final Path BUNDLE = Path.of("src/main/resources/org/ohmloom/words/refusals.properties");
    private static final String HEAD =
            """
            # What is refused, and the names of what is: as the code has it, each by a key made of its words.
            # Written anew by RefusalsTest with -Dohmloom.update=true.

            """;

    /** Packages whose refusals a person sees; those of others tell a programmer what was called wrongly. */
    private static final List<String> SEEN = List.of(
            "units",
            "model",
            "edit",
            "store",
            "signal",
            "bench/record",
            "pack",
            "tables",
            "analysis/tolerance",
            "analysis/KnownNames.java");

    private static final RefusalLiterals FOUND = RefusalLiterals.in(files());

    @Test
    void everyRefusalAPersonSeesIsInTheBundleAsInTheCode() throws IOException {
        StringBuilder written = new StringBuilder(HEAD);
        entries().forEach((key, pattern) -> written.append(key)
                .append('=')
                .append(pattern.replace("\\", "\\\\"))
                .append('\n'));
        if (Boolean.getBoolean("ohmloom.update")) {
            Files.writeString(BUNDLE, written.toString());
        }
        assertEquals(written.toString(), Files.readString(BUNDLE));
    }

    @Test
    void noRefusalAPersonSeesIsPutTogetherOfPieces() {
        assertEquals(Set.of(), FOUND.piecedTogether());
    }

    @Test
    void theBundleSaysInEnglishWhatTheCodeSays() {
        for (String template : templates()) {
            Object[] values = values(template);
            Text said = Refusals.text(template, values);
            assertEquals(said.english(), said.in(Locale.UK));
            assertTrue(said.in(PseudoLanguage.LOCALE).startsWith("["), template);
            for (Object value : values) {
                assertTrue(said.in(PseudoLanguage.LOCALE).contains(value.toString()), template);
            }
        }
    }

    @Test
    void aRefusalSaysItsNameInTheLanguageToo() {
        UnfitException refused = new UnfitException(
                "%s must be greater than 0, was %s", Refusals.text("length of segment %s", "SEG1"), -1.0);
        assertEquals("length of segment SEG1 must be greater than 0, was -1.0", refused.getMessage());
        String strange = Worded.of(refused).in(PseudoLanguage.LOCALE);
        assertTrue(strange.startsWith("[[ļéñĝţĥ öƒ šéĝɱéñţ SEG1"), strange);
        assertTrue(strange.contains("-1.0"), strange);
    }

    @Test
    void whatCarriesNoTextSaysItsMessageOrWhatItIs() {
        assertEquals("no room", Worded.of(new IOException("no room")).english());
        assertEquals("IOException", Worded.of(new IOException()).english());
    }

    private static TreeMap<String, String> entries() {
        TreeMap<String, String> entries = new TreeMap<>();
        for (String template : templates()) {
            String before = entries.put(Refusals.key(template), pattern(template));
            assertTrue(
                    before == null || before.equals(pattern(template)), () -> "two say nearly the same: " + template);
        }
        return entries;
    }

    /** What the code says, and the words of kinds of elements and of choices, which it takes from their types. */
    private static Set<String> templates() {
        Set<String> all = new TreeSet<>(FOUND.templates());
        for (Class<?> kind : ElementId.class.getPermittedSubclasses()) {
            all.add(words(kind).replaceAll(" id$", ""));
        }
        choices(Path.of("model")).forEach(choice -> {
            Class<?> owner = choice.getEnclosingClass();
            all.add(owner == null ? words(choice) : words(choice) + " of " + words(owner));
        });
        return all;
    }

    private static String words(Class<?> type) {
        return type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    /** The enumerations of a package. */
    private static List<Class<?>> choices(Path folder) {
        try (Stream<Path> files = Files.list(SOURCES.resolve(folder))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java") && !name.startsWith("package-"))
                    .map(name -> load("org.ohmloom." + folder + "." + name.replace(".java", "")))
                    .flatMap(RefusalsTest::withInner)
                    .filter(Class::isEnum)
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Stream<Class<?>> withInner(Class<?> type) {
        return Stream.concat(
                Stream.of(type), Stream.of(type.getDeclaredClasses()).flatMap(RefusalsTest::withInner));
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException missing) {
            throw new AssertionError(missing);
        }
    }

    /** A template as a pattern of a bundle. */
    private static String pattern(String template) {
        boolean filled = template.contains("%s");
        String quoted = template.replace("'", "''").replace("{", "'{'").replace("}", "'}'");
        StringBuilder pattern = new StringBuilder();
        String[] pieces = quoted.split("%s", -1);
        for (int k = 0; k < pieces.length; k++) {
            pattern.append(k == 0 ? "" : "{" + (k - 1) + "}").append(filled ? pieces[k].replace("%%", "%") : pieces[k]);
        }
        return pattern.toString().replaceFirst("^ ", "\\\\ ");
    }

    private static Object[] values(String template) {
        List<Object> values = new ArrayList<>();
        for (int at = template.indexOf("%s"); at >= 0; at = template.indexOf("%s", at + 2)) {
            values.add("X" + values.size());
        }
        return values.toArray();
    }

    private static List<Path> files() {
        List<Path> all = new ArrayList<>();
        for (String each : SEEN) {
            try (Stream<Path> files = Files.walk(SOURCES.resolve(each))) {
                files.filter(file -> file.toString().endsWith(".java")).forEach(all::add);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        return all;
    }
}
