package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;

import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One way in which the vehicle is used: what runs, what is switched on, at which duty.
 *
 * @param id         identity
 * @param name       what people call it
 * @param mode       what the engine does
 * @param sources    how it finds its sources; a battery not named is on, any other source not named is off
 * @param components switches, solid-state outputs, protective devices and loads set on or off; a protective device not
 *                   named is closed, anything else not named is off. A load on is asked to work here; whether it gets
 *                   its feed is what the solution tells
 * @param outputs    output pins of control units set on
 * @param durationSeconds how long it lasts, s, more than 0; empty means long enough for everything to warm up
 */
public record OperatingState(
        StateId id,
        String name,
        EngineMode mode,
        SortedMap<ComponentId, SourceSetting> sources,
        SortedMap<ComponentId, Setting> components,
        SortedMap<OutputPin, Setting> outputs,
        OptionalDouble durationSeconds)
        implements Element {

    /** What the engine does in a state. */
    public enum EngineMode {
        OFF,
        CRANKING,
        IDLING,
        RUNNING
    }

    public OperatingState {
        notBlank(name, "name of operating state %s", id);
        sources = Collections.unmodifiableSortedMap(new TreeMap<>(sources));
        components = Collections.unmodifiableSortedMap(new TreeMap<>(components));
        outputs = Collections.unmodifiableSortedMap(new TreeMap<>(outputs));
        durationSeconds.ifPresent(value -> positive(value, "duration of operating state %s", id));
    }

    /** A state that lasts long enough for everything to warm up. */
    public OperatingState(
            StateId id,
            String name,
            EngineMode mode,
            SortedMap<ComponentId, SourceSetting> sources,
            SortedMap<ComponentId, Setting> components,
            SortedMap<OutputPin, Setting> outputs) {
        this(id, name, mode, sources, components, outputs, OptionalDouble.empty());
    }

    /** A state in which only the batteries are connected. */
    public static OperatingState of(String id, String name, EngineMode mode) {
        return new OperatingState(
                new StateId(id), name, mode, new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), OptionalDouble.empty());
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
        return sourceSetting(component, device).on();
    }

    /** How the state finds a source; a battery it does not name is on, any other source off. */
    public SourceSetting sourceSetting(ComponentId component, Device device) {
        return sources.getOrDefault(component, SourceSetting.of(device instanceof Battery));
    }

    /** This state with one component set. */
    public OperatingState with(ComponentId component, Setting setting) {
        SortedMap<ComponentId, Setting> changed = new TreeMap<>(components);
        changed.put(component, setting);
        return new OperatingState(id, name, mode, sources, changed, outputs, durationSeconds);
    }

    /** This state with one output pin set. */
    public OperatingState with(OutputPin output, Setting setting) {
        SortedMap<OutputPin, Setting> changed = new TreeMap<>(outputs);
        changed.put(output, setting);
        return new OperatingState(id, name, mode, sources, components, changed, durationSeconds);
    }

    /** This state with one source on or off. */
    public OperatingState withSource(ComponentId component, boolean on) {
        return withSource(component, SourceSetting.of(on));
    }

    /** This state with one source set. */
    public OperatingState withSource(ComponentId component, SourceSetting setting) {
        SortedMap<ComponentId, SourceSetting> changed = new TreeMap<>(sources);
        changed.put(component, setting);
        return new OperatingState(id, name, mode, changed, components, outputs, durationSeconds);
    }

    /** The same state saying nothing of a component. */
    public OperatingState without(ComponentId component) {
        return new OperatingState(id, name, mode, sources, less(components, component), outputs, durationSeconds);
    }

    /** The same state saying nothing of an output. */
    public OperatingState without(OutputPin output) {
        return new OperatingState(id, name, mode, sources, components, less(outputs, output), durationSeconds);
    }

    /** The same state saying nothing of a source. */
    public OperatingState withoutSource(ComponentId source) {
        return new OperatingState(id, name, mode, less(sources, source), components, outputs, durationSeconds);
    }

    private static <K, V> SortedMap<K, V> less(SortedMap<K, V> settings, K key) {
        SortedMap<K, V> left = new TreeMap<>(settings);
        left.remove(key);
        return left;
    }

    /** This state lasting only so long, s, more than 0. */
    public OperatingState withDurationSeconds(double seconds) {
        return new OperatingState(id, name, mode, sources, components, outputs, OptionalDouble.of(seconds));
    }
}
