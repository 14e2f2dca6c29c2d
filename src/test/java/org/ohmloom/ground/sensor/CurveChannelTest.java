package org.ohmloom.ground.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.ThermocoupleVolts;

/** Sensors with a table of voltages or an amplified thermocouple, by hand and against the line they are where they are straight. */
@BesideOthers
class CurveChannelTest {

    private static final double EXACT = 1e-8;
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final OptionalDouble BUFFERED = OptionalDouble.of(0);
    private static final Pin SCALED = SensorSketch.analogue(InputStage.Scale.RATIOMETRIC, OptionalDouble.of(100_000));
    private static final Pin FIXED = SensorSketch.analogue(InputStage.Scale.FIXED, OptionalDouble.of(100_000));

    private static Measurement of(Calibration calibration) {
        return Measurement.of("Oil pressure", "bar", 0, 10, calibration);
    }

    private static Measurement table(OptionalDouble supplyVolts, double... volts) {
        return of(new Calibration.VoltageTable(
                List.of(
                        new Calibration.VoltagePoint(0, volts[0]),
                        new Calibration.VoltagePoint(5, volts[1]),
                        new Calibration.VoltagePoint(10, volts[2])),
                supplyVolts,
                OptionalDouble.of(1000)));
    }

    private static void assertSame(Measurement line, Measurement table, Pin pin) {
        SensorBudget one = SensorSketch.of(line, pin, 0.010, 1, 0.5).fan(20).budget();
        SensorBudget other = SensorSketch.of(table, pin, 0.010, 1, 0.5).fan(20).budget();
        assertEquals(one.reading(), other.reading(), EXACT);
        assertEquals(one.knownError(), other.knownError(), EXACT);
        assertEquals(one.known().size(), other.known().size());
        for (int k = 0; k < one.known().size(); k++) {
            assertEquals(one.known().get(k).error(), other.known().get(k).error(), EXACT);
        }
    }

    @Test
    void a_table_that_is_straight_errs_as_a_line_does() {
        Measurement fixed = of(new Calibration.VoltageLine(0.5, 4.5, OptionalDouble.of(1000)));
        Measurement share = of(new Calibration.RatiometricLine(0.1, 0.9, OptionalDouble.of(1000)));
        for (Pin pin : List.of(SCALED, FIXED)) {
            assertSame(fixed, table(NONE, 0.5, 2.5, 4.5), pin);
            assertSame(share, table(OptionalDouble.of(5), 0.5, 2.5, 4.5), pin);
        }
    }

    /** 5 A over 10 mohm lift the return by 50 mV; where the table is steepest in value, 5 bar over 0.5 V, that is 0.5 bar. */
    @Test
    void an_offset_costs_most_where_the_curve_is_flat() {
        Pin unloaded = SensorSketch.analogue(InputStage.Scale.FIXED, NONE);
        Measurement bent = of(new Calibration.VoltageTable(
                List.of(
                        new Calibration.VoltagePoint(0, 0.5),
                        new Calibration.VoltagePoint(5, 4.0),
                        new Calibration.VoltagePoint(10, 4.5)),
                NONE,
                BUFFERED));
        SensorBudget budget =
                SensorSketch.of(bent, unloaded, 0, 0.05, 0.010).fan(5).budget();
        assertEquals(0.5, budget.knownError(), 1e-3);
    }

    /** Type K at 500 deg C gives 20.644 mV (NIST Monograph 175); gain 100: 50 mV more are 0.5 mV of it, 11.7 K at 42.6 uV/K. */
    @Test
    void an_amplified_thermocouple_errs_by_the_offset_over_gain_and_slope() {
        Measurement exhaust = Measurement.of(
                "Exhaust",
                "°C",
                499.9,
                500.1,
                new Calibration.AmplifiedThermocouple(Calibration.Thermocouple.Type.K, 100, 0, BUFFERED));
        SensorBudget budget = SensorSketch.of(
                        exhaust, SensorSketch.analogue(InputStage.Scale.FIXED, NONE), 0, 0.05, 0.010)
                .fan(5)
                .budget();
        double expected =
                ThermocoupleVolts.celsius(ThermocoupleVolts.volts(budget.reading()) + 0.05 / 100) - budget.reading();
        assertEquals(11.7, expected, 0.1);
        assertEquals(expected, budget.knownError(), 0.02);
    }
}
