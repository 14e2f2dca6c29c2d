package org.ohmloom.workbench.canvas;

import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.ohmloom.workbench.widget.Keys;

/**
 * The keys of a canvas while it has the focus: what the tool has no use for pans with the arrows, zooms with plus and minus,
 * selects nothing with Escape and walks with Page Down and Page Up.
 */
final class CanvasKeys {

    private static final int STEP = 40;

    private CanvasKeys() {}

    static void install(LayoutCanvas canvas, CanvasMouse mouse, LayoutCanvas.Picking picking) {
        arrow(canvas, KeyEvent.VK_LEFT, -1, 0);
        arrow(canvas, KeyEvent.VK_RIGHT, 1, 0);
        arrow(canvas, KeyEvent.VK_UP, 0, -1);
        arrow(canvas, KeyEvent.VK_DOWN, 0, 1);
        bind(canvas, KeyEvent.VK_PLUS, "larger", () -> canvas.zoom(1));
        bind(canvas, KeyEvent.VK_ADD, "larger-pad", () -> canvas.zoom(1));
        bind(canvas, KeyEvent.VK_EQUALS, "larger-equals", () -> canvas.zoom(1));
        bind(canvas, KeyEvent.VK_MINUS, "smaller", () -> canvas.zoom(-1));
        bind(canvas, KeyEvent.VK_SUBTRACT, "smaller-pad", () -> canvas.zoom(-1));
        bind(canvas, KeyEvent.VK_ENTER, "enter", () -> canvas.tool().enter());
        bind(canvas, KeyEvent.VK_ESCAPE, "nothing", () -> {
            if (!canvas.tool().escape()) {
                picking.picked(List.of());
            }
        });
        bind(canvas, KeyEvent.VK_PAGE_DOWN, "next-thing", () -> step(canvas, picking, 1));
        bind(canvas, KeyEvent.VK_PAGE_UP, "previous-thing", () -> step(canvas, picking, -1));
        bind(canvas, KeyEvent.VK_CONTEXT_MENU, "menu", canvas::showMenu);
        Keys.bind(canvas, JComponent.WHEN_FOCUSED, Keys.shift(KeyEvent.VK_F10), "menu-too", canvas::showMenu);
        bind(canvas, KeyEvent.VK_SPACE, "space", () -> mouse.hold(true));
        Keys.bind(
                canvas,
                JComponent.WHEN_FOCUSED,
                KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0, true),
                "space-up",
                () -> mouse.hold(false));
    }

    private static void arrow(LayoutCanvas canvas, int key, int right, int down) {
        bind(canvas, key, "arrow-" + key, () -> arrow(canvas, right, down, false));
        Keys.bind(
                canvas,
                JComponent.WHEN_FOCUSED,
                Keys.shift(key),
                "far-arrow-" + key,
                () -> arrow(canvas, right, down, true));
    }

    private static void arrow(LayoutCanvas canvas, int right, int down, boolean far) {
        if (!canvas.tool().arrow(right, down, far)) {
            canvas.pan(-right * STEP, -down * STEP);
        }
    }

    /** Selects the next thing of the scene, so that everything on it can be reached without a mouse. */
    private static void step(LayoutCanvas canvas, LayoutCanvas.Picking picking, int by) {
        if (canvas.tool().step(by)) {
            return;
        }
        List<String> all = canvas.scene().map(scene -> scene.elements()).orElse(List.of());
        if (!all.isEmpty()) {
            int at = canvas.selection().lead().map(all::indexOf).orElse(by > 0 ? -1 : 0);
            picking.picked(List.of(all.get(Math.floorMod(at + by, all.size()))));
        }
    }

    private static void bind(LayoutCanvas canvas, int key, String name, Runnable task) {
        Keys.bind(canvas, JComponent.WHEN_FOCUSED, Keys.plain(key), name, task);
    }
}
