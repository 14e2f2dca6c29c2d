package org.ohmloom.workbench.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Scene;
import org.ohmloom.model.StateId;
import org.ohmloom.workbench.ComponentTree;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.desk.Selection;

/** The currents of the teaching harness on the workbench: picking points, the way of a current, the selection of other views. */
class CurrentsPaneTest {

    private final Stage stage = new Stage();

    @BeforeEach
    void openTheCurrents() {
        stage.openExample("teaching");
        OnEventThread.run(() -> {
            stage.view.viewTabs().showStudy(CurrentsPane.KEY);
            stage.desk().choose(Optional.of(new StateId("both")));
        });
        OnEventThread.await("currents", () -> !pane().isBusy());
        OnEventThread.run(() -> pane().front().setSize(1200, 500));
        OnEventThread.run(() -> pane().front().fit());
    }

    private CurrentsPane pane() {
        return stage.view.viewTabs().currents();
    }

    private void click(String id) {
        OnEventThread.run(() -> {
            LayoutCanvas canvas = pane().front();
            Scene scene = canvas.scene().orElseThrow();
            Extent dot = scene.bounds(id).orElseThrow();
            var at = canvas.transform().toScreen(dot.centre());
            assertEquals(
                    id,
                    canvas.under((int) Math.round(at.getX()), (int) Math.round(at.getY()))
                            .get(0));
            for (int kind : new int[] {MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED}) {
                canvas.dispatchEvent(new MouseEvent(
                        canvas,
                        kind,
                        0,
                        0,
                        (int) Math.round(at.getX()),
                        (int) Math.round(at.getY()),
                        1,
                        false,
                        MouseEvent.BUTTON1));
            }
        });
    }

    @Test
    void twoDotsReadTheDropBetweenThem() {
        click("BT1.+");
        assertTrue(OnEventThread.get(() -> pane().readingText()).startsWith("From BT1.+ to BT1.-: 12.4 V, mean"));
        click("H1.+");
        // Notes 5 and 6: 12.6 V - 7.9811 A x 20 mOhm = 12.4404 V at the battery; the feed loses the rest of what is
        // missing at 11.9544 V.
        String reading = OnEventThread.get(() -> pane().readingText());
        assertTrue(reading.startsWith("From BT1.+ to H1.+: "), reading);
        // 12.4404 V - 12.1082 V = 332 mV; alone the heater draws a little more over W4, yet much less over what both
        // share. With
        // all off there are 12.6 V between them, across the open switch: that is no drop.
        assertTrue(
                reading.endsWith(": 332 mV, mean, in Heater and pump; worst of the states that close the way: 332 mV in"
                        + " Heater and pump"),
                reading);
        OnEventThread.run(() -> pane().front()
                .getActionMap()
                .get("nothing")
                .actionPerformed(new ActionEvent(pane(), ActionEvent.ACTION_PERFORMED, "")));
        assertTrue(OnEventThread.get(() -> pane().readingText()).startsWith("Point at a wire"));
    }

    @Test
    void pointsCanBeTypedAndThePartsOfTheDropStandBelow() {
        type("currents-from", "F1.2");
        type("currents-to", "sp1");
        // F1.2 to SP1 while both run: W2 and W3 61.43 mV each, the switch 79.81 mV, the joint in the splice 3.99 mV,
        // 206.67 mV in all
        String reading = OnEventThread.get(() -> pane().readingText());
        assertTrue(reading.startsWith("From F1.2 to SP1: 207 mV, mean, in Heater and pump"), reading);
        assertEquals(
                List.of(
                        "W2 wire 7.98 A 61.4 mV 29.7 %",
                        "S1.1-2 switch 7.98 A 79.8 mV 38.6 %",
                        "W3 wire 7.98 A 61.4 mV 29.7 %",
                        "SP1.W3 joint 7.98 A 3.99 mV 1.93 %"),
                OnEventThread.get(() -> rows(ComponentTree.find(pane(), "currents-parts", JTable.class))));
        type("currents-to", "X");
        assertTrue(OnEventThread.get(() -> pane().readingText())
                .startsWith("“X” is several points: X1.1, X1.2, X2.1, X2.2"));
        type("currents-to", "Q7");
        assertTrue(OnEventThread.get(() -> pane().readingText()).startsWith("“Q7” is no point here"));
    }

    private void type(String box, String text) {
        OnEventThread.run(() -> {
            JComboBox<?> found = ComponentTree.find(pane(), box, JComboBox.class);
            JTextField field = (JTextField) found.getEditor().getEditorComponent();
            field.setText(text);
            field.postActionEvent();
        });
    }

    private static List<String> rows(JTable table) {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < table.getRowCount(); row++) {
            List<String> cells = new ArrayList<>();
            for (int column = 0; column < table.getColumnCount(); column++) {
                cells.add(String.valueOf(table.getValueAt(row, column)));
            }
            rows.add(String.join(" ", cells));
        }
        return rows;
    }

    @Test
    void whatIsSelectedElsewhereShowsItsWayHereAndWhatIsPickedHereIsSelectedThere() {
        OnEventThread.run(() -> stage.desk().select(Selection.of(List.of("P1"))));
        List<String> way = OnEventThread.get(() -> pane().front().trail().stream()
                .flatMap(item -> item.element().stream())
                .toList());
        assertEquals(List.of("W1", "W2", "W3", "W5", "W7", "G2", "G1", "W8"), way);
        click("H1");
        assertEquals(
                Optional.of("H1"),
                OnEventThread.get(() -> stage.desk().selection().lead()));
    }

    @Test
    void aLoopSelectedAmongTheReturnsIsMarkedHereToo() {
        Selection loop = new Selection(List.of("W6"), List.of("W6", "G2", "W7"), Optional.empty(), false);
        OnEventThread.run(() -> stage.desk().select(loop));
        LayoutCanvas canvas = OnEventThread.get(() -> pane().front());
        assertEquals(loop.path(), OnEventThread.get(() -> canvas.selection().path()));
        loop.path()
                .forEach(id ->
                        assertFalse(canvas.scene().orElseThrow().itemsOf(id).isEmpty(), id));
    }
}
