package org.ohmloom.signal.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.ohmloom.edit.ChangeChannel;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinGroup;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.plan.PlanProblem.Kind;
import org.ohmloom.signal.unit.DrivenCurrent;
import org.ohmloom.units.Formats;

/** What reference supplies and groups of pins carry by plan and wires, against their limits. */
final class PlanCurrents {

    /** A sum that passes its limit by less is at it but for rounding, as a share. */
    private static final double NOISE_RATIO = 1e-9;

    private final Harness harness;
    private final PlanMending mending;
    private final List<SensorChannel> channels;

    PlanCurrents(Harness harness, PlanMending mending, List<SensorChannel> channels) {
        this.harness = harness;
        this.mending = mending;
        this.channels = channels;
    }

    List<PlanProblem> problems() {
        List<PlanProblem> problems = new ArrayList<>();
        mending.units().forEach((id, unit) -> {
            unit.pinsOf(PinRole.REFERENCE_SUPPLY).forEach(pin -> reference(id, unit, pin, problems));
            unit.groups().forEach(group -> group(id, unit, group, problems));
        });
        return problems;
    }

    private static boolean exceeds(double amps, double limitAmps) {
        return amps > limitAmps * (1 + NOISE_RATIO);
    }

    private List<SensorChannel> fedBy(ComponentId unit, String pin) {
        return channels.stream()
                .filter(each -> each.unit().id().equals(unit)
                        && each.fedBy().map(Pin::name).filter(pin::equals).isPresent())
                .toList();
    }

    /** Current of the sensors a reference supply feeds, A; each once. */
    private double referenceAmps(ComponentId unit, String pin) {
        return fedBy(unit, pin).stream()
                .map(each -> each.component().id())
                .distinct()
                .mapToDouble(id -> ((Sensor) harness.components().get(id).device()).drawAmps())
                .sum();
    }

    private void reference(ComponentId id, ControlUnit unit, Pin pin, List<PlanProblem> problems) {
        double amps = referenceAmps(id, pin.name());
        double limit = pin.limitAmps().orElse(Double.POSITIVE_INFINITY);
        if (!exceeds(amps, limit)) {
            return;
        }
        List<ComponentId> about = new ArrayList<>();
        fedBy(id, pin.name()).forEach(each -> about.add(each.component().id()));
        about.add(id);
        problems.add(PlanProblem.beyond(
                Kind.REFERENCE_OVER_LIMIT,
                SignalTexts.text("pin.reference-over", id, pin.name(), Formats.amps(amps), Formats.amps(limit)),
                about.stream().distinct().toList(),
                amps,
                limit,
                spreadOut(id, unit, pin, amps, limit)));
    }

    /** The least sensor that is enough, not wired to its supply yet, goes to a reference supply with room. */
    private Optional<Edit> spreadOut(ComponentId id, ControlUnit unit, Pin over, double amps, double limit) {
        ToDoubleFunction<Channel> draw = each ->
                harness.components().get(each.component()).device() instanceof Sensor sensor ? sensor.drawAmps() : 0;
        return unit.channels().stream()
                .filter(each -> each.supplyPin().filter(over.name()::equals).isPresent())
                .filter(each -> !each.locked() && !mending.joints().isJoined(each.component(), Sensor.SUPPLY))
                .filter(each -> !exceeds(amps - draw.applyAsDouble(each), limit))
                .sorted(Comparator.comparingDouble(draw))
                .flatMap(each -> unit.pinsOf(PinRole.REFERENCE_SUPPLY)
                        .filter(pin -> pin.referenceVolts().equals(over.referenceVolts()))
                        .filter(pin -> !exceeds(
                                referenceAmps(id, pin.name()) + draw.applyAsDouble(each),
                                pin.limitAmps().orElse(Double.POSITIVE_INFINITY)))
                        .filter(pin -> !pin.name().equals(over.name()))
                        .map(pin -> new ChangeChannel(
                                SignalTexts.text("feed-from", each.name(), id, pin.name()),
                                id,
                                each.name(),
                                each.withPins(each.pin(), Optional.of(pin.name()), each.returnPin()))))
                .map(Edit.class::cast)
                .findFirst();
    }

    private void group(ComponentId id, ControlUnit unit, PinGroup group, List<PlanProblem> problems) {
        double amps = groupAmps(id, unit, group);
        if (!exceeds(amps, group.limitAmps())) {
            return;
        }
        List<Channel> members = members(unit, group);
        List<ComponentId> about =
                new ArrayList<>(members.stream().map(Channel::component).toList());
        about.add(id);
        Optional<Edit> mend = members.stream()
                .filter(each -> !exceeds(amps - amps(each.component()), group.limitAmps()))
                .sorted(Comparator.comparingDouble(each -> amps(each.component())))
                .flatMap(each -> mending
                        .moving(
                                id,
                                unit,
                                each,
                                pin -> !group.pins().contains(pin.name()) && isFree(id, unit, pin, each))
                        .stream())
                .findFirst();
        problems.add(PlanProblem.beyond(
                Kind.GROUP_OVER_LIMIT,
                SignalTexts.text(
                        "pin.group-over", group.name(), id, Formats.amps(amps), Formats.amps(group.limitAmps())),
                about.stream().distinct().toList(),
                amps,
                group.limitAmps(),
                mend));
    }

    /** Whether no group of a pin is brought over its limit by one more channel. */
    private boolean isFree(ComponentId id, ControlUnit unit, Pin pin, Channel more) {
        return unit.groups().stream()
                .filter(group -> group.pins().contains(pin.name()))
                .noneMatch(group -> exceeds(groupAmps(id, unit, group) + amps(more.component()), group.limitAmps()));
    }

    private static List<Channel> members(ControlUnit unit, PinGroup group) {
        return unit.channels().stream()
                .filter(each -> group.pins().contains(each.pin()))
                .toList();
    }

    /** Most current of a group: of loads that exclude each other only as many as may be on, the largest ones; A. */
    private double groupAmps(ComponentId id, ControlUnit unit, PinGroup group) {
        double references = group.pins().stream()
                .filter(name -> unit.pin(name).orElseThrow().role() == PinRole.REFERENCE_SUPPLY)
                .mapToDouble(name -> referenceAmps(id, name))
                .sum();
        List<ComponentId> left = new ArrayList<>(
                members(unit, group).stream().map(Channel::component).distinct().toList());
        double amps = references;
        for (LoadGroup each : harness.loadGroups().all()) {
            if (each.kind() != LoadGroup.Kind.TOGETHER) {
                List<ComponentId> excluding =
                        left.stream().filter(each.members()::contains).toList();
                left.removeAll(excluding);
                amps += excluding.stream()
                        .mapToDouble(this::amps)
                        .boxed()
                        .sorted(Comparator.reverseOrder())
                        .limit(each.mostOn())
                        .mapToDouble(Double::doubleValue)
                        .sum();
            }
        }
        return amps + left.stream().mapToDouble(this::amps).sum();
    }

    private double amps(ComponentId component) {
        return DrivenCurrent.ofAmps(harness.components().get(component), harness);
    }
}
