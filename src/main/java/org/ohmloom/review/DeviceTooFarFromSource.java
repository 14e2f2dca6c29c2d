package org.ohmloom.review;

import java.util.Comparator;
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
import org.ohmloom.model.Covering;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.PlacementRule;
import org.ohmloom.units.Unit;

/**
 * A protective device sits close to the battery that feeds it.
 * <p>Length of conductor from the battery's positive terminal to the first device on each way, against the distances of the
 * design basis (33 CFR 183.455: 7 in, 40 in when sheathed or enclosed all the way). An error on the small-craft bases,
 * elsewhere a note. A way counts as enclosed when every segment of every wire on it has a sleeve, conduit, tube or heat
 * shrink; tape does not count.
 */
final class DeviceTooFarFromSource implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "device-too-far-from-source",
            "A protective device is far from its source",
            Severity.ERROR,
            "33 CFR 183.455 paragraph (b)",
            "The conductor between source and device is protected by nothing; the shorter it is, the less can touch it.",
            "Move the device towards the source, or enclose the conductor up to it.");

    private static final Set<Covering.Kind> ENCLOSING =
            Set.of(Covering.Kind.BRAIDED_SLEEVE, Covering.Kind.CONDUIT, Covering.Kind.TUBE, Covering.Kind.HEAT_SHRINK);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (BareFeed feed : evidence.upstream().bareFeeds()) {
            boolean battery = evidence.harness()
                            .components()
                            .get(feed.source().component())
                            .device()
                    instanceof Battery;
            if (battery) {
                feed.devices().forEach(first -> judge(evidence, feed, first, report));
            }
        }
    }

    private static void judge(Evidence evidence, BareFeed feed, FirstDevice first, Consumer<Finding> report) {
        boolean enclosed = enclosed(evidence, first);
        Optional<PlacementRule> rule = evidence
                .tables()
                .placementRules(evidence.basis().id())
                .stream()
                .filter(candidate -> candidate.holds(enclosed, true))
                .max(Comparator.comparingDouble(PlacementRule::distanceMetres));
        double metres = first.way().lengthMetres().orElse(0);
        if (rule.isPresent() && metres > rule.get().distanceMetres()) {
            report.accept(new FindingDraft(
                            INFO,
                            "{device} sits {distance} of conductor from {source}; {limit} is the limit ({situation}).")
                    .word("device", first.device())
                    .word("source", feed.source().component())
                    .word("situation", rule.get().situation())
                    .value("distance", metres, Unit.METRE)
                    .value("limit", rule.get().distanceMetres(), Unit.METRE)
                    .severity(Severity.valueOf(
                            evidence.basis().placementSeverity().name()))
                    .source(rule.get().citation().text())
                    .subject(first.device())
                    .highlight(first.way().branches())
                    .build());
        }
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
