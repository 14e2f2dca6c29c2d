package org.ohmloom.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Switch;

/** Parts of a network that share no conducting branch, and the part that carries current back. */
class IslandsTest {
    private static final PointId BATTERY = new PointId("BAT1.+");
    private static final PointId LAMP = new PointId("L1.-");

    private static HarnessSketch switchedLamp() {
        return new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .component("SW1", new Switch(List.of("2"), 0.02, 10))
                .load("L1", 1, 12)
                .wire("W1", "BAT1.+", "SW1.1", 0.1)
                .wire("W2", "SW1.2", "L1.+", 0.1);
    }

    @Test
    void anOpenSwitchPartsTheNetwork() {
        Islands open = Islands.of(switchedLamp().network());
        assertFalse(open.together(BATTERY, LAMP));
        // the battery's side: BAT1.-, BAT1.+, SW1.1; the lamp's: L1.+, L1.-, SW1.2
        assertEquals(
                List.of(3, 3),
                open.all().stream().map(List::copyOf).map(List::size).toList());
        Islands closed =
                Islands.of(switchedLamp().network(HarnessSketch.state().with(new ComponentId("SW1"), Setting.ON)));
        assertTrue(closed.together(BATTERY, LAMP));
        assertEquals(OptionalInt.empty(), closed.number(new PointId("elsewhere")));
    }

    @Test
    void anIsolatedConverterSharesNoConductor() {
        Network network = new HarnessSketch()
                .component("CONV1", new Converter(5, 0, 3, 0.9, true))
                .component("CONV2", new Converter(5, 0, 3, 0.9, false))
                .network();
        // isolated: input and output apart; common return: one
        assertEquals(3, Islands.of(network).all().size());
    }

    @Test
    void returnsAreKnownByHowTheyHangTogetherNotByTheirClass() {
        // the feed is called a return and the return a feed
        Network network = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .wire("W1", "BAT1.+", "L1.+", 0.1, SignalClass.RETURN, OptionalDouble.empty(), OptionalDouble.empty())
                .wire("W2", "L1.-", "BAT1.-", 0.1, SignalClass.FEED, OptionalDouble.empty(), OptionalDouble.empty())
                .network();
        assertEquals(
                List.of(new BranchId("W2")),
                List.copyOf(ReturnNetwork.of(network).branches().keySet()));
    }

    @Test
    void theWireFromLoadsToASwitchInTheReturnIsAReturnToo() {
        Network network = new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .component("SW1", new Switch(List.of("2"), 0.02, 10))
                .wire("W1", "BAT1.+", "L1.+", 0.1)
                .wire("W2", "L1.-", "SW1.1", 0.1)
                .wire("W3", "SW1.2", "BAT1.-", 0.1)
                .network();
        assertEquals(
                List.of(new BranchId("W2"), new BranchId("W3")),
                List.copyOf(ReturnNetwork.of(network).branches().keySet()));
    }
}
