package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.edit.SetLoadCurrent;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.edit.SetWireLength;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Setting;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;

/** Edits of the kinds that move currents, at random places of any harness. */
final class RandomEdits {

    private final Random random;

    RandomEdits(long seed) {
        random = new Random(seed);
    }

    /** The harness after one of them; some change nothing. */
    Harness after(Harness harness) {
        try {
            return switch (random.nextInt(8)) {
                case 0, 1 -> new SetWireLength(List.of(wire(harness)), OptionalDouble.of(0.1 + 8 * random.nextDouble()))
                        .apply(harness);
                case 2, 3 -> new SetWireGauge(List.of(wire(harness)), gauge(harness)).apply(harness);
                case 4, 5 -> loads(harness).isEmpty()
                        ? harness
                        : new SetLoadCurrent(List.of(pick(loads(harness))), 0.1 + 10 * random.nextDouble())
                                .apply(harness);
                case 6 -> switched(harness);
                default -> new TakeOut(List.of(pick(harness.elements().toList()).id())).apply(harness);
            };
        } catch (IllegalArgumentException refused) {
            return harness;
        }
    }

    private <T> T pick(List<T> many) {
        return many.get(random.nextInt(many.size()));
    }

    private WireId wire(Harness harness) {
        return pick(new ArrayList<>(harness.wires().ids()));
    }

    /** A size that another wire has, or none. */
    private Optional<Gauge> gauge(Harness harness) {
        SortedSet<Gauge> sizes = new TreeSet<>();
        harness.wires().all().stream().map(Wire::gauge).forEach(gauge -> gauge.ifPresent(sizes::add));
        return sizes.isEmpty() ? Optional.empty() : Optional.of(pick(new ArrayList<>(sizes)));
    }

    private static List<ComponentId> loads(Harness harness) {
        return harness.components().all().stream()
                .filter(component -> component.device() instanceof Load)
                .map(Component::id)
                .toList();
    }

    /** Something that a state says of a component turned round in it. */
    private Harness switched(Harness harness) {
        List<Component> components = new ArrayList<>(harness.components().all());
        List<OperatingState> states = new ArrayList<>(harness.states().all());
        if (components.isEmpty() || states.isEmpty()) {
            return harness;
        }
        OperatingState state = pick(states);
        ComponentId id = pick(components).id();
        Element changed = state.with(id, state.asksOn(id) ? Setting.OFF : Setting.ON);
        return harness.with(changed);
    }
}
