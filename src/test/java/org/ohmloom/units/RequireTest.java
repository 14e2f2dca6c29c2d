package org.ohmloom.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class RequireTest {
    @Test
    void returnsWhatIsInOrder() {
        assertEquals(2.5, Require.finite(2.5, "x"));
        assertEquals(2.5, Require.positive(2.5, "x"));
        assertEquals(3, Require.positive(3, "x"));
        assertEquals(0.0, Require.notNegative(0.0, "x"));
        assertEquals(0, Require.notNegative(0, "x"));
        assertEquals(1.0, Require.within(1.0, 0, 1, "x"));
        assertEquals(4, Require.within(4, 1, 4, "x"));
        assertEquals(" F1 ", Require.notBlank(" F1 ", "x"));
    }

    @Test
    void saysWhatWasWrongAndWhatArrived() {
        assertEquals(
                "EMF in V must be a finite number, was NaN", message(() -> Require.finite(Double.NaN, "EMF in V")));
        assertEquals(
                "length in m must be greater than 0, was 0.0", message(() -> Require.positive(0.0, "length in m")));
        assertEquals("count must be greater than 0, was -1", message(() -> Require.positive(-1, "count")));
        assertEquals(
                "joint in ohm must be 0 or more, was -0.001",
                message(() -> Require.notNegative(-0.001, "joint in ohm")));
        assertEquals("row must be 0 or more, was -2", message(() -> Require.notNegative(-2, "row")));
        assertEquals("duty must be from 0.0 to 1.0, was 1.5", message(() -> Require.within(1.5, 0, 1, "duty")));
        assertEquals("crimps must be from 1 to 2, was 3", message(() -> Require.within(3, 1, 2, "crimps")));
        assertEquals("id must not be blank, was ' '", message(() -> Require.notBlank("\n", "id")));
    }

    @Test
    void neverLetsNanOrInfinityPass() {
        assertThrows(IllegalArgumentException.class, () -> Require.positive(Double.NaN, "x"));
        assertThrows(IllegalArgumentException.class, () -> Require.positive(Double.POSITIVE_INFINITY, "x"));
        assertThrows(IllegalArgumentException.class, () -> Require.notNegative(Double.NaN, "x"));
        assertThrows(IllegalArgumentException.class, () -> Require.within(Double.NaN, 0, 1, "x"));
    }

    @Test
    void limitsThemselvesBelongToARangeAndZeroIsNotPositive() {
        assertEquals(3, Require.within(3, 3, 5, "x"));
        assertEquals(5, Require.within(5, 3, 5, "x"));
        assertEquals(0.5, Require.within(0.5, 0.5, 0.7, "x"));
        assertEquals(0.7, Require.within(0.7, 0.5, 0.7, "x"));
        assertEquals(4, Require.notNegative(4, "x"));
        assertEquals(4.5, Require.notNegative(4.5, "x"));
        assertThrows(IllegalArgumentException.class, () -> Require.positive(0, "x"));
        assertThrows(IllegalArgumentException.class, () -> Require.positive(0.0, "x"));
    }

    @Test
    void fillsTheTemplateOrLeavesAPercentSignAlone() {
        Require.that(true, "never shown");
        assertEquals("W7 has 2 ends", message(() -> Require.that(false, "%s has %d ends", "W7", 2)));
        assertEquals("more than 100 % duty", message(() -> Require.that(false, "more than 100 % duty")));
    }

    private static String message(Executable refused) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, refused).getMessage());
    }
}
