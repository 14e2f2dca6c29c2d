package org.ohmloom.ground.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.Network;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Driver;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Load;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.Solution;

/** Sensors in harnesses where something switches, is grounded through the engine, or is not entered. */
@BesideOthers
class SensorStatesTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static SensorStudy study(HarnessSketch sketch, OperatingState state) {
        Network network = sketch.network(state);
        SortedMap<StateId, Solution> solutions = new TreeMap<>();
        solutions.put(state.id(), DcSolver.solve(network, sketch.harness(), () -> false));
        return SensorStudy.of(sketch.harness(), network, solutions, () -> false);
    }

    private static HarnessSketch unit(Pin input, Sensor sensor) {
        List<Pin> pins = List.of(
                Pin.of("SUP", PinRole.SUPPLY),
                Pin.of("GND", PinRole.GROUND),
                Pin.of("SRET", PinRole.SENSOR_RETURN),
                input);
        return new HarnessSketch()
                .battery("BAT", 12, 0.01)
                .component("U1", new ControlUnit(pins, 0.2, OptionalDouble.of(0.01), NONE))
                .component("B1", sensor)
                .wire("W1", "BAT.+", "U1.SUP", 0.01);
    }

    /**
     * One wire sender on the engine: 5 V behind 100 ohm meet 180 to 10 ohm. The engine is 15 A x 10 mohm = 150 mV above the battery,
     * the unit's own ground 2 mV (0.2 A x 10 mohm) and its inside as little again: the sender reads high ohms, so an empty tank.
     */
    @Test
    void a_one_wire_sender_reads_the_drop_of_the_engine_ground() {
        Calibration.ResistanceTable table = new Calibration.ResistanceTable(
                List.of(new Calibration.ResistancePoint(0, 180), new Calibration.ResistancePoint(100, 10)));
        Measurement level = Measurement.of("Fuel", "%", 0, 100, table);
        Pin input = SensorSketch.pulledUp(PinRole.ANALOGUE_INPUT, 100, InputStage.UNKNOWN);
        HarnessSketch sketch = unit(input, new Sensor(Sensor.Kind.SENDER, 0, NONE, Optional.of(level)))
                .body("ENGINE")
                .ground("G1", "ENGINE", 1e-6)
                .ground("G2", "ENGINE", 1e-6)
                .bolt("B1", "return", "G1", 1e-6)
                .wire("W2", "U1.GND", "BAT.-", 0.010)
                .wire("W3", "B1.signal", "U1.A1", 0.05)
                .wire("W4", "G2", "BAT.-", 0.010)
                .component("M1", Load.of(new Draw.ConstantCurrent(15, 12)))
                .wire("W5", "BAT.+", "M1.+", 0.01)
                .wire("W6", "M1.-", "G1", 1e-6);
        SensorBudget budget = study(sketch, HarnessSketch.state()).budgets().get(0);
        assertEquals(0, budget.reading(), 1e-9);
        // by hand: offset v at 180 ohm: V = v + (5 - v) 180 / 280, R = Rp V / (Vp - V)
        double offset = 0.150 - 0.002;
        double volts = offset + (5 - offset) * 180 / 280;
        double ohms = 100 * volts / (5 - volts);
        assertEquals(-(ohms - 180) / 1.7, budget.knownError(), 0.05);
        assertTrue(budget.isOver());
    }

    /**
     * A lamp of 6 A at half duty and 100 Hz shares 10 mohm of return with a sensor of 4 V for 10 bar: mean 3 A, 30 mV, 0.075 bar;
     * amplitude 3 A, 0.075 bar, behind a filter of 50 Hz over the root of 1 + 2^2: 0.0335 bar.
     */
    @Test
    void ripple_stands_apart_from_the_mean_and_is_rolled_off_by_the_filter() {
        Measurement pressure = Measurement.of(
                "Oil pressure", "bar", 0, 10, new Calibration.VoltageLine(0.5, 4.5, OptionalDouble.of(0)));
        Pin input = SensorSketch.analogue(InputStage.Scale.FIXED, NONE);
        HarnessSketch sketch = unit(input, new Sensor(Sensor.Kind.OTHER, 0, NONE, Optional.of(pressure)))
                .splice("SP", 0)
                .wire("W2", "U1.GND", "BAT.-", SensorSketch.STUB_OHMS)
                .wire("W3", "B1.signal", "U1.A1", 0.05)
                .wire("W4", "B1.return", "SP", 0.05)
                .wire("W5", "SP", "BAT.-", 0.010)
                .component("Q1", new SolidStateOutput(0.01, 20, Optional.of(Driver.of(100)), NONE))
                .component("L1", Load.of(new Draw.ConstantCurrent(6, 12)))
                .wire("W6", "BAT.+", "Q1.in", 0.001)
                .wire("W7", "Q1.out", "L1.+", 0.001)
                .wire("W8", "L1.-", "SP", SensorSketch.STUB_OHMS);
        OperatingState state = HarnessSketch.state().with(new ComponentId("Q1"), Setting.duty(0.5));
        SensorBudget budget = study(sketch, state).budgets().get(0);
        assertEquals(0.075 - 0.002 / 4 * 10, budget.knownError(), 0.006);
        assertEquals(0.075 / Math.sqrt(1 + 4), budget.ripple().orElseThrow(), 1e-4);
        assertEquals(Math.abs(budget.knownError()) + budget.ripple().orElseThrow(), budget.worstError(), 1e-12);
    }

    /**
     * Copper behind a thermocouple from a joint of 80 deg C, the terminals at 30: it gets E(30) - E(80) = 1.203 - 3.267 = -2.064 mV too little. At 0 deg C that reads as -54.9 deg C, between E(-50) = -1.889 and E(-60) = -2.243 mV (NIST SRD 60, from memory).
     */
    @Test
    void copper_extension_wires_move_the_cold_junction_to_the_joint() {
        Measurement exhaust = Measurement.of(
                "Exhaust",
                "°C",
                0,
                1000,
                new Calibration.Thermocouple(
                        Calibration.Thermocouple.Type.K,
                        Optional.of(Calibration.Thermocouple.Extension.COPPER),
                        OptionalDouble.of(80)));
        Pin input = Pin.of("A1", PinRole.ANALOGUE_INPUT)
                .reading(Optional.of(new InputStage(
                        NONE,
                        NONE,
                        NONE,
                        NONE,
                        Optional.empty(),
                        NONE,
                        Optional.of(InputStage.ColdJunction.MEASURED))));
        HarnessSketch sketch = unit(input, new Sensor(Sensor.Kind.THERMOCOUPLE, 0, NONE, Optional.of(exhaust)))
                .wire("W2", "U1.GND", "BAT.-", 0.01)
                .wire("W3", "B1.signal", "U1.A1", 1)
                .wire("W4", "B1.return", "U1.SRET", 1);
        SensorBudget budget = study(sketch, HarnessSketch.state()).budgets().get(0);
        assertEquals(0, budget.reading(), 1e-9);
        assertEquals(-50 - 10 * (2.064 - 1.889) / (2.243 - 1.889), budget.knownError(), 0.15);
        assertEquals("extension wires", budget.largest().orElseThrow().name());
    }

    @Test
    void what_is_not_entered_is_named_and_never_passed_over() {
        Pin input = Pin.of("A1", PinRole.ANALOGUE_INPUT);
        Sensor unknown = new Sensor(Sensor.Kind.RATIOMETRIC, 0.01, NONE);
        HarnessSketch sketch = unit(input, unknown)
                .wire("W2", "U1.GND", "BAT.-", 0.01)
                .wire("W3", "B1.signal", "U1.A1", 1)
                .wire("W4", "B1.return", "U1.SRET", 1);
        assertEquals(
                List.of("Sensor error not checked: what it measures is not entered for B1."),
                sentences(study(sketch, HarnessSketch.state())));
        sketch.component(
                "B1",
                unknown.measuring(Optional.of(
                        Measurement.of("Pressure", "bar", 0, 10, new Calibration.VoltageLine(0.5, 4.5, NONE)))));
        assertEquals(
                List.of("Sensor error not checked: what the converter compares with (scale) is not entered at the input"
                        + " that reads B1."),
                sentences(study(sketch, HarnessSketch.state())));
        sketch.component(
                "U1",
                new ControlUnit(
                        List.of(
                                Pin.of("SUP", PinRole.SUPPLY),
                                Pin.of("GND", PinRole.GROUND),
                                Pin.of("SRET", PinRole.SENSOR_RETURN),
                                SensorSketch.analogue(InputStage.Scale.FIXED, NONE)),
                        0.2,
                        OptionalDouble.of(0.01),
                        NONE));
        SensorStudy judged = study(sketch, HarnessSketch.state());
        assertEquals(1, judged.budgets().size());
        assertEquals(
                List.of("Sensor error not checked: the load of the input (input resistance) is not known and left out"
                        + " for B1."),
                sentences(judged));
        assertEquals(Set.of(2.5), Set.of(judged.signals().get(0).unitsPerVolt()));
        assertEquals(0.04, judged.signals().get(0).allowedVolts(), 1e-12);
    }

    private static List<String> sentences(SensorStudy study) {
        return study.unjudged().stream().map(Unjudged::sentence).toList();
    }
}
