package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One way in which the vehicle is used: what runs, what is switched on, at which duty.
 *
 * @param id         identity
 * @param name       what people call it
 * @param mode       what the engine does
 * @param sources    sources said to be on or off; a battery not named is on, any other source not named is off
 * @param components switches, solid-state outputs, protective devices and loads set on or off; a protective device not
 *                   named is closed, anything else not named is off. A load on is asked to work here; whether it gets
 *                   its feed is what the solution tells
 * @param outputs    output pins of control units set on
 */
public record OperatingState(
        StateId id,
        String name,
        EngineMode mode,
        SortedMap<ComponentId, Boolean> sources,
        SortedMap<ComponentId, Setting> components,
        SortedMap<OutputPin, Setting> outputs)
        implements Element {

    /** What the engine does in a state. */
    public enum EngineMode {
        OFF,
        CRANKING,
        IDLING,
        RUNNING
    }

    public OperatingState {
        notBlank(name, "name of operating state " + id);
        sources = Collections.unmodifiableSortedMap(new TreeMap<>(sources));
        components = Collections.unmodifiableSortedMap(new TreeMap<>(components));
        outputs = Collections.unmodifiableSortedMap(new TreeMap<>(outputs));
    }

    /** A state in which only the batteries are connected. */
    public static OperatingState of(String id, String name, EngineMode mode) {
        return new OperatingState(
                new StateId(id), name, mode, new TreeMap<>(Map.of()), new TreeMap<>(Map.of()), new TreeMap<>(Map.of()));
    }

    /** The setting of a component, if this state names it. */
    public Optional<Setting> setting(ComponentId component) {
        return Optional.ofNullable(components.get(component));
    }

    /** The setting of an output pin, if this state names it. */
    public Optional<Setting> setting(OutputPin output) {
        return Optional.ofNullable(outputs.get(output));
    }

    /** Whether the state asks a component on. */
    public boolean asksOn(ComponentId component) {
        return setting(component).filter(Setting::on).isPresent();
    }

    /** Whether a source of that device is on. */
    public boolean sourceOn(ComponentId component, Device device) {
        return sources.getOrDefault(component, device instanceof Battery);
    }

    /** This state with one component set. */
    public OperatingState with(ComponentId component, Setting setting) {
        SortedMap<ComponentId, Setting> changed = new TreeMap<>(components);
        changed.put(component, setting);
        return new OperatingState(id, name, mode, sources, changed, outputs);
    }

    /** This state with one output pin set. */
    public OperatingState with(OutputPin output, Setting setting) {
        SortedMap<OutputPin, Setting> changed = new TreeMap<>(outputs);
        changed.put(output, setting);
        return new OperatingState(id, name, mode, sources, components, changed);
    }

    /** This state with one source on or off. */
    public OperatingState withSource(ComponentId component, boolean on) {
        SortedMap<ComponentId, Boolean> changed = new TreeMap<>(sources);
        changed.put(component, on);
        return new OperatingState(id, name, mode, changed, components, outputs);
    }
}
