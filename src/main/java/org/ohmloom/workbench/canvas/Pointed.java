package org.ohmloom.workbench.canvas;

import java.awt.event.MouseEvent;
import org.ohmloom.draw.Point;
import org.ohmloom.workbench.widget.Keys;

/**
 * Where the pointer is on a canvas, and what is held with it.
 *
 * @param xPx    to the right, px
 * @param yPx    downwards, px
 * @param scene  the point of the scene there
 * @param adding whether Shift or the menu key is held
 * @param free   whether the menu key is held
 */
public record Pointed(int xPx, int yPx, Point scene, boolean adding, boolean free) {

    private static final int STILL_A_CLICK = 4;

    static Pointed of(MouseEvent event, LayoutCanvas canvas) {
        boolean menu = (event.getModifiersEx() & Keys.menuMask()) != 0;
        return new Pointed(
                event.getX(),
                event.getY(),
                canvas.transform().toScene(event.getX(), event.getY()),
                menu || event.isShiftDown(),
                menu);
    }

    /** Whether it is far enough from where the button went down to mean a drag. */
    public boolean isDragFrom(Pointed start) {
        return Math.hypot(xPx - start.xPx, yPx - start.yPx) > STILL_A_CLICK;
    }
}
