package org.ohmloom.workbench.bench;

import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.SceneOptions.Numbers;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** One box for which numbers stand on the layout, and by which it is shaded. */
public final class NumberChooser extends JComboBox<Numbers> {

    private static final long serialVersionUID = 1L;

    private boolean quiet;

    public NumberChooser(Desk desk) {
        super(Numbers.values());
        Words words = Words.of("numbers");
        setName("numbers");
        setRenderer(new NameRenderer());
        setMaximumRowCount(Numbers.values().length);
        getAccessibleContext().setAccessibleName(words.get("chooser"));
        addActionListener(event -> {
            if (!quiet && getSelectedItem() instanceof Numbers numbers) {
                desk.show(desk.view().withOptions(desk.view().options().withNumbers(numbers)));
            }
        });
        desk.listen(topic -> {
            if (topic == Topic.VIEW) {
                show(desk);
            }
        });
        show(desk);
    }

    private void show(Desk desk) {
        quiet = true;
        try {
            Numbers numbers = desk.view().options().numbers();
            setSelectedItem(numbers);
            Words words = Words.of("numbers");
            setToolTipText(words.get("on-layout", words.get("about." + TradeWords.lower(numbers))));
        } finally {
            quiet = false;
        }
    }

    private static final class NameRenderer extends DefaultListCellRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, @Nullable Object value, int index, boolean selected, boolean focused) {
            String name = value instanceof Numbers numbers
                    ? Words.of("numbers").get("name." + TradeWords.lower(numbers))
                    : "";
            return super.getListCellRendererComponent(list, name, index, selected, focused);
        }
    }
}
