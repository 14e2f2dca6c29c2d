package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;

/** What a connector is plugged into, and what its cavities then meet. */
class MateConnectorTest {

    /** X1 on lamp L1, whose terminals are + and -; X2 and X3 are an in-line pair; X4 lies loose. */
    private static Harness harness() {
        return new HarnessSketch()
                .load("L1", 1, 12)
                .load("L2", 1, 12)
                .connector("X1", "L1", "+ +", "- -")
                .inline("X2", "X3", "1", "2")
                .inline("X4", "X5", "a", "b", "c")
                .harness();
    }

    private static Harness plugged(Harness harness, String connector, String into) {
        return CavityEdits.mate(harness, new ConnectorId(connector), into).apply(harness);
    }

    private static Optional<String> mate(Harness harness, String connector) {
        return harness.connectors().get(new ConnectorId(connector)).mate().map(ConnectorId::value);
    }

    private static List<Optional<String>> terminals(Harness harness, String connector) {
        return harness.connectors().get(new ConnectorId(connector)).cavities().stream()
                .map(Cavity::terminal)
                .toList();
    }

    @Test
    void twoConnectorsNameEachOtherAndThoseTheyLeaveAreFree() {
        Harness after = plugged(harness(), "X2", "X5");
        assertEquals(Optional.of("X5"), mate(after, "X2"));
        assertEquals(Optional.of("X2"), mate(after, "X5"));
        assertEquals(Optional.empty(), mate(after, "X3"));
        assertEquals(Optional.empty(), mate(after, "X4"));
    }

    @Test
    void aConnectorTakenOffItsComponentMeetsNoTerminal() {
        Harness after = plugged(harness(), "X1", "x3");
        assertEquals(List.of(Optional.empty(), Optional.empty()), terminals(after, "X1"));
        assertEquals(
                Optional.empty(), after.connectors().get(new ConnectorId("X1")).component());
        assertEquals(Optional.of("X1"), mate(after, "X3"), "whatever the case that is typed");
        assertEquals(Optional.empty(), mate(after, "X2"));
    }

    @Test
    void cavitiesAsManyAsTerminalsMeetThemInOrderAndOthersNone() {
        Harness after = plugged(harness(), "X2", "L2");
        assertEquals(List.of(Optional.of("+"), Optional.of("-")), terminals(after, "X2"));
        assertEquals(Optional.empty(), mate(after, "X3"), "its mate is left free");
        assertEquals(
                List.of(Optional.empty(), Optional.empty(), Optional.empty()),
                terminals(plugged(harness(), "X4", "L2"), "X4"));
    }

    @Test
    void cavitiesNamedAsTerminalsMeetThoseOfTheirName() {
        Harness turned = new HarnessSketch()
                .load("L1", 1, 12)
                .load("L2", 1, 12)
                .connector("X1", "L1", "- -", "+ +")
                .harness();
        assertEquals(List.of(Optional.of("-"), Optional.of("+")), terminals(plugged(turned, "X1", "L2"), "X1"));
        assertEquals(
                List.of(Optional.of("-"), Optional.of("+")),
                terminals(plugged(plugged(turned, "X1", ""), "X1", "L1"), "X1"),
                "unplugged and plugged in again");
    }

    @Test
    void aConnectorDoesNotMateWithItselfNorWithWhatIsNotThere() {
        IllegalArgumentException itself =
                assertThrows(IllegalArgumentException.class, () -> plugged(harness(), "X1", "X1"));
        assertEquals("X1 cannot mate with itself", itself.getMessage());
        assertThrows(IllegalArgumentException.class, () -> plugged(harness(), "X1", "X9"));
    }
}
