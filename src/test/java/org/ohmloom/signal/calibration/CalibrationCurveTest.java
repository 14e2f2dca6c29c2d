package org.ohmloom.signal.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Measurement;

/** Curves both ways against published worked examples and tables. */
@BesideOthers
class CalibrationCurveTest {
    private static final double EXACT = 1e-9;

    /** Steinhart-Hart through 0, 50 and 100 deg C of a catalogue's thermistor: within so many kelvin of all its rows. */
    private static final double FIT_KELVIN = 0.08;

    private static CalibrationCurve curve(String unit, double low, double high, Calibration calibration) {
        return CalibrationCurve.of(Measurement.of("Quantity", unit, low, high, calibration), OptionalDouble.of(5))
                .orElseThrow();
    }

    /** Worked example of a ratiometric guide: 0 to 10 bar, 10 to 90 % of 5 V, 2.5 V read: 10 (2.5 - 0.5) / 4 = 5 bar. */
    @Test
    void halfTheSupplyOfARatiometricSensorIsHalfItsRange() {
        CalibrationCurve curve = curve("bar", 0, 10, new Calibration.RatiometricLine(0.1, 0.9, OptionalDouble.empty()));
        assertEquals(5, curve.value().applyAsDouble(2.5), EXACT);
        assertEquals(2.5, curve.signal().applyAsDouble(5), EXACT);
        assertEquals(SignalKind.SHARE_OF_SUPPLY, curve.kind());
    }

    /** Worked example of a forum of an electronics seller: 0 to 100 psi, 0.5 to 4.5 V, 2.5 V read: 50 psi. */
    @Test
    void twoPointsMakeALine() {
        CalibrationCurve curve = curve("psi", 0, 100, new Calibration.VoltageLine(0.5, 4.5, OptionalDouble.empty()));
        assertEquals(50, curve.value().applyAsDouble(2.5), EXACT);
        assertEquals(50, curve.value().applyAsDouble(curve.signal().applyAsDouble(50)), EXACT);
    }

    /** A 10 kohm NTC (a maker's catalogue, B25/85 = 3435 K) by Steinhart and Hart, Deep-Sea Research 15, 1968. */
    @ParameterizedTest
    @CsvSource({
        "-20,67770",
        "-10,42470",
        "0,27280",
        "20,12090",
        "25,10000",
        "30,8313",
        "50,4160",
        "70,2228",
        "85,1451",
        "110,757.6"
    })
    void aThermistorFollowsItsCatalogue(double celsius, double ohms) {
        CalibrationCurve curve =
                curve("°C", -20, 110, new Calibration.SteinhartHart(8.785205e-4, 2.529918e-4, 1.862278e-7));
        assertEquals(celsius, curve.value().applyAsDouble(ohms), FIT_KELVIN);
        assertEquals(celsius, curve.value().applyAsDouble(curve.signal().applyAsDouble(celsius)), 1e-6);
    }

    /** NIST Monograph 175 / SRD 60, type K: 500 deg C gives 20.644 mV; an amplifier of 100 on 0.25 V gives 2.3144 V. */
    @Test
    void anAmplifierMultipliesWhatAThermocoupleGives() {
        CalibrationCurve bare = curve(
                "°C",
                0,
                1000,
                new Calibration.Thermocouple(
                        Calibration.Thermocouple.Type.K, Optional.empty(), OptionalDouble.empty()));
        assertEquals(20.644e-3, bare.signal().applyAsDouble(500), 0.6e-6);
        CalibrationCurve amplified = curve(
                "°C",
                0,
                1000,
                new Calibration.AmplifiedThermocouple(
                        Calibration.Thermocouple.Type.K, 100, 0.25, OptionalDouble.empty()));
        assertEquals(2.3144, amplified.signal().applyAsDouble(500), 0.6e-4);
        assertEquals(500, amplified.value().applyAsDouble(2.3144), 0.02);
    }

    /** A wheel of 60 places less 2 at 6000 turns in a minute: 60 x 6000 / 60 = 6000 teeth in a second. */
    @Test
    void teethPassAsTheWheelTurns() {
        CalibrationCurve curve = curve("rpm", 0, 8000, wheel(60, OptionalDouble.empty(), OptionalDouble.empty()));
        assertEquals(6000, curve.signal().applyAsDouble(6000), EXACT);
    }

    /** 8 pulses a turn of the drive shaft, 560 Hz, axle 3.9, tyre 0.62 m: 560 / 8 / 3.9 x pi x 0.62 x 3.6 = 125.86 km/h. */
    @Test
    void aDriveShaftTellsTheSpeedOnTheRoad() {
        CalibrationCurve curve = curve("km/h", 0, 250, wheel(8, OptionalDouble.of(3.9), OptionalDouble.of(0.62)));
        assertEquals(125.86, curve.value().applyAsDouble(560), 0.005);
    }

    /** Workshop example: 1750 rpm, tyre of 29.00 in, axle 2.72: 1750 x 29 / (2.72 x 336.135) = 55.51 mph. */
    @Test
    void gearingTyreAndTurnsMakeMilesPerHour() {
        CalibrationCurve curve =
                curve("mph", 0, 150, wheel(1, OptionalDouble.of(2.72), OptionalDouble.of(29 * 0.0254)));
        assertEquals(55.51, curve.value().applyAsDouble(1750 / 60.0), 0.005);
    }

    /** A car club's worked example: 275/40 x 20 is 728 mm across and 2287 mm round. */
    @Test
    void aTyreIsReadOffItsSideWall() {
        TyreSize tyre = TyreSize.parse("275/40 x 20").orElseThrow();
        assertEquals(0.728, tyre.diameterMetres(), EXACT);
        assertEquals(2.287, tyre.circumferenceMetres(), 0.0005);
        assertEquals(tyre, TyreSize.parse("275/40R20").orElseThrow());
        assertTrue(TyreSize.parse("about 30 inches").isEmpty());
    }

    @Test
    void aTableOfVoltagesFollowsItsSupply() {
        Calibration.VoltageTable table = new Calibration.VoltageTable(
                List.of(
                        new Calibration.VoltagePoint(0, 0.5),
                        new Calibration.VoltagePoint(40, 2.5),
                        new Calibration.VoltagePoint(100, 4.5)),
                OptionalDouble.of(5),
                OptionalDouble.empty());
        Measurement measurement = Measurement.of("Position", "%", 0, 100, table);
        CalibrationCurve at5 =
                CalibrationCurve.of(measurement, OptionalDouble.of(5)).orElseThrow();
        CalibrationCurve at4 =
                CalibrationCurve.of(measurement, OptionalDouble.of(4)).orElseThrow();
        assertEquals(1.5, at5.signal().applyAsDouble(20), EXACT);
        assertEquals(70, at5.value().applyAsDouble(3.5), EXACT);
        assertEquals(1.2, at4.signal().applyAsDouble(20), EXACT);
        assertEquals(70, at4.value().applyAsDouble(2.8), EXACT);
        assertEquals(List.of(0.0, 40.0, 100.0), at5.rows());
    }

    @Test
    void pulsesOfUnknownRateAndContactsHaveNoCurve() {
        assertTrue(CalibrationCurve.of(
                        Measurement.of(
                                "Flow", "l/min", 0, 60, wheel(8, OptionalDouble.empty(), OptionalDouble.empty())),
                        OptionalDouble.empty())
                .isEmpty());
        assertTrue(CalibrationCurve.of(
                        Measurement.of("Door", "1", 0, 1, new Calibration.SwitchContact(0.1, OptionalDouble.empty())),
                        OptionalDouble.empty())
                .isEmpty());
    }

    private static Calibration wheel(double pulses, OptionalDouble ratio, OptionalDouble tyreMetres) {
        return new Calibration.PulseLevels(
                0.3,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(new Calibration.Turns(pulses, ratio, tyreMetres)));
    }
}
