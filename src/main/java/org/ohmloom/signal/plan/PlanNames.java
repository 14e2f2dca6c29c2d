package org.ohmloom.signal.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.edit.ChangeChannel;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.plan.PlanProblem.Kind;
import org.ohmloom.signal.unit.ChannelNames;
import org.ohmloom.words.Text;

/** Names longer than their unit takes, and names that are alike in one unit or on one bus but for capitals and spaces. */
final class PlanNames {
    private final Harness harness;
    private final Map<ComponentId, ControlUnit> units;

    PlanNames(Harness harness, PlanMending mending) {
        this.harness = harness;
        this.units = mending.units();
    }

    /** A channel of a unit. */
    private record Named(ComponentId unit, Channel channel) {}

    List<PlanProblem> problems() {
        List<PlanProblem> problems = new ArrayList<>();
        units.forEach((id, unit) -> unit.nameCharacters().ifPresent(most -> unit.channels().stream()
                .filter(channel -> channel.name().length() > most)
                .forEach(channel -> problems.add(PlanProblem.of(
                        Kind.NAME_TOO_LONG,
                        SignalTexts.text(
                                "channel.name-too-long",
                                channel.name(),
                                id,
                                channel.name().length(),
                                most),
                        List.of(id, channel.component()),
                        Optional.of(renamed(new Named(id, channel), unit.channels())))))));
        alike(problems);
        return problems;
    }

    private void alike(List<PlanProblem> problems) {
        Set<Named> told = new HashSet<>();
        units.keySet().forEach(id -> alike(List.of(id), SignalTexts.text("channel.of", id), told, problems));
        for (DataBus bus : harness.buses().all()) {
            List<ComponentId> nodes = bus.nodes().stream()
                    .map(DataBus.Node::unit)
                    .filter(units::containsKey)
                    .distinct()
                    .toList();
            alike(nodes, SignalTexts.text("channel.on-bus", bus.id()), told, problems);
        }
    }

    private void alike(List<ComponentId> ids, Text where, Set<Named> told, List<PlanProblem> problems) {
        Map<String, Named> first = new HashMap<>();
        List<Channel> all =
                ids.stream().flatMap(id -> units.get(id).channels().stream()).toList();
        for (ComponentId id : ids) {
            for (Channel channel : units.get(id).channels()) {
                Named here = new Named(id, channel);
                Named before = first.putIfAbsent(ChannelNames.key(channel.name()), here);
                if (before != null && told.add(here)) {
                    problems.add(PlanProblem.of(
                            Kind.NAMES_ALIKE,
                            SignalTexts.text(
                                    "channel.alike",
                                    before.unit() + "." + before.channel().pin(),
                                    id + "." + channel.pin(),
                                    channel.name(),
                                    where),
                            List.of(id, before.channel().component(), channel.component()),
                            Optional.of(renamed(here, all))));
                }
            }
        }
    }

    /** Gives a channel the next name its unit takes that none of the others has. */
    private Edit renamed(Named named, List<Channel> others) {
        ControlUnit unit = units.get(named.unit());
        ChannelNames names = new ChannelNames(unit.nameCharacters());
        others.stream().filter(each -> !each.equals(named.channel())).forEach(each -> names.take(each.name()));
        String name = names.next(named.channel().name());
        return new ChangeChannel(
                SignalTexts.text("name-channel", named.channel().name(), name),
                named.unit(),
                named.channel().name(),
                named.channel().withName(name));
    }
}
