package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * Finds free cavities for ends of wires. Each end takes, of the cavities whose contact takes its conductor, the one opposite to a
 * wire of its circuit in the connector that mates; else the first that meets a terminal for what it carries; else the first that
 * meets no terminal. An end for which none is left stays where it is.
 *
 * @param connector the connector
 * @param cavities  the cavity found for each end, by name, in the order of the ends
 * @param left      ends for which none was found
 */
public record CavityFilling(ConnectorId connector, Map<EndOfWire, String> cavities, List<EndOfWire> left) {

    public CavityFilling {
        cavities = Collections.unmodifiableMap(new LinkedHashMap<>(cavities));
        left = List.copyOf(left);
    }

    /** Finds cavities of a connector for ends of wires, in their order. */
    public static CavityFilling of(Harness harness, ConnectorId connector, List<EndOfWire> ends) {
        Connector found = harness.connectors().get(connector);
        List<Cavity> free = new ArrayList<>(CavityUse.of(harness, found).stream()
                .filter(CavityUse::isFree)
                .map(CavityUse::cavity)
                .toList());
        Map<EndOfWire, String> cavities = new LinkedHashMap<>();
        List<EndOfWire> left = new ArrayList<>();
        for (EndOfWire end : ends) {
            Wire wire = harness.wires().get(end.wire());
            Optional<Cavity> chosen = chosen(harness, found, free, wire);
            chosen.ifPresentOrElse(
                    cavity -> {
                        cavities.put(end, cavity.name());
                        free.remove(cavity);
                    },
                    () -> left.add(end));
        }
        return new CavityFilling(connector, cavities, left);
    }

    private static Optional<Cavity> chosen(Harness harness, Connector connector, List<Cavity> free, Wire wire) {
        List<Cavity> fitting = free.stream()
                .filter(cavity -> cavity.contact()
                        .flatMap(harness.contacts()::find)
                        .filter(contact -> !CavityUse.size(contact, wire).isEmpty())
                        .isEmpty())
                .toList();
        return first(fitting, cavity -> isOpposite(harness, connector, cavity, wire))
                .or(() -> first(fitting, cavity -> meets(harness, connector, cavity, wire.signalClass())))
                .or(() -> first(fitting, cavity -> cavity.terminal().isEmpty()));
    }

    private static Optional<Cavity> first(List<Cavity> cavities, Predicate<Cavity> wanted) {
        return cavities.stream().filter(wanted).findFirst();
    }

    private static boolean isOpposite(Harness harness, Connector connector, Cavity cavity, Wire wire) {
        if (connector.mate().isEmpty() || wire.circuit().isEmpty()) {
            return false;
        }
        WireEnd opposite = new WireEnd.AtCavity(connector.mate().get(), cavity.name());
        return harness.wires().all().stream()
                .anyMatch(other -> !other.id().equals(wire.id())
                        && other.ends().contains(opposite)
                        && other.circuit().equals(wire.circuit()));
    }

    private static boolean meets(Harness harness, Connector connector, Cavity cavity, SignalClass carried) {
        Optional<Component> component = connector.component().map(harness.components()::get);
        return component.isPresent()
                && cavity.terminal()
                        .filter(terminal -> suits(component.get().device(), terminal, carried))
                        .isPresent();
    }

    private static boolean suits(Device device, String terminal, SignalClass carried) {
        if (device instanceof ControlUnit unit) {
            return unit.pins().stream()
                    .filter(pin -> pin.name().equals(terminal))
                    .anyMatch(pin -> suits(pin, carried));
        }
        return switch (terminal) {
            case Device.POSITIVE -> carried == SignalClass.FEED || carried == SignalClass.SWITCHED_OUTPUT;
            case Device.NEGATIVE -> carried == SignalClass.RETURN;
            default -> false;
        };
    }

    private static boolean suits(Pin pin, SignalClass carried) {
        return switch (pin.role()) {
            case SUPPLY -> carried == SignalClass.FEED;
            case GROUND, CASE -> carried == SignalClass.RETURN;
            case REFERENCE_SUPPLY -> carried == SignalClass.REFERENCE_SUPPLY;
            case SENSOR_RETURN -> carried == SignalClass.REFERENCE_RETURN;
            case ANALOGUE_INPUT, THERMISTOR_INPUT -> carried == SignalClass.ANALOGUE_SIGNAL;
            case SWITCH_TO_BATTERY_INPUT, SWITCH_TO_GROUND_INPUT, FREQUENCY_INPUT -> carried
                    == SignalClass.PULSE_SIGNAL;
            case HIGH_SIDE_OUTPUT, LOW_SIDE_OUTPUT -> carried == SignalClass.SWITCHED_OUTPUT;
            case BUS_HIGH, BUS_LOW -> carried == SignalClass.DATA_BUS;
            case SPARE -> false;
        };
    }

    /** The edit that puts them there; empty when none was found for any. */
    public Optional<PutInCavity> edit() {
        return cavities.isEmpty()
                ? Optional.empty()
                : Optional.of(new PutInCavity(
                        cavities.size() == 1
                                ? Labels.text(
                                        "put-into",
                                        cavities.keySet().iterator().next().wire(),
                                        connector)
                                : Labels.text("put-wires-into", cavities.size(), connector),
                        connector,
                        cavities));
    }
}
