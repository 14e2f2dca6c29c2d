package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetInStates;
import org.ohmloom.edit.StateSubject;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Setting;
import org.ohmloom.model.StateId;
import org.ohmloom.signal.unit.Joints;

/**
 * An output with a channel that is on in no operating state: what it serves never gets current.
 *
 * @param output   the output
 * @param served   what it serves
 * @param proposed how the states that ask for what it serves would set it, at the duty they ask for
 */
public record OutputOff(OutputPin output, Component served, SortedMap<StateId, Setting> proposed) {

    public OutputOff {
        proposed = Collections.unmodifiableSortedMap(new TreeMap<>(proposed));
    }

    /** Outputs of a harness that are on in no state, in the order of the units and their channels; none without any state. */
    public static List<OutputOff> of(Harness harness) {
        if (harness.states().isEmpty()) {
            return List.of();
        }
        Joints joints = Joints.of(harness);
        List<OutputOff> off = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                for (Channel channel : unit.channels()) {
                    OutputPin output = new OutputPin(component.id(), channel.pin());
                    if (unit.pin(channel.pin())
                                    .map(Pin::role)
                                    .filter(PinRole::isOutput)
                                    .isPresent()
                            && harness.states().all().stream().noneMatch(state -> isOn(state, output))) {
                        Component served = harness.components().get(channel.component());
                        off.add(new OutputOff(output, served, asked(harness, joints, served)));
                    }
                }
            }
        }
        return off;
    }

    private static boolean isOn(OperatingState state, OutputPin output) {
        return state.setting(output).filter(Setting::on).isPresent();
    }

    private static SortedMap<StateId, Setting> asked(Harness harness, Joints joints, Component served) {
        Set<ComponentId> loads =
                served.device() instanceof Relay ? switchedBy(harness, joints, served) : Set.of(served.id());
        SortedMap<StateId, Setting> asked = new TreeMap<>();
        for (OperatingState state : harness.states().all()) {
            loads.stream()
                    .flatMap(load -> state.setting(load).filter(Setting::on).stream())
                    .findFirst()
                    .ifPresent(on -> asked.put(
                            state.id(),
                            served.device() instanceof Relay ? Setting.ON : Setting.duty(on.dutyFraction())));
        }
        return asked;
    }

    /** Loads that wires join to the contacts of a relay. */
    private static Set<ComponentId> switchedBy(Harness harness, Joints joints, Component relay) {
        Set<String> reached = relay.terminals().stream()
                .filter(name -> !name.equals(Relay.COIL_A) && !name.equals(Relay.COIL_B))
                .flatMap(name -> joints.with(relay.id(), name).stream())
                .collect(Collectors.toSet());
        return harness.components().all().stream()
                .filter(each -> each.device() instanceof Load)
                .filter(each ->
                        each.terminals().stream().anyMatch(name -> reached.contains(Joints.terminal(each.id(), name))))
                .map(Component::id)
                .collect(Collectors.toSet());
    }

    /**
     * Sets an output in a state. A load that was asked for at a duty is asked for all the time from then on: the output has the duty.
     *
     * @param typed as {@link org.ohmloom.edit.SettingText} reads it
     * @throws IllegalArgumentException when it does not fit; the message says what would be right
     */
    public Edit set(Harness harness, StateId state, String typed) {
        List<Edit> edits = new ArrayList<>();
        SetInStates set =
                SetInStates.of(harness, List.of(new SetInStates.Cell(new StateSubject.Output(output), state)), typed);
        edits.add(set);
        Optional<Setting> own = harness.states().get(state).setting(served.id());
        if (served.device() instanceof Load
                && own.filter(each -> each.on() && each.dutyFraction() < 1).isPresent()) {
            edits.add(SetInStates.of(
                    harness,
                    List.of(new SetInStates.Cell(new StateSubject.Switched(served.id()), state)),
                    own.get().starting() ? "start" : "on"));
        }
        return new Compound(set.label(), edits);
    }
}
