package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.MoveCaseGround;
import org.ohmloom.edit.MoveWireEnd;
import org.ohmloom.edit.RemoveWires;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/** A loop opened at one of its members: a shield lifted at one end, a case insulated, a wire taken out. */
final class OpenedLoops {

    private final ReturnPlaces places;

    OpenedLoops(ReturnPlaces places) {
        this.places = places;
    }

    List<Candidate> of(List<String> members) {
        List<Candidate> shields = new ArrayList<>();
        List<Candidate> others = new ArrayList<>();
        for (String member : members) {
            places.harness().element(member).ifPresent(element -> {
                if (element instanceof Wire wire && wire.signalClass() == SignalClass.SHIELD) {
                    lifted(wire, shields);
                } else if (element instanceof Wire) {
                    others.add(new Candidate(RemedyKind.OPENED_LOOP, new RemoveWires(List.of(new WireId(member)))));
                } else if (element instanceof Component component
                        && component.caseGround().isPresent()) {
                    others.add(new Candidate(
                            RemedyKind.OPENED_LOOP, new MoveCaseGround(new ComponentId(member), Optional.empty())));
                }
            });
        }
        shields.addAll(others);
        return shields;
    }

    private static void lifted(Wire shield, List<Candidate> found) {
        List.of(shield.to(), shield.from())
                .forEach(end -> found.add(new Candidate(
                        RemedyKind.LIFTED_SHIELD,
                        new MoveWireEnd(shield.id(), end, new WireEnd.Loose(), shield.lengthMetres()))));
    }
}
