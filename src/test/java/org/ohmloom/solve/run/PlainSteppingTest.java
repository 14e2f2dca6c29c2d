package org.ohmloom.solve.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Draw.MagnetMotor.Torque;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Setting;
import org.ohmloom.solve.NetworkSolution;
import org.ohmloom.solve.NetworkSolver;

/**
 * Random harnesses with two motors, one of which starts, against plain stepping: many small equal steps by Heun's method,
 * each instant solved afresh by {@link NetworkSolver}, with the equations of the motors written down a second time.
 */
@BesideOthers
class PlainSteppingTest {

    private static final int STEPS = 400;

    /** The series promise 1 %; the plain steps are off by less than a tenth of that. */
    private static final double AGREE = 1.1 * StartUp.SERIES_ERROR_SHARE;

    /** A motor by its numbers, and its speed as a share of the rated one. */
    private static final class Plain {
        private final Draw.MagnetMotor motor;
        private final BranchId branch;
        private double speed;

        Plain(String id, Draw.MagnetMotor motor) {
            this.motor = motor;
            branch = new BranchId(id);
        }

        Law law(double at) {
            return new Law.BackEmf(
                    motor.ratedVolts() / motor.startAmps(),
                    Math.max(0, at)
                            * (motor.ratedVolts() - motor.ratedVolts() * motor.ratedAmps() / motor.startAmps()));
        }

        double perSecond(NetworkSolution solution, double at) {
            double ohms = motor.ratedVolts() / motor.startAmps();
            double back = motor.ratedVolts() - ohms * motor.ratedAmps();
            double taken = motor.torque() == Torque.CONSTANT
                    ? motor.ratedAmps()
                    : motor.freeAmps() + (motor.ratedAmps() - motor.freeAmps()) * at * at;
            return (solution.flows().get(branch).amps() - taken) * ohms / (back * motor.startSeconds());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void aRunAgreesWithManySmallEqualSteps(int seed) {
        Random random = new Random(seed);
        Draw.MagnetMotor starting = motor(random, 6 + 6 * random.nextDouble());
        Draw.MagnetMotor running = motor(random, 2 + 3 * random.nextDouble());
        HarnessSketch sketch = sketch(random, starting, running);
        StartUp run = Started.of(sketch, "L1", "M1", "M2").run("M1");
        StarterTrace trace = run.starters().get(0);
        SupplySag sag = run.sag(new ComponentId("L1")).orElseThrow();

        OperatingState state = OperatingState.of("on", "On", EngineMode.OFF)
                .with(new ComponentId("L1"), Setting.ON)
                .with(new ComponentId("M1"), Setting.ON)
                .with(new ComponentId("M2"), Setting.ON);
        Network network = sketch.network(state);
        Plain first = new Plain("M1", starting);
        Plain second = new Plain("M2", running);
        second.speed = speedBefore(network, second);
        List<Plain> motors = List.of(first, second);
        double step = run.durationSeconds() / STEPS;
        for (int each = 0; each <= STEPS; each++) {
            double seconds = each * step;
            List<Double> now = List.of(first.speed, second.speed);
            NetworkSolution solution = solved(network, motors, now);
            double amps = solution.flows().get(first.branch).amps();
            assertEquals(amps, Started.at(run, trace.amps(), seconds), AGREE * trace.peakAmps(), "at " + seconds);
            double volts = solution.flows().get(new BranchId("L1")).dropVolts();
            assertEquals(volts, Started.at(run, sag.volts(), seconds), AGREE * sag.beforeVolts(), "at " + seconds);
            List<Double> ahead = new ArrayList<>();
            List<Double> rates = new ArrayList<>();
            for (int motor = 0; motor < 2; motor++) {
                rates.add(motors.get(motor).perSecond(solution, now.get(motor)));
                ahead.add(now.get(motor) + step * rates.get(motor));
            }
            NetworkSolution then = solved(network, motors, ahead);
            for (int motor = 0; motor < 2; motor++) {
                double rate = (rates.get(motor) + motors.get(motor).perSecond(then, ahead.get(motor))) / 2;
                motors.get(motor).speed += step * rate;
            }
        }
    }

    /** Speed of the other motor while the first is off, by stepping until it moves no more. */
    private static double speedBefore(Network network, Plain motor) {
        Network off = network.withLaws(Map.of(new BranchId("M1"), new Law.Open()));
        double speed = 1;
        for (int each = 0; each < 200; each++) {
            NetworkSolution solution =
                    NetworkSolver.solve(off.withLaws(Map.of(motor.branch, motor.law(speed))), () -> false);
            speed += 0.2 * motor.motor.startSeconds() * motor.perSecond(solution, speed);
        }
        return speed;
    }

    private static NetworkSolution solved(Network network, List<Plain> motors, List<Double> speeds) {
        Map<BranchId, Law> laws = new HashMap<>();
        for (int motor = 0; motor < motors.size(); motor++) {
            laws.put(motors.get(motor).branch, motors.get(motor).law(speeds.get(motor)));
        }
        return NetworkSolver.solve(network.withLaws(laws), () -> false);
    }

    private static Draw.MagnetMotor motor(Random random, double ratedAmps) {
        return new Draw.MagnetMotor(
                ratedAmps,
                ratedAmps * (3 + 3 * random.nextDouble()),
                12,
                1e-4,
                0.2 * ratedAmps * random.nextDouble(),
                random.nextBoolean() ? Torque.CONSTANT : Torque.SPEED_SQUARED,
                0.05 + 0.4 * random.nextDouble(),
                OptionalDouble.empty());
    }

    private static HarnessSketch sketch(Random random, Draw.MagnetMotor starting, Draw.MagnetMotor running) {
        return new HarnessSketch()
                .battery("BT1", 12.6, 0.01 + 0.02 * random.nextDouble())
                .fuse("F1", 10, 0.005)
                .splice("S1", 1e-4)
                .splice("S2", 1e-4)
                .component("M1", Started.load(starting))
                .component("M2", Started.load(running))
                .component("L1", Started.load(new Draw.ConstantPower(10 + 20 * random.nextDouble(), 12)))
                .wire("W1", "BT1.+", "F1.1", 0.005)
                .wire("W2", "F1.2", "S1", 0.01 + 0.03 * random.nextDouble())
                .wire("W3", "S1", "M1.+", 0.02)
                .wire("W4", "S1", "M2.+", 0.03)
                .wire("W5", "S1", "L1.+", 0.04)
                .wire("W6", "M1.-", "S2", 0.01)
                .wire("W7", "M2.-", "S2", 0.01)
                .wire("W8", "L1.-", "S2", 0.01)
                .wire("W9", "S2", "BT1.-", 0.01 + 0.02 * random.nextDouble());
    }
}
