package org.ohmloom.signal.unit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.CavityGrid;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.pins.Budget;
import org.ohmloom.signal.pins.Slot;

/** The pins of a control unit as slots, with what lies beside them and the limits they share. */
final class UnitSlots {
    private static final Set<PinRole> SHARED =
            Collections.unmodifiableSet(EnumSet.of(PinRole.REFERENCE_SUPPLY, PinRole.SENSOR_RETURN));

    private final Component component;
    private final ControlUnit unit;
    private final Map<String, String> connectorOf = new HashMap<>();
    private final Map<String, Set<String>> besides = new HashMap<>();

    UnitSlots(Harness harness, Component component, ControlUnit unit) {
        this.component = component;
        this.unit = unit;
        for (Connector connector : harness.connectors().all()) {
            if (connector.component().filter(component.id()::equals).isPresent()) {
                read(connector);
            }
        }
    }

    private void read(Connector connector) {
        Map<String, String> pinOf = new HashMap<>();
        for (Cavity cavity : connector.cavities()) {
            cavity.terminal().ifPresent(pin -> {
                pinOf.put(cavity.name(), pin);
                connectorOf.putIfAbsent(pin, connector.id().value());
            });
        }
        List<List<String>> rows = connector
                .grid()
                .map(grid -> grid.rows(CavityGrid.Side.WIRE_SIDE))
                .orElseGet(() ->
                        List.of(connector.cavities().stream().map(Cavity::name).toList()));
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).size(); column++) {
                if (column > 0) {
                    beside(pinOf, rows.get(row).get(column - 1), rows.get(row).get(column));
                }
                if (row > 0 && column < rows.get(row - 1).size()) {
                    beside(pinOf, rows.get(row - 1).get(column), rows.get(row).get(column));
                }
            }
        }
    }

    private void beside(Map<String, String> pinOf, String one, String other) {
        if (pinOf.containsKey(one) && pinOf.containsKey(other)) {
            besides.computeIfAbsent(pinOf.get(one), pin -> new TreeSet<>()).add(slot(pinOf.get(other)));
            besides.computeIfAbsent(pinOf.get(other), pin -> new TreeSet<>()).add(slot(pinOf.get(one)));
        }
    }

    /** Identity of the slot of a pin: {@code U1.AN3}. */
    String slot(String pin) {
        return Joints.terminal(component.id(), pin);
    }

    /** What a pin can be that a line may need. */
    static Set<PinRole> roles(Pin pin) {
        Set<PinRole> roles = EnumSet.noneOf(PinRole.class);
        pin.capabilities().stream()
                .filter(role -> role.isInput() || role.isOutput() || SHARED.contains(role))
                .forEach(roles::add);
        return roles;
    }

    /**
     * A pin as a slot.
     *
     * @param forced a role it is used in already, whatever it can be
     * @param shares how many lines may share a supply or return
     */
    Slot slot(Pin pin, Set<PinRole> forced, int shares) {
        Set<PinRole> roles = roles(pin);
        roles.addAll(forced);
        boolean shared = roles.stream().anyMatch(SHARED::contains);
        return new Slot(
                slot(pin.name()),
                component.id().value(),
                connectorOf.getOrDefault(pin.name(), component.id().value()),
                roles,
                shared ? Math.max(1, shares) : 1,
                limit(pin, roles),
                besides.getOrDefault(pin.name(), Set.of()));
    }

    /** The limit of current: of the pin, and of every use as an output or supply the lowest that is known. */
    private static OptionalDouble limit(Pin pin, Set<PinRole> roles) {
        return roles.stream()
                .filter(role -> !role.isInput())
                .flatMapToDouble(role -> pin.capabilities().contains(role)
                        ? pin.use(role).limitAmps().stream()
                        : pin.limitAmps().stream())
                .min();
    }

    /** Limits that several pins share: groups entered, and all high-side outputs on the supply pins, low-side on the ground pins. */
    List<Budget> budgets() {
        List<Budget> budgets = new ArrayList<>();
        unit.groups()
                .forEach(group -> budgets.add(new Budget(
                        SignalTexts.text("budget.of", group.name(), component.id()),
                        new TreeSet<>(group.pins().stream().map(this::slot).toList()),
                        group.limitAmps())));
        add(budgets, PinRole.SUPPLY, "budget.supply", pin -> pin.capabilities().contains(PinRole.HIGH_SIDE_OUTPUT));
        add(
                budgets,
                PinRole.GROUND,
                "budget.ground",
                pin -> pin.capabilities().contains(PinRole.LOW_SIDE_OUTPUT)
                        && !pin.capabilities().contains(PinRole.HIGH_SIDE_OUTPUT));
        return budgets;
    }

    private void add(List<Budget> budgets, PinRole role, String key, Predicate<Pin> through) {
        List<Pin> carrying = unit.pinsOf(role).toList();
        Set<String> slots = new TreeSet<>(unit.pins().stream()
                .filter(through)
                .map(pin -> slot(pin.name()))
                .toList());
        if (!slots.isEmpty()
                && !carrying.isEmpty()
                && carrying.stream().allMatch(pin -> pin.limitAmps().isPresent())) {
            double limit = carrying.stream()
                    .mapToDouble(pin -> pin.limitAmps().getAsDouble())
                    .sum();
            budgets.add(new Budget(SignalTexts.text("budget.of", SignalTexts.text(key), component.id()), slots, limit));
        }
    }
}
