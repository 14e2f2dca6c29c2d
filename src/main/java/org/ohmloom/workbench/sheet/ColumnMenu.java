package org.ohmloom.workbench.sheet;

import java.awt.Component;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.Words;

/** Chooses which columns a list shows; opens over its heads too. */
public final class ColumnMenu extends JPopupMenu {

    private static final long serialVersionUID = 1L;

    private ColumnMenu(SheetTable table) {
        Words words = Words.of("sheets");
        setName("columns");
        ShownColumns shown = table.shown();
        for (Term column : shown.terms()) {
            JCheckBoxMenuItem item = new JCheckBoxMenuItem(column.text(), shown.isShown(column.key()));
            item.setName("column-" + column.key());
            // Several are chosen one after another without opening the menu anew.
            item.putClientProperty("CheckBoxMenuItem.doNotCloseOnMouseClick", Boolean.TRUE);
            item.addActionListener(event -> {
                shown.show(column.key(), item.isSelected());
                item.setSelected(shown.isShown(column.key()));
            });
            add(item);
        }
        addSeparator();
        JMenuItem reset = new JMenuItem(words.get("usual-columns"));
        reset.setName("usual-columns");
        reset.addActionListener(event -> shown.reset());
        add(reset);
    }

    /** Opens it below a component. */
    public static void open(SheetTable table, Component below) {
        new ColumnMenu(table).show(below, 0, below.getHeight());
    }

    /** Lets it open over the heads of a list. */
    static void on(SheetTable table) {
        table.getTableHeader().addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                popUp(event);
            }

            @Override
            public void mouseReleased(MouseEvent event) {
                popUp(event);
            }

            private void popUp(MouseEvent event) {
                if (event.isPopupTrigger()) {
                    new ColumnMenu(table).show(event.getComponent(), event.getX(), event.getY());
                }
            }
        });
    }
}
