package org.ohmloom.workbench.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Scene;
import org.ohmloom.model.StateId;
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
            for (int kind :
                    new int[] {java.awt.event.MouseEvent.MOUSE_PRESSED, java.awt.event.MouseEvent.MOUSE_RELEASED}) {
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
        assertTrue(reading.endsWith("mV, mean, in Heater and pump"), reading);
        OnEventThread.run(() -> pane().front()
                .getActionMap()
                .get("nothing")
                .actionPerformed(new ActionEvent(pane(), ActionEvent.ACTION_PERFORMED, "")));
        assertTrue(OnEventThread.get(() -> pane().readingText()).startsWith("Point at a wire"));
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
