package org.ohmloom.signal.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.ohmloom.edit.ChangeChannel;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetUpPin;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.unit.DrivenCurrent;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.unit.SensorNeeds;
import org.ohmloom.words.Text;

/** Changes of plans: a channel to another pin, a pin to another role, the plan after the wires. */
public final class PlanMending {
    private final Harness harness;
    private final Joints joints;
    private final Map<ComponentId, ControlUnit> units = new TreeMap<>();

    /** Changes of the plans of a harness. */
    public PlanMending(Harness harness) {
        this.harness = harness;
        this.joints = Joints.of(harness);
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit unit) {
                units.put(component.id(), unit);
            }
        }
    }

    Joints joints() {
        return joints;
    }

    /** The units of the harness by identity. */
    Map<ComponentId, ControlUnit> units() {
        return units;
    }

    /** Whether a wire leads from the signal of a sensor to anything, or from the pin of a channel to its load or coil. */
    private boolean isWired(ComponentId unit, Channel channel) {
        Component served = harness.components().get(channel.component());
        return served.device() instanceof Sensor
                ? joints.isJoined(served.id(), Sensor.SIGNAL)
                : reaches(unit, channel.pin(), served);
    }

    /** Whether any terminal of a component hangs together with a pin. */
    boolean reaches(ComponentId unit, String pin, Component served) {
        SortedSet<String> joined = joints.with(unit, pin);
        return served.terminals().stream().anyMatch(name -> joined.contains(Joints.terminal(served.id(), name)));
    }

    /** Sets a pin up for a role it can take up; empty when it cannot. */
    Optional<Edit> settingUp(ComponentId unit, Pin pin, PinRole role) {
        if (!pin.capabilities().contains(role)) {
            return Optional.empty();
        }
        return Optional.of(new SetUpPin(unit, pin.name(), role));
    }

    /** Moves a channel no wire leads to yet onto a free pin of its unit that serves; empty without one. */
    public Optional<Edit> moving(ComponentId id, ControlUnit unit, Channel channel, Predicate<Pin> wanted) {
        Component served = harness.components().get(channel.component());
        PinRole role = role(served, unit.pin(channel.pin()).orElseThrow());
        if (isWired(id, channel) || channel.locked()) {
            return Optional.empty();
        }
        return unit.pins().stream()
                .filter(pin -> pin.capabilities().contains(role) && wanted.test(pin))
                .filter(pin -> unit.channelsAt(pin.name()).findAny().isEmpty() && !joints.isJoined(id, pin.name()))
                .filter(pin -> serves(unit, pin, role, served))
                .findFirst()
                .map(pin -> {
                    Text label = SignalTexts.text("move-channel", channel.name(), id, pin.name());
                    Channel moved = channel.withPins(pin.name(), channel.supplyPin(), channel.returnPin());
                    return new Compound(
                            label,
                            List.of(
                                    new SetUpPin(id, pin.name(), role),
                                    new ChangeChannel(label, id, channel.name(), moved)));
                });
    }

    private static PinRole role(Component served, Pin now) {
        if (served.device() instanceof Sensor sensor) {
            return SensorNeeds.signalRole(sensor);
        }
        return now.role().isOutput() ? now.role() : PinRole.HIGH_SIDE_OUTPUT;
    }

    private boolean serves(ControlUnit unit, Pin pin, PinRole role, Component served) {
        if (served.device() instanceof Sensor sensor) {
            return SensorNeeds.suits(unit, pin, role, sensor);
        }
        return pin.use(role).limitAmps().orElse(Double.POSITIVE_INFINITY) >= DrivenCurrent.ofAmps(served, harness);
    }

    static String words(PinRole role) {
        return role.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
