package org.ohmloom.workbench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import javax.swing.JMenuItem;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.Test;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Line;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.OnEventThread;

/** Every drawing tool in a real window, by mouse and by the keyboard alone. */
class DrawingToolsWindowTest extends HandAtTheLayout {

    private static final double EXACT = 1e-9;

    @Test
    void aBatteryALampAndTheirWiresAreDrawnByMouseFromAnEmptyWindow() {
        press(KeyEvent.VK_N, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        OnEventThread.await("the new harness", () -> desk().document().isPresent());
        settle();
        int wide = OnEventThread.get(() -> canvas().getWidth());
        int high = OnEventThread.get(() -> canvas().getHeight());
        frame.toggleButton("strip-tool-component").click();
        frame.comboBox("tool-kind").selectItem("Battery");
        robot.click(canvas(), new Point(wide / 4, high / 3));
        settle();
        frame.comboBox("tool-kind").selectItem("Lamp");
        robot.click(canvas(), new Point(wide / 2, high / 2));
        settle();

        frame.toggleButton("strip-tool-segment").click();
        frame.textBox("tool-length").enterText("2,5\n");
        Point from = breakout("P1");
        Point to = breakout("P2");
        drag(from, to.x - from.x, to.y - from.y);
        settle();
        BundleSegment segment = harness().segments().get(new SegmentId("SG1"));
        assertEquals("P1 to P2, 2.5 m", segment.from() + " to " + segment.to() + ", " + segment.lengthMetres() + " m");

        frame.toggleButton("strip-tool-wire").click();
        robot.click(canvas(), middle("BT1"));
        pick("BT1.+, free");
        robot.click(canvas(), middle("X1"));
        pick("X1.1  +, free");
        settle();
        frame.textBox("tool-from").enterText("X1.2");
        frame.textBox("tool-to").enterText("bt1.-\n");
        settle();
        assertEquals(
                List.of(ends(terminal("BT1", "+"), cavity("X1", "1")), ends(cavity("X1", "2"), terminal("BT1", "-"))),
                harness().wires().all().stream()
                        .map(wire -> ends(wire.from(), wire.to()))
                        .toList(),
                this::hint);
        assertEquals(
                List.of("Place battery BT1", "Place lamp E1", "Draw segment SG1", "Draw wire W1", "Draw wire W2"),
                OnEventThread.get(
                        () -> session().steps().stream().map(Text::english).toList()));
        OnEventThread.await("results", () -> desk().isCurrent());
        assertEquals(
                2.5,
                OnEventThread.get(() -> desk().analysis()
                        .orElseThrow()
                        .routes()
                        .of(new WireId("W1"))
                        .orElseThrow()
                        .lengthMetres()),
                EXACT);

        frame.toggleButton("strip-tool-splice").click();
        robot.click(canvas(), onWire("W1"));
        chooseIfAsked();
        settle();
        assertEquals(1, harness().splices().all().size());
        assertEquals(3, harness().wires().all().size());
        for (int k = 0; k < 6; k++) {
            press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        }
        settle();
        assertEquals(0, harness().elements().count());
    }

    @Test
    void everyToolIsUsedByTheKeyboardAlone() throws Exception {
        open("teaching");
        Harness before = harness();

        press(KeyEvent.VK_B, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        press(KeyEvent.VK_ENTER);
        press(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
        press(KeyEvent.VK_DOWN, KeyEvent.VK_SHIFT);
        press(KeyEvent.VK_RIGHT);
        press(KeyEvent.VK_ENTER);
        settle();
        String breakout = added(before, harness()).get(0);
        Position at = place(breakout);
        assertEquals(0, Math.abs(at.xMm() % 5) + Math.abs(at.yMm() % 5), EXACT, "on the grid: " + at);

        Harness bare = harness();
        press(KeyEvent.VK_C);
        press(KeyEvent.VK_PAGE_DOWN);
        press(KeyEvent.VK_ENTER);
        settle();
        Component lamp = harness().components().get(new ComponentId("E1"));
        assertTrue(added(bare, harness()).contains("E1"));
        Optional<String> hung = harness().connectors().all().stream()
                .filter(each -> each.component().filter(lamp.id()::equals).isPresent())
                .findFirst()
                .flatMap(each -> each.at().map(Object::toString));
        assertTrue(before.element(hung.orElseThrow()).isPresent(), "hangs at a breakout that was there: " + hung);

        Harness lit = harness();
        press(KeyEvent.VK_G);
        press(KeyEvent.VK_PAGE_DOWN);
        press(KeyEvent.VK_ENTER);
        press(KeyEvent.VK_X);
        press(KeyEvent.VK_PAGE_DOWN);
        press(KeyEvent.VK_ENTER);
        settle();
        assertEquals(lit.grounds().all().size() + 1, harness().grounds().all().size());
        assertEquals(
                lit.connectors().all().size() + 1, harness().connectors().all().size());

        Harness grounded = harness();
        press(KeyEvent.VK_E);
        press(KeyEvent.VK_PAGE_DOWN);
        press(KeyEvent.VK_ENTER);
        press(KeyEvent.VK_PAGE_UP);
        press(KeyEvent.VK_ENTER);
        press(KeyEvent.VK_ESCAPE);
        settle();
        SegmentId drawn = new SegmentId(added(grounded, harness()).get(0));
        BundleSegment segment = harness().segments().get(drawn);
        assertNotEquals(segment.from(), segment.to());

        Harness joined = harness();
        press(KeyEvent.VK_I);
        press(KeyEvent.VK_PAGE_DOWN);
        press(KeyEvent.VK_ENTER);
        chooseIfAsked();
        press(KeyEvent.VK_PAGE_UP);
        press(KeyEvent.VK_ENTER);
        chooseIfAsked();
        settle();
        Wire wire = harness().wires().get(new WireId(added(joined, harness()).get(0)));
        assertEquals(2, new TreeSet<>(List.of(wire.from().toString(), wire.to().toString())).size());

        Harness wired = harness();
        press(KeyEvent.VK_J);
        press(KeyEvent.VK_PAGE_DOWN);
        press(KeyEvent.VK_ENTER);
        chooseIfAsked();
        settle();
        Splice splice = harness().splices().all().stream()
                .filter(each -> !wired.splices().has(each.id()))
                .findFirst()
                .orElseThrow();
        assertTrue(splice.place().isPresent());
        assertEquals(wired.wires().all().size() + 1, harness().wires().all().size());

        Harness spliced = harness();
        press(KeyEvent.VK_O);
        frame.comboBox("tool-zones").selectItem("New zone");
        OnEventThread.run(() -> canvas().requestFocusInWindow());
        robot.waitForIdle();
        press(KeyEvent.VK_PAGE_DOWN);
        press(KeyEvent.VK_ENTER);
        settle();
        assertEquals(spliced.zones().all().size() + 1, harness().zones().all().size());
        assertTrue(undoLabel().orElseThrow().startsWith("Put "), undoLabel().toString());
        press(KeyEvent.VK_ESCAPE);
        frame.toggleButton("strip-tool-select").requireSelected();
    }

    @Test
    void whatCannotBeDrawnIsSaidAndChangesNothing() throws Exception {
        open("teaching");
        Harness before = harness();
        press(KeyEvent.VK_E);
        frame.textBox("tool-length").enterText("long\n");
        Point from = breakout("B1");
        Point to = breakout("B2");
        drag(from, to.x - from.x, to.y - from.y);
        assertTrue(hint().contains("'long'"), hint());
        press(KeyEvent.VK_I, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        frame.textBox("tool-from").enterText("X1.9");
        frame.textBox("tool-to").enterText("G1\n");
        assertTrue(hint().contains("'9'"), hint());
        press(KeyEvent.VK_J, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        robot.click(canvas(), new Point(5, 5));
        assertTrue(hint().startsWith("There is no wire here"), hint());
        assertEquals(before, harness());
    }

    /** Clicks a choice of the list that has come up. */
    private void pick(String text) {
        settle();
        JMenuItem item = robot.finder()
                .find(new org.assertj.swing.core.GenericTypeMatcher<JMenuItem>(JMenuItem.class, true) {
                    @Override
                    protected boolean isMatching(JMenuItem each) {
                        return each.getText().equals(text);
                    }
                });
        robot.click(item);
        robot.waitForIdle();
    }

    /** Takes what a list that has come up begins with. */
    private void chooseIfAsked() {
        robot.waitForIdle();
        if (OnEventThread.get(() -> MenuSelectionManager.defaultManager().getSelectedPath().length > 0)) {
            press(KeyEvent.VK_ENTER);
        }
    }

    /** Ids of what is there now and was not before. */
    private static List<String> added(Harness before, Harness after) {
        return after.elements()
                .map(each -> each.id().value())
                .filter(id -> before.element(id).isEmpty())
                .toList();
    }

    private Point breakout(String id) {
        return pixel(scene -> {
            BoardPlaces board = pane().board().orElseThrow();
            return board.toScene(board.positions().get(id));
        });
    }

    private Point onWire(String id) {
        return pixel(scene -> {
            Line line = scene.itemsOf(id).stream()
                    .filter(item -> item.mark() instanceof Line)
                    .map(item -> (Line) item.mark())
                    .findFirst()
                    .orElseThrow();
            return line.points().get(0).towards(line.points().get(1), 0.5);
        });
    }

    private static WireEnd terminal(String component, String terminal) {
        return new WireEnd.AtTerminal(new ComponentId(component), terminal);
    }

    private static WireEnd cavity(String connector, String cavity) {
        return new WireEnd.AtCavity(new ConnectorId(connector), cavity);
    }

    private static String ends(WireEnd from, WireEnd to) {
        return from + " to " + to;
    }
}
