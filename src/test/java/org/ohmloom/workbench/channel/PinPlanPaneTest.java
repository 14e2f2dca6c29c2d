package org.ohmloom.workbench.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseListener;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.unit.ChannelProblem.UnitPin;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Document;

/** Sensors of the rescue pickup planned, locked and taken back in the window. */
class PinPlanPaneTest {

    private final Stage stage = new Stage();
    private ChannelsPane pane;

    @BeforeEach
    void openTheBarePickup() throws Exception {
        Harness bare = BarePickup.withUnits();
        OnEventThread.run(() -> {
            stage.desk().open(Document.unsaved(bare, "pickup"));
            stage.desk().stopCalculating();
            stage.view.viewTabs().showStudy(ChannelsPane.KEY);
            pane = (ChannelsPane) stage.view.viewTabs().study(ChannelsPane.KEY);
        });
    }

    private void press(String name) {
        OnEventThread.run(() -> ((AbstractButton) find(pane, name).orElseThrow()).doClick());
    }

    private static Optional<Component> find(Container in, String name) {
        for (Component each : in.getComponents()) {
            if (name.equals(each.getName())) {
                return Optional.of(each);
            }
            if (each instanceof Container inner) {
                Optional<Component> found = find(inner, name);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private JTable table(String name) {
        return (JTable) find(pane, name).orElseThrow();
    }

    private String label(String name) {
        return ((JLabel) find(pane, name).orElseThrow()).getText();
    }

    private String summary() {
        return OnEventThread.get(() -> label("channels-summary"));
    }

    private static void layOut(Container container) {
        container.doLayout();
        for (Component each : container.getComponents()) {
            if (each instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    private Optional<Channel> channelOf(String component) {
        return OnEventThread.get(() -> stage.desk().harness().orElseThrow().components().all().stream()
                .filter(each -> each.device() instanceof ControlUnit)
                .flatMap(each -> ((ControlUnit) each.device()).channels().stream())
                .filter(channel -> channel.component().equals(new ComponentId(component)))
                .findFirst());
    }

    private void plan() {
        press("channels-plan");
        OnEventThread.await("the plan", () -> label("channels-summary").contains("points"));
    }

    private void choose(String need, UnitPin pin) {
        OnEventThread.run(() -> {
            ReadTable needs = (ReadTable) table("channels-needs");
            needs.choose(((NeedModel) needs.getModel()).rowOf(need));
            ReadTable places = (ReadTable) table("channels-places");
            places.choose(((PlaceModel) places.getModel()).rowOf(pin));
        });
    }

    private static UnitPin pin(String name) {
        return new UnitPin(new ComponentId("U1"), name);
    }

    @Test
    void aPlanIsShownFirstAndAppliedAsOneStep() {
        Harness before = stage.desk().harness().orElseThrow();
        plan();
        assertTrue(summary().contains("proven the least"), summary());
        assertEquals(before, stage.desk().harness().orElseThrow());
        press("channels-apply");
        for (int k = 1; k <= 10; k++) {
            assertTrue(channelOf("B" + k).isPresent(), "B" + k);
        }
        OnEventThread.run(() -> stage.view.book().get("undo").run());
        assertEquals(before, stage.desk().harness().orElseThrow());
    }

    @Test
    void aLockedSensorStaysWhereAPersonPutIt() {
        plan();
        press("channels-apply");
        String planned = channelOf("B1").orElseThrow().pin();
        String other = OnEventThread.get(() -> {
            PlaceModel places = (PlaceModel) table("channels-places").getModel();
            ReadTable needs = (ReadTable) table("channels-needs");
            needs.choose(((NeedModel) needs.getModel()).rowOf("B1"));
            for (int row = 0; row < places.getRowCount(); row++) {
                PinPlace place = places.place(row);
                if (place.unit().id().value().equals("U1")
                        && places.suits(place, true)
                        && !place.pin().name().equals(planned)) {
                    return place.pin().name();
                }
            }
            return "";
        });
        choose("B1", pin(other));
        press("channels-lock");
        assertEquals(other, channelOf("B1").orElseThrow().pin());
        assertTrue(channelOf("B1").orElseThrow().locked());
        plan();
        press("channels-apply");
        assertEquals(other, channelOf("B1").orElseThrow().pin());
        choose("B1", pin(other));
        press("channels-unlock");
        assertTrue(!channelOf("B1").orElseThrow().locked());
    }

    @Test
    void aPinThatCannotServeIsRefusedWithItsReason() {
        choose("B5", pin("SUP"));
        press("channels-lock");
        String hint = OnEventThread.get(() -> label("channels-hint"));
        assertTrue(hint.contains("B5 needs one"), hint);
        assertTrue(channelOf("B5").isEmpty());
    }

    @Test
    void aDragLocksToo() {
        OnEventThread.run(() -> {
            ReadTable needs = (ReadTable) table("channels-needs");
            ReadTable places = (ReadTable) table("channels-places");
            stage.view.setSize(1600, 3000);
            layOut(stage.view);
            layOut(stage.view);
            int from = ((NeedModel) needs.getModel()).rowOf("B1");
            int to = -1;
            needs.choose(from);
            for (int row = 0; to < 0; row++) {
                to = ((PlaceModel) places.getModel()).suits(((PlaceModel) places.getModel()).place(row)) ? row : -1;
            }
            Point there = places.getCellRect(to, 0, true).getLocation();
            Point here = needs.getCellRect(from, 0, true).getLocation();
            Point seen = SwingUtilities.convertPoint(places, there, needs);
            needs.clearSelection();
            for (int kind : new int[] {MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_DRAGGED, MouseEvent.MOUSE_RELEASED}) {
                boolean first = kind == MouseEvent.MOUSE_PRESSED;
                MouseEvent event = new MouseEvent(
                        needs,
                        kind,
                        0,
                        InputEvent.BUTTON1_DOWN_MASK,
                        (first ? here.x : seen.x) + 4,
                        (first ? here.y : seen.y) + 4,
                        1,
                        false,
                        MouseEvent.BUTTON1);
                for (MouseListener each : needs.getMouseListeners()) {
                    if (each instanceof PinDrag drag) {
                        switch (kind) {
                            case MouseEvent.MOUSE_PRESSED -> drag.mousePressed(event);
                            case MouseEvent.MOUSE_DRAGGED -> drag.mouseDragged(event);
                            default -> drag.mouseReleased(event);
                        }
                    }
                }
            }
        });
        assertTrue(channelOf("B1").filter(Channel::locked).isPresent());
    }
}
