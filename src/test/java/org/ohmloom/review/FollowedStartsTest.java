package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.size.protection.EnteredStart;
import org.ohmloom.size.protection.FollowedStart;
import org.ohmloom.size.protection.StartPulse;
import org.ohmloom.size.protection.StartShape;

/** Which start a fuse is held against: the one followed over time, or the one as entered. */
@BesideOthers
class FollowedStartsTest {

    /** What the loop resists flattens the peak, so that it lasts a little longer than its exponential: some 4 % here. */
    private static final double RUN = 0.06;

    private static StartPulse start(Harness harness) {
        return Examined.analysis(harness)
                .evidence()
                .protection()
                .of(new ComponentId("F1"))
                .orElseThrow()
                .starts()
                .get(0);
    }

    @Test
    void aLoadThatIsOnInAStateIsFollowedThereWithTheSagOfTheSupply() {
        // 30 A at 12 V falling to 5 A in 0.4 s; 12.6 V behind 5 mohm, the fuse's 7.7 mohm and the wires
        StartPulse start = start(Examined.breaking("start-opens-device"));
        assertTrue(start.shape() instanceof FollowedStart);
        assertEquals(Optional.of(new StateId("on")), start.shape().state());
        assertTrue(start.sentence().contains("followed over time in state on with the sag of the supply"));
        StartShape formula = new EnteredStart(start.peakAmps(), start.runningAmps(), 0.4);
        assertEquals(formula.squareAbove(10), start.shape().squareAbove(10), RUN * formula.squareAbove(10));
    }

    @Test
    void aLoadThatIsOnInNoStateIsTakenAsEntered() {
        StartPulse start = start(Altered.of(
                Examined.breaking("start-opens-device"),
                "\"control\": \"feed\"",
                "\"control\": \"command\"",
                "\"L1\": true",
                "\"L1\": false"));
        assertTrue(start.shape() instanceof EnteredStart);
        assertTrue(start.sentence().contains("time constant of 400 ms as entered"), start::sentence);
    }
}
