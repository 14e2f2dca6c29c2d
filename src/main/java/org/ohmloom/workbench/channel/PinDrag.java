package org.ohmloom.workbench.channel;

import java.awt.Component;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.IntConsumer;
import javax.swing.SwingUtilities;

/** Drags a need onto a pin, to lock it there; the pin under the pointer is marked on the way. */
final class PinDrag extends MouseAdapter {

    private final ReadTable needs;
    private final ReadTable places;
    private final IntConsumer dropped;
    private int from = -1;
    private boolean dragging;

    private PinDrag(ReadTable needs, ReadTable places, IntConsumer dropped) {
        this.needs = needs;
        this.places = places;
        this.dropped = dropped;
    }

    /**
     * Lets rows of a table be dragged onto rows of another.
     *
     * @param dropped takes the row dropped on; the row dragged is chosen then
     */
    static void between(ReadTable needs, ReadTable places, IntConsumer dropped) {
        PinDrag drag = new PinDrag(needs, places, dropped);
        needs.addMouseListener(drag);
        needs.addMouseMotionListener(drag);
    }

    @Override
    public void mousePressed(MouseEvent event) {
        from = SwingUtilities.isLeftMouseButton(event) ? needs.rowAtPoint(event.getPoint()) : -1;
        dragging = false;
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (from < 0) {
            return;
        }
        dragging = true;
        needs.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        // The table's own dragging would choose the rows passed on the way.
        needs.choose(from);
        int row = target(event);
        if (row >= 0) {
            places.setRowSelectionInterval(row, row);
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        needs.setCursor(Cursor.getDefaultCursor());
        if (dragging && from >= 0) {
            needs.choose(from);
            int row = target(event);
            if (row >= 0) {
                dropped.accept(row);
            }
        }
        from = -1;
        dragging = false;
    }

    private int target(MouseEvent event) {
        Point there = SwingUtilities.convertPoint((Component) event.getSource(), event.getPoint(), places);
        return places.getVisibleRect().contains(there) ? places.rowAtPoint(there) : -1;
    }
}
