package org.ohmloom.signal.unit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.pins.AtMost;
import org.ohmloom.signal.pins.Budget;
import org.ohmloom.signal.pins.Claim;
import org.ohmloom.signal.pins.PinProblem;
import org.ohmloom.signal.pins.Preferences;
import org.ohmloom.signal.pins.Slot;

/**
 * The sensors, loads and relays of a harness and the pins of its units as a problem of claims and slots. A line that wires join to a
 * pin already stays there; a line that is joined to something else needs no pin; a pin that is joined to something else is not
 * free. Channels a person locked stay where they are.
 *
 * @param problem claims and slots
 * @param lines   the line of each claim; spare pins have none
 * @param pins    unit and name of the pin of each slot
 */
public record ChannelProblem(PinProblem problem, Map<String, Line> lines, Map<String, UnitPin> pins) {

    /**
     * A pin.
     *
     * @param unit the unit
     * @param pin  its name
     */
    public record UnitPin(ComponentId unit, String pin) {}

    public ChannelProblem {
        lines = Map.copyOf(lines);
        pins = Map.copyOf(pins);
    }

    /**
     * The problem of a harness.
     *
     * @param without     components that are to get no pins
     * @param preferences what costs how much
     */
    public static ChannelProblem of(Harness harness, Set<ComponentId> without, Preferences preferences) {
        return new Making(harness, without, preferences).made();
    }

    /** How the problem is made. */
    private static final class Making {
        private final Harness harness;
        private final Preferences preferences;
        private final Joints joints;
        private final Map<ComponentId, ControlUnit> units = new TreeMap<>();
        private final Map<String, UnitPin> pins = new LinkedHashMap<>();
        private final Map<String, Line> lines = new LinkedHashMap<>();
        private final Map<String, String> fixed = new HashMap<>();

        Making(Harness harness, Set<ComponentId> without, Preferences preferences) {
            this.harness = harness;
            this.preferences = preferences;
            this.joints = Joints.of(harness);
            for (Component component : harness.components().all()) {
                if (component.device() instanceof ControlUnit unit) {
                    units.put(component.id(), unit);
                    unit.pins()
                            .forEach(pin -> pins.put(
                                    Joints.terminal(component.id(), pin.name()),
                                    new UnitPin(component.id(), pin.name())));
                }
            }
            boolean anyHighSide = units.values().stream()
                    .flatMap(unit -> unit.pins().stream())
                    .anyMatch(pin -> pin.capabilities().contains(PinRole.HIGH_SIDE_OUTPUT));
            Lines needs = new Lines(harness, joints, anyHighSide);
            for (Component component : harness.components().all()) {
                if (!without.contains(component.id())) {
                    needs.of(component).forEach(line -> lines.put(line.text(), line));
                }
            }
        }

        ChannelProblem made() {
            keep();
            List<Slot> slots = new ArrayList<>();
            List<Budget> budgets = new ArrayList<>();
            units.forEach((id, unit) -> {
                UnitSlots made = new UnitSlots(harness, harness.components().get(id), unit);
                for (Pin pin : unit.pins()) {
                    String slot = made.slot(pin.name());
                    Set<PinRole> forced = new HashSet<>();
                    fixed.forEach((line, where) -> {
                        if (where.equals(slot)) {
                            forced.add(lines.get(line).role());
                        }
                    });
                    boolean useful = !UnitSlots.roles(pin).isEmpty() || !forced.isEmpty();
                    if (useful && (!forced.isEmpty() || isFree(id, pin))) {
                        slots.add(made.slot(pin, forced, lines.size()));
                    }
                }
                budgets.addAll(made.budgets());
            });
            List<Claim> claims = new ArrayList<>();
            UnitDistances distances = new UnitDistances(
                    harness,
                    units.keySet().stream().map(harness.components()::get).toList());
            lines.forEach((name, line) -> claims.add(new Claim(
                    name,
                    line.component().value(),
                    line.role(),
                    line.amps(),
                    line.switching(),
                    Optional.ofNullable(fixed.get(name)),
                    fixed.containsKey(name) ? Set.of() : barred(line, slots),
                    line.role().isInput() || line.role().isOutput()
                            ? distances.metres(harness.components().get(line.component()))
                            : Map.of())));
            harness.rules().wiringRules().sparePins().forEach(spare -> {
                for (int k = 1; k <= spare.pins(); k++) {
                    String name = "spare " + spare.role().name().toLowerCase(Locale.ROOT) + " " + k;
                    claims.add(new Claim(name, name, spare.role(), 0, false, Optional.empty()));
                }
            });
            return new ChannelProblem(new PinProblem(claims, slots, budgets, exclusions(), preferences), lines, pins);
        }

        /** Lines that have their pin already are fixed there; those that are joined to something else go. */
        private void keep() {
            units.forEach((id, unit) -> unit.channels().stream()
                    .filter(Channel::locked)
                    .forEach(channel -> {
                        lock(channel.component(), channel.supplyPin(), PinRole.REFERENCE_SUPPLY, id);
                        lock(channel.component(), channel.returnPin(), PinRole.SENSOR_RETURN, id);
                        lines.values().stream()
                                .filter(line -> line.component().equals(channel.component()))
                                .filter(line ->
                                        line.role().isInput() || line.role().isOutput())
                                .forEach(line -> fixed.put(line.text(), Joints.terminal(id, channel.pin())));
                    }));
            for (Line line : List.copyOf(lines.values())) {
                if (joints.isJoined(line.component(), line.terminal())) {
                    Optional<String> pin = joints.with(line.component(), line.terminal()).stream()
                            .filter(pins::containsKey)
                            .filter(slot ->
                                    pin(slot).role().isInput() == line.role().isInput())
                            .findFirst();
                    pin.ifPresentOrElse(slot -> fixed.put(line.text(), slot), () -> lines.remove(line.text()));
                }
            }
            fixed.keySet().retainAll(lines.keySet());
        }

        private void lock(ComponentId component, Optional<String> pin, PinRole role, ComponentId unit) {
            pin.ifPresent(name -> lines.values().stream()
                    .filter(line -> line.component().equals(component) && line.role() == role)
                    .forEach(line -> fixed.put(line.text(), Joints.terminal(unit, name))));
        }

        private Pin pin(String slot) {
            UnitPin at = pins.get(slot);
            return units.get(at.unit()).pin(at.pin()).orElseThrow();
        }

        private boolean isFree(ComponentId unit, Pin pin) {
            return !joints.isJoined(unit, pin.name())
                    || pin.role() == PinRole.REFERENCE_SUPPLY
                    || pin.role() == PinRole.SENSOR_RETURN;
        }

        private Set<String> barred(Line line, List<Slot> slots) {
            if (!line.role().isInput()
                    || !(harness.components().get(line.component()).device() instanceof Sensor sensor)) {
                return Set.of();
            }
            Set<String> barred = new TreeSet<>();
            for (Slot slot : slots) {
                UnitPin at = pins.get(slot.id());
                Pin pin = pin(slot.id());
                if (pin.capabilities().contains(line.role())
                        && !PinRanges.suits(units.get(at.unit()), pin, line.role(), sensor)) {
                    barred.add(slot.id());
                }
            }
            return barred;
        }

        private List<AtMost> exclusions() {
            List<AtMost> exclusions = new ArrayList<>();
            Set<String> told = new HashSet<>();
            for (LoadGroup group : harness.loadGroups().all()) {
                Set<String> claims = new TreeSet<>();
                lines.values().stream()
                        .filter(line -> group.members().contains(line.component()))
                        .map(Line::text)
                        .filter(told::add)
                        .forEach(claims::add);
                if (group.kind() != LoadGroup.Kind.TOGETHER && claims.size() > group.mostOn()) {
                    exclusions.add(new AtMost(claims, group.mostOn()));
                }
            }
            return exclusions;
        }
    }
}
