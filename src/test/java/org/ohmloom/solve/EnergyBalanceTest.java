package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.Pulse;

/** Where the power of a state goes, from the published branches. */
@BesideOthers
class EnergyBalanceTest {

    private static final double EXACT = 1e-9;
    private static final double OUTPUT_OHMS = 0.1;

    @Test
    void whatTheBatteryGivesIsWhatLoadFeedAndOutputTake() {
        // 12 V behind 0.1 ohm, a feed of 0.2 ohm, an output of 0.1 ohm, a load of 2 ohm: 12 / 2.4 = 5 A while on, half
        // of
        // the time: 12.5 A2 in the mean square. Load 25 W, feed 2.5 W, output 1.25 W; the battery gives
        // 12 V x 2.5 A - 0.1 ohm x 12.5 A2 = 28.75 W
        Solved solved = new Net()
                .battery("B", "0", "s", 12, 0.1)
                .wire("FEED", "s", "a", 0.2)
                .output("Q", "a", "l", OUTPUT_OHMS, new Pulse("Q", 100, 0, 0.5))
                .heater("L", "l", "0", 2)
                .solve();
        EnergyBalance energy = EnergyBalance.of(solved.solution().flows().values());
        assertEquals(28.75, energy.givenWatts(), EXACT);
        assertEquals(25, energy.loadsWatts(), EXACT);
        assertEquals(2.5, energy.conductorsWatts(), EXACT);
        assertEquals(1.25, energy.devicesWatts(), EXACT);
        assertEquals(0, energy.missWatts(), EXACT);
    }

    @Test
    void aBatteryThatIsChargedTakesPower() {
        // 14 V behind 0.05 ohm on 12 V behind 0.15 ohm: 10 A. Given 14 x 10 - 0.05 x 100 = 135 W, taken 12 x 10 + 15 =
        // 135 W
        Solved solved = new Net()
                .battery("A", "0", "s", 14, 0.05)
                .battery("B", "0", "s", 12, 0.15)
                .solve();
        EnergyBalance energy = EnergyBalance.of(solved.solution().flows().values());
        assertEquals(135, energy.givenWatts(), EXACT);
        assertEquals(135, energy.chargingWatts(), EXACT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "star-ground"})
    void everyStateOfTheExamplesAccountsForItsPower(String example) {
        AnalysedExamples.of(example).evidence().solutions().forEach((state, solution) -> {
            EnergyBalance energy = EnergyBalance.of(solution);
            assertTrue(energy.missRatio() <= EXACT, example + " " + state + " misses " + energy.missWords());
            assertTrue(energy.loadsWatts() <= energy.givenWatts() * (1 + EXACT), state.value());
        });
    }
}
