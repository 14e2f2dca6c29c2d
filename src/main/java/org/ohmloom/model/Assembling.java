package org.ohmloom.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/** Puts many elements into a harness at once, so that they may refer to one another. */
final class Assembling {

    private Assembling() {}

    static Harness with(Harness before, Collection<? extends Element> changed) {
        return new Harness(
                before.titleBlock(),
                before.rules(),
                pick(before.parts(), changed, Part.class),
                pick(before.contacts(), changed, ContactPart.class),
                pick(before.assemblies(), changed, Assembly.class),
                pick(before.zones(), changed, Zone.class),
                pick(before.breakouts(), changed, Breakout.class),
                pick(before.segments(), changed, BundleSegment.class),
                pick(before.components(), changed, Component.class),
                pick(before.connectors(), changed, Connector.class),
                pick(before.splices(), changed, Splice.class),
                pick(before.bodies(), changed, ChassisBody.class),
                pick(before.grounds(), changed, GroundPoint.class),
                pick(before.straps(), changed, Strap.class),
                pick(before.cables(), changed, Cable.class),
                pick(before.wires(), changed, Wire.class),
                pick(before.states(), changed, OperatingState.class),
                pick(before.waivers(), changed, Waiver.class),
                pick(before.notes(), changed, Note.class),
                before.layout(),
                before.unknownKeys());
    }

    private static <I extends ElementId, E extends Element> Register<I, E> pick(
            Register<I, E> before, Collection<? extends Element> changed, Class<E> kind) {
        Map<ElementId, E> byId = new LinkedHashMap<>();
        before.all().forEach(element -> byId.put(element.id(), element));
        boolean any = false;
        for (Element element : changed) {
            if (kind.isInstance(element)) {
                byId.put(element.id(), kind.cast(element));
                any = true;
            }
        }
        return any ? Register.of(new ArrayList<>(byId.values())) : before;
    }
}
