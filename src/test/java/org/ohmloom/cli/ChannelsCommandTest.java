package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.review.Cautions;

/** Planning channels by the command line: what it prints, what it writes, and what it refuses. */
@BesideOthers
class ChannelsCommandTest {

    private static final String PICKUP = "examples/rescue-pickup.harness.json";

    @TempDir
    private Path folder;

    @Test
    void thePlanIsPrintedByUnitWithTheCautionsOnce() {
        CommandRun run = CommandRun.of("channels", PICKUP);
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("AN1: Oil pressure (B1), supply REF, return SRET"), run.out());
        assertEquals(1, cautions(run.out()));
    }

    @Test
    void asJsonItIsOneObjectAndNothingElse() {
        CommandRun run = CommandRun.of("channels", PICKUP, "--format", "json");
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().startsWith("{") && run.out().strip().endsWith("}"), run.out());
        assertEquals(0, cautions(run.out()));
    }

    @Test
    void thePlannedCopyIsWrittenAndNeverOverTheFileRead() throws IOException {
        Path own = folder.resolve("own.harness.json");
        Files.copy(Path.of(PICKUP), own);
        byte[] before = Files.readAllBytes(own);
        CommandRun refused = CommandRun.of("assign", own.toString(), "--out", own.toString());
        assertEquals(2, refused.status());
        assertTrue(refused.err().contains("give another name to --out"), refused.err());
        assertEquals(-1, Arrays.mismatch(before, Files.readAllBytes(own)));

        Path copy = folder.resolve("planned.harness.json");
        CommandRun written = CommandRun.of("assign", own.toString(), "--out", copy.toString());
        assertEquals(0, written.status(), written.err());
        assertTrue(Files.readString(copy).contains("\"channels\""));
        assertEquals(1, cautions(written.out()));
    }

    @Test
    void aUnitNobodyKnowsIsRefusedWithTheNearest() {
        Path copy = folder.resolve("planned.harness.json");
        CommandRun run = CommandRun.of("assign", PICKUP, "--out", copy.toString(), "--unit", "U9=main-unti@B1");
        assertEquals(2, run.status());
        assertTrue(run.err().contains("did you mean 'main-unit'?"), run.err());
        assertFalse(Files.exists(copy));
    }

    /** B1 can change within 20 ms: 10/(2 pi 0.02) = 79.6, so 100 Hz; it is sent at 50 Hz and its input is filtered at 20 Hz. */
    @Test
    void checkHasEachChannelWithItsRateAndChecks() throws IOException {
        CommandRun run = CommandRun.of(
                "check",
                "src/main/resources/org/ohmloom/review/examples/update-rate-unfit/triggers.harness.json",
                "--format",
                "json");
        JsonNode channels = new ObjectMapper().readTree(run.out()).get("channels");
        assertEquals(2, channels.size());
        JsonNode slow = channels.get(0);
        assertEquals("U1 A1 B1 input", words(slow, "unit", "pin", "sensor", "direction"));
        assertEquals("REF true too-slow kept", words(slow, "supplyPin", "wired", "rateCheck", "bandwidthCheck"));
        assertEquals(100, slow.get("suggestedHertz").asDouble());
        assertEquals(50, slow.get("rateHertz").asDouble());
        assertTrue(slow.get("busCheck").isNull() && slow.get("buses").isEmpty(), slow.toString());
        assertEquals("share-of-supply", slow.get("calibration").get("gives").asText());
        assertEquals("fast-enough", channels.get(1).get("rateCheck").asText());
    }

    @Test
    void aPlanHasItsRatesToo() throws IOException {
        CommandRun run = CommandRun.of("channels", PICKUP, "--format", "json");
        JsonNode channels = new ObjectMapper().readTree(run.out()).get("channels");
        for (JsonNode channel : channels) {
            boolean input = channel.get("direction").asText().equals("input");
            assertEquals(input, channel.path("rateHertz").asDouble() >= 1, channel.toString());
        }
    }

    private static String words(JsonNode node, String... keys) {
        return Stream.of(keys).map(key -> node.get(key).asText()).collect(Collectors.joining(" "));
    }

    private static int cautions(String text) {
        return text.replaceAll("\\s+", " ").split(Pattern.quote(Cautions.STANDING.english()), -1).length - 1;
    }

    @Test
    void aHarnessWithNothingToPlanSaysSo() {
        CommandRun run = CommandRun.of("channels", "examples/teaching.harness.json");
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().startsWith("There are no channels to plan"), run.out());
        assertFalse(run.out().contains("Cost"), run.out());
    }
}
