package org.ohmloom.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.graph.PointId;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.Solution;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.GroundLimit;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Unit;

/**
 * The grounds of any two nodes on a bus are no further apart than the receivers' common mode range allows.
 * <p>A receiver sees the lines shifted by the offset d between the grounds. With the high line at its most and the low line at its least
 * at the sender, |d| may be min(common mode high - high line, low line - common mode low). Judged in every state for the two nodes
 * furthest apart, mean and ripple together.
 */
final class BusCommonMode implements Rule {

    private static final RuleInfo INFO = new RuleInfo("bus-common-mode", Severity.ERROR);

    /** A node against the first one on its bus. */
    private record Node(ElementId unit, PointId at, double volts, List<OffsetShare> shares) {}

    /** Two nodes: how far apart they come at most, V, mean and ripple together. */
    private record Pair(StateId state, Node low, Node high, double volts) {

        static Pair of(Solution solution, StateId state, Node low, Node high) {
            double mean = high.volts - low.volts;
            double ripple = solution.duty()
                    .momentVolts()
                    .departure(high.at, low.at, mean)
                    .orElse(0);
            return new Pair(state, low, high, mean + ripple);
        }
    }

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.OFFSETS);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        limitVolts(evidence.tables()).ifPresent(limit -> tooFarApart(evidence, limit)
                .forEach(pair -> report.accept(finding(evidence, pair, limit))));
    }

    /** The units this rule reports. */
    static Set<ElementId> reported(Evidence evidence) {
        Set<ElementId> units = new HashSet<>();
        limitVolts(evidence.tables())
                .ifPresent(limit -> tooFarApart(evidence, limit).forEach(pair -> {
                    units.add(pair.low.unit());
                    units.add(pair.high.unit());
                }));
        return units;
    }

    private static List<Pair> tooFarApart(Evidence evidence, double limitVolts) {
        Map<ElementId, Map<StateId, List<Node>>> buses = new LinkedHashMap<>();
        for (Offset offset : evidence.returns().offsets()) {
            if (offset.point().kind() == ReferencePoint.Kind.BUS_NODE_GROUND) {
                ElementId first = offset.point().against();
                buses.computeIfAbsent(first, bus -> new LinkedHashMap<>())
                        .computeIfAbsent(
                                offset.state(),
                                state -> new ArrayList<>(
                                        List.of(new Node(first, offset.point().reference(), 0, List.of()))))
                        .add(new Node(offset.point().owner(), offset.point().at(), offset.volts(), offset.shares()));
            }
        }
        return buses.values().stream()
                .flatMap(byState -> worst(evidence, byState).stream())
                .filter(pair -> Limits.exceeds(pair.volts(), limitVolts))
                .toList();
    }

    private static Optional<Double> limitVolts(WireTables tables) {
        Optional<Double> high = difference(tables, GroundLimit.COMMON_MODE_HIGH, GroundLimit.HIGH_LINE_MOST);
        Optional<Double> low = difference(tables, GroundLimit.LOW_LINE_LEAST, GroundLimit.COMMON_MODE_LOW);
        return high.flatMap(above -> low.map(below -> Math.min(above, below)));
    }

    private static Optional<Double> difference(WireTables tables, String more, String less) {
        return tables.groundLimitVolts(more).map(CitedValue::value).flatMap(above -> tables.groundLimitVolts(less)
                .map(CitedValue::value)
                .map(below -> above - below));
    }

    private static Optional<Pair> worst(Evidence evidence, Map<StateId, List<Node>> byState) {
        Pair worst = null;
        for (Map.Entry<StateId, List<Node>> state : byState.entrySet()) {
            for (Node low : state.getValue()) {
                for (Node high : state.getValue()) {
                    if (low != high && high.volts >= low.volts) {
                        Pair pair = Pair.of(evidence.solutions().get(state.getKey()), state.getKey(), low, high);
                        worst = worst == null || pair.volts() > worst.volts() ? pair : worst;
                    }
                }
            }
        }
        return Optional.ofNullable(worst);
    }

    private static Finding finding(Evidence evidence, Pair pair, double limitVolts) {
        Map<ElementId, Double> volts = new LinkedHashMap<>();
        pair.high.shares().forEach(share -> volts.merge(share.cause(), share.volts(), Double::sum));
        pair.low.shares().forEach(share -> volts.merge(share.cause(), -share.volts(), Double::sum));
        List<OffsetShare> shares = volts.entrySet().stream()
                .sorted((one, other) -> Double.compare(other.getValue(), one.getValue()))
                .map(each -> new OffsetShare(each.getKey(), 0, each.getValue(), 0, OptionalDouble.empty()))
                .toList();
        return new FindingDraft(INFO, "apart")
                .word("high", pair.high.unit())
                .word("low", pair.low.unit())
                .beyond("offset", pair.volts(), "limit", limitVolts, Unit.VOLT)
                .word("state", StateNames.quoted(evidence.harness().states().get(pair.state)))
                .word("causes", OffsetCauses.words(shares, 1))
                .subject(pair.high.unit())
                .subject(pair.low.unit())
                .highlight(OffsetCauses.named(shares, 1))
                .build();
    }
}
