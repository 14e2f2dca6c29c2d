package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.StateId;

/** The voltage between two points told apart along a way: its parts add up to it, and it goes where a person would measure. */
@BesideOthers
class PointDropTest {

    /** Parts are solved voltages; their sum differs from the difference of two of them by rounding only. */
    private static final double ROUNDING_VOLTS = 1e-9;

    private static final long SEED = 20261130;
    private static final int PAIRS = 200;

    private static PointDrop teaching(String from, String to) {
        Solution solution =
                AnalysedExamples.of("teaching").solution(new StateId("both")).orElseThrow();
        return PointDrop.between(new PointId(from), new PointId(to), solution).orElseThrow();
    }

    private static List<String> names(PointDrop drop) {
        return drop.parts().stream()
                .map(part -> part.flow().branch().id().value())
                .toList();
    }

    @Test
    void theFeedOfTheHeaterLosesItsDropPartByPart() {
        // battery 12.4404 V, heater 12.1082 V: 332.1 mV on the way through fuse, switch, splice and connector
        PointDrop drop = teaching("BT1.+", "H1.+");
        assertEquals(12.4404 - 12.1082, drop.volts(), 1e-4);
        assertEquals(List.of("W1", "F1", "W2", "S1.1-2", "W3", "SP1.W3", "SP1.W4", "W4", "X1.1"), names(drop));
        // the switch: 10 milliohm x 7.981 A = 79.8 mV, 24 % of the whole
        PointDrop.Part switched = drop.parts().get(3);
        assertEquals(0.01 * 7.981, switched.dropVolts(), 1e-5);
        assertEquals(0.0798 / 0.3321, drop.share(switched).orElseThrow(), 1e-3);
    }

    @Test
    void theOtherWayRoundEveryPartChangesItsSign() {
        PointDrop drop = teaching("H1.+", "BT1.+");
        assertTrue(drop.volts() < 0);
        assertTrue(drop.parts().stream().allMatch(part -> part.dropVolts() < 0 && part.amps() < 0));
    }

    @Test
    void acrossALoadTheWayGoesThroughTheLoadNotThroughTheBattery() {
        assertEquals(List.of("H1"), names(teaching("H1.+", "H1.-")));
    }

    @Test
    void anOpenSwitchIsNoDropWhileAnotherStateClosesIt() {
        Analysis analysis = AnalysedExamples.of("teaching");
        PointId one = new PointId("S1.1");
        PointId other = new PointId("S1.2");
        // All off: 12.6 V across the switch; both on: 79.8 mV over its contacts.
        PointDrop off = PointDrop.between(
                        one, other, analysis.solution(new StateId("off")).orElseThrow())
                .orElseThrow();
        assertTrue(off.isOpen());
        assertEquals(12.6, off.volts(), 1e-3);
        PointDrop worst = PointDrop.largest(
                        one, other, analysis.evidence().solutions().values())
                .orElseThrow();
        assertEquals(0.0798, worst.volts(), 1e-4);
    }

    @Test
    void theLargestOfAllStatesIsThatOfTheStateWithTheLargestDifference() {
        Analysis analysis = AnalysedExamples.of("teaching");
        PointId from = new PointId("G2.body");
        PointId to = new PointId("BT1.-");
        double most = analysis.evidence().solutions().values().stream()
                .mapToDouble(solution -> Math.abs(
                        solution.volts(from).orElse(0) - solution.volts(to).orElse(0)))
                .max()
                .orElseThrow();
        PointDrop found = PointDrop.largest(
                        from, to, analysis.evidence().solutions().values())
                .orElseThrow();
        assertEquals(most, Math.abs(found.volts()));
        assertEquals(Optional.empty(), PointDrop.largest(from, new PointId("nowhere"), List.of(found.solution())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat"})
    void betweenAnyTwoPointsThePartsAddUpToTheWhole(String example) {
        Random random = new Random(SEED);
        for (Solution solution :
                AnalysedExamples.of(example).evidence().solutions().values()) {
            List<PointId> points = new ArrayList<>(solution.volts().keySet());
            for (int pair = 0; pair < PAIRS; pair++) {
                PointId from = points.get(random.nextInt(points.size()));
                PointId to = points.get(random.nextInt(points.size()));
                PointDrop drop = PointDrop.between(from, to, solution).orElseThrow();
                double sum = drop.parts().stream()
                        .mapToDouble(PointDrop.Part::dropVolts)
                        .sum();
                boolean joined = from.equals(to) || !drop.parts().isEmpty();
                assertTrue(!joined || Math.abs(sum - drop.volts()) < ROUNDING_VOLTS, from + " to " + to);
            }
        }
    }
}
