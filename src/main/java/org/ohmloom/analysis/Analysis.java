package org.ohmloom.analysis;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.review.StudyPart;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.solve.Solution;

/**
 * The results for one harness: an immutable snapshot. Stale when {@code harness() != current}. Whole unless some study is
 * {@link #pending()}.
 *
 * @param evidence all results of solving, heating and sizing
 * @param findings findings, errors first, then by rule and subject; accepted ones carry their waiver; those of rules that need a
 *                 pending study are missing
 * @param totals   sums over the whole harness
 * @param log      the calculation in readable steps
 */
public record Analysis(Evidence evidence, List<Finding> findings, Totals totals, CalculationLog log) {

    public Analysis {
        findings = List.copyOf(findings);
    }

    /** The harness these are the results of. */
    public Harness harness() {
        return evidence.harness();
    }

    /** The studies not worked out yet. */
    public Set<StudyPart> pending() {
        return evidence.studies().pending();
    }

    /** Whether all studies are worked out. */
    public boolean isWhole() {
        return pending().isEmpty();
    }

    /** Operating states in id order. */
    public List<OperatingState> states() {
        return List.copyOf(harness().states().all());
    }

    /** The solution of a state. */
    public Optional<Solution> solution(StateId state) {
        return Optional.ofNullable(evidence.solutions().get(state));
    }

    /** What each wire is, carries and may carry. */
    public SortedMap<WireId, WireRating> ratings() {
        return evidence.ratings();
    }

    /** Conductor temperature of a wire in a state, deg C. */
    public OptionalDouble wireCelsius(StateId state, WireId wire) {
        Double celsius = evidence.wireCelsius()
                .getOrDefault(state, Collections.emptySortedMap())
                .get(wire);
        return celsius == null ? OptionalDouble.empty() : OptionalDouble.of(celsius);
    }

    /** The conductor each wire needs, and why. */
    public SortedMap<WireId, ConductorChoice> conductors() {
        return evidence.conductors();
    }

    /** The rating each protective device needs, and why. */
    public SortedMap<ComponentId, DeviceChoice> devices() {
        return evidence.devices();
    }

    /** Ways of the wires over the physical harness. */
    public Routes routes() {
        return evidence.routes();
    }

    /** Count of findings of that severity that are not accepted. */
    public long count(Severity severity) {
        return findings.stream()
                .filter(finding -> finding.isOpen() && finding.severity() == severity)
                .count();
    }
}
