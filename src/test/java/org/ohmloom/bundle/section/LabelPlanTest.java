package org.ohmloom.bundle.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.WireTables;

/**
 * Where wires are marked. FAA AC 43.13-1B, 11-208 and figure 11-23 (rows label-spacing, label-first and label-least): not more than
 * 15 in (0.381 m) apart, 3 in (0.076 m) from the ends, none on wires shorter than 3 in.
 */
class LabelPlanTest {
    private static final FabricationTables PRACTICE = WireTables.bundled().fabrication();
    private static final double EXACT = 1e-12;

    private static List<Double> metres(double lengthMetres) {
        return LabelPlan.of(lengthMetres, FabricationRules.NONE, PRACTICE).metres();
    }

    @Test
    void aWireShorterThanThreeInchesNeedsNone() {
        assertEquals(List.of(), metres(0.0759));
        assertEquals(List.of(0.038), metres(0.076), "one, in the middle");
    }

    @Test
    void aWireWithoutRoomForTwoIsMarkedInTheMiddle() {
        assertEquals(List.of(0.076), metres(0.152), "2 x 0.076: both would lie on one place");
        assertEquals(List.of(0.076, 0.153 - 0.076), metres(0.153));
    }

    @Test
    void betweenTheEndsMarksAreEvenAndAtMostTheSpacingApart() {
        // 0.152 + 0.381 = 0.533 m has just one gap of 0.381; a millimetre more has two of 0.191
        assertEquals(2, metres(0.533).size());
        List<Double> three = metres(0.534);
        assertEquals(3, three.size());
        assertEquals(0.076, three.get(0), EXACT);
        assertEquals(0.267, three.get(1), EXACT, "the middle");
        assertEquals(0.458, three.get(2), EXACT, "0.534 - 0.076");
    }

    @Test
    void aSpacingOfTheDesignRulesGoesBeforeTheTable() {
        FabricationRules none = FabricationRules.NONE;
        FabricationRules metre = new FabricationRules(
                none.connectorDepthMm(),
                none.serviceLoopMm(),
                none.reterminationCount(),
                none.dripLoopMm(),
                none.cutStepMm(),
                List.of(),
                none.layRatio(),
                none.marginRatio(),
                none.spliceClearanceMetres(),
                none.spliceStaggerMetres(),
                List.of(),
                none.supportSpacingMetres(),
                OptionalDouble.of(1),
                List.of());
        // 2.152 m: two gaps of 1 m
        assertEquals(3, LabelPlan.of(2.152, metre, PRACTICE).metres().size());
        assertEquals(7, metres(2.152).size(), "2 / 0.381 = 5.2: six gaps");
        assertEquals(
                Optional.empty(),
                metres(2.152).stream().filter(at -> at < 0.0759).findFirst());
    }
}
