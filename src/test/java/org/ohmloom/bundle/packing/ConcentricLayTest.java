package org.ohmloom.bundle.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.ohmloom.bundle.BundleReferences;
import org.ohmloom.bundle.packing.ConcentricLay.Hand;

/** Wires twisted in concentric layers. */
class ConcentricLayTest {
    private static final double EXACT = 1e-9;
    private static final double PRINTED_DIGITS = 0.0016;

    @Test
    void thirtySevenWiresLieInLayersOfOneSixTwelveAndEighteen() {
        ConcentricLay plan = ConcentricLay.of(Collections.nCopies(37, 2.0), 100);
        assertEquals("1-6-12-18", plan.words());
        assertEquals(0, plan.fillers());
        // D = (2 x 3 + 1) d = 14 mm; the layers' circles 4, 8 and 12 mm
        assertEquals(14, plan.diameterMm(), EXACT);
        assertEquals(
                List.of(0.0, 4.0, 8.0, 12.0),
                plan.layers().stream().map(ConcentricLay.Layer::pitchDiameterMm).toList());
    }

    @Test
    void theDiametersAreThoseOfTheHandbooks() {
        for (double[] row : BundleReferences.rows("concentric-factors.csv")) {
            ConcentricLay plan = ConcentricLay.of(Collections.nCopies((int) row[0], 1.0), 10);
            assertEquals(row[1], plan.diameterMm(), PRINTED_DIGITS, (int) row[0] + " wires: " + plan.words());
        }
    }

    @Test
    void fillersCompleteALayer() {
        // 17 wires: 1-6-12 has 19 places, 2 to fill; 2-9-15 and 3-9-15 have more
        ConcentricLay plan = ConcentricLay.of(Collections.nCopies(17, 1.0), 60);
        assertEquals("1-6-12", plan.words());
        assertEquals(2, plan.fillers());
        assertEquals(10, plan.layers().get(2).wires().size());
    }

    @Test
    void eachLayerTurnsAgainstTheOneBeneathAndTheOutermostToTheLeft() {
        List<ConcentricLay.Layer> layers =
                ConcentricLay.of(Collections.nCopies(37, 1.0), 84).layers();
        assertEquals(
                List.of(Hand.STRAIGHT, Hand.LEFT, Hand.RIGHT, Hand.LEFT),
                layers.stream().map(ConcentricLay.Layer::hand).toList());
        // lay lengths in proportion to the diameters 3, 5 and 7 d: 36, 60 and 84 mm
        assertEquals(36, layers.get(1).layLengthMm(), EXACT);
        assertEquals(60, layers.get(2).layLengthMm(), EXACT);
        assertEquals(84, layers.get(3).layLengthMm(), EXACT);
    }

    @Test
    void everyWireHasOnePlaceAndTheThickestLieInmost() {
        List<Double> diameters = List.of(1.0, 3.0, 1.2, 2.0, 1.1, 2.5, 1.4, 0.9, 1.6);
        ConcentricLay plan = ConcentricLay.of(diameters, 50);
        TreeSet<Integer> placed = new TreeSet<>();
        plan.layers().forEach(layer -> placed.addAll(layer.wires()));
        assertEquals(9, placed.size());
        double last = Double.POSITIVE_INFINITY;
        for (ConcentricLay.Layer layer : plan.layers()) {
            for (int wire : layer.wires()) {
                assertTrue(diameters.get(wire) <= last, plan.toString());
                last = diameters.get(wire);
            }
            assertEquals(layer.places(), layer.wires().size() + layer.fillers());
        }
    }
}
