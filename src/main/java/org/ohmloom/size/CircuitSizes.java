package org.ohmloom.size;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.Status;

/**
 * One size for all wires of a circuit, where the design rules ask for it: the largest any of them needs or, of those to be
 * made, has. Wires in the vehicle and locked ones have no part in it.
 */
final class CircuitSizes {
    private static final Citation OWN_RULE = new Citation(
            "none", "none", "design rules of this harness", "one size per circuit", Status.COMMON_PRACTICE);

    private final SizingFacts facts;

    CircuitSizes(SizingFacts facts) {
        this.facts = facts;
    }

    /** What a wire's size is shared by: its circuit and family; empty when it stands alone. */
    static Optional<String> key(SizingFacts facts, Wire wire) {
        boolean asked = facts.harness().rules().sizingRules().oneSizePerCircuit();
        return !asked || wire.existing() || wire.locked()
                ? Optional.empty()
                : wire.circuit()
                        .map(circuit -> circuit + " in " + facts.family(wire).id());
    }

    /** The choices with every wire of a circuit at the largest size among them. */
    SortedMap<WireId, ConductorChoice> level(SortedMap<WireId, ConductorChoice> choices) {
        Map<String, ConductorRow> largest = new HashMap<>();
        Map<String, WireId> from = new HashMap<>();
        choices.values()
                .forEach(choice -> key(choice).ifPresent(key -> rows(choice).forEach(row -> {
                    ConductorRow known = largest.get(key);
                    if (known == null || row.copperAreaMm2() > known.copperAreaMm2()) {
                        largest.put(key, row);
                        from.put(key, choice.wire());
                    }
                })));
        SortedMap<WireId, ConductorChoice> levelled = new TreeMap<>(choices);
        levelled.replaceAll((wire, choice) -> key(choice)
                .filter(key -> choice.gauge().isPresent() && largest.containsKey(key))
                .map(key -> raised(choice, largest.get(key), from.get(key)))
                .orElse(choice));
        return levelled;
    }

    private Optional<String> key(ConductorChoice choice) {
        return key(facts, wire(choice));
    }

    private Wire wire(ConductorChoice choice) {
        return facts.harness().wires().get(choice.wire());
    }

    private List<ConductorRow> rows(ConductorChoice choice) {
        ConductorFamily family = facts.family(wire(choice));
        List<ConductorRow> rows = new ArrayList<>();
        choice.gauge().flatMap(family::row).ifPresent(rows::add);
        wire(choice).gauge().flatMap(family::row).ifPresent(rows::add);
        return rows;
    }

    private static ConductorChoice raised(ConductorChoice choice, ConductorRow row, WireId from) {
        if (choice.governing().areaMm2() >= row.copperAreaMm2()) {
            return choice;
        }
        Requirement level = new Requirement(
                Governor.CIRCUIT,
                Optional.of(row.gauge()),
                row.copperAreaMm2(),
                SizeTexts.text("circuit", from, row.gauge().text()),
                OWN_RULE,
                List.of());
        List<Requirement> requirements = new ArrayList<>(choice.requirements());
        requirements.add(level);
        return new ConductorChoice(choice.wire(), Optional.of(row.gauge()), level, requirements);
    }
}
