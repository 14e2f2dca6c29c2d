package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.ground.GroundReading;

/** No stud of a ground point holds more than {@link GroundReading#MOST_ON_STUD} terminals: of wires, cases and straps. */
final class GroundStudCrowded implements Rule {

    private static final RuleInfo INFO = new RuleInfo(
            "ground-stud-crowded",
            "Too many terminals on one ground stud",
            Severity.WARNING,
            "FAA AC 43.13-1B, 11-174 b; ABYC E-11, 11.14.6.9",
            "A stack of more than four terminals loosens: each presses on the next through soft metal, and one bad joint lifts"
                    + " every ground on the stud.",
            "Spread the terminals over more studs, or join some wires on a bus bar with one wire to the stud.");

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
                report.accept(new FindingDraft(
                                INFO, "{count} terminals lie on {studs} of {ground}, more than {most}: {stacked}.")
                        .word("count", ground.stacked().size())
                        .word("studs", ground.studs() == 1 ? "the stud" : "the " + ground.studs() + " studs")
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
