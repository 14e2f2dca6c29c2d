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
import org.ohmloom.model.WireEnd;

/** What is typed into the cells of a connector's cavities. */
class CavityEditsTest {
    private static final ConnectorId X1 = new ConnectorId("X1");

    /** X1 on lamp L1, a wire in its cavity 1, which meets +; cavity 2 meets nothing. */
    private static Harness harness() {
        return new HarnessSketch()
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .contact("CT", 0.002)
                .connector("X1", "L1", "1 +")
                .inline("X2", "X3", "a", "b")
                .wire("W1", "BAT1.+", "X1.1", 0.1)
                .harness();
    }

    private static List<WireEnd.AtCavity> cavity(String connector, String name) {
        return List.of(new WireEnd.AtCavity(new ConnectorId(connector), name));
    }

    private static Cavity one(Harness harness) {
        return harness.connectors().get(X1).cavity("1").orElseThrow();
    }

    private static List<String> names(Harness harness) {
        return harness.connectors().get(X1).cavities().stream()
                .map(Cavity::name)
                .toList();
    }

    private static String refused(org.junit.jupiter.api.function.Executable typed) {
        return assertThrows(IllegalArgumentException.class, typed).getMessage();
    }

    @Test
    void aCavityMeetsATerminalOfItsComponentOnly() {
        Harness harness = harness();
        assertEquals(
                Optional.of("-"),
                one(CavityEdits.terminal(harness, cavity("X1", "1"), " - ").apply(harness))
                        .terminal());
        assertEquals(
                Optional.empty(),
                one(CavityEdits.terminal(harness, cavity("X1", "1"), "").apply(harness))
                        .terminal());
        assertEquals(
                "there is no terminal '30'; there are +, -",
                refused(() -> CavityEdits.terminal(harness, cavity("X1", "1"), "30")));
        assertEquals(
                "X2 plugs into no component; a cavity meets a terminal of the one it plugs into",
                refused(() -> CavityEdits.terminal(harness, cavity("X2", "a"), "+")));
    }

    @Test
    void contactsAreThoseOfTheHarness() {
        Harness harness = harness();
        Harness crimped = CavityEdits.contact(harness, cavity("X1", "1"), "CT").apply(harness);
        assertEquals("CT", one(crimped).contact().orElseThrow().value());
        assertEquals(Optional.of("+"), one(crimped).terminal(), "the rest stays");
        assertThrows(IllegalArgumentException.class, () -> CavityEdits.contact(harness, cavity("X1", "1"), "CT9"));
        assertEquals(
                Optional.empty(),
                one(CavityEdits.contact(crimped, cavity("X1", "1"), "").apply(crimped))
                        .contact());
    }

    @Test
    void manyCavitiesChangeAtOnce() {
        Harness harness = harness();
        List<WireEnd.AtCavity> both =
                List.of(cavity("X2", "a").get(0), cavity("X2", "b").get(0));
        Harness after = CavityEdits.doubleCrimp(both, true).apply(harness);
        assertEquals(
                List.of(true, true),
                after.connectors().get(new ConnectorId("X2")).cavities().stream()
                        .map(Cavity::doubleCrimp)
                        .toList());
    }

    @Test
    void aCountOrNamesMakeTheCavitiesAndANewOneMeetsTheTerminalOfItsName() {
        Harness harness = harness();
        assertEquals(
                List.of("1", "2", "3"),
                names(CavityEdits.names(harness, X1, "3").apply(harness)));
        Harness named = CavityEdits.names(harness, X1, "1; -, A,").apply(harness);
        assertEquals(List.of("1", "-", "A"), names(named));
        assertEquals(
                List.of(Optional.of("+"), Optional.of("-"), Optional.empty()),
                named.connectors().get(X1).cavities().stream()
                        .map(Cavity::terminal)
                        .toList());
        Harness taken = CavityEdits.names(harness, X1, "1, +").apply(harness);
        assertEquals(
                Optional.empty(),
                taken.connectors().get(X1).cavity("+").orElseThrow().terminal(),
                "cavity 1 meets it already");
    }

    @Test
    void aCavityWithAWireCannotGoAndNoNameIsRefused() {
        Harness harness = harness();
        assertEquals(
                "a wire sits in cavity 1 of X1; move it first", refused(() -> CavityEdits.names(harness, X1, "A, B")));
        assertEquals(
                "write how many cavities there are, or their names as 1, 2, A",
                refused(() -> CavityEdits.names(harness, X1, " , ")));
        assertThrows(IllegalArgumentException.class, () -> CavityEdits.names(harness, X1, "1, 1"));
    }
}
