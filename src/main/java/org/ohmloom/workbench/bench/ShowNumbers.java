package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.draw.SceneOptions.Numbers;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Chooses which numbers stand on the layout. */
public final class ShowNumbers extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final Numbers numbers;

    public ShowNumbers(Desk desk, Numbers numbers) {
        super("numbers-" + TradeWords.lower(numbers), name(numbers), about(numbers));
        this.desk = desk;
        this.numbers = numbers;
        withKeys(Keys.menuShift(KeyEvent.VK_1 + numbers.ordinal()));
        refresh();
    }

    @Override
    public void run() {
        desk.show(desk.view().withOptions(desk.view().options().withNumbers(numbers)));
    }

    @Override
    public void refresh() {
        putValue(SELECTED_KEY, desk.view().options().numbers() == numbers);
    }

    private static String name(Numbers numbers) {
        return Words.of("numbers").get("name." + TradeWords.lower(numbers));
    }

    private static String about(Numbers numbers) {
        Words words = Words.of("numbers");
        return words.get("on-layout", words.get("about." + TradeWords.lower(numbers)));
    }
}
