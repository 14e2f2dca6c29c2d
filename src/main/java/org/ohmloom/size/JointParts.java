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

    /**
     * How a wire warms in a state: at its limit by the heat balance as a trial of the size says, and below it by a power of
     * that trial's rise such that the present size is as warm as it was solved.
     *
     * @param rmsAmps       current that heats it, A
     * @param exponentRatio power of the trial's rise over that at the limit; still air cools a cooler wire less, so it is
     *                      mostly below 1
     * @param riseRatio     what is left to a factor, where neighbours warm it
     */
    private record Warmth(double rmsAmps, double exponentRatio, double riseRatio) {}

    private static final double LEAST_EXPONENT = 0.7;

    /** Rise too small to tell a ratio from, K. */
    private static final double LEAST_RISE_KELVIN = 0.1;

    private final SizingFacts facts;
    private final Map<Curve, Integer> curves = new HashMap<>();
    private final Map<Curve, Warmth> warmth = new HashMap<>();
    private final List<OpenPart> useful = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();

    /** The parts of open wires, with the resistances that agree with those solved at their present sizes. */
    JointParts(
            SizingFacts facts,
            ProvisionalSizes sizes,
            UnitCost cost,
            List<OpenPart> open,
            List<BudgetReading.Read> budgets) {
        this.facts = facts;
        Map<WireId, Map<StateId, Warmth>> byWire = new HashMap<>();
        for (BudgetReading.Read read : budgets) {
            for (int k = 0; k < read.rmsAmps().size(); k++) {
                Wire wire =
                        facts.harness().wires().get(read.budget().wires().get(k).wire());
                double rmsAmps = read.rmsAmps().get(k);
                double ohms = read.ohms().get(k);
                byWire.computeIfAbsent(wire.id(), id -> new LinkedHashMap<>())
                        .computeIfAbsent(
                                read.budget().state(), state -> warmth(wire, sizes.gauge(wire), rmsAmps, ohms));
            }
        }
        open.forEach(part -> add(part.byCost(cost), cost, byWire));
    }

    private void add(OpenPart part, UnitCost cost, Map<WireId, Map<StateId, Warmth>> byWire) {
        double length = part.lengthMetres(facts);
        double[] costs = part.rows().stream()
                .mapToDouble(row -> cost.perMetre(row) * length)
                .toArray();
        List<double[]> ohms = new ArrayList<>();
        for (Wire wire : part.wires()) {
            byWire.getOrDefault(wire.id(), Map.of()).forEach((state, warm) -> {
                Curve curve = new Curve(wire.id(), state);
                curves.put(curve, ohms.size());
                warmth.put(curve, warm);
                ohms.add(part.rows().stream()
                        .mapToDouble(row -> ohms(wire, row, warm))
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

    private Warmth warmth(Wire wire, Gauge gauge, double rmsAmps, double solvedOhms) {
        double trial = facts.riseKelvin(wire, gauge, rmsAmps);
        double full = facts.fullRiseKelvin(wire, gauge);
        if (rmsAmps == 0 || trial < LEAST_RISE_KELVIN || full < LEAST_RISE_KELVIN) {
            return new Warmth(rmsAmps, 1, 1);
        }
        ConductorRow row = facts.row(wire, gauge);
        double cold = facts.ohmsPerMetre(wire, row, 0);
        double perKelvin = (facts.ohmsPerMetre(wire, row, trial) / cold - 1) / trial;
        double length = facts.input().routes().lengthMetres(wire).orElse(0);
        double solved = Math.max(0, (solvedOhms / (cold * length) - 1) / perKelvin);
        double wanted = trial < full && solved > 0 ? Math.log(solved / full) / Math.log(trial / full) : 1;
        double exponent = Math.max(LEAST_EXPONENT, Math.min(1, wanted));
        return new Warmth(rmsAmps, exponent, solved / (full * Math.pow(trial / full, exponent)));
    }

    private double ohms(Wire wire, ConductorRow row, Warmth warm) {
        return facts.ohmsPerMetre(wire, row, riseKelvin(wire, row, warm))
                * facts.input().routes().lengthMetres(wire).orElse(0);
    }

    private double riseKelvin(Wire wire, ConductorRow row, Warmth warm) {
        double full = facts.fullRiseKelvin(wire, row.gauge());
        if (warm.rmsAmps() == 0 || full < LEAST_RISE_KELVIN) {
            return 0;
        }
        double trial = Math.max(0, facts.riseKelvin(wire, row.gauge(), warm.rmsAmps()));
        return warm.riseRatio() * full * Math.pow(trial / full, warm.exponentRatio());
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

    /** Resistance of a wire in a state with a size, ohm. */
    double ohms(WireId wire, StateId state, ConductorRow row) {
        return ohms(facts.harness().wires().get(wire), row, warmth.get(new Curve(wire, state)));
    }
}
