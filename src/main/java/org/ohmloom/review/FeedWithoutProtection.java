package org.ohmloom.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.graph.BareFeed;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.FeedSource;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.RegulatedSupply;
import org.ohmloom.model.WireId;

/**
 * A protective device stands between every battery and everything it feeds.
 * <p>An error for each component a battery reaches past no fuse or breaker, every switch and relay taken as closed. A motor
 * that is only ever asked on while the engine cranks, as a starter is, is left out: 33 CFR 183.455 and 183.460 exempt
 * cranking motors.
 * Sources that limit their own current (alternator, charger, converter) need no device if the conductor may carry that
 * current; a warning where it may not. Where a battery reaches the same conductor past no device, that decides.
 */
final class FeedWithoutProtection implements Rule {

    private static final RuleInfo INFO = new RuleInfo("feed-without-protection", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (BareFeed feed : evidence.upstream().bareFeeds()) {
            Device source = device(evidence, feed.source());
            if (source instanceof Battery) {
                for (ComponentId load : feed.loads()) {
                    if (!CrankingMotors.isOne(evidence.harness(), load)) {
                        report.accept(bare(evidence, feed, load));
                    }
                }
            } else {
                limitAmps(source)
                        .flatMap(limit -> selfLimited(evidence, feed, limit))
                        .ifPresent(report);
            }
        }
    }

    private static Device device(Evidence evidence, FeedSource source) {
        return evidence.harness().components().get(source.component()).device();
    }

    private static Finding bare(Evidence evidence, BareFeed feed, ComponentId load) {
        Component component = evidence.harness().components().get(load);
        List<Object> wires = new ArrayList<>();
        evidence.drawn().of(load).stream()
                .flatMap(branch -> evidence.upstream().way(feed.source(), branch.from()).stream())
                .flatMap(way -> way.branches().stream())
                .map(BranchId::value)
                .forEach(wires::add);
        return new FindingDraft(INFO, "bare")
                .word("name", component.name())
                .word("load", load)
                .word("source", feed.source().component())
                .subject(load)
                .highlight(wires)
                .build();
    }

    private static Optional<Double> limitAmps(Device source) {
        if (source instanceof Alternator alternator) {
            return Optional.of(alternator.limitAmps());
        }
        if (source instanceof RegulatedSupply supply) {
            return Optional.of(supply.limitAmps());
        }
        return source instanceof Converter converter ? Optional.of(converter.limitAmps()) : Optional.empty();
    }

    private static Optional<Finding> selfLimited(Evidence evidence, BareFeed feed, double limitAmps) {
        List<WireRating> weak = feed.wires().keySet().stream()
                .filter(wire -> !bareFromBattery(evidence, wire))
                .flatMap(wire -> evidence.rating(wire).stream())
                .filter(rating -> rating.ampacity()
                        .filter(ampacity -> Limits.exceeds(limitAmps, ampacity.limitAmps()))
                        .isPresent())
                .toList();
        if (weak.isEmpty()) {
            return Optional.empty();
        }
        double least = weak.stream()
                .mapToDouble(rating -> rating.ampacity().orElseThrow().limitAmps())
                .min()
                .orElseThrow();
        List<WireId> wires = weak.stream().map(rating -> rating.wire().id()).toList();
        return Optional.of(new FindingDraft(INFO, "self-limited")
                .word("wires", Listing.of(wires, 60))
                .word("source", feed.source().component())
                .amps("ampacity", least)
                .amps("limit", limitAmps)
                .severity(Severity.WARNING)
                .subjects(wires)
                .subject(feed.source().component())
                .build());
    }

    private static boolean bareFromBattery(Evidence evidence, WireId wire) {
        return evidence.upstream().guards(wire).stream()
                .anyMatch(guard -> guard.bare() && device(evidence, guard.source()) instanceof Battery);
    }
}
