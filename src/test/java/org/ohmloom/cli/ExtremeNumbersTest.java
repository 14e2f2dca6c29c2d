package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;

/**
 * Each number a harness file can hold made none at all, next to nothing, or as large as numbers go, one at a time: the file is
 * refused in one line, or checked with results that are numbers.
 */
@BesideOthers
class ExtremeNumbersTest {

    private static final List<String> EXTREMES =
            List.of("0", "1e-320", "1e-59", "1e-9", "1e6", "1e15", "1e59", "1e300", "1.7e308", "1e400", "-1e-12");
    private static final int EACH_IN_SAMPLE = 167;
    private static final int EACH_IN_FULL = 41;

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    /**
     * A number in a file.
     *
     * @param file    the smallest that holds a number of this kind
     * @param pointer its place, as a JSON pointer
     */
    private record Place(Path file, String pointer) {}

    private static List<Path> files() throws IOException {
        List<Path> all = new ArrayList<>();
        for (Path from : List.of(Path.of("examples"), Path.of("src/main/resources/org/ohmloom/review/examples"))) {
            try (Stream<Path> files = Files.list(from)) {
                files.filter(file -> file.toString().endsWith(".json")).forEach(all::add);
            }
        }
        all.sort(Comparator.comparing((Path file) -> file.toFile().length()).thenComparing(file -> file));
        return all;
    }

    private static Map<String, Place> places() throws IOException {
        Map<String, Place> places = new LinkedHashMap<>();
        for (Path file : files()) {
            find(
                    JSON.readTree(file.toFile()),
                    "",
                    "",
                    (kind, pointer) -> places.putIfAbsent(kind, new Place(file, pointer)));
        }
        return places;
    }

    private static void find(JsonNode node, String kind, String pointer, BiConsumer<String, String> found) {
        if (node.isNumber()) {
            found.accept(kind, pointer);
        } else if (node.isArray()) {
            for (int k = 0; k < node.size(); k++) {
                find(node.get(k), kind + "[]", pointer + "/" + k, found);
            }
        } else {
            String own = node.path("kind").asText("");
            node.fields()
                    .forEachRemaining(field -> find(
                            field.getValue(),
                            kind + own + "." + field.getKey(),
                            pointer + "/" + field.getKey().replace("~", "~0").replace("/", "~1"),
                            found));
        }
    }

    @Test
    void eachNumberMadeExtremeGivesOneLineOrResultsThatAreNumbers() throws IOException {
        List<Map.Entry<String, Place>> places = List.copyOf(places().entrySet());
        assertTrue(places.size() > 100, places.size() + " kinds of numbers");
        int refused = 0;
        int tried = 0;
        for (int k = 0; k < places.size() * EXTREMES.size(); k += Campaign.count(EACH_IN_SAMPLE, EACH_IN_FULL)) {
            String extreme = EXTREMES.get(k % EXTREMES.size());
            Map.Entry<String, Place> place = places.get(k / EXTREMES.size());
            refused += isRefused(place.getValue(), extreme, place.getKey() + " made " + extreme) ? 1 : 0;
            tried++;
        }
        assertTrue(refused > 0 && refused < tried, refused + " of " + tried + " were refused");
    }

    private boolean isRefused(Place place, String extreme, String what) throws IOException {
        Path file = folder.resolve("extreme.harness.json");
        Files.writeString(file, changed(place, extreme));
        CommandRun run;
        try {
            run = CommandRun.of("check", file.toString(), "--format", "json");
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError escaped) {
            throw new AssertionError(what, escaped);
        }
        if (run.status() == ExitStatus.UNUSABLE) {
            assertEquals(1, run.err().lines().count(), what + ": " + run.err());
            assertFalse(run.err().contains("should not have happened"), what + ": " + run.err());
            return true;
        }
        assertEquals("", run.err(), what);
        assertFalse(run.out().contains("NaN") || run.out().contains("Infinity"), what);
        return false;
    }

    /** The text of a file with another number in one place; through a word, for no reader keeps a number as it is written. */
    private static String changed(Place place, String extreme) throws IOException {
        JsonNode root = JSON.readTree(place.file().toFile());
        int cut = place.pointer().lastIndexOf('/');
        JsonNode parent = root.at(place.pointer().substring(0, cut));
        String last = place.pointer().substring(cut + 1);
        if (parent instanceof ArrayNode array) {
            array.set(Integer.parseInt(last), JSON.getNodeFactory().textNode("EXTREME"));
        } else {
            ((ObjectNode) parent).put(last.replace("~1", "/").replace("~0", "~"), "EXTREME");
        }
        return JSON.writeValueAsString(root).replace("\"EXTREME\"", extreme);
    }
}
