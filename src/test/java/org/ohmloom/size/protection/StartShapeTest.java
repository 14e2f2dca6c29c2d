package org.ohmloom.size.protection;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.StateId;

/** Time and I2t of a start above a current, by formula as entered and by straight lines as followed. */
@BesideOthers
class StartShapeTest {

    private static final StateId ON = new StateId("on");
    private static final double ROUNDING = 1e-9;

    /** Straight lines between 400 points of an exponential. */
    private static final double STRAIGHT = 1e-3;

    @Test
    void halfThePeakSquaredTimesTheTimeConstantIsTheI2tOfAnExponential() {
        // 40 A falling to nothing with 0.2 s: 1600 x 0.2 / 2 = 160 A2s; above 20 A for 0.2 ln 2 s
        EnteredStart start = new EnteredStart(40, 0, 0.2);
        assertEquals(160, start.squareAbove(1e-12), 1e-6);
        assertEquals(0.2 * Math.log(2), start.secondsAbove(20), ROUNDING);
        // of it above 20 A: 160 (1 - 1/4) = 120 A2s
        assertEquals(120, start.squareAbove(20), ROUNDING);
    }

    @Test
    void aTriangleHasAThirdOfItsPeakSquaredTimesItsLength() {
        // 30 A falling straight to 0 in 0.6 s: 900 x 0.6/3 = 180 A2s; above 10 A for 0.4 s with (900 + 300 + 100)/3 x
        // 0.4
        FollowedStart start = new FollowedStart(ON, List.of(0.0, 0.6, 1.0), List.of(30.0, 0.0, 0.0), 0.2);
        assertEquals(180, start.squareAbove(0), ROUNDING);
        assertEquals(0.4, start.secondsAbove(10), ROUNDING);
        assertEquals(1300.0 / 3 * 0.4, start.squareAbove(10), ROUNDING);
        assertEquals(15, start.ampsAt(0.3), ROUNDING);
    }

    @Test
    void anExponentialFollowedInSmallStepsIsTheEnteredOne() {
        EnteredStart entered = new EnteredStart(50, 5, 0.3);
        List<Double> seconds = new ArrayList<>();
        List<Double> amps = new ArrayList<>();
        for (int k = 0; k <= 400; k++) {
            seconds.add(k * 3.0 / 400);
            amps.add(entered.ampsAt(k * 3.0 / 400));
        }
        FollowedStart followed = new FollowedStart(ON, seconds, amps, 0.3);
        for (double limit : new double[] {8, 15, 30, 45}) {
            assertEquals(entered.secondsAbove(limit), followed.secondsAbove(limit), STRAIGHT);
            assertEquals(
                    entered.squareAbove(limit),
                    followed.squareAbove(limit),
                    STRAIGHT * entered.squareAbove(limit) + STRAIGHT);
        }
        assertEquals(Double.POSITIVE_INFINITY, followed.secondsAbove(4));
    }
}
