package org.ohmloom.analysis.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.units.Dimension;

/**
 * Which computed numbers differ between two analyses. Numbers of things that only one of them has are left out: the
 * list of elements tells of those.
 */
final class ResultChanges {
    private ResultChanges() {}

    /** What a number is. */
    private record Quantity(String words, Dimension dimension, double noise) {}

    private static final Quantity LENGTH = new Quantity("length", Dimension.LENGTH, 0.5e-3);
    private static final Quantity CURRENT = new Quantity("largest lasting RMS current", Dimension.CURRENT, 1e-3);
    private static final Quantity DROP = new Quantity("largest drop", Dimension.VOLTAGE, 1e-3);
    private static final Quantity CONDUCTOR = new Quantity("conductor temperature", Dimension.TEMPERATURE, 0.1);
    private static final Quantity LOAD_VOLTS = new Quantity("least voltage while on", Dimension.VOLTAGE, 1e-3);
    private static final Quantity LOAD_DROP = new Quantity("largest drop while on", Dimension.VOLTAGE, 1e-3);
    private static final Quantity DEVICE_AMPS = new Quantity("largest lasting load", Dimension.CURRENT, 1e-3);

    static List<ResultChange> between(Analysis before, Analysis after) {
        List<ResultChange> changes = new ArrayList<>();
        compare(wires(before), wires(after), changes);
        compare(loads(before), loads(after), changes);
        compare(devices(before), devices(after), changes);
        return changes;
    }

    /** The numbers of one thing. */
    private record Numbers(String name, Map<Quantity, Double> values) {
        static Numbers of(String name) {
            return new Numbers(name, new TreeMap<>(java.util.Comparator.comparing(Quantity::words)));
        }
    }

    private static SortedMap<String, Numbers> wires(Analysis analysis) {
        SortedMap<String, Numbers> wires = new TreeMap<>(NaturalOrder.INSTANCE);
        analysis.ratings().forEach((id, rating) -> {
            Numbers numbers = Numbers.of("");
            rating.lengthMetres().ifPresent(metres -> numbers.values.put(LENGTH, metres));
            numbers.values.put(CURRENT, rating.worstAmps());
            numbers.values.put(DROP, rating.worstDropVolts());
            numbers.values.put(CONDUCTOR, rating.celsius());
            wires.put(id.value(), numbers);
        });
        return wires;
    }

    private static SortedMap<String, Numbers> loads(Analysis analysis) {
        SortedMap<String, Numbers> loads = new TreeMap<>(NaturalOrder.INSTANCE);
        analysis.states().forEach(state -> analysis.solution(state.id())
                .ifPresent(solution -> solution.loads().forEach((id, volts) -> {
                    if (state.asksOn(id)) {
                        Numbers numbers = loads.computeIfAbsent(
                                id.value(),
                                key -> Numbers.of(
                                        analysis.harness().components().get(id).name()));
                        numbers.values.merge(LOAD_VOLTS, volts.on().volts(), Math::min);
                        numbers.values.merge(LOAD_DROP, volts.onDropVolts(), Math::max);
                    }
                })));
        return loads;
    }

    private static SortedMap<String, Numbers> devices(Analysis analysis) {
        SortedMap<String, Numbers> devices = new TreeMap<>(NaturalOrder.INSTANCE);
        analysis.devices().forEach((id, choice) -> {
            Numbers numbers = Numbers.of(analysis.harness().components().get(id).name());
            numbers.values.put(DEVICE_AMPS, choice.loadAmps());
            devices.put(id.value(), numbers);
        });
        return devices;
    }

    private static void compare(
            SortedMap<String, Numbers> before, SortedMap<String, Numbers> after, List<ResultChange> changes) {
        after.forEach((id, now) -> {
            Numbers old = before.get(id);
            if (old == null) {
                return;
            }
            SortedSet<Quantity> all = new TreeSet<>(java.util.Comparator.comparing(Quantity::words));
            all.addAll(old.values.keySet());
            all.addAll(now.values.keySet());
            for (Quantity quantity : all) {
                OptionalDouble was = value(old, quantity);
                OptionalDouble is = value(now, quantity);
                if (differs(was, is, quantity)) {
                    changes.add(new ResultChange(id, now.name, quantity.words, quantity.dimension, was, is));
                }
            }
        });
    }

    private static OptionalDouble value(Numbers numbers, Quantity quantity) {
        Double value = numbers.values.get(quantity);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** Whether a person would call two numbers different. */
    private static boolean differs(OptionalDouble before, OptionalDouble after, Quantity quantity) {
        if (before.isPresent() != after.isPresent()) {
            return true;
        }
        if (before.isEmpty()) {
            return false;
        }
        double step = Math.abs(after.getAsDouble() - before.getAsDouble());
        double size = Math.max(Math.abs(after.getAsDouble()), Math.abs(before.getAsDouble()));
        return step > quantity.noise && step >= RevisionComparison.LEAST_FRACTION * size;
    }
}
