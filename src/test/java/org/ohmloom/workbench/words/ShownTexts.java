package org.ohmloom.workbench.words;

import java.awt.Component;
import java.awt.Container;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.Text;
import org.ohmloom.workbench.ComponentTree;
import org.ohmloom.workbench.canvas.SceneCanvas;

/** What is written in a part of a window: on labels and buttons, in texts, in every cell of a table, in what is drawn, and what the pointer tells
 * of it. */
final class ShownTexts {

    private final Set<String> found = new LinkedHashSet<>();

    private ShownTexts() {}

    /** All of it line by line, in the order in which it is found. */
    static Set<String> in(Component part) {
        ShownTexts texts = new ShownTexts();
        texts.read(part);
        return texts.found;
    }

    private void read(Component part) {
        for (Component each : part instanceof Container whole ? ComponentTree.all(whole) : List.of(part)) {
            if (each instanceof JLabel label) {
                add(label.getText());
            } else if (each instanceof JTextComponent text) {
                add(text.getText());
            } else if (each instanceof AbstractButton button) {
                add(button.getText());
            } else if (each instanceof JTable table) {
                cells(table);
            } else if (each instanceof SceneCanvas canvas) {
                canvas.scene().ifPresent(this::drawn);
            }
            if (each instanceof JComponent told) {
                add(told.getToolTipText());
            }
        }
    }

    private void drawn(Scene scene) {
        for (Item item : scene.items()) {
            if (item.mark() instanceof Text text) {
                add(text.text());
            }
            item.description().ifPresent(this::add);
        }
    }

    private void cells(JTable table) {
        for (int column = 0; column < table.getColumnCount(); column++) {
            add(table.getColumnName(column));
            for (int row = 0; row < table.getRowCount(); row++) {
                read(table.prepareRenderer(table.getCellRenderer(row, column), row, column));
            }
        }
    }

    private void add(String text) {
        if (text != null) {
            String plain = text.startsWith("<html>") ? text.replaceAll("<[^>]*>", "\n") : text;
            found.addAll(plain.lines().toList());
        }
    }
}
