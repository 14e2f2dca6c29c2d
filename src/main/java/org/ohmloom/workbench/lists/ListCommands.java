package org.ohmloom.workbench.lists;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.KeyStroke;
import org.ohmloom.edit.DuplicateElements;
import org.ohmloom.edit.PutElements;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.sheet.FindReplacePane;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** What can be done with the rows of a list besides typing: adding, copying, taking out, renaming, filling down, replacing. */
public final class ListCommands {

    private ListCommands() {}

    /** The commands, for the list in front. */
    public static List<Command> of(Desk desk, ListsPane lists) {
        BooleanSupplier open = () -> desk.harness().isPresent();
        BooleanSupplier chosen = () -> !chosen(desk).isEmpty();
        return List.of(
                new Doing("add-row", Keys.menu(KeyEvent.VK_INSERT), open, () -> lists.showAdds()),
                new Doing("copy-rows", Keys.menuShift(KeyEvent.VK_INSERT), chosen, () -> duplicate(desk)),
                new Doing(
                        "take-out", Keys.menu(KeyEvent.VK_DELETE), chosen, () -> desk.apply(new TakeOut(chosen(desk)))),
                new Doing("fill-down", null, open, () -> lists.front().fillDown()),
                new Doing(
                        "find-replace",
                        Keys.menu(KeyEvent.VK_H),
                        open,
                        () -> FindReplacePane.open(lists.front(), lists.frontTitle())),
                new Doing("rename-pattern", Keys.menu(KeyEvent.VK_R), open, () -> rename(desk, lists)),
                new Doing("choose-columns", null, open, lists::showColumns));
    }

    private static List<ElementId> chosen(Desk desk) {
        return desk.harness().stream()
                .flatMap(harness -> desk.selection().ids().stream().flatMap(id -> harness.element(id).stream()))
                .map(Element::id)
                .distinct()
                .toList();
    }

    private static void duplicate(Desk desk) {
        Harness harness = desk.harness().orElseThrow();
        PutElements edit = DuplicateElements.of(harness, chosen(desk));
        desk.apply(edit);
        desk.select(Selection.of(
                edit.elements().stream().map(each -> each.id().value()).toList()));
    }

    /** Several selected rows, or else all that are shown, are renamed. */
    private static void rename(Desk desk, ListsPane lists) {
        Harness harness = desk.harness().orElseThrow();
        List<ElementId> things = lists.toRename().stream()
                .flatMap(id -> harness.element(id).stream())
                .map(Element::id)
                .toList();
        if (!things.isEmpty()) {
            RenamePane.ask(lists, harness, things).ifPresent(desk::apply);
        }
    }

    /** A command with its words in the bundle of lists. */
    private static final class Doing extends Command {

        private static final long serialVersionUID = 1L;
        private static final Words WORDS = Words.of("lists");

        private final transient BooleanSupplier ready;
        private final transient Runnable task;

        Doing(String id, @org.jspecify.annotations.Nullable KeyStroke keys, BooleanSupplier ready, Runnable task) {
            super(id, WORDS.get("command." + id), WORDS.get("command." + id + ".about"));
            this.ready = ready;
            this.task = task;
            Optional.ofNullable(keys).ifPresent((Consumer<KeyStroke>) this::withKeys);
            withMnemonic(WORDS.letter("command." + id));
            refresh();
        }

        @Override
        public void run() {
            task.run();
        }

        @Override
        public void refresh() {
            setReady(ready.getAsBoolean(), WORDS.get("nothing-selected"));
        }
    }
}
