package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The table and the heat balance side by side. */
class MethodComparisonTest {

    private static MethodComparison of(OptionalDouble tableAmps, double balanceAmps, boolean byBalance) {
        return new MethodComparison(tableAmps, "", balanceAmps, "", byBalance);
    }

    @Test
    void aBalanceBelowTheTableIsTheSafeSide() {
        // 18 / 24 - 1 = -25 %
        MethodComparison below = of(OptionalDouble.of(24), 18, true);
        assertEquals(-0.25, below.apartFraction().getAsDouble());
        assertFalse(below.unsafeSide());
        assertEquals("table 24 A, heat balance 18 A (25 % less); designed to the heat balance", below.words());
    }

    @Test
    void aBalanceAboveTheTableIsTheUnsafeSide() {
        MethodComparison above = of(OptionalDouble.of(20), 25, false);
        assertTrue(above.unsafeSide());
        assertEquals("table 20 A, heat balance 25 A (25 % more); designed to the table", above.words());
        assertFalse(of(OptionalDouble.of(20), 20, false).unsafeSide(), "the same");
    }

    @Test
    void withoutARowNothingIsCompared() {
        MethodComparison none = of(OptionalDouble.empty(), 25, true);
        assertEquals(OptionalDouble.empty(), none.apartFraction());
        assertEquals("no row in the table, heat balance 25 A; designed to the heat balance", none.words());
        assertEquals(OptionalDouble.empty(), of(OptionalDouble.of(0), 25, true).apartFraction(), "no share of nothing");
    }
}
