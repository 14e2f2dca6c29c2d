package org.ohmloom.review;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.graph.Adjacency;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Passages;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.ReadingUnits;
import org.ohmloom.model.Component;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Sensor;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Solution;

/**
 * The way back of a sensor carries no load's current.
 * <p>For each sensor, the shortest way from its return terminal to the sensor return of the control unit that reads its
 * signal (its supply ground where it has no sensor return). Reported when any member of that way carries more than
 * {@link #SIGNAL_AMPS}, with the largest current and the voltage between the two ends of the way in the worst state: the
 * signal is wrong by that voltage. Silent where {@link SensorErrorOverLimit} tells the same in the sensor's own unit, and for a
 * one-wire sender, whose return is its case, where that rule judges what sharing does to its reading.
 */
final class SensorReturnShared implements Rule {

    /** Current above which a return is not a sensor's own, A. Common practice, no source: sensors take milliamperes. */
    static final double SIGNAL_AMPS = 0.25;

    private static final RuleInfo INFO = new RuleInfo("sensor-return-shared", Severity.WARNING);

    /** The branches from a sensor's return terminal to the control unit's, in order. */
    private record Way(PointId from, List<Branch> branches) {}

    /** The worst state of one way: the largest current of a member, A, and V(sensor) - V(unit), V. */
    private record Worst(OperatingState state, double amps, double volts) {}

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.SENSORS);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Passages passages = new Passages(evidence.drawn());
        for (ReadingUnits.Reading reading :
                ReadingUnits.of(evidence.drawn(), evidence.harness()).all().values()) {
            Set<PointId> ends = reading.reference().map(Set::of).orElse(Set.of());
            Way way = new Way(reading.back(), passages.shortest(reading.back(), ends));
            Component sensor = evidence.harness().components().get(reading.sensor());
            if (!SensorErrorOverLimit.tellsOfReturn(evidence, sensor) && !isJudgedOneWire(evidence, sensor)) {
                worst(evidence, way).ifPresent(worst -> report.accept(finding(sensor, way, worst)));
            }
        }
    }

    /** Whether a sensor returns through its case, as it was made to, and what that does to its reading is worked out. */
    private static boolean isJudgedOneWire(Evidence evidence, Component sensor) {
        return sensor.caseGround()
                        .filter(ground -> ground.terminal().equals(Sensor.RETURN))
                        .isPresent()
                && evidence.returns().sensors().stream()
                        .anyMatch(budget -> budget.sensor().equals(sensor.id()));
    }

    private static Optional<Worst> worst(Evidence evidence, Way way) {
        Worst worst = null;
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            if (solution == null) {
                continue;
            }
            double amps = 0;
            double volts = 0;
            PointId point = way.from();
            for (Branch branch : way.branches()) {
                Optional<BranchFlow> flow = solution.flow(branch.id());
                double drop = flow.map(BranchFlow::onDropVolts).orElse(0.0);
                amps = Math.max(
                        amps, flow.map(found -> Math.abs(found.onAmps())).orElse(0.0));
                volts += branch.from().equals(point) ? drop : -drop;
                point = Adjacency.across(branch, point);
            }
            if (amps > SIGNAL_AMPS && (worst == null || Math.abs(volts) > Math.abs(worst.volts()))) {
                worst = new Worst(state, amps, volts);
            }
        }
        return Optional.ofNullable(worst);
    }

    private static Finding finding(Component sensor, Way way, Worst worst) {
        return new FindingDraft(INFO, "carries")
                .word("name", sensor.name())
                .word("sensor", sensor.id())
                .word("state", StateNames.quoted(worst.state()))
                .amps("current", worst.amps())
                .volts("shift", worst.volts())
                .subject(sensor.id())
                .highlight(way.branches().stream()
                        .flatMap(branch -> branch.element().stream())
                        .toList())
                .build();
    }
}
