package org.ohmloom.workbench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a person reads in the workbench stands in message bundles, not in the code; so do the texts of floors below it that have come
 * over. How many literals still stand in the code is held by package in {@code texts-in-code.txt}, and may only go down.
 */
class TextsInCodeTest {

    private static final Path SOURCES = Path.of("src/main/java/org/ohmloom/workbench");
    /** Packages below the workbench whose texts have come over. */
    private static final List<Path> BELOW = List.of(Path.of("src/main/java/org/ohmloom/review"));

    private static final Path HELD = Path.of("src/test/resources/org/ohmloom/workbench/words/texts-in-code.txt");

    /** With {@code -Dohmloom.update=true} the file takes the counts, where none is larger than before. */
    @Test
    void noPackageHasMoreTextsInItsCodeThanBefore() throws IOException {
        Map<String, Long> held = held();
        Map<String, List<SpokenLiterals.Spoken>> found = spoken();
        List<String> more = new ArrayList<>();
        found.forEach((name, texts) -> {
            if (texts.size() > held.getOrDefault(name, 0L)) {
                more.add(name + ": " + texts.size() + " texts in the code, not " + held.getOrDefault(name, 0L) + ":");
                texts.forEach(each -> more.add("  " + each));
            }
        });
        assertTrue(more.isEmpty(), String.join("\n", more));
        if (Boolean.getBoolean("ohmloom.update")) {
            Files.write(
                    HELD,
                    found.entrySet().stream()
                            .map(each -> each.getKey() + " " + each.getValue().size())
                            .toList());
        }
        assertEquals(
                held(),
                found.entrySet().stream()
                        .collect(Collectors.toMap(
                                Map.Entry::getKey,
                                each -> (long) each.getValue().size(),
                                Long::sum,
                                TreeMap::new)),
                "fewer than held: run this test with -Dohmloom.update=true");
    }

    @Test
    void textsAreToldFromKeysNamesAndWhatIsCompared(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("Sample.java");
        Files.writeString(
                file,
                """
                class Sample {
                    String sample(String typed, int count) {
                        label.setText("off");
                        label.setName("Fields of a wire");
                        panel.add(label, "growx, wmin 0");
                        if (typed.equals("at the load")) {
                            throw new IllegalStateException("no such way");
                        }
                        if (count > 1) {
                            throw new IllegalArgumentException("'" + typed + "' is no way");
                        }
                        say(words.get("all of it"));
                        return switch (typed) {
                            case "to ground" -> "Set " + count + (count == 1 ? " way" : " ways") + " V";
                            default -> "set-way";
                        };
                    }
                }
                """);
        assertEquals(
                List.of("off", "' is no way", "Set ", " way", " ways"),
                SpokenLiterals.in(List.of(file)).stream()
                        .map(SpokenLiterals.Spoken::text)
                        .toList());
    }

    private static Map<String, Long> held() throws IOException {
        Map<String, Long> held = new TreeMap<>();
        for (String line : Files.readAllLines(HELD)) {
            String[] parts = line.split(" ");
            held.put(parts[0], Long.parseLong(parts[1]));
        }
        return held;
    }

    /** What is found, by package below the workbench; the workbench itself is a dot. */
    private static Map<String, List<SpokenLiterals.Spoken>> spoken() throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path folder : Stream.concat(Stream.of(SOURCES), BELOW.stream()).toList()) {
            try (Stream<Path> inside = Files.walk(folder)) {
                inside.filter(each -> each.toString().endsWith(".java"))
                        .sorted()
                        .forEach(files::add);
            }
        }
        return SpokenLiterals.in(files).stream()
                .collect(Collectors.groupingBy(
                        each -> {
                            Path in = SOURCES.relativize(each.file()).getParent();
                            return in == null ? "." : in.toString();
                        },
                        TreeMap::new,
                        Collectors.toList()));
    }
}
