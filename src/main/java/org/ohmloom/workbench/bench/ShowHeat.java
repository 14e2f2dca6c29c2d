package org.ohmloom.workbench.bench;

import java.awt.event.KeyEvent;
import org.ohmloom.draw.SceneOptions;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Tells wires and segments of the layout by the numbers chosen, or by their signal classes. */
public final class ShowHeat extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;

    public ShowHeat(Desk desk) {
        super("show-heat", Words.of("numbers").get("heat"), Words.of("numbers").get("heat.about"));
        this.desk = desk;
        withKeys(Keys.menuShift(KeyEvent.VK_8));
        refresh();
    }

    @Override
    public void run() {
        SceneOptions now = desk.view().options();
        desk.show(desk.view().withOptions(now.withHeat(!now.heat())));
    }

    @Override
    public void refresh() {
        putValue(SELECTED_KEY, desk.view().options().heat());
    }
}
