package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.pins.Claim;
import org.ohmloom.signal.pins.Preferences;
import org.ohmloom.signal.pins.Slot;
import org.ohmloom.signal.unit.ChannelProblem;
import org.ohmloom.signal.unit.ChannelProblem.UnitPin;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.unit.Line;

/**
 * What the sensors, loads and relays of a harness need, and the pins there are.
 *
 * @param harness the harness
 * @param problem claims and slots
 * @param needs   what needs pins, sensors first
 * @param places  the pins, unit by unit
 */
record PinSurvey(Harness harness, ChannelProblem problem, List<PinNeed> needs, List<PinPlace> places) {

    /** How a pin suits a need. */
    enum Fit {
        FITS,
        /** It cannot be what is needed. */
        OTHER_KIND,
        /** It tells another range. */
        OTHER_RANGE,
        /** It gives too little current. */
        TOO_WEAK,
        /** A channel has it. */
        TAKEN,
        /** Wires join it to something else. */
        WIRED
    }

    PinSurvey {
        needs = List.copyOf(needs);
        places = List.copyOf(places);
    }

    static PinSurvey of(Harness harness) {
        ChannelProblem problem = ChannelProblem.of(harness, Set.of(), Preferences.USUAL);
        Map<ComponentId, List<Line>> lines = new HashMap<>();
        problem.lines().values().forEach(line -> lines.computeIfAbsent(line.component(), id -> new ArrayList<>())
                .add(line));
        lines.values().forEach(each -> each.sort(Comparator.comparing(Line::role)));
        Joints joints = Joints.of(harness);
        Map<ComponentId, Channel> channels = new HashMap<>();
        Map<ComponentId, UnitPin> pins = new HashMap<>();
        List<PinPlace> places = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                Map<String, String> cavities = cavities(harness, component.id());
                for (Pin pin : unit.pins()) {
                    var joined = joints.with(component.id(), pin.name());
                    places.add(new PinPlace(
                            component,
                            pin,
                            Optional.ofNullable(cavities.get(pin.name())),
                            unit.channelsAt(pin.name()).toList(),
                            problem.lines().values().stream()
                                    .filter(line -> joined.contains(Joints.terminal(line.component(), line.terminal())))
                                    .map(line -> line.component().value())
                                    .collect(Collectors.toCollection(TreeSet::new))));
                }
                unit.channels().forEach(channel -> {
                    channels.put(channel.component(), channel);
                    pins.put(channel.component(), new UnitPin(component.id(), channel.pin()));
                });
            }
        }
        List<PinNeed> sensors = new ArrayList<>();
        List<PinNeed> others = new ArrayList<>();
        for (Component component : harness.components().all()) {
            List<Line> own = lines.getOrDefault(component.id(), List.of());
            List<Line> main = own.stream()
                    .filter(line -> line.role().isInput() || line.role().isOutput())
                    .toList();
            PinNeed need = new PinNeed(
                    component,
                    own,
                    Optional.ofNullable(channels.get(component.id())),
                    Optional.ofNullable(pins.get(component.id())),
                    main.stream().anyMatch(line -> joints.isJoined(line.component(), line.terminal())),
                    places.stream()
                            .filter(place -> place.pin().role().isInput()
                                    || place.pin().role().isOutput())
                            .filter(place -> main.stream().anyMatch(line -> joints.with(
                                            line.component(), line.terminal())
                                    .contains(Joints.terminal(
                                            place.unit().id(), place.pin().name()))))
                            .map(PinPlace::at)
                            .findFirst());
            if (component.device() instanceof Sensor) {
                sensors.add(need);
            } else if (!need.lines().isEmpty() || need.channel().isPresent()) {
                others.add(need);
            }
        }
        sensors.addAll(others);
        return new PinSurvey(harness, problem, sensors, places);
    }

    private static Map<String, String> cavities(Harness harness, ComponentId unit) {
        Map<String, String> cavities = new LinkedHashMap<>();
        for (Connector connector : harness.connectors().all()) {
            if (connector.component().filter(unit::equals).isPresent()) {
                connector.cavities().forEach(cavity -> cavity.terminal()
                        .ifPresent(pin -> cavities.putIfAbsent(pin, connector.id() + "." + cavity.name())));
            }
        }
        return cavities;
    }

    /** How each pin suits the line of a need that is read or switched; nothing for a need without one. */
    Map<UnitPin, Fit> fits(PinNeed need) {
        Optional<Claim> claim = need.mainLine().flatMap(this::claim);
        if (claim.isEmpty()) {
            return Map.of();
        }
        Map<UnitPin, Slot> slots = new HashMap<>();
        problem.problem().slots().forEach(slot -> slots.put(problem.pins().get(slot.id()), slot));
        return places.stream()
                .collect(Collectors.toMap(
                        PinPlace::at,
                        place -> fit(need, claim.get(), place, Optional.ofNullable(slots.get(place.at())))));
    }

    private static Fit fit(PinNeed need, Claim claim, PinPlace place, Optional<Slot> slot) {
        if (!place.pin().capabilities().contains(claim.role())) {
            return Fit.OTHER_KIND;
        }
        if (slot.isEmpty()) {
            return Fit.WIRED;
        }
        if (claim.barred().contains(slot.get().id())) {
            return Fit.OTHER_RANGE;
        }
        if (slot.get().limitAmps().isPresent()
                && claim.amps() > slot.get().limitAmps().getAsDouble()) {
            return Fit.TOO_WEAK;
        }
        boolean taken = place.channels().stream().anyMatch(channel -> !channel.component()
                .equals(need.component().id()));
        return taken ? Fit.TAKEN : Fit.FITS;
    }

    private Optional<Claim> claim(Line line) {
        return problem.problem().claims().stream()
                .filter(claim -> line.equals(problem.lines().get(claim.id())))
                .findFirst();
    }
}
