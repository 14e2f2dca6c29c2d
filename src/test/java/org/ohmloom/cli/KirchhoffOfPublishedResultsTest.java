package org.ohmloom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;

/**
 * Recomputes Kirchhoff's laws from nothing but the published JSON, as another program would.
 * <p>At each point the mean currents sum to within {@link #RELATIVE} of the largest there, floor 1 A; on each branch with
 * {@code ohms}, V = I R to within that of the greater end voltage; {@code dropVolts} = {@code amps} x {@code ohms}.
 */
@BesideOthers
class KirchhoffOfPublishedResultsTest {

    private static final double RELATIVE = 1e-9;

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void everyPublishedStateObeysKirchhoff(String example) {
        JsonNode root = PublishedExamples.of(example);
        assertFalse(root.get("states").isEmpty());
        for (JsonNode state : root.get("states")) {
            Map<String, Double> volts = volts(state);
            Map<String, Double> sums = new HashMap<>();
            Map<String, Double> largest = new HashMap<>();
            for (JsonNode branch : state.get("branches")) {
                double amps = branch.get("amps").asDouble();
                String from = branch.get("from").asText();
                String to = branch.get("to").asText();
                assertTrue(volts.containsKey(from) && volts.containsKey(to), branch::toString);
                add(sums, largest, from, -amps);
                add(sums, largest, to, amps);
                ohm(branch, volts.get(from), volts.get(to));
            }
            sums.forEach((point, sum) -> assertEquals(
                    0, sum, RELATIVE * Math.max(1, largest.get(point)), () -> state.get("name") + " at " + point));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void dropsAreSourceVoltsMinusLoadVoltsAndCurrentsAreOrdered(String example) {
        for (JsonNode state : PublishedExamples.of(example).get("states")) {
            Map<String, Double> volts = volts(state);
            Map<String, JsonNode> sources = new HashMap<>();
            Map<String, JsonNode> draws = new HashMap<>();
            for (JsonNode branch : state.get("branches")) {
                double mean = Math.abs(branch.get("amps").asDouble());
                double rms = branch.get("rmsAmps").asDouble();
                assertTrue(mean <= rms * (1 + RELATIVE) + RELATIVE, branch::toString);
                String owner = branch.get("id").asText().split("\\.")[0];
                switch (branch.get("kind").asText()) {
                    case "SOURCE" -> sources.put(owner, branch);
                    case "LOAD" -> draws.put(owner, branch);
                    default -> {}
                }
            }
            for (JsonNode load : state.get("loads")) {
                JsonNode source = sources.get(load.get("reference").asText());
                JsonNode draw = draws.get(load.get("id").asText());
                if (source == null || draw == null) {
                    continue;
                }
                double sourceVolts = volts.get(source.get("to").asText())
                        - volts.get(source.get("from").asText());
                double loadVolts = volts.get(draw.get("from").asText())
                        - volts.get(draw.get("to").asText());
                assertEquals(loadVolts, load.get("volts").asDouble(), RELATIVE * 60, load::toString);
                assertEquals(
                        sourceVolts - loadVolts,
                        load.get("feedDropVolts").asDouble()
                                + load.get("returnDropVolts").asDouble(),
                        RELATIVE * 60,
                        load::toString);
            }
        }
    }

    /** Volts by point; NaN where undefined. */
    private static Map<String, Double> volts(JsonNode state) {
        Map<String, Double> volts = new HashMap<>();
        Set<String> islands = new HashSet<>();
        state.get("islands").forEach(island -> islands.add(island.get("id").asText()));
        for (JsonNode point : state.get("points")) {
            assertTrue(islands.contains(point.get("island").asText()), point::toString);
            volts.put(
                    point.get("id").asText(),
                    point.get("volts").isNull()
                            ? Double.NaN
                            : point.get("volts").asDouble());
        }
        return volts;
    }

    private static void add(Map<String, Double> sums, Map<String, Double> largest, String point, double amps) {
        sums.merge(point, amps, Double::sum);
        largest.merge(point, Math.abs(amps), Math::max);
    }

    private static void ohm(JsonNode branch, double fromVolts, double toVolts) {
        double amps = branch.get("amps").asDouble();
        if (Double.isNaN(fromVolts) || Double.isNaN(toVolts)) {
            assertEquals(0, amps, branch::toString);
            return;
        }
        if (!branch.get("ohms").isNull()) {
            double drop = amps * branch.get("ohms").asDouble();
            double greater = Math.max(Math.abs(fromVolts), Math.abs(toVolts));
            assertEquals(drop, fromVolts - toVolts, RELATIVE * Math.max(greater, 1e-3), branch::toString);
            assertEquals(drop, branch.get("dropVolts").asDouble(), Math.abs(drop) * 1e-12, branch::toString);
        }
    }
}
