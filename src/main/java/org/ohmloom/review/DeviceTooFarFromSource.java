package org.ohmloom.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.graph.BareFeed;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.FirstDevice;
import org.ohmloom.graph.Route;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Covering;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.PlacementRule;
import org.ohmloom.units.Unit;

/**
 * A protective device sits close to the battery that feeds it.
 * <p>Length of conductor from the battery's positive terminal to the first device on each way, against the distances of the
 * design basis: 7 in, 40 or 72 in when sheathed or enclosed all the way (33 CFR 183.455, ABYC E-11); 33 CFR 183.460 allows
 * a battery's own output conductor 72 in. An error on the small-craft bases, elsewhere a note. A way counts as enclosed
 * when every segment of every wire on it has a sleeve, conduit, tube or heat shrink; tape does not count. Silent where a
 * length on the way is not known; {@link NotChecked} says so.
 */
final class DeviceTooFarFromSource implements Rule {

    private static final RuleInfo INFO = new RuleInfo("device-too-far-from-source", Severity.ERROR);

    private static final Set<Covering.Kind> ENCLOSING =
            Set.of(Covering.Kind.BRAIDED_SLEEVE, Covering.Kind.CONDUIT, Covering.Kind.TUBE, Covering.Kind.HEAT_SHRINK);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (BareFeed feed : evidence.upstream().bareFeeds()) {
            if (evidence.harness().components().get(feed.source().component()).device() instanceof Battery) {
                Map<PlacementRule, List<FirstDevice>> far = new LinkedHashMap<>();
                for (FirstDevice first : feed.devices()) {
                    limit(evidence, first)
                            .filter(rule -> Limits.exceeds(metres(first), rule.distanceMetres()))
                            .ifPresent(rule -> far.computeIfAbsent(rule, key -> new ArrayList<>())
                                    .add(first));
                }
                far.forEach((rule, devices) -> report.accept(finding(evidence, feed, rule, devices)));
            }
        }
    }

    /** The largest distance that the basis allows for a conductor so laid. */
    private static Optional<PlacementRule> limit(Evidence evidence, FirstDevice first) {
        boolean enclosed = enclosed(evidence, first);
        return evidence.tables().placementRules(evidence.basis().id()).stream()
                .filter(candidate -> candidate.holds(enclosed, true))
                .max(Comparator.comparingDouble(PlacementRule::distanceMetres));
    }

    private static double metres(FirstDevice first) {
        return first.way().lengthMetres().orElse(0);
    }

    private static Finding finding(Evidence evidence, BareFeed feed, PlacementRule rule, List<FirstDevice> far) {
        List<ComponentId> devices = far.stream().map(FirstDevice::device).toList();
        double farthest =
                far.stream().mapToDouble(DeviceTooFarFromSource::metres).max().orElseThrow();
        return new FindingDraft(INFO, devices.size() == 1 ? "one" : "several")
                .word("devices", Listing.of(devices, 40))
                .word("source", feed.source().component())
                .word("situation", rule.situation())
                .beyond("distance", farthest, "limit", rule.distanceMetres(), Unit.METRE)
                .severity(Severity.valueOf(evidence.basis().placementSeverity().name()))
                .source(rule.citation().text())
                .subjects(devices)
                .highlight(far.stream()
                        .flatMap(first -> first.way().branches().stream())
                        .toList())
                .build();
    }

    private static boolean enclosed(Evidence evidence, FirstDevice first) {
        Harness harness = evidence.harness();
        for (BranchId branch : first.way().branches()) {
            Optional<WireId> wire = evidence.drawn()
                    .branch(branch)
                    .flatMap(Branch::element)
                    .filter(WireId.class::isInstance)
                    .map(WireId.class::cast);
            if (wire.isEmpty()) {
                continue;
            }
            Optional<Route> route = evidence.routes().of(wire.get());
            boolean covered = route.isPresent()
                    && !route.get().segments().isEmpty()
                    && route.get().segments().stream()
                            .map(segment -> harness.segments().get(segment))
                            .map(BundleSegment::covering)
                            .allMatch(covering -> covering.filter(c -> ENCLOSING.contains(c.kind()))
                                    .isPresent());
            if (!covered) {
                return false;
            }
        }
        return true;
    }
}
