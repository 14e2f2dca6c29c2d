package org.ohmloom.remedy;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReferencePoint.Kind;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.coupling.Coupling;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.heat.ContinuousStates;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.StateId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;
import org.ohmloom.words.Text;

/** The number a finding is about, before and after: a sensor's error, an offset, a coupled voltage, a loop's current, a count. */
final class Effects {

    private Effects() {}

    /** What becomes of the number; empty for a finding without one that both sides know. */
    static Optional<Effect> of(Finding finding, Evidence before, Evidence after) {
        Set<String> subjects = Set.copyOf(finding.subjects());
        return switch (finding.rule()) {
            case "ground-loop" -> Optional.of(
                    new Effect(RemedyTexts.text("stray-current"), loop(finding, before), loop(finding, after), "A"));
            case "unit-ground-offset" -> effect(
                    RemedyTexts.text("offset-of", finding.subjects().get(0)),
                    evidence -> offset(evidence, Kind.UNIT_GROUND, subjects, true),
                    before,
                    after,
                    "V");
            case "unit-offset-survival" -> effect(
                    RemedyTexts.text("offset-of", finding.subjects().get(0)),
                    evidence -> offset(evidence, Kind.UNIT_GROUND, subjects, false),
                    before,
                    after,
                    "V");
            case "ground-offset" -> effect(
                    RemedyTexts.text("offset-of", String.join(", ", finding.subjects())),
                    evidence -> offset(evidence, Kind.GROUND_POINT, subjects, true),
                    before,
                    after,
                    "V");
            case "bus-common-mode" -> effect(
                    apart(finding.subjects()), evidence -> apart(evidence, subjects), before, after, "V");
            case "coupling-over-limit" -> effect(
                    RemedyTexts.text("onto-the-signal"),
                    evidence -> coupled(evidence.returns(), subjects),
                    before,
                    after,
                    "V");
            case "ground-stud-crowded" -> effect(
                    RemedyTexts.text("terminals-on", finding.subjects().get(0)),
                    evidence -> stacked(evidence.returns(), finding.subjects().get(0)),
                    before,
                    after,
                    "");
            case "lost-return-overloads" -> LostCurrents.effect(finding, before, after);
            default -> finding.subjects().stream()
                    .flatMap(subject -> error(subject, before, after).stream())
                    .findFirst();
        };
    }

    private static Optional<Effect> error(String sensor, Evidence before, Evidence after) {
        return budget(before.returns(), sensor)
                .flatMap(budget -> effect(
                        RemedyTexts.text("error-of", sensor),
                        evidence -> budget(evidence.returns(), sensor)
                                .map(SensorBudget::worstError)
                                .orElse(Double.NaN),
                        before,
                        after,
                        budget.quantityUnit()));
    }

    private static Optional<Effect> effect(
            Text what, ToDoubleFunction<Evidence> number, Evidence before, Evidence after, String unit) {
        double one = number.applyAsDouble(before);
        double other = number.applyAsDouble(after);
        return Double.isNaN(one) || Double.isNaN(other)
                ? Optional.empty()
                : Optional.of(new Effect(what, one, other, unit));
    }

    /** What two nodes are; a bus of more is told by all of them. */
    private static Text apart(List<String> nodes) {
        return nodes.stream()
                .map(Text::of)
                .reduce((before, next) -> RemedyTexts.text("and", before, next))
                .map(all -> RemedyTexts.text("apart", all))
                .orElseThrow();
    }

    private static Optional<SensorBudget> budget(ReturnStudy study, String sensor) {
        return study.sensors().stream()
                .filter(each -> each.sensor().value().equals(sensor))
                .max(Comparator.comparingDouble(SensorBudget::worstError));
    }

    /** The largest offset of some owners, V; 0 where they have become one with their reference. */
    private static double offset(Evidence evidence, Kind kind, Set<String> owners, boolean lasting) {
        SortedSet<StateId> states = lasting
                ? ContinuousStates.of(evidence.harness())
                : new TreeSet<>(evidence.harness().states().ids());
        return evidence.returns().offsets().stream()
                .filter(each -> each.point().kind() == kind
                        && owners.contains(each.point().owner().value()))
                .filter(each -> states.contains(each.state()))
                .mapToDouble(Offset::worstVolts)
                .max()
                .orElse(0);
    }

    /** How far the grounds of bus nodes are apart in the state in which they are farthest, V. */
    private static double apart(Evidence evidence, Set<String> nodes) {
        Map<StateId, double[]> range = new TreeMap<>();
        for (Offset offset : evidence.returns().offsets()) {
            if (offset.point().kind() == Kind.BUS_NODE_GROUND
                    && nodes.contains(offset.point().owner().value())) {
                // the reference of the first node is one of them where only one has an offset against it
                double[] ends = range.computeIfAbsent(
                        offset.state(),
                        any -> nodes.contains(offset.point().against().value())
                                ? new double[] {0, 0}
                                : new double[] {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY});
                ends[0] = Math.min(ends[0], offset.volts() - offset.rippleVolts());
                ends[1] = Math.max(ends[1], offset.volts() + offset.rippleVolts());
            }
        }
        return range.values().stream()
                .mapToDouble(ends -> ends[1] - ends[0])
                .max()
                .orElse(0);
    }

    private static double coupled(ReturnStudy study, Set<String> subjects) {
        return study.couplings().stream()
                .filter(each -> subjects.contains(each.victim().value())
                        && subjects.contains(each.culprit().value()))
                .mapToDouble(Coupling::arrivingVolts)
                .max()
                .orElse(0);
    }

    private static double stacked(ReturnStudy study, String ground) {
        return study.grounds().stream()
                .filter(each -> each.ground().value().equals(ground))
                .mapToDouble(each -> each.stacked().size())
                .max()
                .orElse(Double.NaN);
    }

    /** The largest load current in a signal member of the finding's loop, as far as it is still a member of one. */
    private static double loop(Finding finding, Evidence evidence) {
        return evidence.returns().loops().stream()
                .flatMap(loop -> loop.stray().stream())
                .filter(stray -> finding.subjects().contains(element(evidence, stray.member())))
                .mapToDouble(LoopReading.Stray::onAmps)
                .max()
                .orElse(0);
    }

    /** Ids of the elements a loop leads through, sorted as a finding has them. */
    static List<String> elements(Evidence evidence, LoopReading loop) {
        return loop.loop().members().stream()
                .flatMap(id -> evidence.drawn().branch(id).stream())
                .flatMap(branch -> branch.element().stream())
                .map(ElementId::value)
                .distinct()
                .sorted(NaturalOrder.INSTANCE)
                .toList();
    }

    private static String element(Evidence evidence, BranchId member) {
        return evidence.drawn()
                .branch(member)
                .flatMap(Branch::element)
                .map(ElementId::value)
                .orElse(member.value());
    }
}
