package org.ohmloom.analysis;

import java.util.function.BiConsumer;
import org.ohmloom.solve.envelope.Combination;
import org.ohmloom.solve.envelope.Envelope;
import org.ohmloom.solve.envelope.SituationEnvelope;

/** Writes the envelope into the calculation log. */
final class EnvelopeLog {

    private EnvelopeLog() {}

    /** Adds lines as depth and text. */
    static void write(Envelope envelope, BiConsumer<Integer, String> log) {
        if (envelope.situations().isEmpty() && envelope.notes().isEmpty()) {
            return;
        }
        log.accept(
                0,
                "Envelope: worst over all allowed combinations of loads, conductors as warm as any state makes them");
        log.accept(
                1,
                envelope.hasGroups()
                        ? "Allowed is what the load groups allow and the wiring makes possible; wires and devices are sized by it too"
                        : "There are no load groups: every combination the wiring makes possible; wires are sized by the"
                                + " named states alone");
        envelope.notes().forEach(note -> log.accept(1, note.english()));
        for (SituationEnvelope situation : envelope.situations()) {
            log.accept(1, "While " + situation.name());
            situation.steps().forEach(step -> log.accept(2, step.english()));
            for (Combination each : situation.combinations()) {
                log.accept(
                        2,
                        "Combination " + each.id() + ": " + each.loads() + ", on: " + each.controls() + ", "
                                + each.solution().status().words());
            }
        }
    }
}
