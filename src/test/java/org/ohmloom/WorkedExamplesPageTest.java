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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages that say which test holds what name tests that exist. */
class WorkedExamplesPageTest {

    private static final Path DOCS = Path.of("src", "docs");
    private static final Path TESTS = Path.of("src", "test", "java");
    private static final Pattern NAMED = Pattern.compile("`(\\w+Test)\\.(\\w+)`");

    @ParameterizedTest
    @CsvSource({"worked-examples.md, 50", "numerics.md, 20"})
    void everyTestThePageNamesIsThere(String page, int least) throws IOException {
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
        Matcher matcher = NAMED.matcher(Files.readString(DOCS.resolve(page)));
        while (matcher.find()) {
            named++;
            Path file = files.get(matcher.group(1));
            if (file == null || !Files.readString(file).contains("void " + matcher.group(2) + "(")) {
                missing.add(matcher.group());
            }
        }
        assertEquals(List.of(), missing);
        assertTrue(named > least, named + " tests named");
    }
}
