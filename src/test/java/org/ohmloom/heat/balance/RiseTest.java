package org.ohmloom.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Where an increasing function passes through zero. */
class RiseTest {
    private static final double NEAR = 10 * Rise.TOLERANCE_KELVIN;

    private int asked;

    private double where(double low, DoubleUnaryOperator function) {
        asked = 0;
        return Rise.where(low, at -> {
            asked++;
            return function.applyAsDouble(at);
        });
    }

    @Test
    void aFunctionThatIsNotNegativeAtTheStartPassesThere() {
        assertEquals(25, where(25, at -> at - 20));
        assertEquals(25, where(25, at -> at - 25));
    }

    @Test
    void theZeroIsFoundHoweverFarAway() {
        assertEquals(31.4, where(25, at -> at - 31.4), NEAR);
        assertEquals(41, where(25, at -> at - 41), NEAR, "at the first step");
        assertEquals(1000, where(25, at -> at - 1000), NEAR);
    }

    @Test
    void aFunctionCurvedEitherWayTakesFewSteps() {
        // T^4 as of radiation, and its mirror image; plain false position would creep up on these from one side
        assertEquals(300, where(0, at -> Math.pow(at / 300, 12) - 1), NEAR);
        assertTrue(asked < 40, () -> asked + " values");
        assertEquals(300, where(0, at -> 1 - Math.pow(Math.max(0, 600 - at) / 300, 12)), NEAR);
        assertTrue(asked < 40, () -> asked + " values");
    }
}
