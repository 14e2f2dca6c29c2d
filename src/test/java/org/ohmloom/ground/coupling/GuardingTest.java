package org.ohmloom.ground.coupling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** What guards a signal wire, in words and in what is left of an electric field. */
class GuardingTest {
    private static final Optional<Wire> SHIELD =
            Optional.of(Wire.of("SH", new WireEnd.Loose(), new WireEnd.Loose(), SignalClass.SHIELD));

    @Test
    void aShieldGroundedAnywhereEndsTheElectricField() {
        assertEquals(1, new Guarding(true, 0.02, SHIELD, 0).capacitiveShare());
        assertEquals(0, new Guarding(false, 0, SHIELD, 1).capacitiveShare());
        assertEquals(0, new Guarding(false, 0, SHIELD, 2).capacitiveShare());
    }

    @Test
    void everyGuardIsNamed() {
        assertEquals(
                "nothing", new Guarding(false, 0, Optional.empty(), 0).words().english());
        assertEquals(
                "twisted with its return",
                new Guarding(true, 0.02, Optional.empty(), 0).words().english());
        assertEquals(
                "a shield grounded nowhere",
                new Guarding(false, 0, SHIELD, 0).words().english());
        assertEquals(
                "a shield grounded at one end",
                new Guarding(false, 0, SHIELD, 1).words().english());
        assertEquals(
                "twisted with its return, a shield grounded at both ends",
                new Guarding(true, 0.02, SHIELD, 2).words().english());
    }
}
