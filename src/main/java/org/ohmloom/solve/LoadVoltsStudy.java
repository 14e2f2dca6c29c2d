package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;

/**
 * What reaches each load, and where the rest is lost.
 *
 * <p>The reference of a load is the source its current comes from, found along the largest current in its on-state: with the engine
 * running that is the alternator, behind a converter the converter's output. A load that draws nothing has the first
 * source of its island that is on, the datum's before others. Feed drop = V(source +) - V(load +), return drop = V(load -) -
 * V(source -), both from point voltages, so they sum to source volts - load volts whatever way the current takes; the
 * contact and device portions are those along the largest current.
 *
 * <p>Where sources are stacked in series, so that the current comes from the upper one and goes back to a lower one whose
 * negative terminal lies at least half its voltage below, the stack is the source: its lowest terminal is source -.
 *
 * <p>Loads whose terminals have voltages are listed, also those that are switched off.
 */
final class LoadVoltsStudy {

    private static final double STACK_RATIO = 0.5;

    /** What rounding leaves where nothing flows, A: no way is followed along it. */
    private static final double NO_AMPS = 1e-12;

    private final NetworkSolution solution;
    private final Harness harness;
    private Optional<OnMoment> mean = Optional.empty();
    private final Map<OnMoment, LargestCurrentPath> paths = new IdentityHashMap<>();

    private LoadVoltsStudy(NetworkSolution solution, Harness harness) {
        this.solution = solution;
        this.harness = harness;
    }

    /** What reaches each load of a harness. */
    static SortedMap<ComponentId, LoadVolts> of(NetworkSolution solution, Harness harness) {
        LoadVoltsStudy study = new LoadVoltsStudy(solution, harness);
        SortedMap<ComponentId, LoadVolts> loads = new TreeMap<>();
        for (Branch branch : solution.network().branches().values()) {
            if (branch.kind() == BranchKind.LOAD && branch.element().orElse(null) instanceof ComponentId id) {
                study.load(id, branch).ifPresent(load -> loads.putIfAbsent(id, load));
            }
        }
        return loads;
    }

    private Optional<LoadVolts> load(ComponentId id, Branch branch) {
        Map<PointId, Double> volts = solution.volts();
        if (!volts.containsKey(branch.from()) || !volts.containsKey(branch.to())) {
            return Optional.empty();
        }
        Optional<Load> device = harness.components().find(id).map(Component::device).stream()
                .filter(Load.class::isInstance)
                .map(Load.class::cast)
                .findFirst();
        BranchFlow flow = solution.flows().get(branch.id());
        OnMoment moment = solution.onMoments().getOrDefault(branch.id(), mean());
        double onAmps = Math.abs(moment.amps(branch)) < NO_AMPS ? 0 : moment.amps(branch);
        boolean reversed = onAmps < 0;
        PointId positive = reversed ? branch.to() : branch.from();
        PointId negative = reversed ? branch.from() : branch.to();
        LargestCurrentPath paths = this.paths.computeIfAbsent(
                moment, each -> new LargestCurrentPath(solution.flows().values(), each));
        Optional<LargestCurrentPath.Found> feed = onAmps == 0 ? Optional.empty() : paths.feeding(branch, positive);
        Optional<Branch> source = feed.map(LargestCurrentPath.Found::source);
        Optional<LargestCurrentPath.Found> back =
                onAmps == 0 ? Optional.empty() : paths.returning(branch, negative, source);
        Optional<Branch> reference = source.or(() -> firstSource(branch));
        Map<PointId, Double> on = moment.volts();
        return device.flatMap(load -> reference.map(first -> {
            PointId low = lowest(first, back);
            return new LoadVolts(
                    id,
                    componentOf(first),
                    Math.abs(flow.amps()),
                    volts.get(positive) - volts.get(negative),
                    volts.get(first.to()) - volts.get(positive),
                    volts.get(negative) - volts.get(low),
                    part(feed, BranchKind.Part.CONTACT) + part(back, BranchKind.Part.CONTACT),
                    part(feed, BranchKind.Part.DEVICE) + part(back, BranchKind.Part.DEVICE),
                    new LoadVolts.OnState(
                            Math.abs(onAmps),
                            on.get(positive) - on.get(negative),
                            on.get(first.to()) - on.get(positive),
                            on.get(negative) - on.get(low),
                            onPart(feed, BranchKind.Part.CONTACT) + onPart(back, BranchKind.Part.CONTACT),
                            onPart(feed, BranchKind.Part.DEVICE) + onPart(back, BranchKind.Part.DEVICE)),
                    load.allowedDropVolts().orElse(harness.rules().allowedDropVolts()),
                    fromSource(feed),
                    ids(back));
        }));
    }

    /** The means, for a load that is in no circuit: what is open has no moment of its own. */
    private OnMoment mean() {
        if (mean.isEmpty()) {
            mean = Optional.of(new OnMoment(solution.volts(), Map.of()));
        }
        return mean.get();
    }

    /** The first source that is on in the island of a load, the datum's before others. */
    private Optional<Branch> firstSource(Branch load) {
        String island = solution.islandOf().get(load.from());
        List<Branch> sources = solution.network().branches().values().stream()
                .filter(branch -> branch.kind().part() == BranchKind.Part.SOURCE)
                .filter(branch -> branch.law() instanceof Law.VoltageSource)
                .filter(branch ->
                        island.equals(solution.flows().get(branch.id()).island()))
                .filter(branch -> solution.volts().containsKey(branch.to()))
                .filter(branch -> solution.volts().containsKey(branch.from()))
                .toList();
        return sources.stream()
                .filter(branch -> solution.network().datum().equals(Optional.of(branch.from())))
                .findFirst()
                .or(() -> sources.stream()
                        .filter(branch -> branch.kind() == BranchKind.SOURCE)
                        .findFirst())
                .or(() -> sources.stream().findFirst());
    }

    /** The negative terminal of a source, or of the one at the bottom of its stack. */
    private PointId lowest(Branch source, Optional<LargestCurrentPath.Found> back) {
        double negative = solution.volts().get(source.from());
        return back.map(LargestCurrentPath.Found::source)
                .filter(other -> other.law() instanceof Law.VoltageSource lower
                        && negative - solution.volts().get(other.from()) >= STACK_RATIO * lower.emfVolts())
                .map(Branch::from)
                .orElse(source.from());
    }

    private static ComponentId componentOf(Branch source) {
        return (ComponentId) source.element().orElseThrow();
    }

    private static double part(Optional<LargestCurrentPath.Found> path, BranchKind.Part part) {
        return path.map(found -> found.dropVolts(part)).orElse(0.0);
    }

    private static double onPart(Optional<LargestCurrentPath.Found> path, BranchKind.Part part) {
        return path.map(found -> found.onDropVolts(part)).orElse(0.0);
    }

    private static List<BranchId> ids(Optional<LargestCurrentPath.Found> path) {
        return path.map(LargestCurrentPath.Found::flows).orElse(List.of()).stream()
                .map(flow -> flow.branch().id())
                .toList();
    }

    private static List<BranchId> fromSource(Optional<LargestCurrentPath.Found> path) {
        List<BranchId> ids = new ArrayList<>(ids(path));
        Collections.reverse(ids);
        return ids;
    }
}
