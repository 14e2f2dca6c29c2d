package org.ohmloom.ground.sensor;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Network;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Load;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.Solution;

/**
 * A battery, a control unit with its own wires to it, and one sensor B1 read at pin A1. The return of the sensor goes to splice SP
 * and on over one wire, which a fan may share, to the battery, where the unit's isolated sensor return is wired to as well.
 */
final class SensorSketch {

    /** A wire that loses next to nothing, ohm. */
    static final double STUB_OHMS = 1e-6;

    private static final OptionalDouble NONE = OptionalDouble.empty();

    final HarnessSketch sketch = new HarnessSketch();
    private final double leadOhms;

    private SensorSketch(Pin input, Sensor sensor, double leadOhms, double sharedOhms) {
        this.leadOhms = leadOhms;
        List<Pin> pins = List.of(
                Pin.of("SUP", PinRole.SUPPLY),
                Pin.of("GND", PinRole.GROUND),
                new Pin("REF", PinRole.REFERENCE_SUPPLY, Set.of(), NONE, NONE, OptionalDouble.of(5), NONE, NONE),
                Pin.of("SRET", PinRole.SENSOR_RETURN),
                input);
        sketch.battery("BAT", 12, 0.01)
                .component("U1", new ControlUnit(pins, 0.2, NONE, NONE))
                .component("B1", sensor)
                .splice("SP", 0)
                .wire("W1", "BAT.+", "U1.SUP", 0.01)
                .wire("W2", "U1.GND", "BAT.-", 0.01)
                .wire("W3", "U1.SRET", "BAT.-", STUB_OHMS)
                .wire("W4", "U1.REF", "B1.supply", leadOhms)
                .wire("W5", "B1.signal", "U1.A1", leadOhms)
                .wire("W6", "B1.return", "SP", STUB_OHMS)
                .wire("W7", "SP", "BAT.-", sharedOhms);
    }

    /** A sensor that takes 10 mA from its supply, or none, read at an input. */
    static SensorSketch of(Measurement measurement, Pin input, double drawAmps, double leadOhms, double sharedOhms) {
        Sensor sensor = new Sensor(Sensor.Kind.OTHER, drawAmps, NONE, Optional.of(measurement));
        return new SensorSketch(input, sensor, leadOhms, sharedOhms);
    }

    /** A fan whose return shares the wire behind the splice. */
    SensorSketch fan(double amps) {
        sketch.component("FAN", Load.of(new Draw.ConstantCurrent(amps, 12)))
                .wire("W8", "BAT.+", "FAN.+", 0.001)
                .wire("W9", "FAN.-", "SP", STUB_OHMS);
        return this;
    }

    /** An input that goes by the reference supply or not, with or without a known resistance. */
    static Pin analogue(InputStage.Scale scale, OptionalDouble inputOhms) {
        return Pin.of("A1", PinRole.ANALOGUE_INPUT)
                .reading(Optional.of(InputStage.UNKNOWN
                        .withScale(Optional.of(scale))
                        .withInputOhms(inputOhms)
                        .withFilterHertz(OptionalDouble.of(50))));
    }

    /** An input with a pull-up to 5 V. */
    static Pin pulledUp(PinRole role, double ohms, InputStage input) {
        return new Pin("A1", role, Set.of(), NONE, NONE, NONE, OptionalDouble.of(5), OptionalDouble.of(ohms))
                .reading(Optional.of(input));
    }

    static OperatingState state() {
        return HarnessSketch.state();
    }

    /** The study of the harness with only its batteries connected. */
    SensorStudy study() {
        return study(sketch.harness(), sketch);
    }

    private static SensorStudy study(Harness harness, HarnessSketch sketch) {
        Network network = sketch.network(state());
        SortedMap<StateId, Solution> solutions = new TreeMap<>();
        solutions.put(state().id(), DcSolver.solve(network, harness, () -> false));
        return SensorStudy.of(harness, network, solutions, () -> false);
    }

    /** The only budget. */
    SensorBudget budget() {
        List<SensorBudget> budgets = study().budgets();
        if (budgets.size() != 1) {
            throw new AssertionError("expected one budget: " + study());
        }
        return budgets.get(0);
    }

    /** V(pin) - V(unit's sensor return) of the whole network with the sensor as a resistance, V. */
    double solvedPinVolts(double signalOhms) {
        Component before = (Component) sketch.harness().components().get(new ComponentId("B1"));
        Sensor sensor = (Sensor) before.device();
        sketch.with(before.withDevice(
                new Sensor(sensor.kind(), sensor.drawAmps(), OptionalDouble.of(signalOhms), sensor.measurement())));
        Network network = sketch.network(state());
        Solution solution = DcSolver.solve(network, sketch.harness(), () -> false);
        sketch.with(before);
        return solution.volts(network.index().at("U1.A1").orElseThrow()).orElseThrow()
                - solution.volts(network.index().at("U1.SRET").orElseThrow()).orElseThrow();
    }

    double leadOhms() {
        return leadOhms;
    }
}
