package org.ohmloom.signal.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
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
        return CalibrationMending.of(reading, problem, harness.rules().returnRules());
    }

    /** The Beta formula of a thermistor holds at -20 and 110 °C as it does between. */
    @Test
    void aThermistorIsCalibratedOverItsUseByItsOwnFormula() {
        Harness harness =
                meeting(Sensor.Kind.THERMISTOR, PinRole.THERMISTOR_INPUT, new Calibration.Beta(2500, 20, 3500));
        Edit mending = mended(harness).orElseThrow();
        assertEquals("Calibrate B1 from -20 to 110 °C by its own curve", mending.label());
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
    void aLineThroughTwoPointsIsNotCarriedOn() {
        assertEquals(
                Optional.empty(),
                mended(meeting(
                        Sensor.Kind.OTHER, PinRole.ANALOGUE_INPUT, new Calibration.VoltageLine(0.5, 4.5, NONE))));
    }
}
