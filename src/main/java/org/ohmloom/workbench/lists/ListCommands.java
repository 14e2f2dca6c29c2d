package org.ohmloom.workbench.lists;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.ohmloom.edit.DuplicateElements;
import org.ohmloom.edit.PutElements;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.ReadyCommand;
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
                doing("add-row", open, lists::showAdds).withKeys(Keys.menu(KeyEvent.VK_INSERT)),
                doing("copy-rows", chosen, () -> duplicate(desk)).withKeys(Keys.menuShift(KeyEvent.VK_INSERT)),
                doing("take-out", chosen, () -> desk.apply(new TakeOut(chosen(desk))))
                        .withKeys(Keys.menu(KeyEvent.VK_DELETE)),
                doing("fill-down", open, () -> lists.front().fillDown()),
                doing("find-replace", open, () -> FindReplacePane.open(lists.front(), lists.frontTitle()))
                        .withKeys(Keys.menu(KeyEvent.VK_H)),
                doing("rename-pattern", open, () -> rename(desk, lists)).withKeys(Keys.menu(KeyEvent.VK_R)),
                doing("choose-columns", open, lists::showColumns));
    }

    private static Command doing(String id, BooleanSupplier ready, Runnable task) {
        Words words = Words.of("lists");
        return new ReadyCommand(words, id, ready, words.get("nothing-selected"), task);
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
}
