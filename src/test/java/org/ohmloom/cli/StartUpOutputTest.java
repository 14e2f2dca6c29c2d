package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.OperatingState;

/** What {@code check} prints and writes about starts. */
@BesideOthers
class StartUpOutputTest {

    private static final String FILE = "src/main/resources/org/ohmloom/review/examples/supply-low-while-starting/";

    @Test
    void theTextHasALineForEachStartAndOneForEachDevice() {
        String text = CommandRun.of("check", FILE + "triggers.harness.json").out();
        assertTrue(text.contains("STARTS OVER TIME"), text);
        assertTrue(text.lines().anyMatch(line -> line.matches("\\s*On\\s+P1\\s.*U1\\s.*9 V.*")), text);
        assertTrue(text.lines().anyMatch(line -> line.matches("\\s*F1\\s+P1\\s+On\\s.*A²s.*")), text);
        // 8.72 V: enough for supply codes A (6 V) and B (8 V), not for D (10.5 V)
        assertTrue(text.lines().anyMatch(line -> line.matches("\\s*U1\\s+8.72 V\\s.*A, B\\s*")), text);
    }

    @Test
    void everySeriesOfARunHasAValueForEachInstantAndTheExtremesAreInThem() throws Exception {
        JsonNode root = new ObjectMapper()
                .readTree(CommandRun.of("check", FILE + "triggers.harness.json", "--format", "json")
                        .out());
        assertFalse(root.get("startUps").isEmpty());
        for (JsonNode run : root.get("startUps")) {
            int instants = run.get("seconds").size();
            assertEquals(0, run.get("seconds").get(0).asDouble());
            assertEquals(
                    run.get("durationSeconds").asDouble(),
                    run.get("seconds").get(instants - 1).asDouble());
            for (JsonNode starter : run.get("starters")) {
                assertEquals(instants, starter.get("amps").size());
                assertEquals(
                        starter.get("peakAmps").asDouble(),
                        starter.get("amps").get(0).asDouble());
            }
            for (JsonNode supply : run.get("supplies")) {
                assertEquals(instants, supply.get("volts").size());
                assertEquals(
                        supply.get("lowestVolts").asDouble(),
                        supply.get("volts").get(0).asDouble());
                assertTrue(supply.get("belowSeconds").asDouble()
                        < run.get("durationSeconds").asDouble());
            }
            for (JsonNode device : run.get("devices")) {
                assertEquals(instants, device.get("amps").size());
                assertTrue(device.get("excessSquareAmpSeconds").asDouble()
                        < device.get("squareAmpSeconds").asDouble());
            }
        }
    }

    @Test
    void aStateThatIsNotAskedForIsLeftOut() {
        Analysis analysis = AnalysedExamples.of("rescue-pickup");
        List<OperatingState> idling = analysis.states().stream()
                .filter(state -> state.name().equals("Idling"))
                .toList();
        StringWriter written = new StringWriter();
        CheckText.print(analysis, idling, new PrintWriter(written, true));
        String text = written.toString();
        String starts = text.substring(text.indexOf("STARTS OVER TIME"), text.indexOf("supply codes by"));
        assertTrue(starts.contains("Idling"), starts);
        assertFalse(starts.contains("Winching"), starts);
    }
}
