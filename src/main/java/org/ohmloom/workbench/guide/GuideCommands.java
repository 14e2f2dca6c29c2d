package org.ohmloom.workbench.guide;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.PlainCommand;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Filing;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** The commands that begin a new harness. */
public final class GuideCommands {

    private GuideCommands() {}

    /**
     * The commands.
     *
     * @param parent what the guide is shown over
     * @param units  the units a person reads and types in
     * @param worker runs the laying out
     * @param begun  brings the board to the front once a harness has begun
     */
    public static List<Command> of(
            Supplier<Component> parent, Supplier<ShownUnits> units, Filing filing, Executor worker, Runnable begun) {
        Words words = Words.of("guide");
        return List.of(
                new PlainCommand(
                        "new-guided",
                        words.get("new-guided"),
                        words.get("new-guided.about"),
                        Keys.menu(KeyEvent.VK_N),
                        words.letter("new-guided"),
                        () -> filing.ifLeft(() -> GuideDialog.show(
                                parent.get(),
                                units.get(),
                                worker,
                                harness -> begin(filing, NewHarness.of(harness), words, begun)))),
                new PlainCommand(
                        "new-empty",
                        words.get("new-empty"),
                        words.get("new-empty.about"),
                        Keys.menuShift(KeyEvent.VK_N),
                        words.letter("new-empty"),
                        () -> filing.ifLeft(() -> begin(filing, NewHarness.empty(), words, begun))));
    }

    private static void begin(Filing filing, Document document, Words words, Runnable begun) {
        filing.put(document, words.get("begun", document.name()));
        begun.run();
    }
}
