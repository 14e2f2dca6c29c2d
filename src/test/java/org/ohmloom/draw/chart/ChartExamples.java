package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/** Charts with numbers of our own making, for tests. */
final class ChartExamples {

    private ChartExamples() {}

    /** A motor starts: 120 A falling to 20 A with 0.15 s, the supply of 12.6 V and 20 mOhm sagging with it. */
    static TimeChart start() {
        List<TimeTrace.Sample> amps = new ArrayList<>();
        List<TimeTrace.Sample> volts = new ArrayList<>();
        List<TimeTrace.Sample> unit = new ArrayList<>();
        for (int k = 0; k <= 100; k++) {
            double seconds = k * 0.01;
            double current = 20 + 100 * Math.exp(-seconds / 0.15);
            amps.add(new TimeTrace.Sample(seconds, current));
            volts.add(new TimeTrace.Sample(seconds, 12.6 - 0.02 * current));
            unit.add(new TimeTrace.Sample(seconds, 12.5 - 0.025 * current));
        }
        return TimeChart.of(
                Text.of("Winch motor M1 starts"),
                Text.of("Everything else of \"work lights on\" running, battery at -20 °C"),
                List.of(
                        new TimeTrace(Text.of("at M1"), Dimension.VOLTAGE, volts, Optional.of("M1")),
                        new TimeTrace(Text.of("at control unit U1"), Dimension.VOLTAGE, unit, Optional.of("U1")),
                        new TimeTrace(Text.of("current of M1"), Dimension.CURRENT, amps, Optional.of("M1"))),
                List.of(new TimeLimit(Text.of("U1 works down to 9 V"), Dimension.VOLTAGE, 9)),
                List.of(new TimeMark(Text.of("lowest 9.5 V"), Dimension.VOLTAGE, 0, 9.5)));
    }

    /** Charge and voltage over three states, 60, 30 and 120 min. */
    static TimeChart sequence() {
        return new TimeChart(
                Text.of("A night at the site"),
                Text.of(""),
                List.of(
                        new TimeTrace(
                                Text.of("charge left"),
                                Dimension.RATIO,
                                List.of(sample(0, 0.9), sample(3600, 0.6), sample(5400, 0.55), sample(12600, 0.8)),
                                Optional.empty()),
                        new TimeTrace(
                                Text.of("voltage"),
                                Dimension.VOLTAGE,
                                List.of(sample(0, 12.6), sample(3600, 12.1), sample(5400, 12), sample(12600, 13.9)),
                                Optional.empty())),
                List.of(),
                List.of(),
                List.of(
                        new TimeSpan(Text.of("Lights on"), 0, 3600),
                        new TimeSpan(Text.of("Parked"), 3600, 5400),
                        new TimeSpan(Text.of("Engine running"), 5400, 12600)),
                Map.of(Dimension.RATIO, Text.of("Charge")));
    }

    private static TimeTrace.Sample sample(double seconds, double value) {
        return new TimeTrace.Sample(seconds, value);
    }

    /** A 15 A fuse by the rows of ISO 8820-3 type C, and a conductor that stands 25 A for ever and has I2t = 20 000 A2s. */
    static TimeCurrentChart fuse() {
        List<TimeCurrentCurve.At> conductor = new ArrayList<>();
        for (double amps = 26; amps < 1500; amps *= 1.08) {
            conductor.add(new TimeCurrentCurve.At(amps, 20_000 / (amps * amps - 25 * 25)));
        }
        return new TimeCurrentChart(
                Text.of("Fuse F3 15 A and what it protects"),
                Text.of("ISO 8820-3 type C"),
                List.of(new OpeningBand(Text.of("F3 opens"), rows(15), Optional.of("F3"))),
                List.of(
                        new TimeCurrentCurve(Text.of("W12 1.5 mm² at its limit"), conductor, Optional.of("W12")),
                        new TimeCurrentCurve(
                                Text.of("start of M2"), List.of(new TimeCurrentCurve.At(24, 0.2)), Optional.of("M2"))),
                List.of(
                        new CurrentLimit(Text.of("continuous 12 A"), 12, CurrentLimit.Kind.CONTINUOUS),
                        new CurrentLimit(Text.of("runs at 8.2 A"), 8.2, CurrentLimit.Kind.USE),
                        new CurrentLimit(Text.of("smallest fault 96 A"), 96, CurrentLimit.Kind.FAULT),
                        new CurrentLimit(Text.of("largest fault 640 A"), 640, CurrentLimit.Kind.FAULT)));
    }

    /** Rows of ISO 8820-3 type C for 10 to 20 A. */
    static List<OpeningBand.Row> rows(double ratingAmps) {
        return List.of(
                new OpeningBand.Row(1.1 * ratingAmps, OptionalDouble.of(360_000), OptionalDouble.empty()),
                new OpeningBand.Row(1.35 * ratingAmps, OptionalDouble.of(0.75), OptionalDouble.of(600)),
                new OpeningBand.Row(2 * ratingAmps, OptionalDouble.of(0.15), OptionalDouble.of(5)),
                new OpeningBand.Row(3.5 * ratingAmps, OptionalDouble.of(0.04), OptionalDouble.of(0.5)),
                new OpeningBand.Row(6 * ratingAmps, OptionalDouble.of(0.02), OptionalDouble.of(0.1)));
    }

    /** Three currents of three wires. */
    static BarChart bars() {
        return new BarChart(
                Text.of("Currents of the fan wires"),
                Text.of("Fan at 25 %"),
                Dimension.CURRENT,
                List.of(Text.of("on"), Text.of("RMS"), Text.of("mean")),
                Text.of("may carry"),
                List.of(
                        new BarRow(
                                Text.of("W7 feed of the driver"),
                                List.of(OptionalDouble.of(2.5), OptionalDouble.of(1.25), OptionalDouble.of(0.625)),
                                OptionalDouble.of(2.7),
                                Optional.of("W7")),
                        BarRow.of(Text.of("W8 to the fan"), 2.5, 2.5, 2.5),
                        BarRow.of(
                                Text.of("W9 return of the fan, a long name that has to be cut somewhere"),
                                2.5,
                                2.5,
                                0)));
    }
}
