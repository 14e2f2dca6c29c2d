package org.ohmloom.workbench.lists;

import java.util.List;
import org.ohmloom.edit.RemoveElements;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.model.StateSequence;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;

/** Takes out the selected load groups and sequences; nothing else refers to them. */
public final class RemoveFromList extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;

    public RemoveFromList(Desk desk) {
        super("remove-selected", "Remove group or sequence", "Take the selected load groups and sequences out");
        this.desk = desk;
        withMnemonic('D');
        refresh();
    }

    @Override
    public void run() {
        List<ElementId> ids = ids();
        String what = ids.size() == 1 ? ids.get(0).value() : ids.size() + " groups and sequences";
        desk.apply(new RemoveElements("Remove " + what, ids));
    }

    @Override
    public void refresh() {
        setReady(!ids().isEmpty(), "select a load group or a sequence first");
    }

    private List<ElementId> ids() {
        return desk.harness().stream()
                .flatMap(harness -> desk.selection().ids().stream().flatMap(id -> harness.element(id).stream()))
                .filter(element -> element instanceof LoadGroup || element instanceof StateSequence)
                .map(Element::id)
                .distinct()
                .toList();
    }
}
