package org.ohmloom.manual;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The pages the program writes are those in the repository. After a change of a rule, a table or a formula,
 * {@code mvn test -Dtest=WrittenPagesTest -Dohmloom.update=true} writes them anew.
 */
class WrittenPagesTest {

    private static final Path PAGES = Path.of("src/main/resources/org/ohmloom/manual");

    private final Map<String, String> written = WrittenPages.all();

    @Test
    void everyWrittenPageIsTheOneInTheRepository() throws IOException {
        Map<String, String> wrong = new TreeMap<>();
        for (Map.Entry<String, String> each : written.entrySet()) {
            Path file = PAGES.resolve(each.getKey() + ".md");
            if (Boolean.getBoolean("ohmloom.update")) {
                Files.createDirectories(file.getParent());
                Files.writeString(file, each.getValue());
            }
            String found = Files.exists(file) ? Files.readString(file) : "missing";
            if (!found.equals(each.getValue())) {
                wrong.put(each.getKey(), each.getValue());
            }
        }
        assertEquals(Map.of(), wrong);
    }

    @Test
    void noPageIsLeftOfSomethingThatIsNoMore() throws IOException {
        Set<String> folders = written.keySet().stream()
                .map(id -> id.substring(0, id.indexOf('/')))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> there = new TreeSet<>();
        for (String folder : folders) {
            try (Stream<Path> files = Files.list(PAGES.resolve(folder))) {
                files.map(file -> folder + "/" + file.getFileName().toString().replaceFirst("\\.md$", ""))
                        .forEach(there::add);
            }
        }
        assertEquals(new TreeSet<>(written.keySet()), there);
    }
}
