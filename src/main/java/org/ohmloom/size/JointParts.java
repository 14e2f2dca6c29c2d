package org.ohmloom.size;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.joint.Part;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Gauge;

/** The parts of a {@link JointModel} with their costs and, for each wire and state, their curve of resistance. */
final class JointParts {

    private record Curve(WireId wire, StateId state) {}

    private final SizingFacts facts;
    private final Map<Curve, Integer> curves = new HashMap<>();
    private final Map<Curve, Double> rms = new HashMap<>();
    private final List<OpenPart> useful = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();

    JointParts(SizingFacts facts, UnitCost cost, List<OpenPart> open, List<BudgetReading.Read> budgets) {
        this.facts = facts;
        Map<WireId, Map<StateId, Double>> byWire = new HashMap<>();
        for (BudgetReading.Read read : budgets) {
            for (int k = 0; k < read.rmsAmps().size(); k++) {
                byWire.computeIfAbsent(read.budget().wires().get(k).wire(), id -> new LinkedHashMap<>())
                        .put(read.budget().state(), read.rmsAmps().get(k));
            }
        }
        open.forEach(part -> add(part.byCost(cost), cost, byWire));
    }

    private void add(OpenPart part, UnitCost cost, Map<WireId, Map<StateId, Double>> byWire) {
        double length = part.lengthMetres(facts);
        double[] costs = part.rows().stream()
                .mapToDouble(row -> cost.perMetre(row) * length)
                .toArray();
        List<double[]> ohms = new ArrayList<>();
        for (Wire wire : part.wires()) {
            byWire.getOrDefault(wire.id(), Map.of()).forEach((state, amps) -> {
                Curve curve = new Curve(wire.id(), state);
                curves.put(curve, ohms.size());
                rms.put(curve, amps);
                ohms.add(part.rows().stream()
                        .mapToDouble(row -> ohms(wire, row, amps))
                        .toArray());
            });
        }
        List<Integer> kept = Part.useful(costs, ohms.toArray(double[][]::new));
        useful.add(part.only(kept));
        parts.add(Part.of(
                part.wires().get(0).id().value(),
                pick(costs, kept),
                ohms.stream().map(curve -> pick(curve, kept)).toArray(double[][]::new)));
    }

    private double ohms(Wire wire, ConductorRow row, double amps) {
        return facts.ohmsPerMetre(wire, row, amps)
                * facts.input().routes().lengthMetres(wire).orElse(0);
    }

    private static double[] pick(double[] values, List<Integer> places) {
        return places.stream().mapToDouble(place -> values[place]).toArray();
    }

    /** The parts with the sizes worth having, from the cheapest. */
    List<OpenPart> useful() {
        return useful;
    }

    /** The same for the solver. */
    List<Part> parts() {
        return parts;
    }

    /** The curve of a wire in a state. */
    int curve(WireId wire, StateId state) {
        return curves.get(new Curve(wire, state));
    }

    /** Resistance the model gives a wire in a state with a size, ohm. */
    double presentOhms(WireId wire, StateId state, Gauge gauge) {
        Wire named = facts.harness().wires().get(wire);
        return ohms(named, facts.row(named, gauge), rms.get(new Curve(wire, state)));
    }
}
