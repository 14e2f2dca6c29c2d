package org.ohmloom.solve.envelope;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/**
 * One way the sources are found.
 *
 * @param id        short identity
 * @param mode      what the engine does
 * @param settings  how the sources are set
 * @param on        sources that are on
 */
record Situation(
        String id, EngineMode mode, SortedMap<ComponentId, SourceSetting> settings, SortedSet<ComponentId> on) {

    private record Key(EngineMode mode, SortedMap<ComponentId, SourceSetting> settings) {}

    /** The situations of some states, in the order of the states. */
    static List<Situation> of(Harness harness, List<OperatingState> states) {
        Map<Key, Situation> found = new LinkedHashMap<>();
        for (OperatingState state : states) {
            SortedSet<ComponentId> on = new TreeSet<>();
            for (Component component : harness.components().all()) {
                if (component.device().isSource() && state.sourceOn(component.id(), component.device())) {
                    on.add(component.id());
                }
            }
            Key key = new Key(state.mode(), state.sources());
            String id = "E" + (found.size() + 1);
            found.putIfAbsent(key, new Situation(id, state.mode(), state.sources(), on));
        }
        return List.copyOf(found.values());
    }

    /** Whether a state finds its sources in this way. */
    boolean holds(OperatingState state) {
        return state.mode() == mode && state.sources().equals(settings);
    }

    /** For people: {@code engine running with BT1, GEN1}. */
    Text name() {
        return SolveTexts.text(
                "envelope.situation",
                Constants.text(mode),
                on.isEmpty()
                        ? SolveTexts.text("envelope.no-sources")
                        : on.stream().map(Object::toString).collect(Collectors.joining(", ")));
    }

    /** An operating state of this situation. */
    OperatingState state(String id, SortedMap<ComponentId, Setting> components, SortedMap<OutputPin, Setting> outputs) {
        return new OperatingState(
                Combination.stateId(id),
                "Worst combination " + id + ", " + name().english(),
                mode,
                settings,
                components,
                outputs);
    }

    /** The state in which some controls are on, and some loads where they run by themselves. */
    OperatingState state(String id, Iterable<Control> controls, Iterable<ComponentId> loads, Settings settings) {
        SortedMap<ComponentId, Setting> components = new TreeMap<>();
        SortedMap<OutputPin, Setting> outputs = new TreeMap<>();
        loads.forEach(load -> components.put(load, settings.of(Control.command(load))));
        for (Control control : controls) {
            if (control.isPin()) {
                outputs.put(control.pin(), settings.of(control));
            } else {
                components.put(control.component(), settings.of(control));
            }
        }
        return state(id, components, outputs);
    }
}
