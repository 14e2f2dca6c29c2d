package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.analysis.CoachHarness;
import org.ohmloom.store.HarnessFiles;

/**
 * A coach of 10,000 wires in {@code check}, in the full gate; in the sample the same coach with 100. Every study ends, within a
 * count of its own where it would grow too long, and what it then left out is said in the results.
 */
@BesideOthers
class LargeHarnessTest {

    /** As many as the property {@code ohmloom.wires} asks for: ten thousand are a campaign of their own. */
    private static final int WIRES = Integer.getInteger("ohmloom.wires", Campaign.FULL ? 1000 : 100);

    private static final int VERY_LARGE = 10_000;

    /** Kirchhoff's laws as published, A. */
    private static final double RESIDUAL_AMPS = 1e-6;

    @TempDir
    private Path folder;

    @Test
    void everyWireOfALargeCoachIsJudgedAndWhatIsLeftOutIsSaid() throws Exception {
        Path file = folder.resolve("coach" + HarnessFiles.ENDING);
        HarnessFiles.write(file, CoachHarness.ofWires(WIRES));
        CommandRun run = CommandRun.of("check", file.toString(), "--format", "json");
        assertEquals("", run.err());
        assertTrue(run.status() == 0 || run.status() == 1, "exit status " + run.status());
        JsonNode root = new ObjectMapper().readTree(run.out());
        assertEquals(4, root.get("states").size());
        for (JsonNode state : root.get("states")) {
            assertEquals("SOLVED", state.get("status").asText(), () -> state.get("name")
                    .asText());
            assertTrue(state.get("residualAmps").asDouble() < RESIDUAL_AMPS, state.get("name")::asText);
        }
        // 50 wires for every box, and the four of battery and alternator
        assertEquals(wires(), root.get("wires").size());
        root.get("wires").forEach(wire -> assertFalse(wire.get("requirements").isEmpty(), wire::toString));
        if (WIRES >= VERY_LARGE) {
            // 4000 loads in one network are more than the study of combinations takes
            assertTrue(root.get("envelope").get("notes").toString().contains("no envelope"), run::out);
            // twenty outputs on clocks of their own: a sample of their 2^20 moments, with its uncertainty
            JsonNode night = root.get("states").get(1);
            assertTrue(night.get("samplingErrorRatio").asDouble() > 0);
        }
    }

    private static int wires() {
        return CoachHarness.ofWires(WIRES).wires().size();
    }
}
