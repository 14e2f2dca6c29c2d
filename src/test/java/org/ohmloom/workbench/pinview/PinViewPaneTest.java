package org.ohmloom.workbench.pinview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseListener;
import java.awt.event.MouseMotionListener;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.EndOfWire;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Selection;

/** Wires moved about in the cavities of a connector by keys and by mouse. */
class PinViewPaneTest {

    private final Stage stage = new Stage().openExample("teaching");
    private final PinViewPane pane =
            OnEventThread.get(() -> (PinViewPane) stage.view.viewTabs().study(PinViewPane.KEY));

    private void show(String connector) {
        OnEventThread.run(() -> {
            stage.view.viewTabs().showStudy(PinViewPane.KEY);
            stage.desk().select(Selection.of(List.of(connector)));
            pane.cavities().setSize(600, 300);
            pane.cavities().doLayout();
        });
    }

    private Harness harness() {
        return stage.desk().harness().orElseThrow();
    }

    /** The wire that ends at a place. */
    private String at(String end) {
        return harness().wires().all().stream()
                .filter(wire ->
                        wire.ends().stream().anyMatch(each -> each.text().equals(end)))
                .map(wire -> wire.id().value())
                .findFirst()
                .orElse("nothing");
    }

    private void press(String key) {
        OnEventThread.run(() -> {
            CavityTable table = pane.cavities();
            Object action = table.getInputMap(CavityTable.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                    .get(KeyStroke.getKeyStroke(key));
            table.getActionMap()
                    .get(action)
                    .actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, String.valueOf(action)));
        });
    }

    private void choose(String cavity) {
        OnEventThread.run(() -> pane.cavities().choose(cavity));
    }

    @Test
    void twoWiresChangePlacesByKeys() {
        show("X1");
        String one = at("X1.1");
        String two = at("X1.2");
        choose("1");
        press("SPACE");
        press("RIGHT");
        press("SPACE");
        assertEquals(two, at("X1.1"));
        assertEquals(one, at("X1.2"));
        assertEquals("Swap X1.1 and X1.2", OnEventThread.get(() -> stage.desk()
                .document()
                .orElseThrow()
                .session()
                .undoLabel()
                .map(Text::english)
                .orElseThrow()));
    }

    @Test
    void aDragDoesTheSameAndEscapeLetsItBe() {
        show("X1");
        String one = at("X1.1");
        drag("1", "2", true);
        assertEquals(one, at("X1.1"));
        drag("1", "2", false);
        assertEquals(one, at("X1.2"));
    }

    private void drag(String from, String to, boolean escaped) {
        OnEventThread.run(() -> {
            mouse(MouseEvent.MOUSE_PRESSED, from);
            mouse(MouseEvent.MOUSE_DRAGGED, to);
        });
        if (escaped) {
            press("ESCAPE");
        }
        OnEventThread.run(() -> mouse(MouseEvent.MOUSE_RELEASED, to));
    }

    private void mouse(int kind, String cavity) {
        CavityTable table = pane.cavities();
        int[] place = ((CavityModel) table.getModel()).place(cavity).orElseThrow();
        Rectangle cell = table.getCellRect(place[0], place[1], true);
        MouseEvent event = new MouseEvent(
                table,
                kind,
                0,
                InputEvent.BUTTON1_DOWN_MASK,
                (int) cell.getCenterX(),
                (int) cell.getCenterY(),
                1,
                false,
                MouseEvent.BUTTON1);
        // Without a display the table's own handling of the mouse cannot be asked: only that of the pin view is.
        Stream.of(table.getMouseListeners())
                .filter(each -> each.getClass().getName().contains("pinview"))
                .forEach(each -> tell(each, event));
    }

    private static void tell(MouseListener listener, MouseEvent event) {
        switch (event.getID()) {
            case MouseEvent.MOUSE_PRESSED -> listener.mousePressed(event);
            case MouseEvent.MOUSE_RELEASED -> listener.mouseReleased(event);
            default -> ((MouseMotionListener) listener).mouseDragged(event);
        }
    }

    @Test
    void aLiftedWireIsALooseEndAndIsPutBackByFilling() {
        show("X1");
        String one = at("X1.1");
        choose("1");
        press("DELETE");
        assertEquals("nothing", at("X1.1"));
        assertTrue(harness().wires().get(new WireId(one)).ends().stream()
                .anyMatch(end -> end.text().equals("loose")));
        OnEventThread.run(() -> button("pin-view-fill").doClick());
        assertEquals(one, at("X1.1"));
    }

    @Test
    void aClashIsSaidAtOnce() {
        show("X1");
        String two = at("X1.2");
        OnEventThread.run(() -> {
            EndOfWire end = ((CavityModel) pane.cavities().getModel())
                    .uses()
                    .get(1)
                    .ends()
                    .get(0);
            assertEquals(two, end.wire().value());
            pane.cavities()
                    .put(end, ((CavityModel) pane.cavities().getModel()).uses().get(0));
        });
        assertEquals("1: two wires, one contact", OnEventThread.get(pane::clashText));
        OnEventThread.run(() -> stage.view.book().get("undo").run());
        assertTrue(OnEventThread.get(pane::clashText).startsWith("Space takes"));
    }

    @Test
    void everyCavityIsPaintedAndCanBeReadOut() {
        show("X1");
        OnEventThread.run(() -> {
            CavityTable table = pane.cavities();
            BufferedImage image = new BufferedImage(600, 300, BufferedImage.TYPE_INT_RGB);
            Component cell = table.prepareRenderer(table.getCellRenderer(0, 0), 0, 0);
            cell.setSize(120, 72);
            cell.paint(image.createGraphics());
            assertEquals("1 " + at("X1.1"), cell.getAccessibleContext().getAccessibleName());
            Set<Integer> colours = new HashSet<>();
            for (int x = 0; x < 120; x++) {
                for (int y = 0; y < 72; y++) {
                    colours.add(image.getRGB(x, y));
                }
            }
            assertTrue(colours.size() > 4, "a name, a wire and its colour are there");
        });
    }

    private JButton button(String name) {
        return find(pane, name);
    }

    private static JButton find(Container in, String name) {
        for (Component each : in.getComponents()) {
            if (name.equals(each.getName())) {
                return (JButton) each;
            }
            if (each instanceof Container inner) {
                JButton found = find(inner, name);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }
}
