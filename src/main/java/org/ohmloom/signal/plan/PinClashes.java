package org.ohmloom.signal.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.model.Pin;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.plan.PlanProblem.Kind;
import org.ohmloom.words.Text;

/** Pins that several sensors or outputs are to have at once, or one of them and a supply or return. */
final class PinClashes {
    private final Harness harness;
    private final PlanMending mending;
    private final List<SensorChannel> channels;

    PinClashes(Harness harness, PlanMending mending, List<SensorChannel> channels) {
        this.harness = harness;
        this.mending = mending;
        this.channels = channels;
    }

    List<PlanProblem> problems() {
        List<PlanProblem> problems = new ArrayList<>();
        for (Map.Entry<ComponentId, ControlUnit> each : mending.units().entrySet()) {
            for (Pin pin : each.getValue().pins()) {
                clash(each.getKey(), each.getValue(), pin, problems);
            }
        }
        return problems;
    }

    private void clash(ComponentId id, ControlUnit unit, Pin pin, List<PlanProblem> problems) {
        List<Channel> at = unit.channelsAt(pin.name()).toList();
        List<Channel> whole = at.stream()
                .filter(each -> each.pin().equals(pin.name()) && !isWiredElsewhere(each.component(), id, pin))
                .toList();
        Set<ComponentId> asking = new LinkedHashSet<>();
        whole.forEach(each -> asking.add(each.component()));
        channels.stream()
                .filter(each -> each.wired()
                        && each.unit().id().equals(id)
                        && each.pin().name().equals(pin.name()))
                .forEach(each -> asking.add(each.component().id()));
        boolean also =
                !whole.isEmpty() && at.stream().anyMatch(each -> !each.pin().equals(pin.name()));
        if (asking.size() < 2 && !also || switchedTogether(asking)) {
            return;
        }
        Set<ComponentId> all = new LinkedHashSet<>(asking);
        at.forEach(each -> all.add(each.component()));
        all.add(id);
        Text who = asking.stream()
                .map(Text::of)
                .reduce((one, other) -> SignalTexts.text("and", one, other))
                .orElse(Text.NONE);
        problems.add(PlanProblem.of(
                Kind.PIN_TWICE,
                SignalTexts.text(also ? "pin.serves-also" : "pin.serves", id, pin.name(), who),
                List.copyOf(all),
                mend(id, unit, whole, asking.size())));
    }

    /** Such a channel is told as miswired, not as a clash. */
    private boolean isWiredElsewhere(ComponentId component, ComponentId unit, Pin pin) {
        List<SensorChannel> wired = channels.stream()
                .filter(each -> each.wired() && each.component().id().equals(component))
                .toList();
        return !wired.isEmpty()
                && wired.stream()
                        .noneMatch(each ->
                                each.unit().id().equals(unit) && each.pin().equals(pin));
    }

    /** One output may switch several loads that are always on together. */
    private boolean switchedTogether(Set<ComponentId> asking) {
        return asking.size() > 1
                && harness.loadGroups().all().stream()
                        .anyMatch(group -> group.kind() == LoadGroup.Kind.TOGETHER
                                && group.members().containsAll(asking));
    }

    /** The last one no wire leads to yet goes elsewhere, where that ends the clash. */
    private Optional<Edit> mend(ComponentId id, ControlUnit unit, List<Channel> whole, int asking) {
        if (asking > 2 || whole.isEmpty()) {
            return Optional.empty();
        }
        for (int k = whole.size() - 1; k >= 0; k--) {
            Optional<Edit> moved = mending.moving(id, unit, whole.get(k), pin -> true);
            if (moved.isPresent()) {
                return moved;
            }
        }
        return Optional.empty();
    }
}
