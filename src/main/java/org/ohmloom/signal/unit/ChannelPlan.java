package org.ohmloom.signal.unit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.ohmloom.edit.ChangeDevice;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.pins.PinPlan;
import org.ohmloom.signal.pins.PinSearch;
import org.ohmloom.signal.pins.Preferences;

/**
 * Which line of which sensor, load or relay goes to which pin.
 *
 * @param harness  the harness it is made for
 * @param problem  what was asked
 * @param answer   the plan, or why there is none
 * @param channels the channels of each unit by the plan, those of other components kept; empty without a plan
 */
public record ChannelPlan(
        Harness harness, ChannelProblem problem, PinPlan answer, Map<ComponentId, List<Channel>> channels) {

    public ChannelPlan {
        channels = new TreeMap<>(channels);
    }

    /** The plan for all sensors, and all loads and relays with a free end. */
    public static ChannelPlan of(Harness harness) {
        return of(harness, Set.of(), Preferences.USUAL);
    }

    /**
     * The plan.
     *
     * @param without     components that are to get no pins
     * @param preferences what costs how much
     */
    public static ChannelPlan of(Harness harness, Set<ComponentId> without, Preferences preferences) {
        return of(harness, without, preferences, () -> false);
    }

    /**
     * The plan.
     *
     * @param without     components that are to get no pins
     * @param preferences what costs how much
     * @param stopped     asked while it is looked for whether nobody waits for it any more
     * @throws java.util.concurrent.CancellationException when nobody does
     */
    public static ChannelPlan of(
            Harness harness, Set<ComponentId> without, Preferences preferences, BooleanSupplier stopped) {
        ChannelProblem problem = ChannelProblem.of(harness, without, preferences);
        PinPlan answer = PinSearch.plan(problem.problem(), stopped);
        Map<ComponentId, List<Channel>> channels =
                answer instanceof PinPlan.Found found ? channels(harness, problem, found) : Map.of();
        return new ChannelPlan(harness, problem, answer, channels);
    }

    /** The pin of each line by the plan; empty without one. */
    public Map<Line, ChannelProblem.UnitPin> pins() {
        return answer instanceof PinPlan.Found found ? pins(problem, found) : Map.of();
    }

    private static Map<Line, ChannelProblem.UnitPin> pins(ChannelProblem problem, PinPlan.Found found) {
        Map<Line, ChannelProblem.UnitPin> pins = new LinkedHashMap<>();
        found.chosen()
                .forEach((claim, slot) -> Optional.ofNullable(problem.lines().get(claim.id()))
                        .ifPresent(line -> pins.put(line, problem.pins().get(slot.id()))));
        return pins;
    }

    private static Map<ComponentId, List<Channel>> channels(
            Harness harness, ChannelProblem problem, PinPlan.Found found) {
        Map<ComponentId, Map<PinRole, ChannelProblem.UnitPin>> byComponent = new TreeMap<>();
        pins(problem, found).forEach((line, pin) -> byComponent
                .computeIfAbsent(line.component(), id -> new TreeMap<>())
                .put(line.role(), pin));
        Map<ComponentId, List<Channel>> channels = new TreeMap<>();
        Map<ComponentId, Channel> before = new HashMap<>();
        harness.components().all().forEach(component -> {
            if (component.device() instanceof ControlUnit unit) {
                channels.put(component.id(), new ArrayList<>());
                for (Channel channel : unit.channels()) {
                    before.put(channel.component(), channel);
                    if (!byComponent.containsKey(channel.component())) {
                        channels.get(component.id()).add(channel);
                    }
                }
            }
        });
        Map<ComponentId, ChannelNames> names = new HashMap<>();
        channels.forEach((id, kept) -> {
            ControlUnit unit = (ControlUnit) harness.components().get(id).device();
            ChannelNames own = new ChannelNames(unit.nameCharacters());
            kept.replaceAll(channel -> channel.withName(own.next(channel.name())));
            names.put(id, own);
        });
        byComponent.forEach((component, lines) -> lines.forEach((role, pin) -> {
            if (role.isInput() || role.isOutput()) {
                Optional<Channel> old = Optional.ofNullable(before.get(component));
                String wanted = old.map(Channel::name)
                        .orElseGet(() -> harness.components().get(component).name());
                channels.get(pin.unit())
                        .add(new Channel(
                                names.get(pin.unit()).next(wanted),
                                pin.pin(),
                                component,
                                Optional.ofNullable(lines.get(PinRole.REFERENCE_SUPPLY))
                                        .map(ChannelProblem.UnitPin::pin),
                                Optional.ofNullable(lines.get(PinRole.SENSOR_RETURN))
                                        .map(ChannelProblem.UnitPin::pin),
                                old.map(Channel::locked).orElse(false)));
            }
        }));
        return channels;
    }

    /** Sets the pins up and enters the channels, as one step; empty without a plan. */
    public Optional<Edit> edit() {
        if (!(answer instanceof PinPlan.Found)) {
            return Optional.empty();
        }
        List<Edit> edits = new ArrayList<>();
        Map<Line, ChannelProblem.UnitPin> pins = pins();
        channels.forEach((id, planned) -> {
            Map<String, PinRole> roles = new HashMap<>();
            pins.forEach((line, at) -> {
                if (at.unit().equals(id)) {
                    roles.put(at.pin(), line.role());
                }
            });
            edits.add(new ChangeDevice(SignalTexts.text("enter-channels", id), id, device -> {
                ControlUnit unit = (ControlUnit) device;
                return unit.withPlan(
                        unit.pins().stream().map(pin -> setUp(pin, roles)).toList(), planned);
            }));
        });
        return Optional.of(new Compound(SignalTexts.text("plan-channels"), edits));
    }

    private static Pin setUp(Pin pin, Map<String, PinRole> roles) {
        PinRole role = roles.getOrDefault(pin.name(), pin.role());
        return pin.capabilities().contains(role) ? pin.setUpAs(role) : pin;
    }
}
