package org.ohmloom.signal.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.ohmloom.signal.study.BusLine.bus;
import static org.ohmloom.signal.study.BusLine.inside;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.Edit;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.BusId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.WireEnd;
import org.ohmloom.signal.bus.wiring.BusProblem;
import org.ohmloom.signal.bus.wiring.BusProblem.Kind;

/** What mends the wiring of a bus; each change is made, and the bus studied again. */
@BesideOthers
class BusMendingTest {
    private static final DataBus.Termination[] ENDS = {inside("U1", 120), inside("U3", 120)};

    private static Optional<Edit> mending(Harness harness, Kind kind) {
        BusReading reading = BusLine.reading(harness);
        BusProblem problem = reading.wiring().problems().stream()
                .filter(each -> each.kind() == kind)
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        kind + " is not among " + reading.wiring().problems()));
        return new BusMending(harness, BusLine.TABLES.signals(), reading).of(problem);
    }

    private static DataBus mended(Harness harness, Kind kind) {
        Harness after = mending(harness, kind).orElseThrow().apply(harness);
        assertTrue(BusLine.reading(after).wiring().problems().stream().noneMatch(each -> each.kind() == kind));
        return after.buses().get(new BusId("CAN1"));
    }

    private static List<String> units(DataBus bus) {
        return bus.terminations().stream()
                .map(each -> each.insideUnit().orElseThrow().value() + " " + each.ohms())
                .toList();
    }

    @Test
    void linesThatAreSwappedChangePlacesAtTheirNode() {
        HarnessSketch swapped =
                BusLine.of(4, 6, 0.5).run("CH", "SH", "U2.L", 0.5).run("CL", "SL", "U2.H", 0.5);
        mended(swapped.with(bus("sae-j1939-14", 500_000, ENDS)).harness(), Kind.SWAPPED);
    }

    @Test
    void resistorsGoIntoTheTwoNodesFurthestApartAndWhatIsThereStays() {
        HarnessSketch line = BusLine.of(4, 6, 0.5);
        // 120 ohm at both ends, ISO 11898-2
        assertEquals(
                List.of("U1 120.0", "U3 120.0"),
                units(mended(line.with(bus("sae-j1939-14", 500_000)).harness(), Kind.TERMINATION_COUNT)));
        DataBus.Termination middle = new DataBus.Termination(
                120,
                new WireEnd.AtSplice(new SpliceId("SH")),
                new WireEnd.AtSplice(new SpliceId("SL")),
                Optional.empty());
        DataBus one = bus("sae-j1939-14", 500_000, inside("U1", 118), middle);
        assertEquals(
                List.of("U1 118.0", "U3 120.0"), units(mended(line.with(one).harness(), Kind.TERMINATION_NOT_AT_END)));
    }

    @Test
    void aResistorOutsideTheToleranceIsReplacedAndOneInsideStays() {
        // 108 to 132 ohm, ISO 11898-2
        HarnessSketch line = BusLine.of(4, 6, 0.5);
        for (double wrong : new double[] {107, 133}) {
            DataBus bus = bus("sae-j1939-14", 500_000, inside("U1", wrong), inside("U3", 132));
            assertEquals(
                    List.of("U1 120.0", "U3 132.0"), units(mended(line.with(bus).harness(), Kind.TERMINATION_OHMS)));
        }
    }

    @Test
    void aBusTooLongForItsRateRunsAtTheNextThatAllowsItsLengths() {
        // 1 Mbit/s 40 m, 800 kbit/s 50 m, 500 kbit/s 100 m (ISO 11898 and CiA as table can-limits has them)
        HarnessSketch line = BusLine.of(30, 30, 0.2);
        assertEquals(
                500_000,
                mended(line.with(bus("iso-11898-2", 1_000_000, ENDS)).harness(), Kind.TOO_LONG)
                        .bitsPerSecond());
        // 50 m are within 800 kbit/s still; a stub of 3 m is not (2.5 m), nor for 500 kbit/s one of 6 m (5.5 m)
        assertEquals(
                800_000,
                mended(
                                BusLine.of(20, 30, 0.2)
                                        .with(bus("iso-11898-2", 1_000_000, ENDS))
                                        .harness(),
                                Kind.TOO_LONG)
                        .bitsPerSecond());
        assertEquals(
                500_000,
                mended(
                                BusLine.of(10, 10, 3)
                                        .with(bus("iso-11898-2", 1_000_000, ENDS))
                                        .harness(),
                                Kind.STUB_TOO_LONG)
                        .bitsPerSecond());
        assertEquals(
                250_000,
                mended(
                                BusLine.of(10, 10, 6)
                                        .with(bus("iso-11898-2", 1_000_000, ENDS))
                                        .harness(),
                                Kind.STUB_TOO_LONG)
                        .bitsPerSecond());
    }

    @Test
    void noSlowerRateIsOfferedWhereTheSetHasNoneOrTheBusWouldBeTooFull() {
        HarnessSketch line = BusLine.of(30, 30, 0.2);
        assertEquals(
                Optional.empty(),
                mending(line.with(bus("sae-j1939-14", 500_000, ENDS)).harness(), Kind.TOO_LONG));
        // 8 bytes are 135 bits at most; every 0.6 ms they fill 135 / 600 = 22 % of 1 Mbit/s, 45 % of 500 kbit/s: over
        // 40 %
        DataBus full = bus("iso-11898-2", 1_000_000, ENDS)
                .sending(List.of(new DataBus.Sent(
                        "Fast",
                        new ComponentId("U1"),
                        1,
                        11,
                        8,
                        0.0006,
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
        assertEquals(Optional.empty(), mending(line.with(full).harness(), Kind.TOO_LONG));
    }

    @Test
    void singleWiresThatRunBesideEachOtherBecomePairs() {
        Harness harness =
                BusLine.of(4, 6, 0.5).with(bus("sae-j1939-14", 500_000, ENDS)).harness();
        Harness after = mending(harness, Kind.NOT_TWISTED).orElseThrow().apply(harness);
        assertEquals(List.of(), BusLine.reading(after).wiring().problems());
        assertEquals(3, after.cables().all().size());
        Harness uneven = BusLine.of(4, 6, 0.5)
                .run("CL", "SL", "U2.L", 0.6)
                .with(bus("sae-j1939-14", 500_000, ENDS))
                .harness();
        assertEquals(Optional.empty(), mending(uneven, Kind.NOT_TWISTED), "0.5 m and 0.6 m are no pair");
    }
}
