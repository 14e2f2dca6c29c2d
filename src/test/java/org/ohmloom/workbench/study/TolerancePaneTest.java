package org.ohmloom.workbench.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.ComponentTree;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Document;

/** The tab of tolerances: what is entered is drawn, wrong entries are told, and old draws say that they are old. */
class TolerancePaneTest {

    private final Stage stage = new Stage().openExample("teaching");
    private final TolerancePane pane = OnEventThread.get(() -> {
        stage.view.viewTabs().showStudy(TolerancePane.KEY);
        return (TolerancePane) stage.view.viewTabs().study(TolerancePane.KEY);
    });

    @Test
    void whatIsEnteredIsDrawnAndAnEditLeavesItMarkedAsOld() {
        type("runs", "20");
        type("load", "none");
        draw();
        assertTrue(pane.said().startsWith("20 harnesses drawn from 22 inputs, seed 1"), pane.said());
        assertFalse(part("again-tolerance", JLabel.class).isVisible());
        String steps = OnEventThread.get(() -> pane.results().stepsText());
        assertTrue(steps.contains("Joints ") && !steps.contains("Loads "), steps);

        OnEventThread.run(
                () -> stage.desk().apply(new SetWireGauge(List.of(new WireId("W4")), Optional.of(Gauge.metric(4)))));
        stage.awaitResults();
        assertTrue(part("again-tolerance", JLabel.class).isVisible());
        assertTrue(part("again-tolerance", JLabel.class).getText().startsWith("Outdated"));

        OnEventThread.run(() -> stage.view.book().get("undo").run());
        stage.awaitResults();
        assertFalse(part("again-tolerance", JLabel.class).isVisible(), "it is again the harness that was drawn");
        Document teaching = stage.desk().document().orElseThrow();
        OnEventThread.run(() -> stage.view.filing().openExample("star-ground"));
        OnEventThread.await("another harness", () -> stage.desk().document().orElseThrow() != teaching);
        assertEquals(0, OnEventThread.get(() -> pane.results().table().getRowCount()), "those of another harness");
    }

    @Test
    void onlyTheLoadChosenAndWhatLiesOnItsWayIsLookedAt() {
        type("runs", "20");
        OnEventThread.run(() -> part("load", JComboBox.class).setSelectedIndex(2));
        OnEventThread.run(() -> part("in", JComboBox.class).setSelectedIndex(1));
        draw();
        Set<String> looked = new TreeSet<>();
        Set<String> states = new TreeSet<>();
        OnEventThread.run(() -> {
            int last = pane.results().table().getColumnCount() - 1;
            for (int row = 0; row < pane.results().table().getRowCount(); row++) {
                looked.add(pane.results().table().getValueAt(row, 0).toString());
                states.add(pane.results().table().getValueAt(row, last).toString());
            }
        });
        assertEquals(Set.of("F1", "P1", "W1", "W2", "W3", "W5", "W7", "W8"), looked);
        assertEquals(1, states.size(), states.toString());
    }

    @Test
    void aWrongEntryIsToldInOneLineAndNothingIsDrawn() {
        for (List<String> wrong : List.of(
                List.of("load", "1e308", "'load=1e308' is no spread"),
                List.of("load", "5..NaN", "is no spread"),
                List.of("joint", "0..9" + "9".repeat(400), "must be a finite number"),
                List.of("runs", "0", "count of runs must be from 20 to 20000, was 0"),
                List.of("runs", "-5", "Harnesses: '-5' is no whole number"),
                List.of("seed", "99999999999999999999", "is no whole number"))) {
            String before =
                    OnEventThread.get(() -> part(wrong.get(0), JTextField.class).getText());
            type(wrong.get(0), wrong.get(1));
            click("draw");
            assertTrue(pane.said().contains(wrong.get(2)) && !pane.said().contains("\n"), pane.said());
            assertFalse(OnEventThread.get(pane::isBusy));
            type(wrong.get(0), before);
        }
    }

    @Test
    void drawingStopsWhenAskedTo() {
        type("runs", "20000");
        click("draw");
        assertTrue(OnEventThread.get(() -> pane.isBusy()
                && part("stop", JButton.class).isEnabled()
                && part("progress", JComponent.class).isVisible()));
        click("stop");
        assertFalse(OnEventThread.get(pane::isBusy));
        assertEquals("Enter what spreads, or leave it empty for the usual, and draw.", pane.said());
    }

    private void draw() {
        click("draw");
        OnEventThread.await("draws", () -> !pane.isBusy());
    }

    private void click(String button) {
        OnEventThread.run(() -> part(button, JButton.class).doClick());
    }

    private void type(String field, String text) {
        OnEventThread.run(() -> part(field, JTextField.class).setText(text));
    }

    private <T extends JComponent> T part(String name, Class<T> kind) {
        return ComponentTree.find(pane, name.startsWith("again") ? name : "tolerance-" + name, kind);
    }
}
