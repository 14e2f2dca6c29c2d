package org.ohmloom.edit.board;

import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** What a new wire most likely carries, told by what its ends are. */
final class WireClass {

    private WireClass() {}

    /** The class that one of the ends speaks for, the first end first; a feed where none does. */
    static SignalClass between(Harness harness, WireEnd from, WireEnd to) {
        return Stream.of(from, to)
                .flatMap(end -> at(harness, end).stream())
                .findFirst()
                .orElse(SignalClass.FEED);
    }

    private static Optional<SignalClass> at(Harness harness, WireEnd end) {
        if (end instanceof WireEnd.AtGround) {
            return Optional.of(SignalClass.RETURN);
        }
        if (end instanceof WireEnd.AtSplice at) {
            return harness.wires().all().stream()
                    .filter(wire -> wire.ends().contains(at))
                    .findFirst()
                    .map(Wire::signalClass);
        }
        if (end instanceof WireEnd.AtTerminal at) {
            return terminal(harness.components().get(at.component()), at.terminal());
        }
        return end instanceof WireEnd.AtCavity at ? cavity(harness, at.connector(), at.cavity()) : Optional.empty();
    }

    private static Optional<SignalClass> cavity(Harness harness, ConnectorId connector, String name) {
        Optional<Component> component =
                harness.connectors().get(connector).component().flatMap(harness.components()::find);
        Optional<String> terminal =
                harness.connectors().get(connector).cavity(name).flatMap(Cavity::terminal);
        return component.flatMap(each -> terminal.flatMap(text -> terminal(each, text)));
    }

    private static Optional<SignalClass> terminal(Component component, String terminal) {
        Device device = component.device();
        if (device instanceof ControlUnit unit) {
            return unit.pin(terminal).flatMap(pin -> pin(pin.role()));
        }
        if (device instanceof Sensor) {
            return switch (terminal) {
                case Sensor.SUPPLY -> Optional.of(SignalClass.REFERENCE_SUPPLY);
                case Sensor.RETURN -> Optional.of(SignalClass.REFERENCE_RETURN);
                default -> Optional.of(SignalClass.ANALOGUE_SIGNAL);
            };
        }
        boolean returns = terminal.equals(Device.NEGATIVE)
                || terminal.equals(Converter.IN_NEGATIVE)
                || terminal.equals(Converter.OUT_NEGATIVE);
        boolean switched = device instanceof Switch each && each.positions().contains(terminal)
                || device instanceof Relay && (terminal.equals(Relay.MAKE) || terminal.equals(Relay.BREAK))
                || device instanceof SolidStateOutput && terminal.equals(SolidStateOutput.OUT);
        return returns
                ? Optional.of(SignalClass.RETURN)
                : switched ? Optional.of(SignalClass.SWITCHED_OUTPUT) : Optional.empty();
    }

    private static Optional<SignalClass> pin(PinRole role) {
        return switch (role) {
            case SUPPLY -> Optional.of(SignalClass.FEED);
            case GROUND, CASE -> Optional.of(SignalClass.RETURN);
            case REFERENCE_SUPPLY -> Optional.of(SignalClass.REFERENCE_SUPPLY);
            case SENSOR_RETURN -> Optional.of(SignalClass.REFERENCE_RETURN);
            case ANALOGUE_INPUT, THERMISTOR_INPUT, SWITCH_TO_BATTERY_INPUT, SWITCH_TO_GROUND_INPUT -> Optional.of(
                    SignalClass.ANALOGUE_SIGNAL);
            case FREQUENCY_INPUT -> Optional.of(SignalClass.PULSE_SIGNAL);
            case HIGH_SIDE_OUTPUT, LOW_SIDE_OUTPUT -> Optional.of(SignalClass.SWITCHED_OUTPUT);
            case BUS_HIGH, BUS_LOW -> Optional.of(SignalClass.DATA_BUS);
            case SPARE -> Optional.empty();
        };
    }
}
