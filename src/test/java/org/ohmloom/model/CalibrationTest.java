package org.ohmloom.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Calibrations against published tables of thermistors and thermocouples. */
class CalibrationTest {

    /** The table prints microvolts. */
    private static final double MICROVOLT_PRINTED = 0.00055e-3;

    /** Resistances are printed to four digits; the fit is through 0, 50 and 100 deg C. */
    private static final double FIT_KELVIN = 0.08;

    /** Fit of a common 10 kohm thermistor through 0, 25 and 50 deg C. */
    private static final double SECOND_FIT_KELVIN = 0.003;

    private static final Calibration.Beta BETA = new Calibration.Beta(10_000, 25, 3435.4);
    private static final Calibration.SteinhartHart FITTED =
            new Calibration.SteinhartHart(8.785205e-4, 2.529918e-4, 1.862278e-7);
    private static final Calibration.SteinhartHart LASER =
            new Calibration.SteinhartHart(1.104159e-3, 2.389179e-4, 6.9316e-8);

    /** Type K, ITS-90, reference junction 0 deg C: NIST Monograph 175 / SRD 60; mV. */
    @ParameterizedTest
    @CsvSource({
        "-200,-5.891", "-190,-5.730", "-150,-4.913", "-140,-4.669", "-100,-3.554", "-40,-1.527", "0,0.000",
        "20,0.798", "25,1.000", "50,2.023", "100,4.096", "200,8.138", "400,16.397", "500,20.644",
        "700,29.129", "800,33.275", "1000,41.276", "1100,45.119", "1300,52.410", "1372,54.886"
    })
    void a_type_k_thermocouple_gives_the_published_voltage(double celsius, double millivolts) {
        assertEquals(millivolts / 1000, ThermocoupleVolts.volts(celsius), MICROVOLT_PRINTED);
        assertEquals(celsius, ThermocoupleVolts.celsius(ThermocoupleVolts.volts(celsius)), 1e-6);
    }

    /** SE-8: 20.000 mV measured with the cold junction at 25 deg C (1.000 mV): 21.000 mV, 508.4 deg C; E(508.36) = 21.0007 mV. */
    @Test
    void voltages_of_measurement_and_cold_junction_add_up_and_temperatures_do_not() {
        double total = 0.020 + ThermocoupleVolts.volts(25);
        assertEquals(0.021000, total, MICROVOLT_PRINTED);
        assertEquals(508.4, ThermocoupleVolts.celsius(total), 0.1);
        assertEquals(0.0210007, ThermocoupleVolts.volts(508.36), 0.1e-6);
    }

    /**
     * A 10 kohm NTC of B25/85 = 3435 K (a maker's catalogue): Steinhart-Hart through 0, 50 and 100 deg C is right within 0.08 K;
     * Steinhart and Hart, Deep-Sea Research 15, 1968.
     */
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
    void three_points_of_a_thermistor_tell_all_its_curve(double celsius, double ohms) {
        assertEquals(celsius, FITTED.value(ohms), FIT_KELVIN);
        assertEquals(ohms, FITTED.ohms(FITTED.value(ohms)), 1e-9 * ohms);
    }

    /** The same table by Beta alone: -17.5 deg C at -20, +1.1 K at 0, right at 25 and 85. */
    @ParameterizedTest
    @CsvSource({"67770,-17.5,0.05", "27280,1.1,0.05", "10000,25,0.001", "1451,85,0.02"})
    void two_points_of_a_thermistor_miss_it_in_the_cold(double ohms, double read, double within) {
        assertEquals(read, BETA.value(ohms), within);
        assertEquals(ohms, BETA.ohms(BETA.value(ohms)), 1e-9 * ohms);
    }

    /** A common 10 kohm thermistor (manual of a temperature controller, table A.1); its 40 deg C row is a misprint: 39.53. */
    @ParameterizedTest
    @CsvSource({"32128,0,0.003", "19549,10,0.003", "9814,25,0.003", "7908,30,0.003", "3542,50,0.003", "5331,39.53,0.005"
    })
    void a_second_thermistor_follows_its_fit(double ohms, double celsius, double within) {
        assertEquals(celsius, LASER.value(ohms), Math.max(within, SECOND_FIT_KELVIN));
    }

    @Test
    void a_table_is_straight_between_its_rows_and_beyond() {
        Calibration.ResistanceTable sender = new Calibration.ResistanceTable(List.of(
                new Calibration.ResistancePoint(0, 180),
                new Calibration.ResistancePoint(50, 90),
                new Calibration.ResistancePoint(100, 10)));
        assertEquals(135, sender.ohms(25), 1e-12);
        assertEquals(25, sender.value(135), 1e-12);
        assertEquals(75, sender.value(50), 1e-12);
        assertEquals(-5, sender.value(189), 1e-12);
        assertEquals(2, sender.ohms(105), 1e-12);
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Calibration.ResistanceTable(List.of(
                        new Calibration.ResistancePoint(0, 10),
                        new Calibration.ResistancePoint(1, 20),
                        new Calibration.ResistancePoint(2, 15))));
        assertThrows(IllegalArgumentException.class, () -> Measurement.of("Air", "bar", 0, 100, BETA));
        assertThrows(IllegalArgumentException.class, () -> Measurement.of("Air", "°C", 100, 100, BETA));
        assertThrows(
                IllegalArgumentException.class,
                () -> new InputStage(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(1),
                        OptionalDouble.of(2),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Optional.empty()));
    }
}
