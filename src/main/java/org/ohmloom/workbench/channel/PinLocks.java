package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.edit.ChangeDevice;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.words.Words;

/** Locks channels to the pins a person chooses, as edits that can be undone. */
final class PinLocks {

    private PinLocks() {}

    /**
     * Locks what a need is read or switched by to a pin; a channel that has the pin and is not locked gives way.
     *
     * @throws IllegalArgumentException when that cannot be; one sentence says why
     */
    static Edit lock(Harness harness, PinNeed need, PinPlace place, Words words) {
        PinRole role = need.mainLine()
                .orElseThrow(() -> new IllegalArgumentException(words.get("lock.no-line", need.id())))
                .role();
        if (need.wired() && !need.at().equals(Optional.of(place.at()))) {
            throw new IllegalArgumentException(words.get("lock.wired", need.id()));
        }
        if (!place.pin().capabilities().contains(role)) {
            throw new IllegalArgumentException(
                    words.get("lock.other-kind", place.text(), need.id(), PinWords.role(role)));
        }
        place.channels().stream()
                .filter(channel -> channel.locked()
                        && !channel.component().equals(need.component().id()))
                .findFirst()
                .ifPresent(other -> {
                    throw new IllegalArgumentException(words.get("lock.taken", place.text(), other.component()));
                });
        List<Edit> edits = new ArrayList<>();
        Text label = words.text("lock.edit", need.id(), place.text());
        for (Component component : harness.components().all()) {
            if (component.device() instanceof ControlUnit) {
                boolean here = component.id().equals(place.unit().id());
                edits.add(new ChangeDevice(
                        label,
                        component.id(),
                        device -> here
                                ? locked((ControlUnit) device, need, place.pin().name(), role)
                                : without((ControlUnit) device, need)));
            }
        }
        return new Compound(label, edits);
    }

    private static ControlUnit without(ControlUnit unit, PinNeed need) {
        return unit.withChannels(unit.channels().stream()
                .filter(channel -> !channel.component().equals(need.component().id()))
                .toList());
    }

    private static ControlUnit locked(ControlUnit unit, PinNeed need, String pin, PinRole role) {
        Optional<Channel> before = unit.channels().stream()
                .filter(channel -> channel.component().equals(need.component().id()))
                .findFirst();
        List<Channel> channels = new ArrayList<>(without(unit, need).channels());
        channels.removeIf(channel -> channel.pin().equals(pin));
        channels.add(new Channel(
                before.map(Channel::name).orElseGet(() -> name(need.component().name(), unit, channels)),
                pin,
                need.component().id(),
                before.flatMap(Channel::supplyPin),
                before.flatMap(Channel::returnPin),
                true));
        List<Pin> pins = unit.pins().stream()
                .map(each -> each.name().equals(pin) ? each.setUpAs(role) : each)
                .toList();
        return unit.withPlan(pins, channels);
    }

    /** What people call the component, as short as the unit asks, with a number where the unit has that name already. */
    private static String name(String wanted, ControlUnit unit, List<Channel> others) {
        Set<String> taken = others.stream().map(Channel::name).collect(Collectors.toSet());
        int most = unit.nameCharacters().orElse(Integer.MAX_VALUE);
        String name = cut(wanted, "", most);
        for (int number = 2; taken.contains(name); number++) {
            name = cut(wanted, " " + number, most);
        }
        return name;
    }

    private static String cut(String text, String behind, int most) {
        int room = Math.max(0, most - behind.length());
        return (text.length() <= room ? text : text.substring(0, room).strip()) + behind;
    }

    /** Lets a plan move a channel again. */
    static Optional<Edit> unlock(PinNeed need, Words words) {
        return need.at()
                .filter(at -> need.isLocked())
                .map(at -> new ChangeDevice(words.text("unlock.edit", need.id()), at.unit(), device -> {
                    ControlUnit unit = (ControlUnit) device;
                    return unit.withChannels(unit.channels().stream()
                            .map(channel ->
                                    channel.component().equals(need.component().id()) ? channel.locked(false) : channel)
                            .toList());
                }));
    }
}
