package org.ohmloom.workbench.pinview;

import java.awt.Component;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.JList;
import javax.swing.SwingUtilities;
import org.ohmloom.edit.EndOfWire;

/** Drags wires from one cavity to another, and loose ends from their list into a cavity; Escape while dragging lets it be. */
final class CavityDrag {

    private CavityDrag() {}

    /** Within the cavities: on the table itself, whose own dragging would only move the focus. */
    static void within(CavityTable table) {
        MouseAdapter drag = new MouseAdapter() {
            private String from = "";

            @Override
            public void mousePressed(MouseEvent event) {
                from = SwingUtilities.isLeftMouseButton(event)
                        ? table.at(event.getPoint())
                                .filter(use -> !use.ends().isEmpty())
                                .map(use -> use.cavity().name())
                                .orElse("")
                        : "";
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                if (!from.isEmpty() && table.takenUp().isEmpty()) {
                    table.takeUp(Optional.of(from));
                    table.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
                }
            }

            @Override
            public void mouseReleased(MouseEvent event) {
                boolean carried = table.takenUp().filter(from::equals).isPresent();
                if (carried) {
                    table.at(event.getPoint()).ifPresent(use -> table.put(from, use));
                    table.takeUp(Optional.empty());
                }
                table.setCursor(Cursor.getDefaultCursor());
                from = "";
            }
        };
        table.addMouseListener(drag);
        table.addMouseMotionListener(drag);
    }

    /** From the list of loose ends. */
    static void from(JList<EndOfWire> list, CavityTable table) {
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseReleased(MouseEvent event) {
                EndOfWire end = list.getSelectedValue();
                Point there = SwingUtilities.convertPoint((Component) event.getSource(), event.getPoint(), table);
                if (end != null && !list.contains(event.getPoint()) && table.contains(there)) {
                    table.at(there).ifPresent(use -> table.put(end, use));
                }
            }
        });
    }
}
