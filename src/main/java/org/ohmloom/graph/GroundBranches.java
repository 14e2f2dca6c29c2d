package org.ohmloom.graph;

import org.ohmloom.model.CaseGround;
import org.ohmloom.model.Component;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Strap;

/**
 * Branches at ground points: the joint of the stack with the body, cases bolted on, straps between bodies.
 *
 * <p>A case is bolted onto the stack, so its current passes the joint of the ground point too. A strap's resistance
 * includes its own joints, so it goes from body to body beside the stacks.
 */
final class GroundBranches {
    private final NetworkDraft network;
    private final Harness harness;
    private final MeasuredOhms measured;

    GroundBranches(NetworkDraft network, Harness harness, MeasuredOhms measured) {
        this.network = network;
        this.harness = harness;
        this.measured = measured;
    }

    void add() {
        for (GroundPoint ground : harness.grounds().all()) {
            network.resistance(
                    ground.id() + ".joint",
                    BranchKind.JOINT,
                    PointName.ground(ground.id()),
                    PointName.groundBody(ground.id()),
                    ground.id(),
                    measured.jointOhms(ground.id().value(), ground.jointOhms()));
        }
        for (Strap strap : harness.straps().all()) {
            network.branch(
                    strap.id().value(),
                    BranchKind.STRAP,
                    PointName.groundBody(strap.from()),
                    PointName.groundBody(strap.to()),
                    strap.id(),
                    new Law.Resistance(measured.jointOhms(strap.id().value(), strap.ohms())));
        }
        for (Component component : harness.components().all()) {
            component.caseGround().ifPresent(caseGround -> bolt(component, caseGround));
        }
    }

    private void bolt(Component component, CaseGround caseGround) {
        PointName terminal = PointName.terminal(component.id(), caseGround.terminal());
        network.resistance(
                terminal.id() + "@" + caseGround.ground(),
                BranchKind.JOINT,
                terminal,
                PointName.ground(caseGround.ground()),
                component.id(),
                caseGround.jointOhms());
    }
}
