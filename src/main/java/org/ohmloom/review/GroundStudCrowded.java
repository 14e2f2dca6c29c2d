package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.ground.GroundReading;

/** No stud of a ground point holds more than {@link GroundReading#MOST_ON_STUD} terminals: of wires, cases and straps. */
final class GroundStudCrowded implements Rule {

    private static final RuleInfo INFO = new RuleInfo("ground-stud-crowded", Severity.WARNING);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.LOOPS);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (GroundReading ground : evidence.returns().grounds()) {
            if (ground.stacked().size() > ground.mostStacked()) {
                report.accept(new FindingDraft(INFO, "crowded")
                        .word("count", ground.stacked().size())
                        .word("studs", ground.studs() == 1 ? INFO.text("stud") : INFO.text("studs", ground.studs()))
                        .word("ground", ground.ground())
                        .word("most", ground.mostStacked())
                        .word("stacked", Listing.of(ground.stacked(), 80))
                        .subject(ground.ground())
                        .highlight(ground.stacked())
                        .build());
            }
        }
    }
}
