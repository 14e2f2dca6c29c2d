package org.ohmloom.workbench.study;

import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;

/** A box for one point: type its name and press Enter, or choose one. */
final class PointBox extends JComboBox<String> {

    private static final long serialVersionUID = 1L;
    /** A point with a name as long as they usually are; the box is as wide as it needs. */
    private static final String LONG_POINT = "WMOTOR.GND";

    private static final String EDITED = "comboBoxEdited";

    private boolean quiet;

    /**
     * A box.
     *
     * @param typed takes what was typed or chosen; blank for no point
     */
    PointBox(String name, String accessibleName, Consumer<String> typed) {
        setName(name);
        setEditable(true);
        setMaximumRowCount(16);
        setPrototypeDisplayValue(LONG_POINT);
        setToolTipText(accessibleName);
        getAccessibleContext().setAccessibleName(accessibleName);
        getEditor().getEditorComponent().setName(name + "-text");
        getEditor().getEditorComponent().getAccessibleContext().setAccessibleName(accessibleName);
        addActionListener(event -> heard(event, typed));
    }

    private void heard(ActionEvent event, Consumer<String> typed) {
        boolean choosing = isPopupVisible() && !EDITED.equals(event.getActionCommand());
        if (!quiet && !choosing) {
            Object text = getEditor().getItem();
            typed.accept(text == null ? "" : text.toString().strip());
        }
    }

    /** Offers points; what is typed stays. */
    void offer(List<String> points) {
        if (getModel().getSize() != points.size() || !same(points)) {
            quietly(() -> {
                Object typed = getEditor().getItem();
                setModel(new DefaultComboBoxModel<>(points.toArray(new String[0])));
                setSelectedItem(typed);
            });
        }
    }

    private boolean same(List<String> points) {
        for (int k = 0; k < points.size(); k++) {
            if (!points.get(k).equals(getItemAt(k))) {
                return false;
            }
        }
        return true;
    }

    /** Shows a point, or nothing. */
    void show(Optional<String> point) {
        quietly(() -> setSelectedItem(point.orElse("")));
    }

    private void quietly(Runnable task) {
        boolean before = quiet;
        quiet = true;
        try {
            task.run();
        } finally {
            quiet = before;
        }
    }
}
