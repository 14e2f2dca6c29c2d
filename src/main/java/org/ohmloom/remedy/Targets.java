package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.ground.LostReturn;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReferencePoint.Kind;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;
import org.ohmloom.units.Quantity;

/** What number a finding is about, where changes of it can be foreseen. */
final class Targets {

    /** Load current in a signal member that is nothing to tell of, A: common practice, no source. */
    private static final double STRAY_AMPS = 0.01;

    private Targets() {}

    static Optional<Target> of(Finding finding, Evidence evidence) {
        ReturnRules rules = evidence.harness().rules().returnRules();
        SortedSet<StateId> lasting = ContinuousStates.of(evidence.harness());
        SortedSet<StateId> all = new TreeSet<>(evidence.harness().states().ids());
        Set<String> subjects = Set.copyOf(finding.subjects());
        double stated = limit(finding);
        return switch (finding.rule()) {
            case "unit-ground-offset" -> offset(
                    evidence, Kind.UNIT_GROUND, subjects, false, lasting, rules.unitGroundLimitVolts());
            case "ground-offset" -> offset(
                    evidence, Kind.GROUND_POINT, subjects, false, lasting, rules.groundLimitVolts());
            case "unit-offset-survival" -> offset(evidence, Kind.UNIT_GROUND, subjects, false, all, stated);
            case "bus-common-mode" -> offset(evidence, Kind.BUS_NODE_GROUND, subjects, true, all, stated);
            case "lost-return-overloads" -> loss(finding, evidence);
            case "ground-loop" -> stray(finding, evidence);
            default -> Optional.empty();
        };
    }

    private static double limit(Finding finding) {
        return Optional.ofNullable(finding.values().get("limit"))
                .map(Quantity::canonical)
                .orElse(0.0);
    }

    private static Optional<Target> offset(
            Evidence evidence,
            Kind kind,
            Set<String> owners,
            boolean between,
            SortedSet<StateId> states,
            double limit) {
        Map<StateId, Offset> worst = new TreeMap<>();
        for (Offset offset : evidence.returns().offsets()) {
            if (offset.point().kind() == kind
                    && owners.contains(offset.point().owner().value())
                    && states.contains(offset.state())) {
                worst.merge(
                        offset.state(), offset, (one, other) -> other.worstVolts() > one.worstVolts() ? other : one);
            }
        }
        Map<StateId, Double> ripple = new HashMap<>();
        worst.forEach((state, offset) -> ripple.put(state, offset.rippleVolts()));
        List<StateId> ordered = new ArrayList<>(worst.keySet());
        ordered.sort(Comparator.comparingDouble(state -> -worst.get(state).worstVolts()));
        return ordered.isEmpty()
                ? Optional.empty()
                : Optional.of(new OffsetTarget(kind, owners, between, ordered, limit, ripple));
    }

    private static Optional<Target> loss(Finding finding, Evidence evidence) {
        Map<WireId, Ampacity> ampacities = new HashMap<>();
        evidence.ratings().forEach((wire, rating) -> rating.ampacity().ifPresent(amps -> ampacities.put(wire, amps)));
        Predicate<LostReturn.Overload> told =
                overload -> finding.subjects().contains(overload.member().value());
        Map<StateId, LostReturn.Overload> worst = new TreeMap<>();
        Optional<LostReturn> lost = Optional.empty();
        for (LostReturn loss : evidence.returns().losses()) {
            if (finding.subjects().contains(loss.opened().value())) {
                for (LostReturn.Overload overload : loss.overLimit()) {
                    if (told.test(overload) && !overload.member().equals(loss.opened())) {
                        lost = Optional.of(loss);
                        worst.merge(loss.state(), overload, (one, other) -> ratio(other) > ratio(one) ? other : one);
                    }
                }
            }
        }
        List<StateId> ordered = new ArrayList<>(worst.keySet());
        ordered.sort(Comparator.comparingDouble(state -> -ratio(worst.get(state))));
        return lost.map(loss ->
                new LossTarget(loss.opened().value(), worst.get(ordered.get(0)).member(), ordered, ampacities));
    }

    private static double ratio(LostReturn.Overload overload) {
        return overload.amps() / overload.limitAmps();
    }

    private static Optional<Target> stray(Finding finding, Evidence evidence) {
        return evidence.returns().loops().stream()
                .filter(loop -> finding.subjects().equals(Effects.elements(evidence, loop)))
                .flatMap(loop -> loop.stray().stream())
                .max(Comparator.comparingDouble(LoopReading.Stray::onAmps))
                .map(stray -> {
                    List<StateId> states = new ArrayList<>(List.of(stray.state()));
                    evidence.solutions().keySet().stream()
                            .filter(state -> !state.equals(stray.state()))
                            .forEach(states::add);
                    return new StrayTarget(stray.member(), states, STRAY_AMPS);
                });
    }
}
