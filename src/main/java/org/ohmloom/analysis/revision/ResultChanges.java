package org.ohmloom.analysis.revision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.Unit;

/**
 * Which computed numbers differ between two analyses. Numbers of things that only one of them has are left out: the
 * list of elements tells of those.
 */
final class ResultChanges {
    private ResultChanges() {}

    /**
     * A kind of number.
     *
     * @param words what it is
     * @param step  the least step that counts, in the canonical unit
     */
    private record Kind(String words, Quantity step) {
        static Kind of(String words, double leastStep, Unit unit) {
            return new Kind(words, new Quantity(leastStep, unit));
        }
    }

    private static final Kind LENGTH = Kind.of("length", 0.5e-3, Unit.METRE);
    private static final Kind CURRENT = Kind.of("largest lasting RMS current", 1e-3, Unit.AMP);
    private static final Kind DROP = Kind.of("largest drop", 1e-3, Unit.VOLT);
    private static final Kind SIZE = Kind.of("conductor size", 1e-6, Unit.SQUARE_MILLIMETRE);
    private static final Kind AMPACITY_LEFT = Kind.of("ampacity left over", 1e-3, Unit.AMP);
    private static final Kind CONDUCTOR = Kind.of("conductor temperature", 0.1, Unit.DEGREE_CELSIUS);
    private static final Kind LOAD_VOLTS = Kind.of("least voltage while on", 1e-3, Unit.VOLT);
    private static final Kind LOAD_DROP = Kind.of("largest drop while on", 1e-3, Unit.VOLT);
    private static final Kind LOAD_AMPS = Kind.of("largest current while on", 1e-3, Unit.AMP);
    private static final Kind LOAD_LEFT = Kind.of("drop still allowed", 1e-3, Unit.VOLT);
    private static final Kind WIRES_LENGTH = Kind.of("length of wires to be made", 0.5e-3, Unit.METRE);
    private static final Kind COPPER = Kind.of("copper in wires to be made", 0.05e-3, Unit.KILOGRAM);
    private static final Kind MASS = Kind.of("mass of wires and coverings", 0.05e-3, Unit.KILOGRAM);
    private static final Kind WORST_DROP = Kind.of("largest drop of any load", 1e-3, Unit.VOLT);
    private static final Kind DEVICE_AMPS = Kind.of("largest lasting load", 1e-3, Unit.AMP);

    static List<ResultChange> between(Analysis before, Analysis after) {
        List<ResultChange> changes = new ArrayList<>();
        compare(wires(before), wires(after), changes);
        compare(loads(before), loads(after), changes);
        compare(devices(before), devices(after), changes);
        return changes;
    }

    /** Which sums over the whole harness differ. */
    static List<ResultChange> totals(Analysis before, Analysis after) {
        List<ResultChange> changes = new ArrayList<>();
        compare(whole(before), whole(after), changes);
        return changes;
    }

    private static SortedMap<String, Numbers> whole(Analysis analysis) {
        Numbers numbers = Numbers.of("");
        numbers.values.put(WIRES_LENGTH, analysis.totals().lengthMetres());
        numbers.values.put(COPPER, analysis.totals().copperKg());
        numbers.values.put(MASS, analysis.evidence().bundles().massKg());
        numbers.values.put(WORST_DROP, analysis.totals().worstDropVolts());
        SortedMap<String, Numbers> whole = new TreeMap<>(NaturalOrder.INSTANCE);
        whole.put("", numbers);
        return whole;
    }

    /** The numbers of one thing. */
    private record Numbers(String name, Map<Kind, Double> values) {
        static Numbers of(String name) {
            return new Numbers(name, new TreeMap<>(Comparator.comparing(Kind::words)));
        }
    }

    private static SortedMap<String, Numbers> wires(Analysis analysis) {
        SortedMap<String, Numbers> wires = new TreeMap<>(NaturalOrder.INSTANCE);
        analysis.ratings().forEach((id, rating) -> {
            Numbers numbers = Numbers.of("");
            rating.lengthMetres().ifPresent(metres -> numbers.values.put(LENGTH, metres));
            numbers.values.put(SIZE, rating.areaMm2());
            rating.ampacity().ifPresent(may -> numbers.values.put(AMPACITY_LEFT, may.limitAmps() - rating.worstAmps()));
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
                        numbers.values.merge(LOAD_AMPS, Math.abs(volts.on().amps()), Math::max);
                        numbers.values.merge(LOAD_LEFT, volts.limitVolts() - volts.onDropVolts(), Math::min);
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
            SortedSet<Kind> all = new TreeSet<>(Comparator.comparing(Kind::words));
            all.addAll(old.values.keySet());
            all.addAll(now.values.keySet());
            for (Kind kind : all) {
                Optional<Quantity> was = value(old, kind);
                Optional<Quantity> is = value(now, kind);
                if (differs(was, is, kind)) {
                    changes.add(new ResultChange(id, now.name, kind.words, was, is));
                }
            }
        });
    }

    private static Optional<Quantity> value(Numbers numbers, Kind kind) {
        return Optional.ofNullable(numbers.values.get(kind)).map(value -> new Quantity(value, kind.step.unit()));
    }

    /** Whether a person would call two numbers different. */
    private static boolean differs(Optional<Quantity> before, Optional<Quantity> after, Kind kind) {
        if (before.isPresent() != after.isPresent()) {
            return true;
        }
        if (before.isEmpty()) {
            return false;
        }
        double old = before.get().value();
        double now = after.get().value();
        double larger = Math.max(Math.abs(old), Math.abs(now));
        return Math.abs(now - old) > kind.step.value()
                && Math.abs(now - old) >= RevisionComparison.LEAST_FRACTION * larger;
    }
}
