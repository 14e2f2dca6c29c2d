package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ohmloom.BesideOthers;

/** The joint choice of sizes as it is printed and published. */
@BesideOthers
class JointResultsTest {
    private static final String TEACHING = "examples/teaching.harness.json";
    private static final double SAME = 1e-9;

    @TempDir
    private Path folder;

    private static JsonNode json(String file) throws Exception {
        return new ObjectMapper()
                .readTree(CommandRun.of("check", file, "--format", "json").out());
    }

    @Test
    void everyWireListsItsConstraintsAndOneOfThemGoverns() throws Exception {
        JsonNode wires = PublishedExamples.of("teaching").get("wires");
        assertEquals(8, wires.size());
        for (JsonNode wire : wires) {
            int governs = 0;
            double largestMm2 = 0;
            for (JsonNode requirement : wire.get("requirements")) {
                largestMm2 = Math.max(largestMm2, requirement.get("areaMm2").asDouble());
                if (requirement.get("governs").asBoolean()) {
                    governs++;
                    assertEquals(wire.get("governedBy"), requirement.get("constraint"));
                    assertEquals(wire.get("requiredAreaMm2"), requirement.get("areaMm2"));
                }
                assertTrue(!requirement.get("reason").asText().isBlank());
            }
            assertEquals(1, governs, wire::toString);
            assertEquals(largestMm2, wire.get("requiredAreaMm2").asDouble(), SAME, wire::toString);
        }
    }

    @Test
    void theBudgetsAddUpAndTheBoundIsNoMoreThanTheChoice() throws Exception {
        JsonNode joint = PublishedExamples.of("teaching").get("joint");
        assertEquals("NOTHING_OPEN", joint.get("outcome").asText());
        assertTrue(joint.get("allOpenBoundKg").asDouble() < joint.get("afterKg").asDouble());
        assertEquals(2, joint.get("budgets").size());
        for (JsonNode budget : joint.get("budgets")) {
            double sum = budget.get("otherVolts").asDouble();
            for (JsonNode wire : budget.get("wires")) {
                sum += wire.get("volts").asDouble();
            }
            assertEquals(budget.get("spentVolts").asDouble(), sum, SAME);
            assertTrue(sum <= budget.get("limitVolts").asDouble());
        }
    }

    @Test
    void sizingAnewSavesCopperAndTheCopyIsCleanAndSaysWhatGoverns() throws Exception {
        Path copy = folder.resolve("anew.harness.json");
        CommandRun run = CommandRun.of("size", TEACHING, "--anew", "--out", copy.toString());
        assertEquals(0, run.status(), run::err);
        for (String words : List.of(
                "SIZES CHOSEN TOGETHER",
                "verified by the full analysis",
                "proven least",
                "governed by joint drop budget",
                "> joint drop budget",
                "DROP BUDGET OF")) {
            assertTrue(run.out().replaceAll("\\s+", " ").contains(words), words);
        }
        JsonNode before = PublishedExamples.of("teaching").get("joint");
        JsonNode after = json(copy.toString()).get("joint");
        assertEquals("NOTHING_OPEN", after.get("outcome").asText(), "every chosen size serves");
        assertTrue(after.get("afterKg").asDouble() < before.get("afterKg").asDouble());
        assertTrue(
                before.get("allOpenBoundKg").asDouble() <= after.get("afterKg").asDouble() * (1 + SAME));
    }

    @Test
    void checkShowsConstraintsAndBudgetsInTables() throws Exception {
        String text = CommandRun.of("check", TEACHING).out();
        assertTrue(text.contains("WHAT EACH WIRE NEEDS, BY CONSTRAINT"));
        assertTrue(text.contains("With every size open that is not locked, no choice takes less than"));
    }
}
