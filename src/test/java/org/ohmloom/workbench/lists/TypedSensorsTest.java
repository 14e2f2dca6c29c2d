package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.words.CalibrationText;

/** What is typed about sensors and the inputs that read them. */
class TypedSensorsTest {

    private static final ComponentId SENSOR = new ComponentId("B1");

    private static final Harness HARNESS = Harness.empty(
                    TitleBlock.of("Small", "T-1"),
                    new DesignRules("road-vehicle", 12, 0.05, GaugeSystem.METRIC, "none named", Optional.empty(), 25))
            .withAll(List.of(
                    Component.of("B1", "Oil pressure", new Sensor(Sensor.Kind.OTHER, 0.01, OptionalDouble.empty())),
                    Component.of(
                            "U1",
                            "Unit",
                            new ControlUnit(
                                    List.of(Pin.of("GND", PinRole.GROUND), Pin.of("A1", PinRole.ANALOGUE_INPUT)),
                                    0.1,
                                    OptionalDouble.empty(),
                                    OptionalDouble.empty()))));

    private static Harness typed(Harness harness, String column, String text) {
        return typed(new SensorSheet(), harness, column, text);
    }

    private static <R> Harness typed(Sheet<R> sheet, Harness harness, String column, String text) {
        List<R> rows = sheet.rows(new Readout(harness, Optional.empty(), Optional.empty()));
        return sheet.columns().stream()
                .filter(each -> each.title().equals(column))
                .findFirst()
                .orElseThrow()
                .edit()
                .orElseThrow()
                .parse(rows, text)
                .apply(harness);
    }

    private static Measurement measurement(Harness harness) {
        return ((Sensor) harness.components().get(SENSOR).device())
                .measurement()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0: 1 V, 50: 2 V, 100: 4.5 V", "type K, gain 100 on 1.25 V"})
    void a_table_of_voltages_and_an_amplified_thermocouple_are_typed_as_they_are_shown(String text) {
        assertEquals(text, CalibrationText.of(CalibrationText.parse(text, Optional.empty())));
    }

    @Test
    void what_a_sensor_meets_in_use_and_its_wheel_stay_when_its_cells_are_typed() {
        Measurement.Use use = new Measurement.Use(
                OptionalDouble.of(0),
                OptionalDouble.of(6000),
                OptionalDouble.of(0.05),
                OptionalDouble.empty(),
                OptionalDouble.of(50));
        Calibration.PulseLevels wheel = new Calibration.PulseLevels(
                0.3,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(new Calibration.Turns(60, OptionalDouble.empty(), OptionalDouble.empty())));
        Measurement speed = Measurement.of("Speed", "rpm", 0, 8000, wheel).used(Optional.of(use));
        Harness harness = HARNESS.with(Component.of(
                "B1", "Speed", new Sensor(Sensor.Kind.HALL, 0.01, OptionalDouble.empty(), Optional.of(speed))));
        Measurement after = measurement(typed(typed(harness, "Range", "0 to 9000 rpm"), "Gives", "low 0.4 V"));
        assertEquals(Optional.of(use), after.use());
        assertEquals(wheel.turns(), ((Calibration.PulseLevels) after.calibration()).turns());
    }

    @Test
    void a_calibration_begins_a_measurement_and_the_other_cells_change_it() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> typed(HARNESS, "Range", "0 to 10 bar"))
                .getMessage()
                .contains("say first what B1 gives"));
        Harness begun = typed(HARNESS, "Gives", "10 % to 90 %");
        assertEquals(
                Measurement.of(
                        "Oil pressure", "%", 0, 100, new Calibration.RatiometricLine(0.1, 0.9, OptionalDouble.empty())),
                measurement(begun));
        Harness ranged = typed(begun, "Range", "-0.5 to 10 bar");
        assertEquals("bar", measurement(ranged).unit());
        assertEquals(10.5, measurement(ranged).span(), 1e-12);
        Harness strict = typed(ranged, "May err by", "0.2");
        assertEquals(OptionalDouble.of(0.2), measurement(strict).allowedError());
        Harness warm = typed(strict, "Warms by", "8 mW/K");
        assertEquals(OptionalDouble.of(0.008), measurement(warm).dissipationWattsPerKelvin());
        Harness named = typed(warm, "Measures", "Boost");
        assertEquals("Boost", measurement(named).quantity());
        assertEquals(
                Optional.empty(),
                ((Sensor) typed(named, "Gives", "").components().get(SENSOR).device()).measurement());
    }

    /** Each text is what its calibration shows, so editing starts from what it read. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "10 % to 90 %",
                "500 mV to 4.5 V",
                "4 mA to 20 mA",
                "2.5 kΩ at 20 °C, beta 3500 K",
                "0: 10 Ω, 50: 90 Ω, 100: 180 Ω",
                "low 300 mV",
                "low 300 mV, high 4.8 V",
                "closed 100 mΩ",
                "closed 100 mΩ, open 1 MΩ",
                "type K, copper",
                "type K"
            })
    void a_calibration_is_read_as_it_is_shown(String text) {
        assertEquals(text, CalibrationText.of(CalibrationText.parse(text, Optional.empty())));
    }

    @Test
    void what_is_no_calibration_is_refused_with_what_would_be_one() {
        String refusal = assertThrows(
                        IllegalArgumentException.class, () -> CalibrationText.parse("sideways", Optional.empty()))
                .getMessage();
        assertTrue(refusal.contains("0.5 V to 4.5 V"), refusal);
    }

    @Test
    void an_input_gets_its_resistance_filter_thresholds_and_scale() {
        InputSheet sheet = new InputSheet();
        Harness all = typed(
                sheet,
                typed(sheet, typed(sheet, HARNESS, "Loads", "100 kOhm"), "Filter", "50"),
                "Compares with",
                "ratiometric");
        all = typed(sheet, typed(sheet, all, "High from", "3"), "Low from", "1.5 V");
        ControlUnit unit =
                (ControlUnit) all.components().get(new ComponentId("U1")).device();
        assertEquals(
                Optional.of(new InputStage(
                        OptionalDouble.of(100e3),
                        OptionalDouble.of(50),
                        OptionalDouble.of(3),
                        OptionalDouble.of(1.5),
                        Optional.of(InputStage.Scale.RATIOMETRIC),
                        OptionalDouble.empty(),
                        Optional.empty())),
                unit.pin("A1").orElseThrow().input());
        Harness high = all;
        assertThrows(IllegalArgumentException.class, () -> typed(sheet, high, "Low from", "4 V"));
    }
}
