package org.ohmloom.workbench.canvas;

import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JComponent;
import org.ohmloom.workbench.widget.Keys;

/** The keys of a canvas while it has the focus: arrows pan, plus and minus zoom, Escape selects nothing, Tab walks. */
final class CanvasKeys {

    private static final int STEP = 40;

    private CanvasKeys() {}

    static void install(LayoutCanvas canvas, LayoutCanvas.Picking picking) {
        bind(canvas, KeyEvent.VK_LEFT, "left", () -> canvas.pan(STEP, 0));
        bind(canvas, KeyEvent.VK_RIGHT, "right", () -> canvas.pan(-STEP, 0));
        bind(canvas, KeyEvent.VK_UP, "up", () -> canvas.pan(0, STEP));
        bind(canvas, KeyEvent.VK_DOWN, "down", () -> canvas.pan(0, -STEP));
        bind(canvas, KeyEvent.VK_PLUS, "larger", () -> canvas.zoom(1));
        bind(canvas, KeyEvent.VK_ADD, "larger-pad", () -> canvas.zoom(1));
        bind(canvas, KeyEvent.VK_EQUALS, "larger-equals", () -> canvas.zoom(1));
        bind(canvas, KeyEvent.VK_MINUS, "smaller", () -> canvas.zoom(-1));
        bind(canvas, KeyEvent.VK_SUBTRACT, "smaller-pad", () -> canvas.zoom(-1));
        bind(canvas, KeyEvent.VK_ESCAPE, "nothing", () -> picking.picked(List.of()));
        bind(canvas, KeyEvent.VK_PAGE_DOWN, "next-thing", () -> step(canvas, picking, 1));
        bind(canvas, KeyEvent.VK_PAGE_UP, "previous-thing", () -> step(canvas, picking, -1));
    }

    /** Selects the next thing of the scene, so that everything on it can be reached without a mouse. */
    private static void step(LayoutCanvas canvas, LayoutCanvas.Picking picking, int by) {
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
