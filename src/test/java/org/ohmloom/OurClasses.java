package org.ohmloom;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** What the architecture tests look at: our compiled classes and our source files. */
final class OurClasses {
    /** Where the main sources lie, seen from the project's folder. */
    static final Path MAIN_SOURCES = Path.of("src", "main", "java");

    /** Where the test sources lie, seen from the project's folder. */
    static final Path TEST_SOURCES = Path.of("src", "test", "java");

    /** Every class of the program, without its tests. */
    static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages(Floors.ROOT);

    private OurClasses() {}

    /** Every Java file below a folder, in path order. */
    static List<Path> javaFiles(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(each -> each.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text of a source file. */
    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
