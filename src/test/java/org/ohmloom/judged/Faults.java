package org.ohmloom.judged;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** Puts faults of a wanted size at random places into a sound harness; what makes the size is found by plain solutions. */
final class Faults {

    private static final double LEAST_OHMS = 1e-5;
    private static final double MOST_OHMS = 30;
    private static final double SETTLED = 1e-4;
    private static final int MOST_EVALUATIONS = 80;
    private static final List<String> SENSORS = List.of("P1", "P2", "T1");

    private final Harness sound;
    private final Random random;

    Faults(Harness sound, long seed) {
        this.sound = sound;
        // seeds in a row would begin alike
        this.random = new Random(new SplittableRandom(seed).nextLong());
    }

    /** A fault of the kind, of half to twice its limit; empty where this harness has no place for one. */
    Optional<Fault> of(FaultKind kind) {
        double size = Math.exp(Math.log(0.5) + random.nextDouble() * Math.log(4));
        return switch (kind) {
            case POOR_JOINT -> joint(size);
            case THIN_STRAP -> strap(size);
            case FAR_GROUND -> farGround(size);
            case LOAD_ON_SENSOR_RETURN -> loadOnSensor(size);
            case SENSOR_ON_LOAD_RETURN -> sensorOnLoad(size);
            case CORRODED_CONTACT -> contact(size);
            case SECOND_PATH -> secondPath(size);
            case CROWDED_STUD -> crowded(size);
            default -> new FurtherFaults(sound, random).of(kind, size);
        };
    }

    private Optional<Fault> joint(double size) {
        for (String ground : shuffled(List.of("G1", "G2", "G3", "E1", "E2"))) {
            Optional<Harness> faulty =
                    sized(ohms -> Harnesses.jointed(sound, ground, ohms), judge -> judge.groundShare(ground), size);
            if (faulty.isPresent()) {
                return Fault.in(FaultKind.POOR_JOINT, "ground-offset", ground, size, faulty);
            }
        }
        return Optional.empty();
    }

    private Optional<Fault> strap(double size) {
        String ground = shuffled(List.of("E0", "E1", "E2")).get(0);
        return Fault.in(
                FaultKind.THIN_STRAP,
                "ground-offset",
                ground,
                size,
                sized(ohms -> Harnesses.strapped(sound, "ST1", ohms), judge -> judge.groundShare(ground), size));
    }

    /** The unit's ground wire on a ground point of the engine, as long and thin as it takes. */
    private Optional<Fault> farGround(double size) {
        Wire wire = Harnesses.wireAt(sound, Plan.in("XU", "GND"));
        Harness moved = sound.with(wire.withEnds(
                wire.from(),
                Plan.on(shuffled(List.of("G1", "G2", "G3", "E1", "E2")).get(0))));
        return Fault.in(
                FaultKind.FAR_GROUND,
                "unit-ground-offset",
                SoundHarness.UNIT,
                size,
                sized(
                        ohms -> Harnesses.resisting(moved, wire.id().value(), ohms),
                        judge -> judge.unitShare(SoundHarness.UNIT),
                        size));
    }

    /** A splice in a sensor's return takes the return of a load of a fitting current. */
    private Optional<Fault> loadOnSensor(double size) {
        String sensor = shuffled(SENSORS).get(0);
        Optional<Wire> back = loadReturns().stream().findFirst();
        if (back.isEmpty()) {
            return Optional.empty();
        }
        Wire own = Harnesses.wireAt(sound, Plan.in("X" + sensor, Sensor.RETURN));
        Harness spliced = spliced(own, back.get());
        String load = ((WireEnd.AtTerminal) back.get().from()).component().value();
        return Fault.in(
                FaultKind.LOAD_ON_SENSOR_RETURN,
                "sensor-return-shared",
                sensor,
                size,
                sized(
                        amps -> Harnesses.drawing(spliced, load, amps),
                        judge -> judge.sharedAmps(sensor) / PlainJudge.RETURN_AMPS,
                        size));
    }

    /** The sensor's return in two, with a splice that the load's return comes to instead of its ground point. */
    private Harness spliced(Wire own, Wire load) {
        Plan plan = new Plan();
        plan.splice("SPX", 0.0002);
        Wire rest = Plan.wire(
                "WX", Plan.joined("SPX"), own.to(), 0.75, 0.5, SignalClass.REFERENCE_RETURN, Optional.empty());
        plan.with(own.withEnds(own.from(), Plan.joined("SPX")));
        plan.with(rest);
        plan.with(load.withEnds(load.from(), Plan.joined("SPX")));
        return sound.withAll(plan.elements());
    }

    /** The sensor's return no longer goes to the unit but to a splice in a load's return, which is long and thin from there. */
    private Optional<Fault> sensorOnLoad(double size) {
        for (String sensor : shuffled(SENSORS)) {
            for (Wire load : loadReturns()) {
                Harness spliced = moved(Harnesses.wireAt(sound, Plan.in("X" + sensor, Sensor.RETURN)), load);
                Optional<Harness> faulty = sized(
                        ohms -> Harnesses.resisting(spliced, "WX", ohms), judge -> judge.errorShare(sensor), size);
                if (faulty.isPresent()) {
                    return Fault.in(FaultKind.SENSOR_ON_LOAD_RETURN, "sensor-error-over-limit", sensor, size, faulty);
                }
            }
        }
        return Optional.empty();
    }

    /** A sensor's return at a splice in a load's. */
    private Harness moved(Wire own, Wire load) {
        Plan plan = new Plan();
        plan.splice("SPX", 0.0002);
        plan.with(own.withEnds(own.from(), Plan.joined("SPX")));
        plan.with(load.withEnds(load.from(), Plan.joined("SPX")));
        plan.with(Plan.wire("WX", Plan.joined("SPX"), load.to(), 1.0, 2, SignalClass.RETURN, Optional.empty()));
        return sound.withAll(plan.elements());
    }

    private Optional<Fault> contact(double size) {
        String sensor = shuffled(SENSORS).get(0);
        List<String> leads = sensor.equals("T1")
                ? List.of(Sensor.SIGNAL, Sensor.RETURN)
                : List.of(Sensor.RETURN, sensor.equals("P1") ? Sensor.SUPPLY : Sensor.RETURN);
        String lead = shuffled(leads).get(0);
        return Fault.in(
                FaultKind.CORRODED_CONTACT,
                "sensor-error-over-limit",
                sensor,
                size,
                sized(
                        ohms -> Harnesses.contacted(sound, "X" + sensor, lead, ohms),
                        judge -> judge.errorShare(sensor),
                        size));
    }

    /** The open end of a shield, or a splice in a sensor's return, joined to the chassis as well. */
    private Optional<Fault> secondPath(double size) {
        String ground = shuffled(List.of("G1", "G2", "G3", "E1", "E2")).get(0);
        String closing;
        Plan plan = new Plan();
        if (random.nextBoolean()) {
            Wire shield = Harnesses.wireAt(sound, Plan.in("XP1", "shield"));
            closing = shield.id().value();
            plan.with(shield.withEnds(shield.from(), Plan.on(ground)));
        } else {
            Wire own = Harnesses.wireAt(sound, Plan.in("XP1", Sensor.RETURN));
            closing = "WY";
            plan.splice("SPX", 0.0002);
            plan.with(own.withEnds(own.from(), Plan.joined("SPX")));
            plan.with(Plan.wire(
                    "WX", Plan.joined("SPX"), own.to(), 0.75, 0.5, SignalClass.REFERENCE_RETURN, Optional.empty()));
            plan.with(Plan.wire(
                    "WY",
                    Plan.joined("SPX"),
                    Plan.on(ground),
                    0.75,
                    1,
                    SignalClass.REFERENCE_RETURN,
                    Optional.empty()));
        }
        Harness closed = sound.withAll(plan.elements());
        return Fault.in(
                FaultKind.SECOND_PATH,
                "ground-loop",
                closing,
                size,
                sized(
                        ohms -> Harnesses.resisting(closed, closing, ohms),
                        judge -> judge.strayAmps(closing) / PlainJudge.STRAY_AMPS,
                        size));
    }

    /** Returns of loads moved to one ground point until it holds as many as asked. */
    private Optional<Fault> crowded(double size) {
        String ground = shuffled(List.of("G1", "G2", "G3", "E1", "E2")).get(0);
        long wanted = Math.round(size * PlainJudge.STACKED);
        Harness faulty = sound;
        for (Wire wire : shuffled(List.copyOf(sound.wires().all()))) {
            if (new PlainJudge(faulty).stacked(ground) < wanted
                    && wire.signalClass() == SignalClass.RETURN
                    && wire.to() instanceof WireEnd.AtGround
                    && !wire.to().equals(Plan.on(ground))
                    && !wire.to().equals(Plan.on("G0"))) {
                faulty = faulty.with(wire.withEnds(wire.from(), Plan.on(ground)));
            }
        }
        double share = new PlainJudge(faulty).stacked(ground) / PlainJudge.STACKED;
        return Optional.of(new Fault(FaultKind.CROWDED_STUD, "ground-stud-crowded", ground, share, faulty));
    }

    /** The return wires of the loads that are not dimmed, in a random order. */
    private List<Wire> loadReturns() {
        List<Wire> returns = new ArrayList<>();
        for (Wire wire : sound.wires().all()) {
            if (wire.from() instanceof WireEnd.AtTerminal at
                    && at.component().value().startsWith("L")
                    && !at.component().value().startsWith("LD")
                    && wire.to() instanceof WireEnd.AtGround) {
                returns.add(wire);
            }
        }
        return shuffled(returns);
    }

    /** The harness in which a number has just the wanted size; empty where no value between the bounds makes it so large. */
    private static Optional<Harness> sized(
            DoubleFunction<Harness> change, ToDoubleFunction<PlainJudge> share, double size) {
        return sized(LEAST_OHMS, MOST_OHMS, change, harness -> share.applyAsDouble(new PlainJudge(harness)), size);
    }

    /** The same with the number between two bounds, both more than 0. */
    static Optional<Harness> sized(
            double least, double most, DoubleFunction<Harness> change, ToDoubleFunction<Harness> share, double size) {
        UnivariateFunction miss = log -> share.applyAsDouble(change.apply(Math.exp(log))) - size;
        double low = Math.log(least);
        double high = Math.log(most);
        if (!(miss.value(low) * miss.value(high) < 0)) {
            return Optional.empty();
        }
        return Optional.of(
                change.apply(Math.exp(new BrentSolver(SETTLED, SETTLED).solve(MOST_EVALUATIONS, miss, low, high))));
    }

    private <T> List<T> shuffled(List<T> list) {
        List<T> copy = new ArrayList<>(list);
        Collections.shuffle(copy, random);
        return copy;
    }
}
