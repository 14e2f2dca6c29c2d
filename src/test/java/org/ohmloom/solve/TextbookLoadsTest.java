package org.ohmloom.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Pulse;

/** Chopped loads and motors of textbooks and exercises, each named beside its check. */
@BesideOthers
class TextbookLoadsTest {

    /** Agreement with printed answers of four or five digits. */
    private static final double PRINTED = 1e-3;

    private static final double NO_OHMS = 1e-7;

    @Test
    void aChopperWithADropOfTwoVoltsOnTenOhms() {
        // Rashid, Power Electronics, 4th edition, example 5.1: 220 V, switch drop 2 V, 10 ohm, 1 kHz, k 0.5: mean 109
        // V, RMS
        // 154.15 V, output 2376.2 W, input 2398 W; here 218 V behind the drop
        Solved solved = new Net()
                .battery("B", "0", "s", 220, 0)
                .diode("DROP", "s", "a", 2, NO_OHMS)
                .output("Q", "a", "l", NO_OHMS, new Pulse("Q", 1000, 0, 0.5))
                .heater("L", "l", "0", 10)
                .solve();
        assertEquals(109, solved.drop("L"), PRINTED);
        assertEquals(154.149, solved.flow("L").rmsAmps() * 10, PRINTED);
        assertEquals(2376.2, solved.flow("L").watts(), 1e-2);
        assertEquals(2398, -solved.flow("B").watts(), 1e-2);
    }

    @Test
    void aStepDownConverterIsACoilThatIsSwitched() {
        // an exercise on a step-down converter: 6 V in, 1.5 V out into 3 ohm, 400 kHz, 5 uH: D 0.25, mean 0.50 A,
        // ripple 0.5625 A,
        // peak 0.781 A, supply 0.125 A. A large output capacitor holds 1.5 V, which a battery stands for here; the
        // diode is
        // ideal, the coil's 1 micro-ohm takes nothing
        Solved solved = new Net()
                .battery("B", "0", "s", 6, 0)
                .output("Q", "s", "l", NO_OHMS, new Pulse("Q", 400e3, 0, 0.25))
                .branch("L", BranchKind.LOAD, "l", "o", new Law.Inductive(1e-3, 5e-6))
                .branch("D", BranchKind.FREEWHEEL_DIODE, "0", "l", new Law.Threshold(0, NO_OHMS))
                .branch("C", BranchKind.SUPPLY_CAPACITOR, "o", "0", new Law.SupplyCapacitor(1000))
                .heater("OUT", "o", "0", 3)
                .solve();
        assertEquals(0.5, solved.flow("L").amps(), PRINTED);
        Ripple ripple = solved.solution().duty().ripples().get(new BranchId("L"));
        assertEquals(0.5625, ripple.rippleAmps(), PRINTED);
        assertEquals(0.781, ripple.peakAmps(), PRINTED);
        assertEquals(0.125, solved.flow("B").amps(), PRINTED);
    }

    @Test
    void aToyMotorRunsAgainstItsCounterVoltage() {
        // an exercise on motors: 6.00 V, counter-voltage 4.50 V at 3.00 A: winding 0.5 ohm, 12 A at standstill
        Law.MagnetMotor motor = new Law.MagnetMotor(0.5, 1e-3, 4.5, 3, 0, true, 0.2);
        Solved running = motor(6, motor);
        assertEquals(3, running.flow("M").amps(), 1e-12);
        Solved standing = motor(6, new Law.Inductive(0.5, 1e-3));
        assertEquals(12, standing.flow("M").amps(), 1e-12);
    }

    private static Solved motor(double volts, Law law) {
        return new Net()
                .battery("B", "0", "a", volts, 0)
                .branch("M", BranchKind.LOAD, "a", "0", law)
                .solve();
    }

    @Test
    void aFanAtLowVoltageStandsStillAtItsWindingsCurrent() {
        // free current 1 A through 0.5 ohm: below 0.5 V it does not turn; at 0.4 V 0.8 A
        assertEquals(
                0.8,
                motor(0.4, new Law.MagnetMotor(0.5, 1e-3, 4.5, 3, 1, true, 0.2))
                        .flow("M")
                        .amps(),
                1e-12);
    }

    @Test
    void aConstantTorqueTakesTheSameCurrentAtAnyVoltageThatTurnsIt() {
        // 3 A through 0.5 ohm need 1.5 V; above that the speed takes the rest
        Law.MagnetMotor winch = new Law.MagnetMotor(0.5, 1e-3, 4.5, 3, 0.5, false, 0.2);
        assertEquals(3, motor(6, winch).flow("M").amps(), 1e-12);
        assertEquals(3, motor(4, winch).flow("M").amps(), 1e-12);
        assertEquals(2, motor(1, winch).flow("M").amps(), 1e-12);
    }

    @Test
    void aFanBehindAnOutputRunsAsAtItsMeanVoltage() {
        // ripple-free, ideal diode: 12 V at D 0.6 is 7.2 V. Fan 10 A at 12 V, 0.2 ohm, free 1 A: E0 = 10 V;
        // 0.2 x 9 n^2 + 10 n = 7.2 - 0.2: n = (-10 + sqrt(100 + 4 x 1.8 x 7)) / 3.6 = 0.628948; I = 1 + 9 n^2 = 4.560 A
        double speed = (-10 + Math.sqrt(100 + 4 * 1.8 * 7)) / 3.6;
        Solved solved = new Net()
                .battery("B", "0", "s", 12, 0)
                .output("Q", "s", "l", NO_OHMS, new Pulse("Q", 20e3, 0, 0.6))
                .branch("M", BranchKind.LOAD, "l", "0", new Law.MagnetMotor(0.2, 1, 10, 10, 1, true, 0.5))
                .branch("D", BranchKind.FREEWHEEL_DIODE, "0", "l", new Law.Threshold(0, NO_OHMS))
                .solve();
        assertEquals(1 + 9 * speed * speed, solved.flow("M").amps(), 1e-5);
        // the supply gives D of it: LF-11 of the textbooks
        assertEquals(0.6 * (1 + 9 * speed * speed), solved.flow("B").amps(), 1e-5);
        Ripple ripple = solved.solution().duty().ripples().get(new BranchId("M"));
        assertEquals(speed, ripple.speedFraction().orElseThrow(), 1e-6);
    }

    @Test
    void aFanAtSixtyPercentSpeedTakesAFifthOfItsPower() {
        // affinity laws: power goes with the cube of the speed, 0.6^3 = 21.6 %. A 12 V fan of 20 A with 0.06 ohm has
        // 12 - 0.06 x 20 = 10.8 V of counter-voltage, 216 W on its shaft. At 0.6 of its speed it takes 0.36 x 20 = 7.2
        // A
        // and has 6.48 V: it is run at 6.48 + 0.06 x 7.2 = 6.912 V and gives 46.656 W
        Solved fan = motor(6.912, new Law.MagnetMotor(0.06, 1e-3, 10.8, 20, 0, true, 0.5));
        double amps = fan.flow("M").amps();
        assertEquals(7.2, amps, 1e-9);
        assertEquals(0.216, (6.912 - 0.06 * amps) * amps / 216, 1e-9);
    }

    @Test
    void aFanInHotterAirTakesLessAtTheSameSpeed() {
        // textbook on fans and ducts: 1.8 kW in air of 20 C, the same speed in air of 40 C: power goes with the
        // density,
        // 1.8 x 293.15 / 313.15 = 1.685 kW. 22.5 V of counter-voltage at that speed: 80 A, and 74.89 A in hot air
        double hotAmps = 80 * 293.15 / 313.15;
        Solved fan = motor(22.5 + 0.02 * hotAmps, new Law.MagnetMotor(0.02, 1e-3, 22.5, hotAmps, 0, true, 0.5));
        double amps = fan.flow("M").amps();
        assertEquals(74.89, amps, 5e-3);
        assertEquals(1685, (fan.drop("M") - 0.02 * amps) * amps, 0.5);
    }
}
