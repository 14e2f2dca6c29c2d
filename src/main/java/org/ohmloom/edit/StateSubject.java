package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Pin;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;

/** What an operating state sets: a source, a load, a switch, an output or a protective device. */
public sealed interface StateSubject {

    /** How people write it: {@code M1}, {@code ECU1.A3}. */
    String text();

    /** What a state says of it, as it can be typed again; empty when it says nothing. */
    String written(OperatingState state);

    /** The state with what was typed; an empty text lets it say nothing. */
    OperatingState typed(Harness harness, OperatingState state, String typed);

    /**
     * A component that is switched.
     *
     * @param component the component
     */
    record Switched(ComponentId component) implements StateSubject {
        @Override
        public String text() {
            return component.value();
        }

        @Override
        public String written(OperatingState state) {
            return state.setting(component).map(SettingText::of).orElse("");
        }

        @Override
        public OperatingState typed(Harness harness, OperatingState state, String typed) {
            Device device = harness.components().get(component).device();
            return SettingText.read(typed, device)
                    .map(setting -> state.with(component, setting))
                    .orElseGet(() -> state.without(component));
        }
    }

    /**
     * An output of a control unit.
     *
     * @param output the output
     */
    record Output(OutputPin output) implements StateSubject {
        @Override
        public String text() {
            return output.toString();
        }

        @Override
        public String written(OperatingState state) {
            return state.setting(output).map(SettingText::of).orElse("");
        }

        @Override
        public OperatingState typed(Harness harness, OperatingState state, String typed) {
            Device device = harness.components().get(output.unit()).device();
            return SettingText.read(typed, device)
                    .map(setting -> state.with(output, setting))
                    .orElseGet(() -> state.without(output));
        }
    }

    /**
     * A source.
     *
     * @param component the source
     */
    record Source(ComponentId component) implements StateSubject {
        @Override
        public String text() {
            return component.value();
        }

        @Override
        public String written(OperatingState state) {
            return Optional.ofNullable(state.sources().get(component))
                    .map(SourceText::of)
                    .orElse("");
        }

        @Override
        public OperatingState typed(Harness harness, OperatingState state, String typed) {
            Device device = harness.components().get(component).device();
            return SourceText.read(typed, device)
                    .map(setting -> state.withSource(component, setting))
                    .orElseGet(() -> state.withoutSource(component));
        }
    }

    /**
     * Everything the states of a harness can set: sources, then loads, switches, outputs and protective devices, each in the
     * order of their identities. Something a state sets although it cannot be switched is among the loads.
     */
    static List<StateSubject> all(Harness harness) {
        List<StateSubject> sources = new ArrayList<>();
        List<StateSubject> loads = new ArrayList<>();
        List<StateSubject> switches = new ArrayList<>();
        List<StateSubject> outputs = new ArrayList<>();
        List<StateSubject> protective = new ArrayList<>();
        for (Component component : harness.components().all()) {
            StateSubject switched = new Switched(component.id());
            if (component.device().isSource()) {
                sources.add(new Source(component.id()));
            } else if (component.device() instanceof Load || isSet(harness, component)) {
                loads.add(switched);
            } else if (component.device() instanceof Switch) {
                switches.add(switched);
            } else if (component.device() instanceof SolidStateOutput) {
                outputs.add(switched);
            } else if (component.device() instanceof ProtectiveDevice) {
                protective.add(switched);
            } else if (component.device() instanceof ControlUnit unit) {
                unit.pins().stream()
                        .filter(pin -> pin.role().isOutput())
                        .map(Pin::name)
                        .forEach(pin -> outputs.add(new Output(new OutputPin(component.id(), pin))));
            }
        }
        sources.addAll(loads);
        sources.addAll(switches);
        sources.addAll(outputs);
        sources.addAll(protective);
        return List.copyOf(sources);
    }

    private static boolean isSet(Harness harness, Component component) {
        boolean known = component.device() instanceof Switch
                || component.device() instanceof SolidStateOutput
                || component.device() instanceof ProtectiveDevice;
        return !known
                && harness.states().all().stream()
                        .anyMatch(state -> state.components().containsKey(component.id()));
    }
}
