package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;

/** Collects places, joints without resistance and branches, and makes the network of them at the end. */
final class NetworkDraft {

    /** Counted for a resistance below it, ohm: no conductor has so little, and its inverse is still a number. */
    private static final double LEAST_OHMS = 1e-12;

    private final OperatingState state;
    private final PointMerging merging = new PointMerging();
    private final SortedMap<BranchId, Draft> drafts = new TreeMap<>();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final List<SenseDraft> senses = new ArrayList<>();

    private record Draft(BranchKind kind, PointName from, PointName to, ElementId element, Law law) {}

    private record SenseDraft(BranchId source, PointName place, double setPointVolts) {}

    NetworkDraft(OperatingState state) {
        this.state = state;
    }

    OperatingState state() {
        return state;
    }

    void place(PointName place) {
        merging.add(place);
    }

    /** Says that there is no resistance between two places. */
    void join(PointName one, PointName other) {
        merging.join(one, other);
    }

    void branch(String id, BranchKind kind, PointName from, PointName to, ElementId element, Law law) {
        merging.add(from);
        merging.add(to);
        drafts.put(free(id), new Draft(kind, from, to, element, atLeast(law)));
    }

    /** A law, a resistance that no conductor has counted as the least. */
    static Law atLeast(Law law) {
        return law instanceof Law.Resistance resistance && resistance.ohms() < LEAST_OHMS
                ? new Law.Resistance(LEAST_OHMS)
                : law;
    }

    /** A branch of that resistance, ohm; none at all, and one point, when it is 0. */
    void resistance(String id, BranchKind kind, PointName from, PointName to, ElementId element, double ohms) {
        if (ohms > 0) {
            branch(id, kind, from, to, element, new Law.Resistance(ohms));
        } else {
            join(from, to);
        }
    }

    /** Says that a source regulates the voltage where a wire may end; a loose end is none. */
    void sense(String source, WireEnd end, double setPointVolts) {
        if (!(end instanceof WireEnd.Loose)) {
            PointName place = PointName.of(end, new WireId(source), "sense");
            merging.add(place);
            senses.add(new SenseDraft(new BranchId(source), place, setPointVolts));
        }
    }

    void assume(ElementId element, Text text, String source) {
        assume(new Assumption(element, text, source));
    }

    void assume(Assumption assumption) {
        assumptions.add(assumption);
    }

    /** The network; a branch whose two ends turn out to be one point is left out, and that is noted. */
    Network finish(Optional<PointName> datum) {
        datum.ifPresent(merging::add);
        SortedMap<BranchId, Branch> branches = new TreeMap<>();
        drafts.forEach((id, draft) -> {
            PointId from = merging.pointOf(draft.from.id());
            PointId to = merging.pointOf(draft.to.id());
            if (from.equals(to)) {
                assume(draft.element, NetworkTexts.text("assumed.one-point", id, from), "the harness");
            } else {
                branches.put(id, new Branch(id, draft.kind, from, to, Optional.of(draft.element), draft.law));
            }
        });
        Map<String, PointId> byPlace = merging.all();
        SortedSet<PointId> points = new TreeSet<>(byPlace.values());
        return new Network(
                state.id(),
                points,
                branches,
                datum.map(place -> merging.pointOf(place.id())),
                new PointIndex(byPlace, new TreeSet<>()),
                assumptions,
                senses.stream()
                        .filter(sense -> branches.containsKey(sense.source))
                        .map(sense -> new Sensing(sense.source, merging.pointOf(sense.place.id()), sense.setPointVolts))
                        .toList());
    }

    /** That identity, numbered when something has it already, as a second path entered between two ground points. */
    private BranchId free(String id) {
        BranchId wanted = new BranchId(id);
        for (int k = 2; drafts.containsKey(wanted); k++) {
            wanted = new BranchId(id + "/" + k);
        }
        return wanted;
    }
}
