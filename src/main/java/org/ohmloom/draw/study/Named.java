package org.ohmloom.draw.study;

import java.util.Locale;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Network;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.Component;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Strap;
import org.ohmloom.words.Text;

/** How charts and tables of the return paths name things. */
public final class Named {

    private Named() {}

    /** What people call an element; empty when it has no name besides its identity. */
    public static String name(Harness harness, ElementId id) {
        Optional<Element> element = harness.element(id.value());
        String name = "";
        if (element.orElse(null) instanceof Component component) {
            name = component.name();
        } else if (element.orElse(null) instanceof GroundPoint ground) {
            name = ground.name();
        } else if (element.orElse(null) instanceof ChassisBody body) {
            name = body.name();
        } else if (element.orElse(null) instanceof Strap strap) {
            name = strap.name();
        }
        return name.equals(id.value()) ? "" : name;
    }

    /** An element with its name: "M1 Left fan". */
    public static String label(Harness harness, ElementId id) {
        String name = name(harness, id);
        return name.isEmpty() ? id.value() : id + " " + name;
    }

    /** Name of a state. */
    public static String state(Harness harness, StateId id) {
        return harness.states().find(id).map(OperatingState::name).orElse(id.value());
    }

    /** A member of the return network with what it is: "W12 wire", "U1.GND-RTN inside U1". */
    public static Text member(Network network, BranchId id) {
        return network.branch(id).map(branch -> member(branch, id)).orElse(Text.of(id));
    }

    private static Text member(Branch branch, BranchId id) {
        String kind = branch.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return branch.element()
                .filter(of -> branch.kind() == BranchKind.CHASSIS || branch.kind() == BranchKind.INTERNAL)
                .map(of -> StudyTexts.text("member-of." + kind, id, of))
                .orElseGet(() -> StudyTexts.text("member." + kind, id));
    }

    /** The element a member belongs to. */
    public static Optional<ElementId> element(Network network, BranchId id) {
        return network.branch(id).flatMap(Branch::element);
    }
}
