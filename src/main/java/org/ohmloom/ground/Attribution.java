package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.LinearNetwork;
import org.ohmloom.solve.Solution;

/**
 * Divides a voltage or a current of a solved network among the currents that make it, exactly.
 *
 * <p>Everything that is no plain resistance (load, sensor, diode, clamp, capacitor, output that switches, converter, reference
 * supply, source) is replaced by its solved mean current; only the reference source of its island stays and takes up the
 * difference when one of those currents changes. What is left is a network of resistances, in which effects add up
 * (superposition). Each current I drawn at p and put back at q makes I x (T(q) - T(p)), where T(x) is the transfer resistance: the
 * voltage sought when 1 A is put in at x and taken out at the negative terminal of the reference source. By reciprocity T
 * of all points is one solution, with 1 A put in at one end of the voltage sought and taken out at the other.
 *
 * <p>Ends in a part that no resistance joins to the two points do not count. A part without the reference source takes its
 * balance at the second of the two points. The voltage of the reference source itself makes a share only where resistances
 * alone lead from its one terminal to the other.
 */
public final class Attribution {

    /** What stands in for a source without resistance, ohm; the voltage is corrected for it. */
    private static final double IDEAL_OHMS = 1e-12;

    /** Parts smaller than this share of all are left out. */
    private static final double LEAST_FRACTION = 1e-14;

    /**
     * What one current makes.
     *
     * @param branch       the branch that carries it
     * @param amps         the current, mean, A, from {@code from} to {@code to}
     * @param transferOhms what 1 A of it makes, V for each A, or A for each A where a current was divided
     * @param value        its part, V or A; {@code amps} times {@code transferOhms} but for the reference source
     */
    public record Part(Branch branch, double amps, double transferOhms, double value) {}

    private final LinearNetwork network;
    private final LinearNetwork.Response bySources;
    private final List<BranchFlow> injected = new ArrayList<>();
    private final List<BranchFlow> references;
    private final Map<BranchId, Double> ohms = new HashMap<>();

    private Attribution(
            SortedSet<PointId> points,
            Optional<PointId> datum,
            Collection<BranchFlow> flows,
            BooleanSupplier cancelled) {
        references = references(flows, datum);
        List<LinearNetwork.Link> links = new ArrayList<>();
        for (BranchFlow flow : flows) {
            Branch branch = flow.branch();
            if (flow.ohms().isPresent()) {
                ohms.put(branch.id(), flow.ohms().getAsDouble());
                links.add(new LinearNetwork.Link(
                        branch.from(), branch.to(), flow.ohms().getAsDouble(), 0));
            } else if (references.contains(flow)) {
                links.add(reference(flow));
            } else if (flow.amps() != 0 || flow.onAmps() != 0) {
                injected.add(flow);
            }
        }
        network = LinearNetwork.of(points, links, cancelled);
        bySources = network.ofSources();
    }

    /** The attribution of a solution. */
    public static Attribution of(Solution solution, BooleanSupplier cancelled) {
        return of(
                solution.network().points(),
                solution.network().datum(),
                solution.flows().values(),
                cancelled);
    }

    /**
     * The attribution of solved flows.
     *
     * @param points    all points
     * @param datum     negative terminal of the first source
     * @param flows     solved flows of all branches
     * @param cancelled asked now and then; true stops the work
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static Attribution of(
            SortedSet<PointId> points,
            Optional<PointId> datum,
            Collection<BranchFlow> flows,
            BooleanSupplier cancelled) {
        return new Attribution(points, datum, flows, cancelled);
    }

    /** The source that stays in each island: at the datum if there is one, else the first source, else the first regulated output. */
    private static List<BranchFlow> references(Collection<BranchFlow> flows, Optional<PointId> datum) {
        Map<String, BranchFlow> byIsland = new HashMap<>();
        for (BranchFlow flow : flows) {
            if (flow.branch().law() instanceof Law.VoltageSource) {
                byIsland.merge(
                        flow.island(), flow, (one, other) -> rank(other, datum) < rank(one, datum) ? other : one);
            }
        }
        return List.copyOf(byIsland.values());
    }

    private static int rank(BranchFlow flow, Optional<PointId> datum) {
        if (flow.branch().kind() != BranchKind.SOURCE) {
            return 2;
        }
        return datum.equals(Optional.of(flow.branch().from())) ? 0 : 1;
    }

    /** The source with the voltage it was solved to, V(to) - V(from) = emf - ohms x amps. */
    private static LinearNetwork.Link reference(BranchFlow flow) {
        Law.VoltageSource law = (Law.VoltageSource) flow.branch().law();
        double sourceOhms = Math.max(IDEAL_OHMS, flow.amps() < 0 ? law.chargeOhms() : law.ohms());
        return new LinearNetwork.Link(
                flow.branch().from(), flow.branch().to(), sourceOhms, sourceOhms * flow.amps() - flow.dropVolts());
    }

    /**
     * The parts of V(at) - V(reference), one for each current that makes some of it; they sum to it.
     *
     * @return empty when no resistances lead from one point to the other
     */
    public Optional<List<Part>> ofVolts(PointId at, PointId reference) {
        return network.together(at, reference) ? Optional.of(parts(at, reference, 1)) : Optional.empty();
    }

    /**
     * The parts of the current of a resistance, from {@code from} to {@code to}.
     *
     * @return empty when the branch was not solved as a plain resistance
     */
    public Optional<List<Part>> ofAmps(Branch resistance) {
        Double known = ohms.get(resistance.id());
        return known == null ? Optional.empty() : Optional.of(parts(resistance.from(), resistance.to(), 1 / known));
    }

    private List<Part> parts(PointId at, PointId reference, double scale) {
        if (at.equals(reference)) {
            return List.of();
        }
        LinearNetwork.Response drawn = network.ofDraw(at, reference);
        Optional<BranchFlow> source = references.stream()
                .filter(each -> network.together(at, each.branch().from()))
                .findFirst();
        PointId balance = source.map(each -> each.branch().from()).orElse(reference);
        List<Part> parts = new ArrayList<>();
        for (BranchFlow flow : injected) {
            Branch branch = flow.branch();
            double ohmsPerAmp =
                    (transfer(drawn, at, branch.to(), balance) - transfer(drawn, at, branch.from(), balance)) * scale;
            if (ohmsPerAmp != 0) {
                parts.add(new Part(branch, flow.amps(), ohmsPerAmp, flow.amps() * ohmsPerAmp));
            }
        }
        source.ifPresent(
                each -> parts.add(new Part(each.branch(), each.amps(), 0, bySources.along(at, reference) * scale)));
        double all = parts.stream().mapToDouble(part -> Math.abs(part.value())).sum();
        parts.removeIf(part -> Math.abs(part.value()) <= LEAST_FRACTION * all && !mayRipple(part, all));
        return Collections.unmodifiableList(parts);
    }

    private static boolean mayRipple(Part part, double all) {
        return part.amps() == 0 && Math.abs(part.transferOhms()) > LEAST_FRACTION * all;
    }

    /** T of a point: minus the response to a draw, against the point that takes the balance; 0 outside the part. */
    private double transfer(LinearNetwork.Response drawn, PointId at, PointId point, PointId balance) {
        return network.together(at, point) ? -drawn.along(point, balance) : 0;
    }
}
