package org.ohmloom.judged;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;

/** Faults of what a harness has besides its first unit and plain sensors: edges, buses, losses, senders, loops, thermocouples. */
final class FurtherFaults {

    private static final double LEAST_SECONDS = 1e-9;
    private static final double MOST_OHMS = 500;
    private static final double MOST_AMPS = 3;

    private final Harness sound;
    private final Random random;

    FurtherFaults(Harness sound, Random random) {
        this.sound = sound;
        this.random = random;
    }

    Optional<Fault> of(FaultKind kind, double size) {
        return switch (kind) {
            case FAST_EDGE -> fastEdge(size);
            case BUS_GROUNDS_APART -> busApart(size);
            case UNIT_LIFTED -> lifted(size);
            case UNSAFE_LOSS -> unsafeLoss(size);
            case SENDER_ON_ENGINE -> sender(size);
            case STARVED_TRANSMITTER -> transmitter(size);
            case WARM_JOINT -> joint(size);
            default -> throw new IllegalArgumentException(kind.toString());
        };
    }

    private Optional<Fault> fastEdge(double size) {
        List<String> outputs = has("Q1") ? List.of("HS1", "Q1") : List.of("HS1");
        for (String output : shuffled(outputs)) {
            for (String sensor : shuffled(List.of("P1", "P2", "T1", "H1"))) {
                Optional<Harness> faulty = Faults.sized(
                        LEAST_SECONDS,
                        SoundHarness.EDGE_SECONDS,
                        seconds -> Harnesses.switching(sound, output, seconds),
                        harness -> new PlainJudge(harness).couplingShare(sensor),
                        size);
                if (faulty.isPresent()) {
                    return Fault.in(FaultKind.FAST_EDGE, "coupling-over-limit", sensor, size, faulty);
                }
            }
        }
        return Optional.empty();
    }

    /** A node's ground wire long and thin, sometimes with the return of a dimmed load spliced into it. */
    private Optional<Fault> busApart(double size) {
        String unit = node();
        Wire ground = groundOf(unit);
        boolean loaded = random.nextBoolean();
        Harness prepared = loaded ? withDimmedLoadIn(ground) : sound;
        String thin = loaded ? "WX" : ground.id().value();
        return Fault.in(
                FaultKind.BUS_GROUNDS_APART,
                "bus-common-mode",
                unit,
                size,
                Faults.sized(
                        1e-3,
                        60,
                        ohms -> Harnesses.resisting(prepared, thin, ohms),
                        harness -> new PlainJudge(harness).busShare(),
                        size));
    }

    private Optional<Fault> lifted(double size) {
        String unit = random.nextBoolean() ? SoundHarness.UNIT : node();
        Wire ground = groundOf(unit);
        return Fault.in(
                FaultKind.UNIT_LIFTED,
                "unit-offset-survival",
                unit,
                size,
                Faults.sized(
                        1e-3,
                        60,
                        ohms -> Harnesses.resisting(sound, ground.id().value(), ohms),
                        harness -> new PlainJudge(harness).unitShare(unit)
                                * PlainJudge.UNIT_GROUND_VOLTS
                                / PlainJudge.SURVIVAL_VOLTS,
                        size));
    }

    /**
     * A sensor's return is joined to the chassis as well: when the unit loses its ground, what it draws comes back that way. In every
     * other harness the return of a dimmed load is spliced into that ground and comes along, at its duty.
     */
    private Optional<Fault> unsafeLoss(double size) {
        Harness resistive = Harnesses.resistive(sound);
        Wire ground = groundOf(SoundHarness.UNIT);
        Wire own = Harnesses.wireAt(sound, Plan.in("XH1", Sensor.RETURN));
        Plan plan = new Plan();
        plan.splice("SPX", 0.0002);
        plan.with(own.withEnds(own.from(), Plan.joined("SPX")));
        plan.with(Plan.wire(
                "WY", Plan.joined("SPX"), own.to(), 0.75, 0.5, SignalClass.REFERENCE_RETURN, Optional.empty()));
        plan.with(Plan.wire(
                "WZ",
                Plan.joined("SPX"),
                Plan.on(shuffled(List.of("G1", "G2", "G3")).get(0)),
                0.75,
                1,
                SignalClass.REFERENCE_RETURN,
                Optional.empty()));
        boolean loaded = random.nextBoolean();
        String opened = loaded ? "WG" : ground.id().value();
        if (loaded) {
            splice(plan, ground, "SPG", "WG");
        }
        Harness prepared =
                loaded ? dimmedEverywhere(resistive.withAll(plan.elements())) : resistive.withAll(plan.elements());
        return Fault.in(
                FaultKind.UNSAFE_LOSS,
                "lost-return-overloads",
                opened,
                size,
                Faults.sized(
                        1e-2,
                        MOST_AMPS,
                        amps -> loaded
                                ? Harnesses.drawing(prepared, "LD1", amps)
                                : Harnesses.unitDrawing(prepared, SoundHarness.UNIT, amps),
                        harness -> new PlainLoss(harness).share(opened),
                        size));
    }

    /** The unit's output at a duty in every state it is on in. */
    private Harness dimmedEverywhere(Harness harness) {
        OutputPin output = new OutputPin(new ComponentId(SoundHarness.UNIT), "HS1");
        OperatingState some = harness.states().get(new StateId("some"));
        return harness.with(some.with(output, Setting.duty(0.2 + 0.6 * random.nextDouble())));
    }

    private Optional<Fault> sender(double size) {
        return Fault.in(
                FaultKind.SENDER_ON_ENGINE,
                "sensor-error-over-limit",
                FurtherPart.SENDER,
                size,
                Faults.sized(
                        1e-5,
                        1,
                        ohms -> Harnesses.strapped(sound, "ST1", ohms),
                        harness -> new PlainJudge(harness).errorShare(FurtherPart.SENDER),
                        size));
    }

    private Optional<Fault> transmitter(double size) {
        String lead = random.nextBoolean() ? Sensor.SUPPLY : Sensor.SIGNAL;
        return Fault.in(
                FaultKind.STARVED_TRANSMITTER,
                "sensor-error-over-limit",
                FurtherPart.TRANSMITTER,
                size,
                Faults.sized(
                        1e-3,
                        MOST_OHMS,
                        ohms -> Harnesses.contacted(sound, "X" + FurtherPart.TRANSMITTER, lead, ohms),
                        harness -> new PlainJudge(harness).errorShare(FurtherPart.TRANSMITTER),
                        size));
    }

    private Optional<Fault> joint(double size) {
        double towards = random.nextBoolean() ? 1 : -1;
        return Fault.in(
                FaultKind.WARM_JOINT,
                "sensor-error-over-limit",
                FurtherPart.THERMOCOUPLE,
                size,
                Faults.sized(
                        0.5,
                        60,
                        kelvin -> Harnesses.joint(
                                sound, FurtherPart.THERMOCOUPLE, SoundHarness.AMBIENT_CELSIUS + towards * kelvin),
                        harness -> new PlainJudge(harness).errorShare(FurtherPart.THERMOCOUPLE),
                        size));
    }

    private String node() {
        List<String> nodes = new ArrayList<>(List.of("U2"));
        if (has("U3")) {
            nodes.add("U3");
        }
        return shuffled(nodes).get(0);
    }

    private Wire groundOf(String unit) {
        return Harnesses.wireAt(sound, Plan.in(unit.equals(SoundHarness.UNIT) ? "XU" : "X" + unit, "GND"));
    }

    private Harness withDimmedLoadIn(Wire ground) {
        Plan plan = new Plan();
        splice(plan, ground, "SPX", "WX");
        return sound.withAll(plan.elements());
    }

    /** A ground wire in two, with a splice that the return of the unit's dimmed load comes to. */
    private void splice(Plan plan, Wire ground, String splice, String rest) {
        plan.splice(splice, 0.0002);
        plan.with(ground.withEnds(ground.from(), Plan.joined(splice)));
        plan.with(Plan.wire(rest, Plan.joined(splice), ground.to(), 2.5, 0.5, SignalClass.RETURN, Optional.empty()));
        Wire load = Harnesses.wireAt(sound, Plan.at("LD1", "-"));
        plan.with(load.withEnds(load.from(), Plan.joined(splice)));
    }

    private boolean has(String component) {
        return sound.components().find(new ComponentId(component)).isPresent();
    }

    private <T> List<T> shuffled(List<T> list) {
        List<T> copy = new ArrayList<>(list);
        Collections.shuffle(copy, random);
        return copy;
    }
}
