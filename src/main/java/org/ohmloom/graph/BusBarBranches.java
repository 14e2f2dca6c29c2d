package org.ohmloom.graph;

import org.ohmloom.model.BusBar;

/** Branches of a bus bar: one joint from each terminal to the bar, which is a point of its own. */
final class BusBarBranches {

    private BusBarBranches() {}

    static void busBar(DeviceDraft draft, BusBar busBar) {
        PointName bar = PointName.bar(draft.component().id());
        for (String terminal : busBar.terminals()) {
            draft.network()
                    .resistance(
                            draft.name(terminal),
                            BranchKind.JOINT,
                            draft.terminal(terminal),
                            bar,
                            draft.component().id(),
                            busBar.jointOhms());
        }
    }
}
