package org.ohmloom.workbench.canvas;

import java.awt.Cursor;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * The mouse on a canvas: the wheel zooms about the pointer, the middle or the right button pans, and so does the left one while
 * Space is held; a click of the right button asks for a menu. Everything else is the tool's.
 */
final class CanvasMouse extends MouseAdapter {

    private static final double WHEEL_STEP = 1.15;

    private final LayoutCanvas canvas;
    private @Nullable Pointed panFrom;
    private @Nullable Pointed pannedTo;
    private boolean toolHasIt;
    private boolean space;

    CanvasMouse(LayoutCanvas canvas) {
        this.canvas = canvas;
    }

    void install() {
        canvas.addMouseListener(this);
        canvas.addMouseMotionListener(this);
        canvas.addMouseWheelListener(this);
    }

    /** Whether Space is held. */
    void hold(boolean held) {
        space = held;
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        canvas.zoom(Math.pow(WHEEL_STEP, -event.getPreciseWheelRotation()), event.getX(), event.getY());
    }

    @Override
    public void mousePressed(MouseEvent event) {
        canvas.requestFocusInWindow();
        Pointed at = Pointed.of(event, canvas);
        boolean left = SwingUtilities.isLeftMouseButton(event);
        if (left && event.isPopupTrigger()) {
            canvas.showMenu(event.getX(), event.getY());
        } else if (left && !space) {
            toolHasIt = true;
            canvas.tool().pressed(at);
        } else if (!toolHasIt) {
            panFrom = at;
            pannedTo = null;
        }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        Pointed at = Pointed.of(event, canvas);
        if (toolHasIt) {
            canvas.tool().dragged(at);
        } else if (panFrom != null) {
            pan(at, panFrom);
        }
    }

    private void pan(Pointed at, Pointed from) {
        if (pannedTo == null && at.isDragFrom(from)) {
            pannedTo = from;
            canvas.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
        }
        if (pannedTo != null) {
            canvas.pan(at.xPx() - pannedTo.xPx(), at.yPx() - pannedTo.yPx());
            pannedTo = at;
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        if (toolHasIt && SwingUtilities.isLeftMouseButton(event)) {
            toolHasIt = false;
            canvas.tool().released(Pointed.of(event, canvas));
        } else if (panFrom != null) {
            if (pannedTo == null && SwingUtilities.isRightMouseButton(event)) {
                canvas.showMenu(event.getX(), event.getY());
            }
            canvas.setCursor(canvas.tool().cursor(false));
            panFrom = null;
            pannedTo = null;
        }
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        canvas.hover(canvas.under(event.getX(), event.getY()).stream().findFirst());
        canvas.tool().moved(Pointed.of(event, canvas));
    }

    @Override
    public void mouseExited(MouseEvent event) {
        canvas.hover(Optional.empty());
        if (!toolHasIt) {
            canvas.tool().left();
        }
    }
}
