package org.ohmloom.workbench.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.edit.Edit;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Sensor;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;

/** Calibrations typed for sensors that no input reads. */
class CalibrationPaneTest {

    private final List<Edit> answers = new ArrayList<>();
    private final Stage stage = new Stage();

    private CalibrationPane pane(Harness harness, Calibrated of) {
        return OnEventThread.get(() -> new CalibrationPane(
                of,
                harness.rules().returnRules(),
                stage.services().painter(),
                answer -> answer.ifPresent(answers::add)));
    }

    private static Optional<Component> find(Container in, String name) {
        for (Component each : in.getComponents()) {
            if (name.equals(each.getName())) {
                return Optional.of(each);
            }
            Optional<Component> found = each instanceof Container inner ? find(inner, name) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static void type(CalibrationPane pane, String field, String text) {
        OnEventThread.run(() -> ((JTextComponent) find(pane, field).orElseThrow()).setText(text));
    }

    /** The thermistor of 2500 ohm at 20 °C, Beta 3500 K, over 0 to 100 °C. */
    private static void thermistor(CalibrationPane pane) {
        type(pane, "calibration-range", "0 to 100 °C");
        OnEventThread.run(() -> {
            ((JComboBox<?>) find(pane, "calibration-kind").orElseThrow())
                    .setSelectedIndex(CalibrationKind.BETA.ordinal());
            JTable cells = (JTable) find(pane, "calibration-cells").orElseThrow();
            cells.setValueAt("2500", 0, 1);
            cells.setValueAt("20", 1, 1);
            cells.setValueAt("3500", 2, 1);
        });
    }

    /**
     * R = 2500 exp(3500 (1/273.15 - 1/293.15)) = 5992 ohm at 0 °C; under 1 kohm to 5 V that is 5 x 5992 / 6992 = 4.28 V. The 12 bits of
     * the converter take 5 / 4096 = 1.22 mV a step; at 100 °C, 194 ohm, the curve falls by 17.1 mV/K, so a step is 0.072 K.
     */
    @Test
    void aSensorNothingReadsIsToldByTheInputTyped() {
        Harness harness = new HarnessSketch()
                .component("B1", new Sensor(Sensor.Kind.THERMISTOR, 0, OptionalDouble.empty()))
                .harness();
        CalibrationPane pane = pane(
                harness,
                Calibrated.unread(harness.components().get(new ComponentId("B1")))
                        .orElseThrow());
        thermistor(pane);
        assertFalse(OnEventThread.get(pane::toldText).contains("Back from the pin"), pane.toldText());
        type(pane, "calibration-pull-up", "1 kohm");
        String told = OnEventThread.get(pane::toldText);
        assertTrue(told.contains("Curve: R = 2.5 kΩ exp(3500 K (1/T - 1/T0))"), told);
        assertTrue(told.contains("4.28 V = 0 °C"), told);
        assertTrue(told.contains("One step is worth 0.072 °C at 100 °C"), told);
        OnEventThread.run(() -> ((AbstractButton) find(pane, "calibration-ok").orElseThrow()).doClick());
        Sensor after = (Sensor) answers.get(0)
                .apply(harness)
                .components()
                .get(new ComponentId("B1"))
                .device();
        assertEquals(
                new Calibration.Beta(2500, 20, 3500),
                after.measurement().orElseThrow().calibration());
    }

    @Test
    void aCalibrationOfItsOwnPutsANewSensorIn() {
        Harness harness = new HarnessSketch().harness();
        CalibrationPane pane = pane(harness, Calibrated.fresh(harness));
        type(pane, "calibration-quantity", "Bearing temperature");
        thermistor(pane);
        OnEventThread.run(() -> ((AbstractButton) find(pane, "calibration-ok").orElseThrow()).doClick());
        org.ohmloom.model.Component put =
                answers.get(0).apply(harness).components().all().iterator().next();
        assertEquals("Bearing temperature", put.name());
        assertEquals(Sensor.Kind.THERMISTOR, ((Sensor) put.device()).kind());
    }

    /** Harness files take numbers from 1e-60 to 1e60, and so does the form. */
    @ParameterizedTest
    @ValueSource(strings = {"1.1e60", "1e-61", "-2e300", "NaN", "Infinity"})
    void aConstantNoFileTakesIsRefused(String constant) {
        Harness harness = new HarnessSketch().harness();
        CalibrationPane pane = pane(harness, Calibrated.fresh(harness));
        type(pane, "calibration-range", "0 to 100 °C");
        OnEventThread.run(() -> {
            ((JComboBox<?>) find(pane, "calibration-kind").orElseThrow())
                    .setSelectedIndex(CalibrationKind.STEINHART_HART.ordinal());
            JTable cells = (JTable) find(pane, "calibration-cells").orElseThrow();
            cells.setValueAt("1.129e-3", 0, 1);
            cells.setValueAt("2.341e-4", 1, 1);
            cells.setValueAt(constant, 2, 1);
        });
        String told = OnEventThread.get(pane::toldText);
        assertTrue(told.contains("“" + constant + "” is too large or too small to compute with"), told);
        assertFalse(OnEventThread.get(() -> pane.okButton().isEnabled()));
    }

    @Test
    void aBlankFieldSaysWhatItStandsFor() {
        Harness harness = new HarnessSketch().harness();
        CalibrationPane pane = pane(harness, Calibrated.fresh(harness));
        for (String field : List.of("calibration-use", "calibration-tau", "calibration-rate")) {
            JTextComponent shown = (JTextComponent) find(pane, field).orElseThrow();
            assertFalse(
                    String.valueOf(shown.getClientProperty("JTextField.placeholderText"))
                            .isBlank(),
                    field);
            assertNotNull(shown.getClientProperty("JTextField.placeholderText"), field);
        }
    }

    /** 0 to 10 bar are told and 12 bar are met. */
    @Test
    void whatDoesNotServeIsToldWithoutAChannelToo() {
        Harness harness = new HarnessSketch().harness();
        CalibrationPane pane = pane(harness, Calibrated.fresh(harness));
        type(pane, "calibration-range", "0 to 10 bar");
        type(pane, "calibration-use", "0 to 12 bar");
        String told = OnEventThread.get(pane::toldText);
        assertTrue(told.contains("meets 0 to 12 bar in use and tells 0 to 10 bar"), told);
    }
}
