package org.ohmloom.solve.charge;

import java.util.List;
import org.ohmloom.model.ComponentId;
import org.ohmloom.words.Text;

/**
 * What an alternator does in a state. Regulation, limit and no reverse current are a complementarity: it regulates, gives its
 * limit below the set point, or gives nothing above it. How far that is missed is recomputed from published numbers.
 *
 * @param alternator    the alternator
 * @param mode          which of the three it is
 * @param amps          mean current it gives, A
 * @param limitAmps     most current it gives in this state, A
 * @param setPointVolts voltage it is to hold, V
 * @param sense         name of the point where it holds it
 * @param senseVolts    mean voltage there against its negative terminal, V
 * @param residualVolts by how much the complementarity is missed, V
 * @param steps         how set point and limit were worked out
 */
public record AlternatorBalance(
        ComponentId alternator,
        Mode mode,
        double amps,
        double limitAmps,
        double setPointVolts,
        String sense,
        double senseVolts,
        double residualVolts,
        List<Text> steps) {

    /** The three ways of an alternator, and that of one which is not in use. */
    public enum Mode {
        /** Holds its set point and gives what that takes. */
        REGULATES,
        /** Gives its limit; the voltage is below the set point. */
        AT_LIMIT,
        /** Gives nothing; the voltage is above the set point. */
        IDLE,
        /** Off, or too slow to give anything. */
        AT_REST
    }

    public AlternatorBalance {
        steps = List.copyOf(steps);
    }

    /** Share of its limit it gives; 0 at rest. */
    public double loadFraction() {
        return limitAmps > 0 ? amps / limitAmps : 0;
    }
}
