package org.ohmloom.workbench.drafting;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;

/** A short list that comes up beside the pointer to choose one from, by a click or by the arrow keys and Enter. */
final class PickList {

    /** More choices than these stand in lists of their own. */
    private static final int MOST_ROWS = 20;

    private PickList() {}

    /**
     * Shows the choices; Escape chooses none.
     *
     * @param first which is chosen to begin with
     */
    static <T> void show(
            Component over, int xPx, int yPx, String title, List<T> choices, int first, Consumer<T> chosen) {
        JPopupMenu popup = new JPopupMenu();
        popup.setName("pick-list");
        JMenuItem head = new JMenuItem(title);
        head.setEnabled(false);
        popup.add(head);
        popup.addSeparator();
        List<MenuElement> path = new ArrayList<>(List.of(popup));
        for (int from = 0; from < choices.size(); from += MOST_ROWS) {
            int to = Math.min(choices.size(), from + MOST_ROWS);
            JMenu part = new JMenu(choices.get(from) + " …");
            for (int k = from; k < to; k++) {
                T choice = choices.get(k);
                JMenuItem item = new JMenuItem(choice.toString());
                item.setName("pick-" + k);
                item.addActionListener(event -> chosen.accept(choice));
                if (choices.size() > MOST_ROWS) {
                    part.add(item);
                } else {
                    popup.add(item);
                }
                if (k == first) {
                    if (choices.size() > MOST_ROWS) {
                        path.add(part);
                        path.add(part.getPopupMenu());
                    }
                    path.add(item);
                }
            }
            if (choices.size() > MOST_ROWS) {
                popup.add(part);
            }
        }
        popup.show(over, xPx, yPx);
        MenuSelectionManager.defaultManager().setSelectedPath(path.toArray(new MenuElement[0]));
    }
}
