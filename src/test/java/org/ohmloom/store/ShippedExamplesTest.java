package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.ohmloom.BesideOthers;

/** Every example is read, and is written exactly as it stands; {@link Canonical} brings one into that form. */
@BesideOthers
class ShippedExamplesTest {

    static List<Path> files() throws IOException {
        Path folder = Path.of("examples");
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(HarnessFiles.ENDING))
                    .sorted()
                    .toList();
        }
    }

    @TestFactory
    Stream<DynamicTest> anExampleIsWrittenAsItStands() throws IOException {
        return files().stream()
                .map(file -> DynamicTest.dynamicTest(
                        file.toString(),
                        () -> assertEquals(Files.readString(file), HarnessText.write(HarnessFiles.read(file)))));
    }
}
