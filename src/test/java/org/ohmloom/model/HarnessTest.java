package org.ohmloom.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.units.GaugeSystem;

class HarnessTest {

    private static final DesignRules RULES =
            new DesignRules("road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 25);

    private static Harness empty() {
        return Harness.empty(TitleBlock.of("Test harness", "T-1"), RULES);
    }

    private static Component battery() {
        return Component.of("BAT1", "Battery", new Battery(12.6, 0.01, 60));
    }

    private static Wire wire(String id, String terminal) {
        return Wire.of(
                id, new WireEnd.AtTerminal(new ComponentId("BAT1"), terminal), new WireEnd.Loose(), SignalClass.FEED);
    }

    @Test
    void idsOfAllKindsComeInTheOrderAPersonCountsIn() {
        Harness harness = empty().withAll(List.of(battery(), wire("W10", "+"), wire("W2", "+"), wire("W1", "-")));
        assertEquals("[W1, W2, W10]", harness.wires().ids().toString());
    }

    @Test
    void aReferenceThatLeadsNowhereNamesItsPlaceAndTheNearestName() {
        Harness harness = empty().with(battery());
        WireEnd wrong = new WireEnd.AtTerminal(new ComponentId("BAT2"), "+");
        BrokenReferenceException broken = assertThrows(
                BrokenReferenceException.class,
                () -> harness.with(Wire.of("W1", wrong, new WireEnd.Loose(), SignalClass.FEED)));
        assertEquals("wires/W1/from/component", broken.place());
        assertEquals(Optional.of("BAT1"), broken.nearest());
    }

    @Test
    void aTerminalTheDeviceDoesNotHaveIsRefused() {
        Harness harness = empty().with(battery());
        assertThrows(BrokenReferenceException.class, () -> harness.with(wire("W1", "positive")));
    }

    @Test
    void whatIsReferredToCannotBeTakenOutAlone() {
        Harness harness = empty().withAll(List.of(battery(), wire("W1", "+")));
        assertThrows(BrokenReferenceException.class, () -> harness.without(new ComponentId("BAT1")));
        Harness rest = harness.withoutAll(List.of(new ComponentId("BAT1"), new WireId("W1")));
        assertEquals(0, rest.elements().count());
    }

    @Test
    void oneIdServesOneElementOfAnyKind() {
        Harness harness = empty().with(battery());
        assertThrows(
                IllegalArgumentException.class,
                () -> harness.with(new Zone(new ZoneId("BAT1"), "Battery box", 40, false)));
    }

    @Test
    void changingOneElementSharesTheRest() {
        Harness before = empty().withAll(List.of(battery(), wire("W1", "+")));
        Harness after = before.with(wire("W2", "-"));
        assertSame(before.components(), after.components());
        assertSame(before, before.with(wire("W1", "+")));
    }

    @Test
    void coloursAreTheLettersOfTheStandard() {
        assertEquals("GNYE", WireColour.parse("GNYE").text());
        assertEquals(List.of("WH"), WireColour.parse("RDWH").tracers());
        assertThrows(IllegalArgumentException.class, () -> WireColour.parse("RED"));
        assertThrows(IllegalArgumentException.class, () -> WireColour.parse("XX"));
    }

    @Test
    void theImpossibleIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Battery(Double.NaN, 0.01, 60));
        assertThrows(IllegalArgumentException.class, () -> new Battery(12, -0.01, 60));
        assertThrows(IllegalArgumentException.class, () -> new WireId(" "));
        assertThrows(
                IllegalArgumentException.class,
                () -> new DesignRules("b", 96, 0.05, GaugeSystem.AWG, "x", Optional.empty(), 25));
        assertThrows(IllegalArgumentException.class, () -> new Relay(80, 7, 8, 0.01, 30, false));
    }
}
