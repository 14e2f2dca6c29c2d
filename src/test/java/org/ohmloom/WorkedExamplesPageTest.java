package org.ohmloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of worked examples names tests that exist. */
class WorkedExamplesPageTest {

    private static final Path PAGE = Path.of("src", "docs", "worked-examples.md");
    private static final Path TESTS = Path.of("src", "test", "java");
    private static final Pattern NAMED = Pattern.compile("`(\\w+Test)\\.(\\w+)`");

    @Test
    void everyTestThePageNamesIsThere() throws IOException {
        Map<String, Path> files;
        try (Stream<Path> walk = Files.walk(TESTS)) {
            files = walk.filter(file -> file.toString().endsWith("Test.java"))
                    .collect(Collectors.toMap(
                            file -> file.getFileName().toString().replace(".java", ""),
                            file -> file,
                            (one, other) -> one));
        }
        List<String> missing = new ArrayList<>();
        int named = 0;
        Matcher matcher = NAMED.matcher(Files.readString(PAGE));
        while (matcher.find()) {
            named++;
            Path file = files.get(matcher.group(1));
            if (file == null || !Files.readString(file).contains("void " + matcher.group(2) + "(")) {
                missing.add(matcher.group());
            }
        }
        assertEquals(List.of(), missing);
        assertTrue(named > 50, named + " tests named");
    }
}
