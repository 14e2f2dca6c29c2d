package org.ohmloom.draw.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/** What a chart says: steps and never slopes, a label for each line, nothing said by colour alone. */
@BesideOthers
class ChartContentTest {

    private static final SceneFonts FONTS = SceneFonts.load();
    private static final double EXACT_MM = 1e-6;

    @Test
    void theBandOfAFuseIsDrawnInStepsOnly() {
        // Between two published rows nothing is known but what both say: lines are level or upright, never sloping.
        Scene scene = ChartExamples.fuse().scene(FONTS, 211, 95);
        List<Line> steps = lines(scene, "F3");
        assertTrue(steps.size() >= 2, "soonest and latest");
        for (Line line : steps) {
            for (int k = 1; k < line.points().size(); k++) {
                Point from = line.points().get(k - 1);
                Point to = line.points().get(k);
                assertTrue(
                        Math.abs(from.xMm() - to.xMm()) < EXACT_MM || Math.abs(from.yMm() - to.yMm()) < EXACT_MM,
                        from + " to " + to);
            }
        }
    }

    @Test
    void aCurrentThatIsNoneDoesNotWidenTheChart() {
        // a wire that nothing flows in comes out of the solver with some 1e-30 A
        TimeCurrentChart fuse = ChartExamples.fuse();
        List<CurrentLimit> currents = new ArrayList<>(fuse.currents());
        currents.add(new CurrentLimit(Text.of("runs at 0 A"), 1e-30, CurrentLimit.Kind.USE));
        TimeCurrentChart with =
                new TimeCurrentChart(fuse.title(), fuse.subtitle(), fuse.bands(), fuse.curves(), currents);
        assertEquals(fuse.currentAxis(), with.currentAxis());
    }

    @Test
    void betweenTwoRowsTheLatestOpeningIsThatOfTheLowerRow() {
        // 15 A fuse at 40 A: the row at or below is 200 % = 30 A, which has opened by 5 s; the next, 52.5 A, by 0.5 s.
        List<TimeCurrentCurve.At> latest =
                new OpeningBand(Text.of("F"), ChartExamples.rows(15), Optional.empty()).latest(1000, 1000);
        assertEquals(5, at(latest, 40));
        assertEquals(0.5, at(latest, 60));
        assertEquals(0.1, at(latest, 900));
        assertEquals(20.25, latest.get(0).amps(), 1e-9);
    }

    @Test
    void betweenTwoRowsTheSoonestOpeningIsThatOfTheUpperRow() {
        // At 40 A, between 30 A (0.15 s) and 52.5 A (0.04 s), it may open after 0.04 s.
        List<TimeCurrentCurve.At> soonest =
                new OpeningBand(Text.of("F"), ChartExamples.rows(15), Optional.empty()).soonest(1e6);
        assertEquals(0.04, at(soonest, 40));
        assertEquals(0.75, at(soonest, 18));
    }

    @Test
    void aDeviceWithoutAMaximumHasNoLatestOpening() {
        OpeningBand band = new OpeningBand(
                Text.of("F"),
                List.of(new OpeningBand.Row(10, OptionalDouble.of(360_000), OptionalDouble.empty())),
                Optional.empty());
        assertEquals(List.of(), band.latest(100, 1000));
    }

    @Test
    void everyTraceHasItsLabelAndAPatternOfItsOwn() {
        Scene scene = ChartExamples.start().scene(FONTS, 211, 95);
        List<String> texts = ChartPicturesTest.texts(scene).stream()
                .map(org.ohmloom.draw.Text::text)
                .toList();
        ChartExamples.start()
                .traces()
                .forEach(trace -> assertTrue(
                        texts.contains(trace.label().english()), trace.label().english()));
        assertTrue(texts.contains("U1 works down to 9 V"));
        assertTrue(texts.contains("lowest 9.5 V"));
        Set<LinePattern> patterns = new HashSet<>();
        for (int k = 0; k < 8; k++) {
            patterns.add(LineLook.of(k).pattern());
        }
        assertEquals(8, patterns.size());
    }

    @Test
    void manyTracesThatLieTogetherAreNamedInAKeyBelow() {
        List<TimeTrace> traces = new ArrayList<>();
        for (int k = 0; k < 8; k++) {
            traces.add(new TimeTrace(
                    Text.of("at load number " + k),
                    Dimension.VOLTAGE,
                    List.of(new TimeTrace.Sample(0, 12 + k * 0.001), new TimeTrace.Sample(1, 12.5 + k * 0.001)),
                    Optional.empty()));
        }
        Scene scene = TimeChart.of(Text.of("Many"), Text.of(""), traces, List.of(), List.of())
                .scene(FONTS, 211, 95);
        List<String> texts = ChartPicturesTest.texts(scene).stream()
                .map(org.ohmloom.draw.Text::text)
                .toList();
        traces.forEach(trace -> assertEquals(
                1,
                texts.stream().filter(trace.label().english()::equals).count(),
                trace.label().english()));
        assertEquals(List.of(), ChartPicturesTest.overlaps(scene));
        assertEquals(List.of(), ChartPicturesTest.outside(scene));
    }

    @Test
    void aValueStandsWhereItsAxesSay() {
        // Voltage 12 of an axis from 9 to 13 lies at three quarters of the height; time 0.5 of 1 s in the middle.
        TimeTrace trace = new TimeTrace(
                Text.of("v"),
                Dimension.VOLTAGE,
                List.of(new TimeTrace.Sample(0, 9.1), new TimeTrace.Sample(0.5, 12), new TimeTrace.Sample(1, 12.9)),
                Optional.of("T"));
        Scene scene = TimeChart.of(Text.of("Where"), Text.of(""), List.of(trace), List.of(), List.of())
                .scene(FONTS, 211, 95);
        Extent plot = scene.items().stream()
                .filter(item -> item.mark() instanceof Box)
                .map(item -> ((Box) item.mark()).extent())
                .findFirst()
                .orElseThrow();
        Point middle = lines(scene, "T").get(0).points().get(1);
        assertEquals(plot.centre().xMm(), middle.xMm(), EXACT_MM);
        assertEquals(plot.topMm() + plot.heightMm() / 4, middle.yMm(), EXACT_MM);
    }

    @Test
    void aBarSaysItsKindItsNumberAndTheLevelItIsHeldAgainst() {
        Scene scene = ChartExamples.bars().scene(FONTS, 211);
        List<String> texts = ChartPicturesTest.texts(scene).stream()
                .map(org.ohmloom.draw.Text::text)
                .toList();
        assertTrue(texts.containsAll(List.of("on", "RMS", "mean", "may carry", "1.25 A", "625 mA")), texts.toString());
        assertTrue(scene.items().stream()
                .flatMap(item -> item.description().stream())
                .anyMatch("W7 feed of the driver, RMS: 1.25 A"::equals));
    }

    @Test
    void thingsThatCannotBeDrawnAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TimeTrace.Sample(Double.NaN, 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> TimeChart.of(Text.of("Empty"), Text.of(""), List.of(), List.of(), List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TimeCurrentChart(Text.of("Empty"), Text.of(""), List.of(), List.of(), List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new BarChart(
                        Text.of("b"),
                        Text.of(""),
                        Dimension.CURRENT,
                        List.of(Text.of("on")),
                        Text.NONE,
                        List.of(BarRow.of(Text.of("r"), 1, 2))));
    }

    @Test
    void aLineIsCutAtTheSidesOfThePlot() {
        // From (-10, 5) to (30, 5) through a square of 20 mm: from 0 to 20. A line beside it leaves nothing.
        Extent square = Extent.at(0, 0, 20, 20);
        assertEquals(
                List.of(List.of(new Point(0, 5), new Point(20, 5))),
                Clip.line(List.of(new Point(-10, 5), new Point(30, 5)), square));
        assertEquals(List.of(), Clip.line(List.of(new Point(-10, 25), new Point(30, 25)), square));
    }

    private static double at(List<TimeCurrentCurve.At> steps, double amps) {
        double seconds = Double.POSITIVE_INFINITY;
        for (int k = 1; k < steps.size(); k++) {
            if (steps.get(k - 1).amps() <= amps && amps <= steps.get(k).amps()) {
                seconds = steps.get(k).seconds();
            }
        }
        return seconds;
    }

    private static List<Line> lines(Scene scene, String element) {
        return scene.itemsOf(element).stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Line)
                .map(mark -> (Line) mark)
                .toList();
    }
}
