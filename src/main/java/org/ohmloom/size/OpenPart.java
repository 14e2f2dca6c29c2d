package org.ohmloom.size;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Gauge;

/**
 * Wires that get one size together, and the sizes they may get, thinnest first. Mostly it is one wire.
 *
 * @param wires        the wires, 1 or more
 * @param rows         the sizes all of them may have, 1 or more
 */
record OpenPart(List<Wire> wires, List<ConductorRow> rows) {

    OpenPart {
        wires = List.copyOf(wires);
        rows = List.copyOf(rows);
    }

    /**
     * The parts of the wires whose size is open.
     *
     * @param chooser says what each wire may have but for drop
     * @param open    which wires are open
     * @param scope   what the choice may do to them
     */
    static List<OpenPart> of(ConductorChooser chooser, Predicate<Wire> open, JointScope scope) {
        Map<String, OpenPart> parts = new LinkedHashMap<>();
        SizingFacts facts = chooser.facts();
        for (Wire wire : facts.harness().wires().all()) {
            if (!open.test(wire)) {
                continue;
            }
            List<ConductorRow> rows = rows(chooser, wire, scope);
            if (rows.isEmpty()) {
                continue;
            }
            String key =
                    CircuitSizes.key(facts, wire).map(text -> "circuit " + text).orElse("wire " + wire.id());
            OpenPart known = parts.get(key);
            OpenPart part = new OpenPart(List.of(wire), rows);
            OpenPart joined = known == null ? part : known.with(part);
            parts.put(
                    joined.rows().isEmpty() ? "wire " + wire.id() : key,
                    joined.rows().isEmpty() ? part : joined);
        }
        return List.copyOf(parts.values());
    }

    private static List<ConductorRow> rows(ConductorChooser chooser, Wire wire, JointScope scope) {
        List<ConductorRow> allowed =
                chooser.allowed(wire, !scope.beyondContacts().contains(wire.id()));
        if (!scope.neverThinner() || wire.gauge().isEmpty()) {
            return allowed;
        }
        double present = chooser.facts().row(wire, wire.gauge().get()).copperAreaMm2();
        return allowed.stream().filter(row -> row.copperAreaMm2() >= present).toList();
    }

    private OpenPart with(OpenPart other) {
        List<Wire> all = new ArrayList<>(wires);
        all.addAll(other.wires());
        return new OpenPart(all, rows.stream().filter(other.rows()::contains).toList());
    }

    /** Length of all its wires together, m. */
    double lengthMetres(SizingFacts facts) {
        return wires.stream()
                .mapToDouble(wire -> facts.input().routes().lengthMetres(wire).orElse(0))
                .sum();
    }

    /** The place of a size among its own. */
    OptionalInt place(Gauge gauge) {
        return IntStream.range(0, rows.size())
                .filter(k -> rows.get(k).gauge().equals(gauge))
                .findFirst();
    }

    /** This part with its sizes from the cheapest to the dearest. */
    OpenPart byCost(UnitCost cost) {
        return new OpenPart(
                wires,
                rows.stream().sorted(Comparator.comparingDouble(cost::perMetre)).toList());
    }

    /** This part with some of its sizes only. */
    OpenPart only(List<Integer> places) {
        return new OpenPart(wires, places.stream().map(rows::get).toList());
    }
}
