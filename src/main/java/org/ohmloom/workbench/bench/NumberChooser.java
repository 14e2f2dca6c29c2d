package org.ohmloom.workbench.bench;

import javax.swing.JComboBox;
import org.ohmloom.draw.SceneOptions.Numbers;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.widget.Choices;
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
        Choices.say(this, numbers -> words.get("name." + TradeWords.lower(numbers)));
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
}
