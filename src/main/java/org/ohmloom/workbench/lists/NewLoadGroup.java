package org.ohmloom.workbench.lists;

import java.util.List;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Load;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.words.Words;

/** Makes a load group of the selected loads; its rule is then typed in the list of load groups. */
public final class NewLoadGroup extends Command {
    private static final Words WORDS = Words.of("lists");

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;

    public NewLoadGroup(Desk desk) {
        super(
                "new-load-group",
                WORDS.get("new-load-group.group-the-selected-loads"),
                WORDS.get("new-load-group.group-the-selected-loads.about"));
        this.desk = desk;
        withMnemonic('G');
        refresh();
    }

    @Override
    public void run() {
        desk.harness().ifPresent(harness -> {
            PutElements edit = GroupEdits.create(harness, loads());
            desk.apply(edit);
            desk.select(Selection.of(List.of(edit.elements().get(0).id().value())));
        });
    }

    @Override
    public void refresh() {
        setReady(loads().size() >= 2, WORDS.get("new-load-group.select-two-loads-or"));
    }

    private List<ComponentId> loads() {
        return desk.harness().stream()
                .flatMap(harness -> desk.selection().ids().stream().flatMap(id -> harness.element(id).stream()))
                .filter(Component.class::isInstance)
                .map(Component.class::cast)
                .filter(component -> component.device() instanceof Load)
                .map(Component::id)
                .distinct()
                .toList();
    }
}
