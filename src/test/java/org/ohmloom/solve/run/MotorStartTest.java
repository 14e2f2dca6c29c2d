package org.ohmloom.solve.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Draw.MagnetMotor.Torque;
import org.ohmloom.model.Driver;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.model.SolidStateOutput;

/** Permanent-magnet motors run up by their own time constant, against closed forms and worked examples. */
@BesideOthers
class MotorStartTest {

    private static final double SERIES = StartUp.SERIES_ERROR_SHARE;
    private static final double EXACT = 1e-9;

    /** So little that it stands for none. */
    private static final double NONE = 1e-9;

    private static HarnessSketch fed(Draw.MagnetMotor motor, double volts, double feedOhms) {
        return new HarnessSketch()
                .battery("BT1", volts, NONE)
                .fuse("F1", 1, feedOhms)
                .component("M1", Started.load(motor))
                .wire("W1", "BT1.+", "F1.1", NONE)
                .wire("W2", "F1.2", "M1.+", NONE)
                .wire("W3", "M1.-", "BT1.-", NONE);
    }

    private static Draw.MagnetMotor motor(double rated, double start, double volts, Torque torque, double seconds) {
        return new Draw.MagnetMotor(rated, start, volts, 1e-4, 0, torque, seconds, OptionalDouble.empty());
    }

    @Test
    void theWindingAndTheStartCurrentOfAToyMotor() {
        // 6.00 V, back EMF 4.50 V at 3.00 A: R = 1.5 / 3 = 0.5 ohm, start 6 / 0.5 = 12 A
        // (clutchprep.com, practice problem 144846)
        Draw.MagnetMotor toy = motor(3, 12, 6, Torque.CONSTANT, 0.2);
        assertEquals(0.5, toy.windingOhms(), EXACT);
        assertEquals(4.5, toy.backVolts(), EXACT);
        StarterTrace trace =
                Started.of(fed(toy, 6, 1e-7), "M1").run("M1").starters().get(0);
        assertEquals(12, trace.peakAmps(), 12 * 1e-6);
        assertEquals(3, trace.endAmps(), 12 * 0.01 + 1e-6);
    }

    @Test
    void theFreeSpeedAndStallCurrentOfAnExerciseMotor() {
        // Ke 12 V per 1000 rpm, R 1.5 ohm, 10 V: 833 rpm without load, 6.67 A at standstill (transtutors.com 13716611).
        // Rated at 12 V and 1 mA, next to no current: E = 12 V - 1.5 mV, so 999.9 rpm.
        double ratedRpm = (12 - 1.5e-3) / 0.012;
        Draw.MagnetMotor free =
                new Draw.MagnetMotor(1e-3, 8, 12, 1e-4, 0, Torque.CONSTANT, 0.1, OptionalDouble.of(ratedRpm));
        RunningUp running = new RunningUp(new BranchId("M1"), free, 1, false);
        assertEquals(833.3, running.steadySpeed(10) * ratedRpm, 0.2);
        StarterTrace trace =
                Started.of(fed(free, 10, 1e-7), "M1").run("M1").starters().get(0);
        assertEquals(6.667, trace.peakAmps(), 5e-4);
        // Kt = 0.12 N m / A: 0.80 N m
        assertEquals(0.80, trace.peakAmps() * 0.12, 5e-4);
    }

    @Test
    void theRunningPointOfAMotorKnownByFreeSpeedAndStallTorque() {
        // 12 V, 3800 rpm free, 30 mN m at standstill, at 2500 rpm: 10.26 mN m, 0.340 A, back EMF 7.89 V
        // (homeworklib.com 1976071)
        double newtonMetresPerAmp = 12 / (3800 * 2 * Math.PI / 60);
        double startAmps = 0.030 / newtonMetresPerAmp;
        double torque = 0.030 * (1 - 2500.0 / 3800);
        double amps = torque / newtonMetresPerAmp;
        assertEquals(0.01026, torque, 5e-6);
        Draw.MagnetMotor motor =
                new Draw.MagnetMotor(amps, startAmps, 12, 1e-3, 0, Torque.CONSTANT, 0.1, OptionalDouble.of(2500));
        assertEquals(0.340, motor.ratedAmps(), 5e-4);
        assertEquals(7.89, motor.backVolts(), 6e-3);
        assertEquals(1, new RunningUp(new BranchId("M1"), motor, 1, false).steadySpeed(12), 1e-12);
    }

    @Test
    void atConstantTorqueTheCurrentFallsWithTheMechanicalTimeConstant() {
        // I = Irated + (Istart - Irated) exp(-t / tau), tau = J R / (Kt Ke)
        StartUp run = Started.of(fed(motor(5, 40, 12, Torque.CONSTANT, 0.3), 12, 1e-7), "M1")
                .run("M1");
        for (double seconds : Started.instants(run, 200)) {
            double expected = 5 + 35 * Math.exp(-seconds / 0.3);
            assertEquals(
                    expected, Started.at(run, run.starters().get(0).amps(), seconds), 40 * SERIES, "at " + seconds);
        }
        // the whole integral: 25 t + 2 x 5 x 35 tau (1 - f) + 35^2 tau / 2 (1 - f^2)
        double seconds = run.durationSeconds();
        double left = Math.exp(-seconds / 0.3);
        double whole = 25 * seconds + 350 * 0.3 * (1 - left) + 1225 * 0.15 * (1 - left * left);
        assertEquals(whole, run.surge(new ComponentId("F1")).orElseThrow().squareAmpSeconds(), whole * 2e-3);
    }

    @Test
    void aFeedWithResistanceLowersTheStartCurrentAndLengthensTheStart() {
        // R = 0.3 ohm and 0.1 ohm of feed: 12 / 0.4 = 30 A at first, and tau (R + Rf) / R = 0.4 s instead of 0.3 s
        StartUp run = Started.of(fed(motor(5, 40, 12, Torque.CONSTANT, 0.3), 12, 0.1), "M1")
                .run("M1");
        StarterTrace trace = run.starters().get(0);
        assertEquals(30, trace.peakAmps(), 1e-6);
        assertEquals(9, trace.lowestVolts(), 1e-6);
        assertEquals(0.4, trace.timeConstantSeconds(), 1e-6);
        for (double seconds : Started.instants(run, 100)) {
            double expected = 5 + 25 * Math.exp(-seconds / 0.4);
            assertEquals(expected, Started.at(run, trace.amps(), seconds), 30 * SERIES, "at " + seconds);
        }
    }

    @Test
    void aFanRunsUpByTheHyperbolicTangent() {
        // dn/dt = R / (E tau) (V/R - E n / R - k n^2), k = rated current: with a = E / (2 k R), m = sqrt(a^2 + V / (k
        // R)):
        // n = m tanh(m c t + artanh(a / m)) - a, c = R k / (E tau). 12 V, 10 A, 40 A at standstill: R 0.3, E 9 V
        double a = 9 / (2 * 10 * 0.3);
        double m = Math.sqrt(a * a + 12 / (10 * 0.3));
        double c = 0.3 * 10 / (9 * 0.5);
        StartUp run = Started.of(fed(motor(10, 40, 12, Torque.SPEED_SQUARED, 0.5), 12, 1e-7), "M1")
                .run("M1");
        double lag = 0.5 * Math.log((1 + a / m) / (1 - a / m));
        for (double seconds : Started.instants(run, 100)) {
            double speed = m * Math.tanh(m * c * seconds + lag) - a;
            double expected = (12 - 9 * speed) / 0.3;
            assertEquals(
                    expected, Started.at(run, run.starters().get(0).amps(), seconds), 40 * SERIES, "at " + seconds);
        }
        assertTrue(run.seconds().size() < 25, run.seconds().size() + " instants");
    }

    @Test
    void aMotorThatCannotOvercomeItsTorqueStalls() {
        // 5 A of torque asked, 12 V behind 3 ohm drive 12 / 3.3 = 3.6 A
        StartUp run = Started.of(fed(motor(5, 40, 12, Torque.CONSTANT, 0.3), 12, 3), "M1")
                .run("M1");
        assertEquals(StartUp.Outcome.STALLED, run.outcome());
        assertEquals(12 / 3.3, run.starters().get(0).endAmps(), 1e-6);
    }

    @Test
    void aQuickAndASlowMotorStartTogetherInFewSteps() {
        // time constants of 5 ms and 0.5 s behind 0.3 ohm: what is quick is over before the steps grow
        HarnessSketch sketch = fed(motor(5, 40, 12, Torque.SPEED_SQUARED, 0.5), 12, 0.3)
                .component("M2", Started.load(motor(1, 12, 12, Torque.SPEED_SQUARED, 0.005)))
                .wire("W4", "F1.2", "M2.+", NONE)
                .wire("W5", "M2.-", "BT1.-", NONE);
        StartUp run = Started.of(sketch, "M1", "M2").together();
        assertEquals(StartUp.Outcome.SETTLED, run.outcome());
        assertTrue(run.solutions() < 1000, run.solutions() + " solutions");
        assertTrue(run.seconds().size() < 40, run.seconds().size() + " instants");
        // 0.3 ohm of feed before 0.3 ohm and 1 ohm side by side, 0.23077 ohm: 12 / 0.53077 = 22.609 A
        assertEquals(
                12 / (0.3 + 0.3 / 1.3),
                run.surge(new ComponentId("F1")).orElseThrow().peakAmps(),
                1e-4);
    }

    @Test
    void anOutputWithAnElectronicLimitHoldsTheStartCurrentDownAndTheStartTakesLonger() {
        // R 0.3 ohm, E 10.5 V, 5 A of torque, tau 0.3 s, limit 15 A: dn/dt = R / (E tau) x 10 A until 12 - E n = 4.5 V,
        // that is
        // n = 0.7143 after 0.7143 x 10.5 x 0.3 / 3 = 0.75 s; from there 5 + 10 exp(-t / tau)
        ElectronicLimit limit = new ElectronicLimit(15, OptionalDouble.of(0.5), OptionalDouble.empty());
        Driver driver = new Driver(
                100,
                Optional.empty(),
                OptionalDouble.empty(),
                Driver.Freewheel.NONE,
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.of(limit),
                OptionalDouble.empty());
        HarnessSketch sketch = new HarnessSketch()
                .battery("BT1", 12, NONE)
                .fuse("F1", 10, NONE)
                .component("Q1", new SolidStateOutput(1e-6, 50, Optional.of(driver), OptionalDouble.empty()))
                .component("M1", Started.load(motor(5, 40, 12, Torque.CONSTANT, 0.3)))
                .wire("W1", "BT1.+", "F1.1", NONE)
                .wire("W2", "F1.2", "Q1.in", NONE)
                .wire("W3", "Q1.out", "M1.+", NONE)
                .wire("W4", "M1.-", "BT1.-", NONE);
        StartUp run = Started.of(sketch, "M1", "Q1").run("M1");
        StarterTrace trace = run.starters().get(0);
        assertEquals(15, trace.peakAmps(), 1e-6);
        for (double seconds : Started.instants(run, 100)) {
            double expected = seconds < 0.75 ? 15 : 5 + 10 * Math.exp(-(seconds - 0.75) / 0.3);
            assertEquals(expected, Started.at(run, trace.amps(), seconds), 15 * 2 * SERIES, "at " + seconds);
        }
        LimitedOutput limited = run.limited().get(0);
        assertEquals(new ComponentId("Q1"), limited.component());
        assertEquals(0.75, limited.limitedSeconds(), 0.75 * 0.02);
        assertTrue(limited.trips(), "0.75 s at its limit, it stands 0.5 s");
    }
}
