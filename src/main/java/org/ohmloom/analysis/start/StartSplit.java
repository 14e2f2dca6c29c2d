package org.ohmloom.analysis.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.WireEnd;

/** One wire that becomes several: a splice on the run to a place, or none where only one is asked for. */
final class StartSplit {

    private record Branch(WireEnd end, String circuit) {}

    private final StartDraft draft;
    private final StartPlaces places;
    private final String near;
    private final String name;
    private final SignalClass signal;
    private final List<Branch> branches = new ArrayList<>();

    StartSplit(StartDraft draft, StartPlaces places, String near, String name, SignalClass signal) {
        this.draft = draft;
        this.places = places;
        this.near = near;
        this.name = name;
        this.signal = signal;
    }

    void join(WireEnd end, String circuit) {
        branches.add(new Branch(end, circuit));
    }

    int count() {
        return branches.size();
    }

    /** Joins what was asked for to the end. */
    void build(WireEnd trunk, String circuit) {
        if (branches.size() == 1) {
            draft.wire(trunk, branches.get(0).end(), signal, branches.get(0).circuit());
        } else if (branches.size() > 1) {
            SpliceId splice = new SpliceId(draft.next("SP"));
            draft.add(new Splice(
                    splice,
                    name,
                    StartFigures.JOINT_OHMS,
                    Optional.of(places.splice(near)),
                    Optional.empty(),
                    false,
                    Optional.empty()));
            draft.wire(trunk, new WireEnd.AtSplice(splice), signal, circuit);
            branches.forEach(
                    branch -> draft.wire(new WireEnd.AtSplice(splice), branch.end(), signal, branch.circuit()));
        }
    }
}
