package org.ohmloom.signal.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.SetIdentifier;
import org.ohmloom.model.BusId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.bus.MessageTiming;

/**
 * What mends messages of data sheets. A frame of 8 bytes with 11 bits of identifier has 135 bits at most, at 125 kbit/s 1.08 ms; a
 * message waits for one frame of lower priority that has just begun and for all of higher priority.
 */
@BesideOthers
class TrafficMendingTest {
    private static final BusId BUS = new BusId("CAN1");

    private static DataBus.Sent sent(String name, int identifier, double deadlineSeconds) {
        return new DataBus.Sent(
                name,
                new ComponentId("U1"),
                identifier,
                11,
                8,
                0.01,
                OptionalDouble.empty(),
                OptionalDouble.of(deadlineSeconds));
    }

    private static Harness sending(DataBus.Sent... messages) {
        return BusLine.of(4, 6, 0.5)
                .with(BusLine.bus("cia", 125_000).sending(List.of(messages)))
                .harness();
    }

    private static Optional<?> identifier(DataBus.Sent... messages) {
        SignalStudy study = BusLine.study(sending(messages));
        return new TrafficMending(study, BusLine.TABLES.signals())
                .identifier(study.buses().get(0), messages[messages.length - 1].name());
    }

    @Test
    void anIdentifierTakenTwiceGoesToTheNextFree() {
        assertEquals(
                Optional.of(new SetIdentifier(BUS, "C", 7)),
                identifier(sent("A", 5, 0.01), sent("B", 6, 0.01), sent("C", 5, 0.01)));
    }

    @Test
    void noIdentifierIsHigherThanElevenBits() {
        assertEquals(
                Optional.of(new SetIdentifier(BUS, "B", 0x7FF)),
                identifier(sent("A", 0x7FE, 0.01), sent("B", 0x7FE, 0.01)));
        assertEquals(Optional.empty(), identifier(sent("A", 0x7FF, 0.01), sent("B", 0x7FF, 0.01)));
    }

    private static Optional<?> sooner(DataBus.Sent... messages) {
        SignalStudy study = BusLine.study(sending(messages));
        BusReading reading = study.buses().get(0);
        MessageTiming late = reading.traffic().timings().stream()
                .filter(each -> !each.isInTime())
                .findFirst()
                .orElseThrow();
        return new TrafficMending(study, BusLine.TABLES.signals()).sooner(reading, late);
    }

    @Test
    void aLateMessageGoesBeforeAllOthersIfTheyStillComeInTime() {
        // third of three: 3 x 1.08 = 3.24 ms, late for 2.5 ms; first of three: 2 x 1.08 = 2.16 ms
        assertEquals(
                Optional.of(new SetIdentifier(BUS, "Late", 0x0FF)),
                sooner(sent("A", 0x100, 0.01), sent("B", 0x200, 0.01), sent("Late", 0x300, 0.0025)));
        // A, behind it then, takes 3.24 ms, and it has 3 ms
        assertEquals(
                Optional.empty(), sooner(sent("A", 0x100, 0.003), sent("B", 0x200, 0.01), sent("Late", 0x300, 0.0025)));
    }

    @Test
    void beforeIdentifierZeroThereIsNone() {
        assertEquals(Optional.empty(), sooner(sent("A", 0, 0.01), sent("B", 1, 0.01), sent("Late", 2, 0.0025)));
    }
}
