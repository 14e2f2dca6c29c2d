package org.ohmloom.graph;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.WireEnd;
import org.ohmloom.words.Text;

/**
 * What an alternator is in one operating state: its set point at its temperature and the most current it gives there.
 *
 * @param celsius       temperature, deg C
 * @param setPointVolts voltage its regulator holds, V, more than 0
 * @param ohms          fall of voltage per ampere at its own terminals when it senses there, ohm
 * @param limitAmps     most current it gives, A, 0 or more
 * @param sense         where it holds the voltage; empty means its own terminals
 * @param steps         how these were worked out: formula with its numbers
 * @param assumptions   what was taken because nothing says it
 */
public record AlternatorCondition(
        double celsius,
        double setPointVolts,
        double ohms,
        double limitAmps,
        Optional<WireEnd> sense,
        List<Text> steps,
        List<Assumption> assumptions) {

    public AlternatorCondition {
        steps = List.copyOf(steps);
        assumptions = List.copyOf(assumptions);
    }

    /** How its current and voltage hang together; at rest where it gives nothing. */
    Law law() {
        return limitAmps > 0 ? Law.VoltageSource.regulated(setPointVolts, ohms, limitAmps) : new Law.Open();
    }
}
