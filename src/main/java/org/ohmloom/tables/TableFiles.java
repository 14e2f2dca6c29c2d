package org.ohmloom.tables;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ohmloom.words.Refusals;

/** Finds and reads the table files: those that come with the program, and those of a folder. */
final class TableFiles {
    /** Folder of the bundled files on the class path. */
    /** Most bytes of a builder's own file; all that come with the program have less together. */
    private static final int MOST_BYTES = 8 * 1024 * 1024;

    private static final String FOLDER = "/wire-tables/";

    /** Lists the bundled files, one name a line. */
    private static final String CONTENTS = "contents.txt";

    private TableFiles() {}

    /** The bundled files' texts by name. */
    static Map<String, String> bundled() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String name : resource(CONTENTS).lines().toList()) {
            texts.put(name, resource(name));
        }
        return texts;
    }

    /** The texts of a folder's files that end in ".csv", by name, in the order of their names. */
    static Map<String, String> in(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new TableFormatException(
                    folder.toString(),
                    0,
                    "",
                    Refusals.text("it is not a folder; name a folder with table files (*.csv)"));
        }
        Map<String, String> texts = new LinkedHashMap<>();
        for (Path file : files(folder)) {
            texts.put(file.getFileName().toString(), text(file));
        }
        return texts;
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(".csv"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw unreadable(folder.toString());
        }
    }

    private static String text(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] content = in.readNBytes(MOST_BYTES + 1);
            if (content.length > MOST_BYTES) {
                throw new TableFormatException(
                        file.toString(),
                        0,
                        "",
                        Refusals.text("it has more than 8 MB; split it, or take out what is no table"));
            }
            return decode(file.toString(), content);
        } catch (IOException e) {
            throw unreadable(file.toString());
        }
    }

    private static String resource(String name) {
        try (InputStream stream = TableFiles.class.getResourceAsStream(FOLDER + name)) {
            if (stream == null) {
                throw new TableFormatException(
                        FOLDER + name,
                        0,
                        "",
                        Refusals.text("it does not come with the program; build the program again"));
            }
            return decode(name, stream.readAllBytes());
        } catch (IOException e) {
            throw unreadable(FOLDER + name);
        }
    }

    private static String decode(String fileName, byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new TableFormatException(fileName, 0, "", Refusals.text("it is not UTF-8 text; save it as UTF-8"));
        }
    }

    private static TableFormatException unreadable(String fileName) {
        return new TableFormatException(
                fileName, 0, "", Refusals.text("it cannot be read; check that it is there and readable"));
    }
}
