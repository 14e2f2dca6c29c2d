package org.ohmloom.signal.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.Edit;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputRange;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.PinUse;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.calibration.CalibrationProblem;
import org.ohmloom.tables.WireTables;

/** Sensors that meet more in use than they are calibrated for. */
class CalibrationMendingTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** A sensor calibrated from 0 to 90 that meets -20 to 110. */
    private static Harness meeting(Sensor.Kind kind, PinRole role, Calibration calibration) {
        Measurement measured = Measurement.of("Coolant", "°C", 0, 90, calibration)
                .used(Optional.of(
                        new Measurement.Use(OptionalDouble.of(-20), OptionalDouble.of(110), NONE, NONE, NONE)));
        return new HarnessSketch()
                .component("B1", new Sensor(kind, 0, NONE, Optional.of(measured)))
                .component(
                        "U1",
                        new ControlUnit(List.of(Pin.of("A1", role)), 0.1, NONE, NONE)
                                .withChannels(List.of(new Channel(
                                        "Coolant",
                                        "A1",
                                        new ComponentId("B1"),
                                        Optional.empty(),
                                        Optional.empty(),
                                        false))))
                .harness();
    }

    private static List<ChannelReading> channels(Harness harness) {
        WireTables tables = WireTables.bundled();
        return SignalStudy.of(
                        harness,
                        NetworkBuilder.build(harness, HarnessSketch.state(), wire -> 0.1, tables),
                        new TreeMap<>(),
                        tables.signals())
                .channels();
    }

    private static Optional<Edit> mended(Harness harness) {
        ChannelReading reading = channels(harness).get(0);
        CalibrationProblem problem =
                reading.calibration().orElseThrow().problems().get(0);
        assertEquals(CalibrationProblem.Kind.RANGE_TOO_SMALL, problem.kind());
        return new CalibrationMending(harness, reading).of(problem);
    }

    /** The Beta formula of a thermistor holds at -20 and 110 °C as it does between. */
    @Test
    void aThermistorIsCalibratedOverItsUseByItsOwnFormula() {
        Harness harness =
                meeting(Sensor.Kind.THERMISTOR, PinRole.THERMISTOR_INPUT, new Calibration.Beta(2500, 20, 3500));
        Edit mending = mended(harness).orElseThrow();
        assertEquals(
                "Calibrate B1 from -20 to 110 °C by its own curve",
                mending.label().english());
        assertEquals(
                List.of(),
                channels(mending.apply(harness))
                        .get(0)
                        .calibration()
                        .orElseThrow()
                        .problems());
    }

    /** Rows from -20 to 105 do not reach 110. */
    @Test
    void aTableIsNotCarriedOnBeyondItsRows() {
        Calibration rows = new Calibration.ResistanceTable(
                List.of(new Calibration.ResistancePoint(-20, 15000), new Calibration.ResistancePoint(105, 180)));
        assertEquals(Optional.empty(), mended(meeting(Sensor.Kind.THERMISTOR, PinRole.THERMISTOR_INPUT, rows)));
    }

    @Test
    void aLineThroughTwoPointsIsNotCarriedOnAndWhyIsSaid() {
        Harness harness =
                meeting(Sensor.Kind.OTHER, PinRole.ANALOGUE_INPUT, new Calibration.VoltageLine(0.5, 4.5, NONE));
        assertEquals(Optional.empty(), mended(harness));
        assertEquals(CalibrationMending.Why.TWO_POINTS, why(harness));
    }

    /** 1 to 9 V from 0 to 10 bar at U1.A1, which converts 0 to 5 V, or at whatever other pins the unit has. */
    private static Harness tooHigh(boolean locked, Pin... others) {
        return sketch(locked, others).harness();
    }

    private static HarnessSketch sketch(boolean locked, Pin... others) {
        Measurement measured = Measurement.of("Pressure", "bar", 0, 10, new Calibration.VoltageLine(1, 9, NONE));
        List<Pin> pins = new ArrayList<>(List.of(input("A1", 5)));
        pins.addAll(List.of(others));
        return new HarnessSketch()
                .component("B1", new Sensor(Sensor.Kind.OTHER, 0, NONE, Optional.of(measured)))
                .component(
                        "U1",
                        new ControlUnit(pins, 0.1, NONE, NONE)
                                .withChannels(List.of(new Channel(
                                        "Pressure",
                                        "A1",
                                        new ComponentId("B1"),
                                        Optional.empty(),
                                        Optional.empty(),
                                        locked))));
    }

    private static Pin input(String name, double highestVolts) {
        return Pin.of(
                name,
                new PinUse(
                        PinRole.ANALOGUE_INPUT,
                        NONE,
                        NONE,
                        NONE,
                        NONE,
                        NONE,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(InputRange.ofVolts(0, highestVolts))));
    }

    private static CalibrationMending.Why why(Harness harness) {
        ChannelReading reading = channels(harness).get(0);
        return new CalibrationMending(harness, reading)
                .why(reading.calibration().orElseThrow().problems().get(0));
    }

    private static Optional<Edit> otherInput(Harness harness) {
        ChannelReading reading = channels(harness).get(0);
        CalibrationProblem problem =
                reading.calibration().orElseThrow().problems().get(0);
        assertEquals("gives 9 V; its input takes at most 5 V", problem.words().english());
        return new CalibrationMending(harness, reading).of(problem);
    }

    /** A2 converts no more than A1 does, A3 up to 10 V. */
    @Test
    void aLineBeyondItsInputGoesToOneThatTakesIt() {
        Harness harness = tooHigh(false, input("A2", 5), input("A3", 10));
        Edit mending = otherInput(harness).orElseThrow();
        assertEquals("Move Pressure to U1.A3", mending.label().english());
        ChannelReading after = channels(mending.apply(harness)).get(0);
        assertEquals("A3", after.channel().pin().name());
        assertEquals(List.of(), after.calibration().orElseThrow().problems());
    }

    @Test
    void whyNoOtherInputIsProposedIsSaid() {
        Harness none = tooHigh(false, input("A2", 5));
        assertEquals(Optional.empty(), otherInput(none));
        assertEquals(CalibrationMending.Why.NO_INPUT, why(none));
        Harness locked = tooHigh(true, input("A3", 10));
        assertEquals(Optional.empty(), otherInput(locked));
        assertEquals(CalibrationMending.Why.LOCKED, why(locked));
        Harness wired = sketch(false, input("A3", 10))
                .wire("W1", "B1.signal", "U1.A1", 0.1)
                .harness();
        assertEquals(Optional.empty(), otherInput(wired));
        assertEquals(CalibrationMending.Why.WIRED, why(wired));
    }
}
