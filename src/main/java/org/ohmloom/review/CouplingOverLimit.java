package org.ohmloom.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.ground.coupling.Coupling;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;

/**
 * No wire that switches puts more onto a signal beside it than coupling may take of the sensor's allowed error.
 * <p>One finding for each sensor, told for the wire that does most; {@link NotChecked} tells what was not entered.
 */
final class CouplingOverLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("coupling-over-limit", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.COUPLINGS);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        Map<ComponentId, List<Coupling>> bySensor = new LinkedHashMap<>();
        for (Coupling coupling : evidence.returns().couplings()) {
            if (coupling.isOver()) {
                bySensor.computeIfAbsent(coupling.sensor(), sensor -> new ArrayList<>())
                        .add(coupling);
            }
        }
        bySensor.forEach((sensor, over) -> report.accept(finding(sensor, over)));
    }

    private static Finding finding(ComponentId sensor, List<Coupling> over) {
        Coupling worst = over.get(0);
        List<WireId> culprits = over.stream().map(Coupling::culprit).distinct().toList();
        return new FindingDraft(INFO, "puts")
                .part("several", culprits.size() > 1, "several")
                .word("culprit", worst.culprit())
                .volts("volts", worst.arrivingVolts())
                .word("victim", worst.victim())
                .word("sensor", sensor)
                .word("length", Formats.metres(worst.lengthMetres()))
                .volts("limit", worst.limitVolts().orElse(0))
                .word("count", culprits.size())
                .subject(sensor)
                .subject(worst.victim())
                .subject(worst.culprit())
                .build();
    }
}
