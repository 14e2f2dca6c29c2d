package org.ohmloom.workbench.canvas;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.ohmloom.workbench.widget.Keys;

/** The mouse on a canvas. */
final class CanvasMouse extends MouseAdapter {

    private static final double WHEEL_STEP = 1.15;
    private static final int STILL_A_CLICK = 4;

    private final LayoutCanvas canvas;
    private final LayoutCanvas.Picking picking;
    private @Nullable Point pressedAt;
    private @Nullable Point draggedTo;
    private boolean panning;

    CanvasMouse(LayoutCanvas canvas, LayoutCanvas.Picking picking) {
        this.canvas = canvas;
        this.picking = picking;
    }

    void install() {
        canvas.addMouseListener(this);
        canvas.addMouseMotionListener(this);
        canvas.addMouseWheelListener(this);
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        canvas.zoom(Math.pow(WHEEL_STEP, -event.getPreciseWheelRotation()), event.getX(), event.getY());
    }

    @Override
    public void mousePressed(MouseEvent event) {
        canvas.requestFocusInWindow();
        pressedAt = event.getPoint();
        draggedTo = event.getPoint();
        panning = false;
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (pressedAt == null || draggedTo == null) {
            return;
        }
        if (!panning && pressedAt.distance(event.getPoint()) > STILL_A_CLICK) {
            panning = true;
            canvas.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
        }
        if (panning) {
            canvas.pan(event.getX() - draggedTo.getX(), event.getY() - draggedTo.getY());
            draggedTo = event.getPoint();
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        if (panning) {
            canvas.setCursor(Cursor.getDefaultCursor());
        } else if (pressedAt != null && SwingUtilities.isLeftMouseButton(event)) {
            click(event);
        }
        pressedAt = null;
        panning = false;
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        canvas.hover(canvas.under(event.getX(), event.getY()).stream().findFirst());
    }

    @Override
    public void mouseExited(MouseEvent event) {
        canvas.hover(Optional.empty());
    }

    private void click(MouseEvent event) {
        List<String> here = canvas.under(event.getX(), event.getY());
        List<String> before = canvas.selection().ids();
        boolean adding = (event.getModifiersEx() & Keys.menuMask()) != 0 || event.isShiftDown();
        if (adding) {
            if (!here.isEmpty()) {
                picking.picked(toggled(before, here.get(0)));
            }
            return;
        }
        picking.picked(next(before, here));
    }

    /** What a click selects: the topmost, or the one below what is selected already. */
    static List<String> next(List<String> before, List<String> here) {
        if (here.isEmpty()) {
            return List.of();
        }
        int at = before.size() == 1 ? here.indexOf(before.get(0)) : -1;
        return List.of(here.get((at + 1) % here.size()));
    }

    private static List<String> toggled(List<String> before, String id) {
        List<String> changed = new ArrayList<>(before);
        if (!changed.remove(id)) {
            changed.add(0, id);
        }
        return changed;
    }
}
