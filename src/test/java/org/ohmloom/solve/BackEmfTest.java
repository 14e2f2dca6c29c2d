package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;

/** A motor in one moment: a resistance with a voltage against it. */
@BesideOthers
class BackEmfTest {

    /** 12 V behind 0.1 ohm, a motor of 0.5 ohm with that voltage against it. */
    private static Net motor(double counterVolts) {
        return new Net()
                .battery("B", "0", "a", 12, 0.1)
                .branch("M", BranchKind.LOAD, "a", "0", new Law.BackEmf(0.5, counterVolts));
    }

    @Test
    void theCurrentIsThatOfTheVoltageLeftOver() {
        // (12 - 9) / (0.1 + 0.5) = 5 A; 11.5 V at the motor
        motor(9).solve().hasAmps("M", 5).hasVolts("a", 11.5);
    }

    @Test
    void atStandstillItIsAPlainResistance() {
        // 12 / 0.6 = 20 A
        motor(0).solve().hasAmps("M", 20).hasVolts("a", 10);
    }

    @Test
    void aMotorFasterThanItsFeedGivesNothingBack() {
        motor(14).solve().hasAmps("M", 0);
    }

    @Test
    void otherLawsForSomeBranchesLeaveTheRestAsItWas() {
        // from running at 9 V to standing still: 5 A, then 20 A
        Network running = motor(9).network();
        Network standing = running.withLaws(Map.of(new BranchId("M"), new Law.BackEmf(0.5, 0)));
        assertEquals(
                20,
                NetworkSolver.solve(standing, () -> false)
                        .flows()
                        .get(new BranchId("M"))
                        .amps(),
                1e-11);
        assertEquals(running.branch(new BranchId("B")), standing.branch(new BranchId("B")));
        assertEquals(running.points(), standing.points());
    }

    @Test
    void aLawForABranchThatIsNotThereIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> motor(9).network()
                .withLaws(Map.of(new BranchId("X"), new Law.Open())));
    }
}
