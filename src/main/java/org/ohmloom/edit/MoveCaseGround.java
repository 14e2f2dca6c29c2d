package org.ohmloom.edit;

import java.util.Optional;
import org.ohmloom.model.CaseGround;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Bolts the terminal or case of a component to another ground point, with the joint it has now, or insulates it.
 *
 * @param component the component; one without a case ground stays as it is
 * @param ground    the ground point; empty insulates the case
 */
public record MoveCaseGround(ComponentId component, Optional<GroundPointId> ground) implements Edit {

    @Override
    public Text label() {
        return ground.map(id -> Labels.text("bolt", component, id)).orElseGet(() -> Labels.text("insulate", component));
    }

    @Override
    public Harness apply(Harness before) {
        Component now = before.components().get(component);
        Optional<CaseGround> changed =
                now.caseGround().flatMap(old -> ground.map(id -> new CaseGround(old.terminal(), id, old.jointOhms())));
        return changed.equals(now.caseGround())
                ? before
                : before.with(new Component(
                        now.id(),
                        now.name(),
                        now.device(),
                        now.part(),
                        now.zone(),
                        now.at(),
                        changed,
                        now.existing(),
                        now.assembly()));
    }
}
