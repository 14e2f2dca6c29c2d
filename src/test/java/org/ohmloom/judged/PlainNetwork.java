package org.ohmloom.judged;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Strap;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * The circuit of a generated harness at one moment, read from the harness alone: resistances, voltage sources and fixed currents
 * between named points. It knows the kinds of element the generator uses and refuses others.
 */
final class PlainNetwork {

    /** A resistance between two points, ohm, more than 0. */
    record Resistor(String one, String other, double ohms) {}

    /** A current, A, out of {@code from} into {@code to}. */
    record Current(String from, String to, double amps) {}

    /**
     * An electromotive force behind a resistance; its current also flows from {@code takenAt} to {@code handedOutAt} where those
     * are named, as in a series regulator.
     */
    record Source(
            String low,
            String high,
            double volts,
            double ohms,
            Optional<String> takenAt,
            Optional<String> handedOutAt) {}

    private final Harness harness;
    private final OperatingState state;
    private final Set<String> closed;
    private final String opened;
    private final Map<String, String> same = new HashMap<>();
    private final List<Resistor> resistors = new ArrayList<>();
    private final List<Current> currents = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();

    /**
     * The circuit of a state in the moment in which of the switching outputs those are closed.
     *
     * @param opened the ground point, wire, strap or fuse that is open; blank for none
     */
    PlainNetwork(Harness harness, OperatingState state, Set<String> closed, String opened) {
        this.harness = harness;
        this.state = state;
        this.closed = closed;
        this.opened = opened;
        harness.connectors().all().forEach(this::contacts);
        harness.wires().all().forEach(this::wire);
        harness.bodies().all().forEach(this::body);
        for (Strap strap : harness.straps().all()) {
            closed(strap.id().value(), strap.from() + ".body", strap.to() + ".body", strap.ohms());
        }
        harness.components().all().forEach(this::device);
    }

    /** The circuit as the solver sees it: points that nothing lies between are one, and only what hangs on the datum counts. */
    PlainSolve solve() {
        return new PlainSolve(
                resistors.stream()
                        .map(each -> new Resistor(root(each.one()), root(each.other()), each.ohms()))
                        .toList(),
                currents.stream()
                        .map(each -> new Current(root(each.from()), root(each.to()), each.amps()))
                        .toList(),
                sources.stream()
                        .map(each -> new Source(
                                root(each.low()),
                                root(each.high()),
                                each.volts(),
                                each.ohms(),
                                each.takenAt().map(this::root),
                                each.handedOutAt().map(this::root)))
                        .toList(),
                root("BT.-"),
                this::root);
    }

    private void contacts(Connector connector) {
        String component = connector.component().orElseThrow().value();
        connector.cavities().forEach(cavity -> cavity.terminal()
                .ifPresent(terminal -> resistor(
                        connector.id() + "." + cavity.name(),
                        component + "." + terminal,
                        cavity.contact()
                                .map(contact -> harness.contacts().get(contact).contactOhms())
                                .orElse(0.0))));
    }

    private void wire(Wire wire) {
        closed(
                wire.id().value(),
                end(wire, wire.from()),
                end(wire, wire.to()),
                wire.measuredOhms().orElseThrow());
    }

    private String end(Wire wire, WireEnd end) {
        if (end instanceof WireEnd.AtSplice at) {
            Splice splice = harness.splices().get(at.splice());
            String own = splice.id() + "." + wire.id();
            resistor(own, splice.id().value(), splice.jointOhms());
            return own;
        }
        return end.text();
    }

    private void body(ChassisBody body) {
        for (GroundPoint ground : harness.grounds().all()) {
            if (ground.body().equals(body.id())) {
                closed(ground.id().value(), ground.id().value(), ground.id() + ".body", ground.jointOhms());
                resistor(
                        ground.id() + ".body",
                        "middle of " + body.id(),
                        body.rule().orElseThrow().toMiddleOhms());
            }
        }
    }

    private void device(Component component) {
        String id = component.id().value();
        component
                .caseGround()
                .ifPresent(bolt ->
                        resistor(id + "." + bolt.terminal(), bolt.ground().value(), bolt.jointOhms()));
        Device device = component.device();
        if (device instanceof Battery battery) {
            source(id + ".-", id + ".+", battery.emfVolts(), battery.internalOhms());
        } else if (device instanceof ProtectiveDevice fuse) {
            closed(id, id + ".1", id + ".2", fuse.ohms().orElseThrow());
        } else if (device instanceof BusBar bar) {
            bar.terminals().forEach(terminal -> resistor(id + "." + terminal, "bar " + id, bar.jointOhms()));
        } else if (device instanceof Load load) {
            load(component, load);
        } else if (device instanceof SolidStateOutput output) {
            output(id, state.setting(component.id()), id + ".in", id + ".out", output.onOhms());
        } else if (device instanceof Sensor sensor) {
            if (sensor.drawAmps() > 0) {
                currents.add(new Current(id + ".supply", id + ".return", sensor.drawAmps()));
            }
            sensor.signalOhms().ifPresent(ohms -> resistor(id + ".signal", id + ".return", ohms));
        } else if (device instanceof ControlUnit unit) {
            unit(id, unit);
        } else {
            throw new IllegalStateException("no plain circuit for " + device);
        }
    }

    private void load(Component component, Load load) {
        if (load.control() == Load.Control.COMMAND && !state.asksOn(component.id())) {
            return;
        }
        String plus = component.id() + ".+";
        String minus = component.id() + ".-";
        if (load.draw() instanceof Draw.Resistive resistive) {
            resistor(plus, minus, resistive.ratedVolts() / resistive.ratedAmps());
        } else {
            currents.add(new Current(plus, minus, load.draw().ratedAmps()));
        }
    }

    private void output(String name, Optional<Setting> setting, String in, String out, double onOhms) {
        boolean on = setting.map(Setting::on).orElse(false);
        if (on && (setting.get().dutyFraction() == 1 || closed.contains(name))) {
            resistor(in, out, onOhms);
        }
    }

    private void unit(String id, ControlUnit unit) {
        rail(id, unit, PinRole.SUPPLY);
        rail(id, unit, PinRole.GROUND);
        String supply = first(id, unit, PinRole.SUPPLY);
        String ground = first(id, unit, PinRole.GROUND);
        currents.add(new Current(supply, ground, unit.drawAmps()));
        if (unit.pinsOf(PinRole.SENSOR_RETURN).findAny().isPresent()) {
            sensing(id, unit, supply, ground);
        }
    }

    private void sensing(String id, ControlUnit unit, String supply, String ground) {
        rail(id, unit, PinRole.SENSOR_RETURN);
        String sensorReturn = first(id, unit, PinRole.SENSOR_RETURN);
        resistor(ground, sensorReturn, unit.groundToSensorReturnOhms().orElseThrow());
        for (Pin pin : unit.pins()) {
            String at = id + "." + pin.name();
            Optional<Setting> setting =
                    Optional.ofNullable(state.outputs().get(new OutputPin(new ComponentId(id), pin.name())));
            if (pin.role() == PinRole.HIGH_SIDE_OUTPUT) {
                output(at, setting, supply, at, pin.onOhms().orElseThrow());
            } else if (pin.role() == PinRole.REFERENCE_SUPPLY) {
                sources.add(new Source(
                        sensorReturn,
                        at,
                        pin.referenceVolts().orElseThrow(),
                        0,
                        Optional.of(supply),
                        Optional.of(sensorReturn)));
            } else if (pin.input()
                    .flatMap(input -> input.shuntOhms().stream().boxed().findFirst())
                    .isPresent()) {
                resistor(at, sensorReturn, pin.input().get().shuntOhms().getAsDouble());
            } else if (pin.pullUpOhms().isPresent()) {
                sources.add(new Source(
                        sensorReturn,
                        at,
                        pin.pullUpVolts().orElseThrow(),
                        pin.pullUpOhms().getAsDouble(),
                        Optional.of(supply),
                        Optional.of(sensorReturn)));
            }
        }
    }

    private void rail(String id, ControlUnit unit, PinRole role) {
        unit.pinsOf(role).forEach(pin -> resistor(id + "." + pin.name(), first(id, unit, role), 0));
    }

    private static String first(String id, ControlUnit unit, PinRole role) {
        return id + "." + unit.pinsOf(role).findFirst().orElseThrow().name();
    }

    private void source(String low, String high, double volts, double ohms) {
        sources.add(new Source(low, high, volts, ohms, Optional.empty(), Optional.empty()));
    }

    /** A resistance, unless it is the element that is open. */
    private void closed(String id, String one, String other, double ohms) {
        if (!id.equals(opened)) {
            resistor(one, other, ohms);
        }
    }

    /** A current from one point to another besides, A. */
    PlainNetwork with(Current current) {
        currents.add(current);
        return this;
    }

    private void resistor(String one, String other, double ohms) {
        if (ohms > 0) {
            resistors.add(new Resistor(one, other, ohms));
        } else if (!root(one).equals(root(other))) {
            same.put(root(one), root(other));
        }
    }

    private String root(String point) {
        String root = point;
        while (same.containsKey(root)) {
            root = same.get(root);
        }
        return root;
    }
}
