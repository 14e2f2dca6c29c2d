package org.ohmloom.model;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

/** Puts many elements into a harness, or takes many out, in one step, so that they may refer to one another. */
final class Assembling {

    private Assembling() {}

    static Harness with(Harness before, Collection<? extends Element> changed) {
        return rebuilt(before, List.of(), changed);
    }

    static Harness without(Harness before, Collection<? extends ElementId> gone) {
        return rebuilt(before, gone, List.of());
    }

    private static Harness rebuilt(
            Harness before, Collection<? extends ElementId> gone, Collection<? extends Element> changed) {
        Harness after = new Harness(
                before.titleBlock(),
                before.rules(),
                pick(before.parts(), gone, changed, Part.class),
                pick(before.contacts(), gone, changed, ContactPart.class),
                pick(before.assemblies(), gone, changed, Assembly.class),
                pick(before.zones(), gone, changed, Zone.class),
                pick(before.breakouts(), gone, changed, Breakout.class),
                pick(before.segments(), gone, changed, BundleSegment.class),
                pick(before.components(), gone, changed, Component.class),
                pick(before.connectors(), gone, changed, Connector.class),
                pick(before.splices(), gone, changed, Splice.class),
                pick(before.bodies(), gone, changed, ChassisBody.class),
                pick(before.grounds(), gone, changed, GroundPoint.class),
                pick(before.straps(), gone, changed, Strap.class),
                pick(before.cables(), gone, changed, Cable.class),
                pick(before.wires(), gone, changed, Wire.class),
                pick(before.states(), gone, changed, OperatingState.class),
                pick(before.loadGroups(), gone, changed, LoadGroup.class),
                pick(before.sequences(), gone, changed, StateSequence.class),
                pick(before.buses(), gone, changed, DataBus.class),
                pick(before.waivers(), gone, changed, Waiver.class),
                pick(before.notes(), gone, changed, Note.class),
                pick(before.readings(), gone, changed, Reading.class),
                before.layout(),
                before.unknownKeys());
        return sameElements(before, after) ? before : after;
    }

    private static boolean sameElements(Harness before, Harness after) {
        List<? extends Register<?, ?>> left = before.registers();
        List<? extends Register<?, ?>> right = after.registers();
        for (int k = 0; k < left.size(); k++) {
            if (!Objects.equals(left.get(k), right.get(k))) {
                return false;
            }
        }
        return true;
    }

    private static <I extends ElementId, E extends Element> Register<I, E> pick(
            Register<I, E> before,
            Collection<? extends ElementId> gone,
            Collection<? extends Element> changed,
            Class<E> kind) {
        return before.without(gone)
                .withAll(changed.stream()
                        .filter(kind::isInstance)
                        .map(kind::cast)
                        .toList());
    }
}
