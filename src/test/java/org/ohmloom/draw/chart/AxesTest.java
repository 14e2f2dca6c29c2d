package org.ohmloom.draw.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** Round numbers in a unit that suits what is shown. */
@BesideOthers
class AxesTest {

    private static final double EXACT = 1e-12;

    @Test
    void currentsStartAtZeroAndCountInRoundSteps() {
        // 0 to 118 A in at most 6 steps: 20 A each.
        Axis axis = Axes.linear(Dimension.CURRENT, 20, 118, 6);
        assertEquals(List.of("0", "20", "40", "60", "80", "100", "120"), labels(axis));
        assertEquals(0.25, axis.fraction(30), EXACT);
    }

    @Test
    void aSmallCurrentIsShownInMilliamperes() {
        Axis axis = Axes.linear(Dimension.CURRENT, 0, 0.42, 5);
        assertEquals(Unit.MILLIAMP, axis.unit());
        assertEquals(List.of("0", "100", "200", "300", "400", "500"), labels(axis));
        assertEquals("Current, mA", axis.heading().english());
    }

    @Test
    void aSupplyVoltageNeedNotStartAtZero() {
        assertEquals(List.of("9", "10", "11", "12", "13"), labels(Axes.linear(Dimension.VOLTAGE, 9.2, 12.6, 5)));
        assertEquals(List.of("0", "5", "10", "15"), labels(Axes.linear(Dimension.VOLTAGE, 2, 12.6, 5)));
    }

    @Test
    void minutesAreCountedInQuartersAndHalves() {
        // 5400 s are 90 min; at most 6 steps: 15 min each.
        Axis axis = Axes.linear(Dimension.TIME, 0, 5400, 6);
        assertEquals(Unit.MINUTE, axis.unit());
        assertEquals(List.of("0", "15", "30", "45", "60", "75", "90"), labels(axis));
    }

    @Test
    void aSecondAxisHasTheStepsOfTheFirst() {
        Axis volts = Axes.linear(Dimension.VOLTAGE, 9.2, 12.6, 5);
        Axis amps = Axes.beside(volts, Dimension.CURRENT, 0, 118);
        assertEquals(volts.steps(), amps.steps());
        assertTrue(amps.to() >= 118);
    }

    @Test
    void aLogarithmicAxisIsNumberedAtOneTwoAndFive() {
        Axis axis = Axes.logarithmic(Dimension.CURRENT, 8, 90, true);
        assertEquals(
                List.of("5", "10", "20", "50", "100"),
                labels(axis).stream().filter(label -> !label.isEmpty()).toList());
        // From 5 to 100 is a factor of 20; the root of it, 22.36 A, is half way.
        assertEquals(0.5, axis.fraction(5 * Math.sqrt(20)), EXACT);
        assertTrue(axis.fraction(0) < -1e9);
    }

    @Test
    void openingTimesAreNumberedAtPowersOfTen() {
        Axis axis = TimeCurrentChart.timeAxis();
        assertEquals(
                List.of("0.01", "0.1", "1", "10", "100", "1000"),
                labels(axis).stream().filter(label -> !label.isEmpty()).toList());
    }

    @Test
    void anAxisThatDoesNotRunUpwardsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Axis(Text.of("x"), Unit.VOLT, 2, 2, false, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Axis(Text.of("x"), Unit.VOLT, 0, 2, true, List.of()));
    }

    @Test
    void valuesThatDoNotDifferStillHaveAnAxis() {
        Axis axis = Axes.linear(Dimension.VOLTAGE, 12, 12, 5);
        assertTrue(axis.from() <= 12 && axis.to() > 12, axis.toString());
        assertTrue(Axes.linear(Dimension.CURRENT, 0, 0, 5).to() > 0);
    }

    private static List<String> labels(Axis axis) {
        return axis.ticks().stream().map(Tick::label).toList();
    }
}
