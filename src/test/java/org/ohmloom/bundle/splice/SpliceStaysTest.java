package org.ohmloom.bundle.splice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.WireTables;

/** Splices that nobody is advised to move, and why. */
@BesideOthers
class SpliceStaysTest {

    /** A feed at B1, a splice 1 m on, a lamp at B2, 2 m from the feed. */
    private static HarnessSketch line() {
        return new HarnessSketch()
                .segment("T1", "B1", "B2", 2)
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .splice("S1", 0)
                .at("BAT1", "B1")
                .at("L1", "B2")
                .along("S1", "T1", 1)
                .wire("W1", "BAT1.+", "S1", 0.1);
    }

    private static HarnessSketch joined() {
        return line().wire("W2", "S1", "L1.+", 0.1);
    }

    private static Optional<String> stays(Harness harness) {
        SpliceAdvice advice = SplicePlacing.of(harness, WireTables.bundled(), wire -> Optional.empty())
                .get(new SpliceId("S1"));
        assertEquals(Optional.empty(), advice.best());
        return advice.stays();
    }

    @Test
    void oneWireAloneIsNoSplice() {
        assertEquals(Optional.of("fewer than two wires end in it"), stays(line().harness()));
    }

    @Test
    void aWireWhoseLengthIsEnteredWouldNotFitElsewhere() {
        Harness harness = joined().harness();
        harness = harness.with(harness.wires().get(new WireId("W2")).withLengthMetres(OptionalDouble.of(1.2)));
        assertEquals(Optional.of("the length of W2 is entered"), stays(harness));
    }

    @Test
    void whereAWireGoesMustBeKnown() {
        Harness harness = line().load("L2", 1, 12).wire("W2", "S1", "L2.+", 0.1).harness();
        assertEquals(Optional.of("the other end of W2 has no place"), stays(harness));
    }

    @Test
    void aSpliceOfTheVehicleIsNotMoved() {
        Harness harness = joined().harness();
        Splice mine = harness.splices().get(new SpliceId("S1"));
        Splice there =
                new Splice(mine.id(), mine.name(), mine.jointOhms(), mine.place(), mine.part(), true, mine.assembly());
        assertEquals(Optional.of("it is in the vehicle already"), stays(harness.with(there)));
    }

    @Test
    void aPlaceNoSegmentReachesIsNoPlaceToMoveFrom() {
        Harness harness = joined().segment("T2", "B3", "B4", 1).at("S1", "B4").harness();
        assertEquals(Optional.of("no segment reaches it"), stays(harness.without(new SegmentId("T2"))));
    }

    @Test
    void aWayOfTwoMetresHasNoPlaceOneAndAHalfFromBothEnds() {
        Harness kept = SplicePlacingTest.kept(joined().harness(), 1.5, 0.05, List.of());
        assertEquals(Optional.of("no place keeps all distances"), stays(kept));
    }

    @Test
    void aBreakoutIsTheEndOfTheSegmentThere() {
        Harness harness = joined().harness();
        assertEquals(
                0, Spot.of(harness, new Place.AtBreakout(new BreakoutId("B1"))).metres());
        assertEquals(
                2, Spot.of(harness, new Place.AtBreakout(new BreakoutId("B2"))).metres());
    }
}
