package org.ohmloom.workbench.canvas;

import java.awt.Cursor;
import org.jspecify.annotations.Nullable;

/** For a canvas that is only looked at: dragging pans, a click selects. */
final class LookTool implements CanvasTool {

    private final LayoutCanvas canvas;
    private final LayoutCanvas.Picking picking;
    private @Nullable Pointed pressedAt;
    private @Nullable Pointed draggedTo;

    LookTool(LayoutCanvas canvas, LayoutCanvas.Picking picking) {
        this.canvas = canvas;
        this.picking = picking;
    }

    @Override
    public void pressed(Pointed at) {
        pressedAt = at;
        draggedTo = null;
    }

    @Override
    public void dragged(Pointed at) {
        if (pressedAt == null) {
            return;
        }
        if (draggedTo == null && at.isDragFrom(pressedAt)) {
            draggedTo = pressedAt;
            canvas.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
        }
        if (draggedTo != null) {
            canvas.pan(at.xPx() - draggedTo.xPx(), at.yPx() - draggedTo.yPx());
            draggedTo = at;
        }
    }

    @Override
    public void released(Pointed at) {
        if (draggedTo != null) {
            canvas.setCursor(Cursor.getDefaultCursor());
        } else if (pressedAt != null) {
            picking.picked(Clicking.after(canvas.selection().ids(), canvas.under(at.xPx(), at.yPx()), at.adding()));
        }
        pressedAt = null;
        draggedTo = null;
    }
}
