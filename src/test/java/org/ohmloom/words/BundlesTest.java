package org.ohmloom.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bundles below the workbench: every key asked for is there, every key there is asked for, no gap is swallowed. */
class BundlesTest {

    private static final Path BUNDLES = Path.of("src/main/resources/org/ohmloom");
    private static final Path SOURCES = Path.of("src/main/java/org/ohmloom");

    /** Bundles whose keys are put together from names, with tests of their own. */
    private static final Set<String> TESTED_BESIDE_THEM = Set.of(
            "rules.properties",
            "constants.properties",
            "refusals.properties",
            "table-words.properties",
            "revision-words.properties");

    private static final Pattern ASKED =
            Pattern.compile("(?:Labels|[A-Z][A-Za-z]*Texts|TEXTS)\\s*\\.text\\(\\s*\"([a-z.-]+)\"");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z.-]+)\"");

    @Test
    void everyKeyInABundleIsSaidAndEveryKeySaidIsThere() throws IOException {
        Set<String> wrong = new TreeSet<>();
        for (Path file : bundles()) {
            Set<String> keys = read(file).stringPropertyNames();
            String code = code(SOURCES.resolve(BUNDLES.relativize(file).getParent()));
            Set<String> literals = found(LITERAL, code);
            for (String key : keys) {
                boolean pieced = key.contains(".") && literals.contains(key.substring(0, key.lastIndexOf('.') + 1));
                if (!literals.contains(key) && !pieced) {
                    wrong.add(file.getFileName() + " has for nothing: " + key);
                }
            }
            for (String asked : found(ASKED, code)) {
                if (!beside(file).contains(asked) && !asked.endsWith(".")) {
                    wrong.add(file.getParent() + " has not: " + asked);
                }
            }
        }
        assertEquals(Set.of(), wrong);
    }

    @Test
    void noPatternHasAStraightApostropheThatWouldSwallowAGap() throws IOException {
        Set<String> wrong = new TreeSet<>();
        for (Path file : bundles()) {
            Properties bundle = read(file);
            for (String key : bundle.stringPropertyNames()) {
                if (bundle.getProperty(key).replace("''", "").contains("'")) {
                    wrong.add(file.getFileName() + ": " + key);
                }
            }
        }
        assertEquals(Set.of(), wrong);
    }

    private static List<Path> bundles() throws IOException {
        try (Stream<Path> files = Files.walk(BUNDLES)) {
            return files.filter(each -> each.toString().endsWith(".properties"))
                    .filter(each -> !each.startsWith(BUNDLES.resolve("workbench")))
                    .filter(each ->
                            !TESTED_BESIDE_THEM.contains(each.getFileName().toString()))
                    .toList();
        }
    }

    /** The keys of all bundles that lie together, or below. */
    private static Set<String> beside(Path file) throws IOException {
        Set<String> keys = new TreeSet<>();
        try (Stream<Path> files = Files.walk(file.getParent())) {
            for (Path each :
                    files.filter(one -> one.toString().endsWith(".properties")).toList()) {
                keys.addAll(read(each).stringPropertyNames());
            }
        }
        return keys;
    }

    private static Set<String> found(Pattern pattern, String code) {
        Set<String> found = new TreeSet<>();
        Matcher matcher = pattern.matcher(code);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private static Properties read(Path file) throws IOException {
        Properties bundle = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            bundle.load(in);
        }
        return bundle;
    }

    private static String code(Path folder) throws IOException {
        List<String> all = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".java")).toList()) {
                all.add(Files.readString(file));
            }
        }
        return String.join("\n", all);
    }
}
