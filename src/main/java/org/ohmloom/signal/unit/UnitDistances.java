package org.ohmloom.signal.unit;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.way.Ways;

/** How far components lie from control units by the ways their wires would take. */
final class UnitDistances {
    private final Harness harness;
    private final Ways ways;
    private final Map<BreakoutId, Map<String, Double>> known = new HashMap<>();
    private final Map<String, BreakoutId> units = new TreeMap<>();

    UnitDistances(Harness harness, Iterable<Component> controlUnits) {
        this.harness = harness;
        this.ways = new Ways(harness, pair -> true);
        for (Component unit : controlUnits) {
            at(unit).ifPresent(place -> units.put(unit.id().value(), place));
        }
    }

    /** Where a component is reached: at its first connector, else by itself. */
    private Optional<BreakoutId> at(Component component) {
        return harness.connectors().all().stream()
                .filter(each -> each.component().filter(component.id()::equals).isPresent())
                .map(harness::breakout)
                .flatMap(Optional::stream)
                .findFirst()
                .or(component::at);
    }

    /** Metres to each unit that can be reached; empty where the component has no place. */
    Map<String, Double> metres(Component component) {
        return at(component)
                .map(place -> known.computeIfAbsent(place, this::measured))
                .orElse(Map.of());
    }

    private Map<String, Double> measured(BreakoutId from) {
        Map<BreakoutId, Double> reached = ways.metres(from, units.values());
        Map<String, Double> metres = new TreeMap<>();
        units.forEach((unit, place) -> {
            if (reached.containsKey(place)) {
                metres.put(unit, reached.get(place));
            }
        });
        return Collections.unmodifiableMap(metres);
    }
}
