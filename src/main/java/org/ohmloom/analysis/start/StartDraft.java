package org.ohmloom.analysis.start;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Device;
import org.ohmloom.model.Element;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.model.ZoneId;

/** Elements of a first harness as they are made, with the next free number of each kind of id. Lives within one call. */
final class StartDraft {

    private final StartPlan plan;
    private final List<Element> elements = new ArrayList<>();
    private final Map<String, Integer> counts = new HashMap<>();

    StartDraft(StartPlan plan) {
        this.plan = plan;
    }

    StartPlan plan() {
        return plan;
    }

    List<Element> elements() {
        return elements;
    }

    void add(Element element) {
        elements.add(element);
    }

    /** The next id that begins with the letters: F1, F2. */
    String next(String letters) {
        return letters + counts.merge(letters, 1, Integer::sum);
    }

    /** Adds a component whose terminals are reached at a breakout. */
    Component component(String letters, String name, Device device, Optional<ZoneId> zone, BreakoutId at) {
        return put(letters, name, device, zone, Optional.of(at));
    }

    /** Adds a component that is reached through a connector. */
    Component plugged(String letters, String name, Device device, Optional<ZoneId> zone) {
        return put(letters, name, device, zone, Optional.empty());
    }

    private Component put(
            String letters, String name, Device device, Optional<ZoneId> zone, Optional<BreakoutId> breakout) {
        return put(new ComponentId(next(letters)), name, device, zone, breakout);
    }

    /** Adds a component with an id that is already given away. */
    Component put(ComponentId id, String name, Device device, Optional<ZoneId> zone, Optional<BreakoutId> breakout) {
        Component component = new Component(
                id, name, device, Optional.empty(), zone, breakout, Optional.empty(), false, Optional.empty());
        add(component);
        return component;
    }

    /** Adds a wire whose size is to be chosen and whose length follows from its way. */
    void wire(WireEnd from, WireEnd to, SignalClass signal, String circuit) {
        wire(from, to, signal, circuit, OptionalDouble.empty());
    }

    /** Adds a wire of a stated length, m. */
    void wire(WireEnd from, WireEnd to, SignalClass signal, String circuit, OptionalDouble metres) {
        add(new Wire(
                new WireId(next("W")),
                from,
                to,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(WireColour.usual(signal)),
                metres,
                signal,
                Optional.of(circuit),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                Optional.empty()));
    }

    /** A terminal of a component as the end of a wire. */
    static WireEnd terminal(Component component, String terminal) {
        return new WireEnd.AtTerminal(component.id(), terminal);
    }
}
