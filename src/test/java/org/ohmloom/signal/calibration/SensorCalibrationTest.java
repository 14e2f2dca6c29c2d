package org.ohmloom.signal.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.channel.SensorChannel;

/** What an input makes of a sensor, how finely, and what is wrong with the two together; each by hand. */
@BesideOthers
class SensorCalibrationTest {
    private static final double EXACT = 1e-9;

    private static final Calibration.Beta NTC = new Calibration.Beta(10_000, 25, 3435);
    private static final Calibration.RatiometricLine TENTHS =
            new Calibration.RatiometricLine(0.1, 0.9, OptionalDouble.empty());

    /** A 10 kohm NTC at 25 deg C under 10 kohm to 5 V: 5 x 10 / 20 = 2.500 V (voltage divider, textbook). */
    @Test
    void aThermistorEqualToItsPullUpHalvesTheVoltage() {
        SensorCalibration ntc = of(Measurement.of("Coolant", "°C", -20, 110, NTC), thermistorPin(10), Optional.empty());
        ConverterInput input = ntc.input();
        assertEquals(2.5, input.pinVolts(SignalKind.RESISTANCE, 10_000).orElseThrow(), EXACT);
        assertEquals(13, ntc.points().size());
        assertEquals(List.of(), ntc.problems());
    }

    /**
     * The way back: voltages evenly apart, and at each the value that gives it. For 10 kohm over 10 kohm to 5 V 2.5 V stand for 25 deg C;
     * from -20 to 70 deg C the pin has 5 R/(R + 10 kohm) with R = 10 kohm exp(3435 (1/T - 1/298.15)): 77.5 and 2.207 kohm, 4.43 to 0.90 V.
     */
    @Test
    void valuesByVoltageAreTheWayBack() {
        SensorCalibration ntc = of(Measurement.of("Coolant", "°C", -20, 70, NTC), thermistorPin(10), Optional.empty());
        List<CurvePoint> rows = ntc.byVoltage();
        assertEquals(13, rows.size());
        double step =
                rows.get(1).pinVolts().orElseThrow() - rows.get(0).pinVolts().orElseThrow();
        for (int row = 0; row < rows.size(); row++) {
            double volts = rows.get(row).pinVolts().orElseThrow();
            assertEquals(rows.get(0).pinVolts().orElseThrow() + row * step, volts, EXACT);
            double ohms = 10_000 * Math.exp(3435 * (1 / (rows.get(row).value() + 273.15) - 1 / 298.15));
            assertEquals(5 * ohms / (ohms + 10_000), volts, 1e-6);
        }
        assertEquals(0.904, rows.get(0).pinVolts().orElseThrow(), 5e-4);
        assertEquals(4.429, rows.get(12).pinVolts().orElseThrow(), 5e-4);
        SensorCalibration line =
                of(Measurement.of("Oil", "bar", 0, 10, TENTHS), analoguePin(10), Optional.of(reference()));
        assertEquals(
                List.of(
                        new CurvePoint(0, 0.5, OptionalDouble.of(0.5)),
                        new CurvePoint(10, 4.5, OptionalDouble.of(4.5))),
                line.byVoltage());
    }

    /**
     * 10 bits over 5 V are 4.883 mV a step. On the line of 4 V over 10 bar that is 12.2 mbar everywhere; on the thermistor at 25 deg C,
     * where the divider falls by Vp R Rp / (R + Rp)^2 B / T^2 = 5 / 4 x 3435 / 298.15^2 = 48.3 mV/K, it is 0.101 K.
     */
    @Test
    void oneStepOfTheConverterIsWorthWhatTheSlopeSays() {
        Resolution line = of(Measurement.of("Oil", "bar", 0, 10, TENTHS), analoguePin(10), Optional.of(reference()))
                .resolution()
                .orElseThrow();
        assertEquals(5.0 / 1024, line.step(), EXACT);
        assertEquals(10.0 / 4 * 5 / 1024, line.coarsest(), 1e-6);
        Resolution ntc = of(Measurement.of("Coolant", "°C", 25, 26, NTC), thermistorPin(10), Optional.empty())
                .resolution()
                .orElseThrow();
        assertEquals(5.0 / 1024 / (1.25 * 3435 / (298.15 * 298.15)), ntc.atLowest(), 1e-4);
    }

    /** The same thermistor from -40 to 150 deg C with 8 bits: at 150 deg C a step is worth 3.6 K, and 1 % of 190 K is allowed. */
    @Test
    void aCoarseConverterIsTold() {
        SensorCalibration coarse = of(Measurement.of("Oil", "°C", -40, 150, NTC), thermistorPin(8), Optional.empty());
        assertEquals(Set.of(CalibrationProblem.Kind.TOO_COARSE), kinds(coarse));
        assertEquals(150, coarse.resolution().orElseThrow().coarsestAt(), EXACT);
        SensorCalibration fine = of(Measurement.of("Oil", "°C", -40, 150, NTC), thermistorPin(12), Optional.empty());
        assertEquals(Set.of(), kinds(fine));
    }

    @Test
    void useBeyondTheSensorIsTold() {
        Measurement measurement = Measurement.of("Boost", "bar", 0, 2.5, TENTHS)
                .used(Optional.of(new Measurement.Use(
                        OptionalDouble.empty(),
                        OptionalDouble.of(3),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
        SensorCalibration boost = of(measurement, analoguePin(10), Optional.of(reference()));
        // The line carried on would give 5.3 V at 3 bar, more than the 5 V the input converts; what it gives there is
        // not known.
        assertEquals(Set.of(CalibrationProblem.Kind.RANGE_TOO_SMALL), kinds(boost));
        assertEquals(
                "meets 0 to 3 bar in use and tells 0 to 2.5 bar",
                boost.problems().get(0).words().english());
    }

    /** E(T) of type K has its least at -270 deg C: below it everything reads the same. */
    @Test
    void useBelowTheThermocouplesPolynomialsIsTold() {
        Calibration couple =
                new Calibration.Thermocouple(Calibration.Thermocouple.Type.K, Optional.empty(), OptionalDouble.empty());
        SensorCalibration cold = of(Measurement.of("Dewar", "°C", -300, 20, couple), analoguePin(16), Optional.empty());
        assertTrue(kinds(cold)
                .containsAll(Set.of(CalibrationProblem.Kind.RANGE_TOO_SMALL, CalibrationProblem.Kind.NOT_MONOTONE)));
    }

    @Test
    void aShareOfAnotherSupplyIsTold() {
        Measurement oil = Measurement.of("Oil", "bar", 0, 10, TENTHS);
        assertEquals(Set.of(CalibrationProblem.Kind.OTHER_SUPPLY), kinds(of(oil, analoguePin(12), Optional.empty())));
        assertEquals(Set.of(), kinds(of(oil, analoguePin(12), Optional.of(reference()))));
    }

    /** 4 pulses a turn at 50 values in a second: one pulse more is 50 x 60 / 4 = 750 rpm. */
    @Test
    void countedPulsesAreCoarseWhereFewComeBetweenTwoValues() {
        Calibration wheel = new Calibration.PulseLevels(
                0.3,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(new Calibration.Turns(4, OptionalDouble.empty(), OptionalDouble.empty())));
        SensorCalibration speed = SensorCalibration.of(
                        channel(
                                Measurement.of("Engine speed", "rpm", 0, 7000, wheel),
                                Pin.of("F1", PinRole.FREQUENCY_INPUT),
                                Optional.empty()),
                        OptionalDouble.of(50),
                        ReturnRules.NONE)
                .orElseThrow();
        assertEquals(750, speed.resolution().orElseThrow().coarsest(), EXACT);
    }

    private static Set<CalibrationProblem.Kind> kinds(SensorCalibration calibration) {
        return calibration.problems().stream().map(CalibrationProblem::kind).collect(Collectors.toSet());
    }

    private static SensorCalibration of(Measurement measurement, Pin pin, Optional<Pin> fedBy) {
        return SensorCalibration.of(channel(measurement, pin, fedBy), OptionalDouble.empty(), ReturnRules.NONE)
                .orElseThrow();
    }

    private static SensorChannel channel(Measurement measurement, Pin pin, Optional<Pin> fedBy) {
        Sensor sensor = new Sensor(Sensor.Kind.OTHER, 0, OptionalDouble.empty(), Optional.of(measurement));
        List<Pin> pins = fedBy.map(each -> List.of(pin, each)).orElse(List.of(pin));
        ControlUnit unit = new ControlUnit(pins, 0, OptionalDouble.empty(), OptionalDouble.empty());
        return new SensorChannel(
                "Channel",
                Component.of("B1", "Sensor", sensor),
                sensor,
                Component.of("U1", "Unit", unit),
                unit,
                pin,
                fedBy,
                true,
                true);
    }

    private static Pin reference() {
        return new Pin(
                "REF",
                PinRole.REFERENCE_SUPPLY,
                Set.of(PinRole.REFERENCE_SUPPLY),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(5),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Pin analoguePin(int bits) {
        return Pin.of("A1", PinRole.ANALOGUE_INPUT).reading(Optional.of(stage(bits, InputStage.Scale.RATIOMETRIC)));
    }

    private static Pin thermistorPin(int bits) {
        return new Pin(
                        "T1",
                        PinRole.THERMISTOR_INPUT,
                        Set.of(PinRole.THERMISTOR_INPUT),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(5),
                        OptionalDouble.of(10_000))
                .reading(Optional.of(stage(bits, InputStage.Scale.FIXED)));
    }

    private static InputStage stage(int bits, InputStage.Scale scale) {
        return new InputStage(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(scale),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(bits));
    }
}
