package org.ohmloom.workbench.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.SetLoadCurrent;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.edit.SetWireLength;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;

class TypedEditsTest {

    private static final List<WireId> W3 = List.of(new WireId("W3"));
    private static final List<ComponentId> H1 = List.of(new ComponentId("H1"));

    @Test
    void aConductorIsTypedInEitherSystemWithEitherDecimalSign() {
        Gauge twoAndAHalf = Gauge.metric(2.5);
        for (String typed : List.of("2.5 mm2", "2,5 mm²", "2.5", "2,5", " 2,5mm2 ")) {
            assertEquals(new SetWireGauge(W3, Optional.of(twoAndAHalf)), TypedEdits.conductor(W3, typed), typed);
        }
        assertEquals(new SetWireGauge(W3, Optional.of(Gauge.awg(14))), TypedEdits.conductor(W3, "14 AWG"));
        assertEquals(new SetWireGauge(W3, Optional.of(Gauge.awg(-1))), TypedEdits.conductor(W3, "2/0 AWG"));
    }

    @Test
    void anEmptyConductorLeavesTheSizeOpenAndAnEmptyLengthTakesTheRoute() {
        assertEquals(new SetWireGauge(W3, Optional.empty()), TypedEdits.conductor(W3, "  "));
        assertEquals(new SetWireLength(W3, OptionalDouble.empty()), TypedEdits.length(W3, ""));
    }

    @Test
    void aLengthIsTypedInMetresOrFeet() {
        // 10 ft x 0.3048 m/ft = 3.048 m
        assertEquals(new SetWireLength(W3, OptionalDouble.of(3.048)), TypedEdits.length(W3, "10 ft"));
        assertEquals(new SetWireLength(W3, OptionalDouble.of(1.5)), TypedEdits.length(W3, "1,5"));
        assertEquals(new SetWireLength(W3, OptionalDouble.of(0.35)), TypedEdits.length(W3, "350 mm"));
    }

    @Test
    void aCurrentIsTypedInAmperesOrMilliamperes() {
        assertEquals(new SetLoadCurrent(H1, 2.5), TypedEdits.current(H1, "2,5"));
        assertEquals(new SetLoadCurrent(H1, 0.8), TypedEdits.current(H1, "800 mA"));
    }

    @Test
    void whatIsNotNeededIsRefusedWithWhatWouldBeRight() {
        assertTrue(refusal(() -> TypedEdits.conductor(W3, "thick")).contains("14 AWG"));
        assertTrue(refusal(() -> TypedEdits.conductor(W3, "10 ft")).contains("mm2"));
        assertTrue(refusal(() -> TypedEdits.length(W3, "2 A")).contains("a length"));
        assertTrue(refusal(() -> TypedEdits.length(W3, "-1 m")).contains("more than 0"));
        assertTrue(refusal(() -> TypedEdits.current(H1, "0")).contains("more than 0"));
    }

    private static String refusal(Runnable typed) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, typed::run).getMessage());
    }
}
