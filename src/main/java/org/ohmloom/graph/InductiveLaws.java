package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    /** What conducts while the outputs are off, freewheel diodes too. */
    private Optional<ConductingParts> freewheeling = Optional.empty();
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
        if (!freewheels(branch)) {
            assume(id, "assumed.no-freewheel");
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
            assume(id, "assumed.no-inductance");
        }
    }

    private void assume(ComponentId id, String key) {
        assumptions.add(new Assumption(id, NetworkTexts.text(key, id), Assumption.COMMON_PRACTICE));
    }

    /** Whether a source's current reaches a load and comes back, with the outputs that switch on or off. */
    private boolean isFed(Branch load, boolean outputsOn) {
        Predicate<Branch> conducts = each -> each.kind().part() != BranchKind.Part.LOAD
                && each.kind().part() != BranchKind.Part.BYPASS
                && (outputsOn || isLasting(each));
        return ways.computeIfAbsent(outputsOn, on -> ways(conducts)).stream().anyMatch(way -> way.feeds(load));
    }

    /**
     * Where the current of a source gets to, and from where it comes back.
     *
     * @param parts what conducts
     * @param out   parts it reaches
     * @param back  parts it returns from
     */
    private record Ways(ConductingParts parts, Set<PointId> out, Set<PointId> back) {
        boolean feeds(Branch load) {
            return out.contains(parts.of(load.from())) && back.contains(parts.of(load.to()));
        }
    }

    private List<Ways> ways(Predicate<Branch> conducts) {
        ConductingParts parts = parts(conducts);
        return network.branches().values().stream()
                .filter(each -> each.law() instanceof Law.VoltageSource)
                .map(source -> {
                    Predicate<Branch> others = each -> !each.equals(source);
                    return new Ways(parts, parts.from(source.to(), others), parts.to(source.from(), others));
                })
                .toList();
    }

    /** Whether the current of a load finds a way from its negative to its positive end while the outputs are off. */
    private boolean freewheels(Branch load) {
        ConductingParts parts = freewheeling.orElseGet(() -> parts(InductiveLaws::isLasting));
        freewheeling = Optional.of(parts);
        return parts.to(load.from(), each -> true).contains(parts.of(load.to()));
    }

    private ConductingParts parts(Predicate<Branch> conducts) {
        return new ConductingParts(
                network.points(),
                network.branches().values().stream()
                        .filter(each -> passes(each) && conducts.test(each))
                        .toList(),
                each -> each.law() instanceof Law.VoltageSource || each.law() instanceof Law.Threshold);
    }

    private static boolean isLasting(Branch branch) {
        return !(branch.law() instanceof Law.SwitchedResistance);
    }

    private static boolean passes(Branch branch) {
        return !(branch.law() instanceof Law.Open
                || branch.law() instanceof Law.SupplyCapacitor
                || branch.kind().part() == BranchKind.Part.LOAD);
    }
}
