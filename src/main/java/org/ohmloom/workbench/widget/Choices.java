package org.ohmloom.workbench.widget;

import java.awt.Component;
import java.util.List;
import java.util.Vector;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import org.jspecify.annotations.Nullable;

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

    /** Says the choices of a box in words; a letter typed there goes on to the next whose words begin with it. */
    public static <T> void say(JComboBox<T> box, Function<T, String> words) {
        box.setRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            @SuppressWarnings("unchecked")
            public Component getListCellRendererComponent(
                    JList<?> list, @Nullable Object value, int index, boolean selected, boolean focused) {
                String text = value == null ? "" : words.apply((T) value);
                return super.getListCellRendererComponent(list, text, index, selected, focused);
            }
        });
        box.setKeySelectionManager((letter, model) -> next(box, words, String.valueOf(letter)));
    }

    private static <T> int next(JComboBox<T> box, Function<T, String> words, String letter) {
        int count = box.getItemCount();
        return IntStream.rangeClosed(1, count)
                .map(step -> (Math.max(0, box.getSelectedIndex()) + step) % count)
                .filter(at -> words.apply(box.getItemAt(at)).regionMatches(true, 0, letter, 0, 1))
                .findFirst()
                .orElse(-1);
    }
}
