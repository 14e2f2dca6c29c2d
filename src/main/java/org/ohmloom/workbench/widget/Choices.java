package org.ohmloom.workbench.widget;

import java.util.List;
import java.util.Vector;
import java.util.stream.IntStream;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;

/** What can be chosen in a box. */
public final class Choices {

    private Choices() {}

    /** Gives a box other choices unless it has them; what was chosen stays, or else is the first. Whether they are others. */
    public static <T> boolean put(JComboBox<T> box, List<T> wanted) {
        List<T> there =
                IntStream.range(0, box.getItemCount()).mapToObj(box::getItemAt).toList();
        if (there.equals(wanted)) {
            return false;
        }
        Object chosen = box.getSelectedItem();
        box.setModel(new DefaultComboBoxModel<>(new Vector<>(wanted)));
        if (chosen != null && wanted.contains(chosen)) {
            box.setSelectedItem(chosen);
        }
        return true;
    }
}
