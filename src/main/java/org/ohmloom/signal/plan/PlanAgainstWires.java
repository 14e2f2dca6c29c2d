package org.ohmloom.signal.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.ohmloom.edit.ChangeChannel;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.plan.PlanProblem.Kind;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.unit.SensorNeeds;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/** Channels whose wires lead to other pins than planned, and pins that are not set up for what is at them. */
final class PlanAgainstWires {
    private final Harness harness;
    private final PlanMending mending;
    private final List<SensorChannel> channels;
    private final Map<ComponentId, ControlUnit> units;

    PlanAgainstWires(Harness harness, PlanMending mending, List<SensorChannel> channels) {
        this.harness = harness;
        this.mending = mending;
        this.channels = channels;
        this.units = mending.units();
    }

    /** A pin of a unit. */
    private record At(ComponentId unit, Pin pin) {
        String text() {
            return unit + "." + pin.name();
        }
    }

    /** A channel and where its lines lead instead of the planned pins, if they do. */
    private record Led(Channel channel, Optional<At> signal, Optional<At> supply, Optional<At> back) {}

    List<PlanProblem> problems() {
        List<PlanProblem> problems = new ArrayList<>();
        units.forEach((id, unit) -> {
            List<Led> all = unit.channels().stream().map(each -> led(id, each)).toList();
            all.forEach(led -> elsewhere(id, led)
                    .ifPresent(words -> problems.add(PlanProblem.of(
                            Kind.WIRED_ELSEWHERE,
                            words,
                            List.of(led.channel().component(), id),
                            following(id, all, led.channel())))));
        });
        channels.forEach(channel -> role(channel, problems));
        units.forEach((id, unit) -> unit.channels().forEach(channel -> outputRole(id, unit, channel, problems)));
        return problems;
    }

    /** What is joined to a line of a channel instead of the planned pin, if anything of its kind is. */
    private Optional<At> instead(
            ComponentId unit, String planned, ComponentId component, String terminal, Predicate<PinRole> kind) {
        var joined = mending.joints().with(component, terminal);
        if (joined.contains(Joints.terminal(unit, planned))) {
            return Optional.empty();
        }
        return units.entrySet().stream()
                .flatMap(each -> each.getValue().pins().stream()
                        .filter(pin -> kind.test(pin.role()))
                        .filter(pin -> joined.contains(Joints.terminal(each.getKey(), pin.name())))
                        .map(pin -> new At(each.getKey(), pin)))
                .findFirst();
    }

    private Optional<At> signal(ComponentId id, Channel channel) {
        Component served = harness.components().get(channel.component());
        if (served.device() instanceof Sensor) {
            return instead(id, channel.pin(), served.id(), Sensor.SIGNAL, PinRole::isInput);
        }
        return mending.reaches(id, channel.pin(), served)
                ? Optional.empty()
                : served.terminals().stream()
                        .flatMap(name -> instead(id, channel.pin(), served.id(), name, PinRole::isOutput).stream())
                        .findFirst();
    }

    private Optional<At> shared(ComponentId id, Channel channel, Optional<String> pin, String terminal, PinRole role) {
        boolean sensor = harness.components().get(channel.component()).device() instanceof Sensor;
        return pin.filter(name -> sensor)
                .flatMap(name -> instead(id, name, channel.component(), terminal, role::equals));
    }

    private Led led(ComponentId id, Channel channel) {
        return new Led(
                channel,
                signal(id, channel),
                shared(id, channel, channel.supplyPin(), Sensor.SUPPLY, PinRole.REFERENCE_SUPPLY),
                shared(id, channel, channel.returnPin(), Sensor.RETURN, PinRole.SENSOR_RETURN));
    }

    private static Optional<Text> elsewhere(ComponentId id, Led led) {
        Channel channel = led.channel();
        return elsewhere("pin.wired-elsewhere", id, channel, Optional.of(channel.pin()), led.signal())
                .or(() -> elsewhere("pin.supplied-elsewhere", id, channel, channel.supplyPin(), led.supply()))
                .or(() -> elsewhere("pin.returns-elsewhere", id, channel, channel.returnPin(), led.back()));
    }

    private static Optional<Text> elsewhere(
            String key, ComponentId id, Channel channel, Optional<String> planned, Optional<At> led) {
        return led.map(at -> SignalTexts.text(key, channel.component(), id, planned.orElse(""), at.text()));
    }

    /** A channel with the pins of its own unit that its wires lead to. */
    private static Channel followed(ComponentId id, Led led) {
        Function<Optional<At>, Optional<String>> own = at ->
                at.filter(each -> each.unit().equals(id)).map(each -> each.pin().name());
        Channel channel = led.channel();
        return channel.withPins(
                own.apply(led.signal()).orElse(channel.pin()),
                own.apply(led.supply()).or(channel::supplyPin),
                own.apply(led.back()).or(channel::returnPin));
    }

    /** The plan of a unit after its wires, where that gives each of its inputs and outputs to one channel. */
    private static Optional<Edit> following(ComponentId id, List<Led> all, Channel channel) {
        List<Channel> changed = all.stream().map(led -> followed(id, led)).toList();
        Text label = SignalTexts.text("follow-wires", id);
        List<Edit> edits = new ArrayList<>();
        for (int k = 0; k < all.size(); k++) {
            Channel now = all.get(k).channel();
            if (!now.equals(changed.get(k))) {
                edits.add(new ChangeChannel(label, id, now.name(), changed.get(k)));
            }
        }
        boolean moves = !changed.contains(channel);
        boolean clear = changed.stream().map(Channel::pin).distinct().count() == changed.size();
        return moves && clear ? Optional.of(new Compound(label, edits)) : Optional.empty();
    }

    private void role(SensorChannel channel, List<PlanProblem> problems) {
        Pin pin = channel.pin();
        PinRole needed = SensorNeeds.signalRole(channel.sensor());
        List<ComponentId> about =
                List.of(channel.component().id(), channel.unit().id());
        ComponentId sensor = channel.component().id();
        Optional<Edit> mend = mending.settingUp(channel.unit().id(), pin, needed);
        if (!SensorNeeds.accepts(channel.sensor(), pin)) {
            problems.add(PlanProblem.of(
                    Kind.WRONG_ROLE,
                    SignalTexts.text(
                            mend.isPresent() ? "pin.needs" : "pin.needs-in-vain",
                            sensor,
                            channel.at(),
                            SignalTexts.text("needed."
                                    + needed.name().toLowerCase(Locale.ROOT).replace('_', '-')),
                            Constants.text(pin.role())),
                    about,
                    mend));
        } else if (SensorNeeds.missesPullUp(channel.sensor(), pin)) {
            problems.add(PlanProblem.of(
                    Kind.PULL_UP, SignalTexts.text("pin.no-pull-up", sensor, channel.at()), about, mend));
        } else if (SensorNeeds.fightsPullUp(channel.sensor(), pin)) {
            problems.add(
                    PlanProblem.of(Kind.PULL_UP, SignalTexts.text("pin.pull-up", sensor, channel.at()), about, mend));
        }
    }

    private void outputRole(ComponentId id, ControlUnit unit, Channel channel, List<PlanProblem> problems) {
        Device served = harness.components().get(channel.component()).device();
        Pin pin = unit.pin(channel.pin()).orElseThrow();
        if (!(served instanceof Sensor) && !pin.role().isOutput()) {
            Optional<Edit> mend = mending.settingUp(id, pin, PinRole.HIGH_SIDE_OUTPUT)
                    .or(() -> mending.settingUp(id, pin, PinRole.LOW_SIDE_OUTPUT));
            problems.add(PlanProblem.of(
                    Kind.WRONG_ROLE,
                    SignalTexts.text(
                            mend.isPresent() ? "pin.needs" : "pin.needs-in-vain",
                            channel.component(),
                            id + "." + pin.name(),
                            SignalTexts.text("needed.output"),
                            Constants.text(pin.role())),
                    List.of(channel.component(), id),
                    mend));
        }
    }
}
