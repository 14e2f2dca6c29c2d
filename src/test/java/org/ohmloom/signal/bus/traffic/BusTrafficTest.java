package org.ohmloom.signal.bus.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.Campaign;
import org.ohmloom.model.BusId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DataBus;
import org.ohmloom.signal.bus.BusSimulation;
import org.ohmloom.signal.bus.Message;
import org.ohmloom.signal.bus.MessageTiming;

/** Channels put into messages by hand; and what is packed at random never comes later than computed. */
@BesideOthers
class BusTrafficTest {
    private static final ComponentId MAIN = new ComponentId("U1");
    private static final ComponentId MODULE = new ComponentId("U2");

    /**
     * Six values of 16 bits at 100 Hz fill 8 bytes and 4 more; three at 5 Hz take 6 bytes. At 125 kbit/s with 11 bits the frames have
     * 135, 95 and 115 bits at most: load = (135 + 95) x 100 / 125000 + 115 x 5 / 125000 = 18.9 %.
     */
    @Test
    void valuesOfOneRateShareMessages() {
        List<BusSignal> signals = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            signals.add(new BusSignal("slow " + k, MAIN, 5, 16));
        }
        for (int k = 0; k < 6; k++) {
            signals.add(new BusSignal("fast " + k, MAIN, 100, 16));
        }
        BusTraffic traffic = BusTraffic.of(bus(11, Optional.empty(), List.of()), signals);
        assertEquals(
                List.of(8, 4, 6),
                traffic.messages().stream()
                        .map(each -> each.message().dataBytes())
                        .toList());
        assertEquals(List.of("0x300", "0x301", "0x302"), identifiers(traffic));
        assertEquals((135 + 95) * 100 / 125e3 + 115 * 5 / 125e3, traffic.loadFraction(), 1e-12);
        assertTrue(traffic.timings().stream().allMatch(MessageTiming::isInTime));
        // The first waits for the longest below it, 115 bits, then takes its own 135: 2 ms.
        assertEquals(0.002, traffic.timings().get(0).responseSeconds().orElseThrow(), 1e-9);
    }

    @Test
    void identifiersPassOverWhatDataSheetsHaveTaken() {
        DataBus.Sent oxygen =
                new DataBus.Sent("Oxygen", MODULE, 0x301, 11, 8, 0.01, OptionalDouble.empty(), OptionalDouble.empty());
        BusTraffic traffic = BusTraffic.of(
                bus(11, Optional.empty(), List.of(oxygen)),
                List.of(new BusSignal("a", MAIN, 50, 16), new BusSignal("b", MODULE, 50, 16)));
        assertEquals(List.of("0x300", "0x301", "0x302"), identifiers(traffic));
        assertEquals(
                List.of("M1", "Oxygen", "M2"),
                traffic.messages().stream().map(each -> each.message().id()).toList());
    }

    /**
     * A message entered by hand carries b and a of U1 in that order; c is left for the packing. Sent every 50 ms, it comes too seldom for
     * a, which is to be sent at 50 Hz, and not for b at 20 Hz.
     */
    @Test
    void whatAnEnteredMessageCarriesIsNotPackedAgain() {
        DataBus.Sent own = new DataBus.Sent(
                "Pressures",
                MAIN,
                0x200,
                11,
                4,
                0.05,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of("b", "a"));
        BusTraffic traffic = BusTraffic.of(
                bus(11, Optional.empty(), List.of(own)),
                List.of(
                        new BusSignal("a", MAIN, 50, 16),
                        new BusSignal("b", MAIN, 20, 16),
                        new BusSignal("c", MAIN, 20, 16)));
        assertEquals(
                List.of("Pressures: b, a", "M1: c"),
                traffic.messages().stream()
                        .map(each -> each.message().id() + ": "
                                + String.join(
                                        ", ",
                                        each.signals().stream()
                                                .map(BusSignal::name)
                                                .toList()))
                        .toList());
        assertEquals(List.of("a"), traffic.seldom());
    }

    @Test
    void aMessageTooShortForItsValuesIsRefused() {
        DataBus.Sent own = new DataBus.Sent(
                "Pressures",
                MAIN,
                0x200,
                11,
                3,
                0.05,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of("b", "a"));
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> bus(11, Optional.empty(), List.of(own)));
        assertTrue(refused.getMessage().contains("3 bytes, too few for 2 values of 16 bits"), refused.getMessage());
    }

    @Test
    void aMessageWithTheIdentifierOfAnotherIsLeftOutAndTold() {
        DataBus.Sent one =
                new DataBus.Sent("One", MAIN, 5, 11, 8, 0.01, OptionalDouble.empty(), OptionalDouble.empty());
        DataBus.Sent two =
                new DataBus.Sent("Two", MODULE, 5, 11, 8, 0.01, OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(
                List.of("Two"),
                BusTraffic.of(bus(11, Optional.empty(), List.of(one, two)), List.of())
                        .clashing());
    }

    /** Priority 3 from 50 Hz, group 65280 and up, source address 128 for the first node: 0x0CFF0080. */
    @Test
    void longIdentifiersAreLaidOutAsPriorityGroupAndAddress() {
        BusTraffic traffic = BusTraffic.of(
                bus(29, Optional.empty(), List.of()),
                List.of(
                        new BusSignal("slow", MODULE, 1, 16),
                        new BusSignal("mid", MAIN, 10, 16),
                        new BusSignal("fast", MAIN, 100, 16)));
        assertEquals(List.of("0x0CFF0080", "0x14FF0180", "0x18FF0281"), identifiers(traffic));
    }

    /** SAE J1939 at 250 kbit/s, ten messages of 8 bytes every 50 ms and four every 20 ms: 25.6 % (by the frame formula). */
    @Test
    void theLoadOfPackedMessagesIsThatOfTheFormula() {
        List<BusSignal> signals = new ArrayList<>();
        for (int k = 0; k < 56; k++) {
            signals.add(new BusSignal("v" + k, MAIN, k < 40 ? 20 : 50, 16));
        }
        DataBus at250 = new DataBus(
                new BusId("CAN1"),
                "Bus",
                250_000,
                29,
                Optional.empty(),
                nodes(),
                List.of(),
                Optional.empty(),
                List.of());
        BusTraffic traffic = BusTraffic.of(at250, signals);
        assertEquals(14, traffic.messages().size());
        assertEquals(0.256, traffic.loadFraction(), 1e-9);
    }

    @Test
    void fewerValuesGoIntoAMessageWhereThePackingSaysSo() {
        DataBus.Packing two =
                new DataBus.Packing(Optional.empty(), Optional.of(2), Optional.of(0x7FE), OptionalDouble.of(0.001));
        List<BusSignal> signals = new ArrayList<>();
        for (int k = 0; k < 5; k++) {
            signals.add(new BusSignal("v" + k, MAIN, 10, 16));
        }
        BusTraffic traffic = BusTraffic.of(bus(11, Optional.of(two), List.of()), signals);
        // Only 0x7FE and 0x7FF are left of 11 bits, so the fifth value has no message.
        assertEquals(List.of("0x7FE", "0x7FF"), identifiers(traffic));
        assertEquals(List.of("v4"), traffic.unsent());
        assertEquals(0.001, traffic.messages().get(0).message().jitterSeconds());
    }

    /** Buses of channels packed at random and simulated frame by frame: nothing comes later than computed. */
    @Test
    void noPackedMessageOfASimulatedBusIsLaterThanComputed() {
        int sets = Campaign.count(40, 1_000);
        Random random = new Random(7_112_026);
        double[] rates = {1, 2, 5, 10, 20, 50, 100, 200};
        int told = 0;
        for (int set = 0; set < sets; set++) {
            int bits = random.nextBoolean() ? 11 : 29;
            DataBus bus = bus(
                    bits,
                    Optional.of(new DataBus.Packing(
                            Optional.empty(),
                            Optional.of(1 + random.nextInt(4)),
                            Optional.empty(),
                            random.nextBoolean() ? OptionalDouble.of(0.0005) : OptionalDouble.empty())),
                    List.of());
            List<BusSignal> signals = new ArrayList<>();
            for (int k = 5 + random.nextInt(40); k > 0; k--) {
                signals.add(new BusSignal(
                        "v" + k, random.nextBoolean() ? MAIN : MODULE, rates[random.nextInt(rates.length)], 16));
            }
            BusTraffic traffic = BusTraffic.of(bus, signals);
            List<Message> ordered =
                    traffic.messages().stream().map(PackedMessage::message).toList();
            double[] latest = new double[ordered.size()];
            for (int run = 0; run < 4; run++) {
                new BusSimulation(ordered, bus.bitsPerSecond(), random, run == 0).run(2.0, latest);
            }
            for (int k = 0; k < latest.length; k++) {
                MessageTiming timing = traffic.timings().get(k);
                if (timing.responseSeconds().isPresent()) {
                    told++;
                    assertTrue(
                            latest[k] <= timing.responseSeconds().getAsDouble() + 1e-9,
                            timing.message() + ": " + latest[k] + " s in set " + set);
                }
            }
        }
        assertTrue(told > 3 * sets, "response times are told: " + told);
    }

    private static List<String> identifiers(BusTraffic traffic) {
        return traffic.messages().stream().map(PackedMessage::identifierText).toList();
    }

    private static List<DataBus.Node> nodes() {
        return List.of(DataBus.Node.of(MAIN, "H", "L"), DataBus.Node.of(MODULE, "H", "L"));
    }

    private static DataBus bus(int bits, Optional<DataBus.Packing> packing, List<DataBus.Sent> messages) {
        return new DataBus(
                new BusId("CAN1"), "Bus", 125_000, bits, Optional.empty(), nodes(), List.of(), packing, messages);
    }
}
