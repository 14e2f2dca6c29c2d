package org.ohmloom.workbench.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollBar;
import javax.swing.JSpinner;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;

/** Finds what is written in a window and cannot be read whole: each text by the size it wants against the size it has. */
final class Clipping {

    /** Rounding of fonts and scales: a pixel as large as the scale makes it. */
    private static int slack() {
        return UIScale.scale(1);
    }

    private final Window window;
    private final List<String> found = new ArrayList<>();

    private Clipping(Window window) {
        this.window = window;
    }

    /** What is cut in a window as it is shown now, a line each. */
    static List<String> in(Window window) {
        Clipping clipping = new Clipping(window);
        clipping.walk(window);
        return clipping.found;
    }

    private void walk(Component component) {
        if (!component.isShowing() || component instanceof JScrollBar) {
            return;
        }
        if (component instanceof JLabel label
                && label.getText() != null
                && !label.getText().isBlank()) {
            look(label, label.getText());
        } else if (component instanceof AbstractButton button) {
            // the arrows of a spinner fit the field, whatever they would like
            if (!(button.getParent() instanceof JSpinner)) {
                look(button, String.valueOf(button.getText()));
            }
            return;
        } else if (component instanceof JComboBox<?> box) {
            look(box, spoken(box));
            return;
        } else if (component instanceof JTabbedPane tabs) {
            tabs(tabs);
        } else if (component instanceof JTable table && table.getTableHeader() != null) {
            heads(table);
            return;
        }
        if (component instanceof Container container) {
            for (Component inner : container.getComponents()) {
                walk(inner);
            }
        }
    }

    /** What a box shows: as its list writes it, not as its value would. */
    @SuppressWarnings("unchecked") // the renderer of a box writes its values
    private static String spoken(JComboBox<?> box) {
        ListCellRenderer<Object> renderer = (ListCellRenderer<Object>) box.getRenderer();
        Component shown = renderer.getListCellRendererComponent(new JList<>(), box.getSelectedItem(), -1, false, false);
        return shown instanceof JLabel label ? label.getText() : String.valueOf(box.getName());
    }

    private void look(JComponent component, String text) {
        Dimension wanted = component.getPreferredSize();
        if (wanted.width > component.getWidth() + slack() || wanted.height > component.getHeight() + slack()) {
            say(
                    component,
                    text,
                    wanted.width + "x" + wanted.height + " in " + component.getWidth() + "x" + component.getHeight());
        } else if (SwingUtilities.getAncestorOfClass(JViewport.class, component) == null) {
            Rectangle visible = component.getVisibleRect();
            if (visible.width + slack() < component.getWidth() || visible.height + slack() < component.getHeight()) {
                Point at = SwingUtilities.convertPoint(component, 0, 0, window);
                say(
                        component,
                        text,
                        "reaches out of its window at " + at.x + "," + at.y + " with " + component.getWidth() + "x"
                                + component.getHeight() + ", seen " + visible.width + "x" + visible.height);
            }
        }
    }

    private void tabs(JTabbedPane tabs) {
        for (int k = 0; k < tabs.getTabCount(); k++) {
            Rectangle bounds = tabs.getBoundsAt(k);
            if (bounds == null || bounds.x < 0 || bounds.x + bounds.width > tabs.getWidth() + slack()) {
                say(tabs, tabs.getTitleAt(k), "tab " + (k + 1) + " of " + tabs.getTabCount() + " is scrolled out");
            }
        }
    }

    private void heads(JTable table) {
        JTableHeader header = table.getTableHeader();
        if (!header.isShowing()) {
            return;
        }
        for (int k = 0; k < table.getColumnCount(); k++) {
            TableColumn column = table.getColumnModel().getColumn(k);
            TableCellRenderer renderer =
                    column.getHeaderRenderer() == null ? header.getDefaultRenderer() : column.getHeaderRenderer();
            int wanted = renderer.getTableCellRendererComponent(table, column.getHeaderValue(), false, false, -1, k)
                    .getPreferredSize()
                    .width;
            if (wanted > column.getWidth() + slack()) {
                say(table, "head " + column.getHeaderValue(), wanted + " in " + column.getWidth());
            }
        }
    }

    private void say(Component component, String text, String what) {
        StringBuilder place = new StringBuilder();
        for (Component up = component; up != null && up != window; up = up.getParent()) {
            if (up.getName() != null && !up.getName().startsWith("null.")) {
                place.insert(0, up.getName() + "/");
            }
        }
        found.add(place + component.getClass().getSimpleName() + " \"" + text + "\": " + what);
    }
}
