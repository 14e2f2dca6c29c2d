package org.ohmloom.workbench.personal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.settings.Appearance;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.Personal;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;

/** Keys, size, font and look as a person wants them, and the list of changes. */
class PersonalTest {

    @AfterEach
    void asItWas() {
        OnEventThread.run(() -> Appearance.install(PreferenceStore.inMemory(Preferences.DEFAULT)));
    }

    @Test
    void keysAreChangedKeptRefusedWhenTakenAndPutBack() {
        Stage stage = new Stage();
        Command fit = stage.view.book().get("fit-layout");
        Command undo = stage.view.book().get("undo");
        Optional<KeyStroke> usual = fit.keys();
        OnEventThread.run(() -> {
            KeysTable keys = new KeysTable(stage.view.book(), stage.preferences);
            KeyStroke wanted = KeyStroke.getKeyStroke("ctrl alt pressed F");
            keys.change(fit, Optional.of(wanted));
            assertEquals(Optional.of(wanted), fit.keys());
            assertEquals(wanted, KeyStroke.getKeyStroke(keyOf(stage, "fit-layout")));

            keys.change(fit, undo.keys());
            assertEquals(Optional.of(wanted), fit.keys(), "Undo has those");

            keys.change(undo, Optional.empty());
            assertEquals(Optional.empty(), undo.keys());
            assertEquals("", keyOf(stage, "undo"));

            stage.view.book().rebind(Map.of());
            assertEquals(usual, fit.keys());
            assertTrue(undo.keys().isPresent());
        });
    }

    private static String keyOf(Stage stage, String command) {
        return stage.preferences.now().personal().keys().get(command);
    }

    @Test
    void sizeFontAndLookTakeEffectAtOnceAndAreKept() {
        Stage stage = new Stage();
        OnEventThread.run(() -> {
            Runnable apply = () -> Appearance.install(stage.preferences);
            SettingsPane pane = new SettingsPane(stage.preferences, stage.view.book(), apply);
            apply.run();
            int before = new JLabel("Ohmloom").getPreferredSize().width;

            choose(pane, "settings-zoom", "200 %");
            assertEquals(2f, UIScale.getZoomFactor());
            int twice = new JLabel("Ohmloom").getPreferredSize().width;
            assertTrue(twice > 1.8 * before && twice < 2.2 * before, before + " px became " + twice + " px");

            choose(pane, "settings-zoom", "100 %");
            choose(pane, "settings-font", "20 pt");
            assertEquals(20, new JLabel().getFont().getSize());

            choose(pane, "settings-look", "Dark");
            assertTrue(com.formdev.flatlaf.FlatLaf.isLafDark());
            assertEquals(Look.DARK, stage.preferences.now().look());
            assertEquals(
                    new Personal(100, 20, false, Map.of()),
                    stage.preferences.now().personal());
        });
    }

    private static void choose(SettingsPane pane, String name, String choice) {
        for (Component each : pane.getComponents()) {
            if (name.equals(each.getName())) {
                ((JComboBox<?>) each).setSelectedItem(choice);
                return;
            }
        }
        throw new AssertionError(name);
    }

    @Test
    void theListOfChangesGoesSeveralBackInOneStep() {
        Stage stage = new Stage();
        OnEventThread.run(() -> assertFalse(stage.view.book().get("change-list").isEnabled()));
        stage.openExample("teaching");
        Harness opened = OnEventThread.get(() -> stage.desk().harness().orElseThrow());
        OnEventThread.run(() -> {
            for (double areaMm2 : new double[] {4, 6, 10}) {
                stage.desk().apply(SetWireGauge.of(new WireId("W4"), Gauge.metric(areaMm2)));
            }
            assertTrue(stage.view.book().get("change-list").isEnabled());
            boolean[] closed = new boolean[1];
            ChangesPane pane =
                    new ChangesPane(stage.desk().document().orElseThrow().session(), () -> closed[0] = true);
            assertEquals(4, pane.steps().getModel().getSize());
            assertEquals(3, pane.steps().getSelectedIndex());
            pane.steps().setSelectedIndex(0);
            pane.goButton().doClick();
            assertTrue(closed[0]);
            assertEquals(opened, stage.desk().harness().orElseThrow());
        });
    }
}
