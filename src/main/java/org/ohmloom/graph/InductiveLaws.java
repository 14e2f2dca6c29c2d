package org.ohmloom.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;

/**
 * Settles the laws of inductive loads once the whole network is known.
 *
 * <p>Where nothing switches at a duty, coils are their resistance, and diodes, clamps and capacitors that only matter while
 * something switches are open. Otherwise every motor without a stated inductance that an output switches is asked whether its current finds a way from
 * its negative to its positive end while the outputs are off. A motor that states no inductance is taken to run on through that
 * way without ripple; where there is none, to take its current only while it is fed. Both are assumptions. The current of a coil or magnet motor
 * without a way breaks off, which the solution finds by itself and the review reports.
 */
final class InductiveLaws {

    /** L / R of a motor that states no inductance, in periods of the slowest clock. */
    static final double RIPPLE_FREE_PERIODS = 100;

    /** Time constant of running up of a motor that states none, s. */
    static final double FALLBACK_RUN_UP_SECONDS = 0.5;

    private final Network network;
    private final Harness harness;
    private final Map<PointId, List<Branch>> leaving = new HashMap<>();
    /** The ways of all sources with the outputs that switch on, and with them off. */
    private final Map<Boolean, List<Ways>> ways = new HashMap<>();

    private final Map<BranchId, Law> laws = new HashMap<>();
    private final List<Assumption> assumptions = new ArrayList<>();

    private InductiveLaws(Network network, Harness harness) {
        this.network = network;
        this.harness = harness;
    }

    /** The network with these laws settled. */
    static Network settle(Network network, Harness harness) {
        InductiveLaws settling = new InductiveLaws(network, harness);
        double slowestHertz = network.branches().values().stream()
                .map(Branch::law)
                .filter(Law.SwitchedResistance.class::isInstance)
                .mapToDouble(law -> ((Law.SwitchedResistance) law).pulse().frequencyHertz())
                .min()
                .orElse(0);
        boolean cycles = network.branches().values().stream().anyMatch(branch -> branch.law() instanceof Law.Cycled);
        if (slowestHertz > 0) {
            settling.follow(slowestHertz);
        } else if (!cycles) {
            settling.rest();
        }
        List<Assumption> all = new ArrayList<>(network.assumptions());
        all.addAll(settling.assumptions);
        return network.withLaws(settling.laws).withAssumptions(all);
    }

    private void rest() {
        for (Branch branch : network.branches().values()) {
            if (branch.kind().part() == BranchKind.Part.BYPASS) {
                laws.put(branch.id(), new Law.Open());
            } else if (branch.law() instanceof Law.Inductive coil) {
                laws.put(branch.id(), new Law.Resistance(coil.ohms()));
            }
        }
    }

    private void follow(double slowestHertz) {
        for (Branch branch : network.branches().values()) {
            leaving.computeIfAbsent(branch.from(), point -> new ArrayList<>()).add(branch);
            leaving.computeIfAbsent(branch.to(), point -> new ArrayList<>()).add(branch);
        }
        for (Branch branch : network.branches().values()) {
            if (branch.kind() == BranchKind.LOAD && branch.element().orElse(null) instanceof ComponentId id) {
                load(id).ifPresent(load -> follow(branch, id, load, slowestHertz));
            }
        }
    }

    private Optional<Load> load(ComponentId id) {
        return harness.components()
                .find(id)
                .map(Component::device)
                .filter(Load.class::isInstance)
                .map(Load.class::cast);
    }

    private void follow(Branch branch, ComponentId id, Load load, double slowestHertz) {
        boolean motor = load.draw() instanceof Draw.Motor && branch.law() instanceof Law.ConstantCurrent;
        if (!motor || !isFed(branch, true) || isFed(branch, false)) {
            return;
        }
        boolean freewheels = leads(
                branch.to(),
                branch.from(),
                each -> !each.equals(branch) && !(each.law() instanceof Law.SwitchedResistance));
        if (!freewheels) {
            assume(
                    id,
                    "Motor " + id + " states neither an inductance nor a freewheel path: its current is taken to flow "
                            + "only while its output is on.");
        } else {
            Draw.Motor draw = (Draw.Motor) load.draw();
            double ohms = draw.standstillOhms();
            laws.put(
                    branch.id(),
                    new Law.MagnetMotor(
                            ohms,
                            ohms * RIPPLE_FREE_PERIODS / slowestHertz,
                            draw.ratedVolts() - ohms * draw.ratedAmps(),
                            draw.ratedAmps(),
                            0,
                            false,
                            Math.max(FALLBACK_RUN_UP_SECONDS, RIPPLE_FREE_PERIODS / slowestHertz)));
            assume(
                    id,
                    "Motor " + id + " states no inductance: it is taken as so large that its current has no ripple.");
        }
    }

    private void assume(ComponentId id, String text) {
        assumptions.add(new Assumption(id, text, Assumption.COMMON_PRACTICE));
    }

    /** Whether a source's current reaches a load and comes back, with the outputs that switch on or off. */
    private boolean isFed(Branch load, boolean outputsOn) {
        Predicate<Branch> conducts = each -> each.kind().part() != BranchKind.Part.LOAD
                && each.kind().part() != BranchKind.Part.BYPASS
                && (outputsOn || !(each.law() instanceof Law.SwitchedResistance));
        return ways.computeIfAbsent(outputsOn, on -> ways(conducts)).stream()
                .anyMatch(way -> way.out().contains(load.from()) && way.back().contains(load.to()));
    }

    /**
     * Where the current of a source gets to, and from where it comes back.
     *
     * @param out  points it reaches
     * @param back points it returns from
     */
    private record Ways(Set<PointId> out, Set<PointId> back) {}

    private List<Ways> ways(Predicate<Branch> conducts) {
        return network.branches().values().stream()
                .filter(each -> each.law() instanceof Law.VoltageSource)
                .map(source -> {
                    Predicate<Branch> beyond = conducts.and(each -> !each.equals(source));
                    return new Ways(
                            reached(source.to(), beyond, InductiveLaws::passes),
                            reached(source.from(), beyond, (branch, point) -> passes(branch, across(branch, point))));
                })
                .toList();
    }

    /** Whether current can go from one point to another through branches that conduct that way. */
    private boolean leads(PointId from, PointId to, Predicate<Branch> conducts) {
        return reached(from, conducts, InductiveLaws::passes).contains(to);
    }

    private Set<PointId> reached(PointId from, Predicate<Branch> conducts, BiPredicate<Branch, PointId> passes) {
        Set<PointId> seen = new HashSet<>(Set.of(from));
        Deque<PointId> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            PointId point = open.remove();
            for (Branch branch : leaving.getOrDefault(point, List.of())) {
                if (passes.test(branch, point) && conducts.test(branch)) {
                    PointId next = across(branch, point);
                    if (seen.add(next)) {
                        open.add(next);
                    }
                }
            }
        }
        return seen;
    }

    private static PointId across(Branch branch, PointId point) {
        return branch.from().equals(point) ? branch.to() : branch.from();
    }

    private static boolean passes(Branch branch, PointId point) {
        Law law = branch.law();
        if (law instanceof Law.Open
                || law instanceof Law.SupplyCapacitor
                || branch.kind().part() == BranchKind.Part.LOAD) {
            return false;
        }
        return !(law instanceof Law.Threshold) || branch.from().equals(point);
    }
}
