package org.ohmloom.draw.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.words.Text;

/** The picture of the returns: heights, widths and limits are where they should be, and nothing written lies on anything else. */
@BesideOthers
class ReturnPictureTest {

    private static final SceneFonts FONTS = SceneFonts.load();
    private static final double EXACT_MM = 1e-6;

    /** Panes of 1600 by 1000 and 1280 by 800 px windows, half of the latter, and a sheet of the pack. */
    private static final List<double[]> SIZES =
            List.of(new double[] {240, 130}, new double[] {150, 95}, new double[] {75, 90}, new double[] {260, 150});

    @Test
    void nothingWrittenLiesOnAnythingElseFromThreeToSixtyGroundPoints() throws IOException {
        for (int grounds : new int[] {1, 3, 4, 7, 12, 20, 33, 47, 60}) {
            for (int seed = 0; seed < 3; seed++) {
                ReturnPicture picture = picture(grounds, seed);
                for (double[] size : SIZES) {
                    String about = grounds + " grounds, seed " + seed + ", " + size[0] + " mm";
                    Scene scene = picture.scene(FONTS, size[0], size[1]);
                    assertEquals(List.of(), ChartPicturesTest.overlaps(scene), about);
                    assertEquals(List.of(), ChartPicturesTest.outside(scene), about);
                    ChartPicturesTest.keep("returns-" + grounds + "-" + seed + "-" + (int) size[0], scene);
                    for (ReturnColumn column : picture.columns()) {
                        assertFalse(scene.itemsOf(column.element()).isEmpty(), about + " " + column.element());
                    }
                }
            }
        }
    }

    @Test
    void noPageIsHigherThanASheetAndNoColumnIsLost() {
        ReturnPicture picture = picture(60, 4);
        List<Scene> pages = picture.pages(FONTS, 260, 150);
        assertTrue(pages.size() > 1, "60 grounds need more than one sheet");
        List<String> found = new ArrayList<>();
        for (Scene page : pages) {
            assertTrue(page.heightMm() <= 150, "height " + page.heightMm());
            assertEquals(List.of(), ChartPicturesTest.overlaps(page));
            found.addAll(page.elements());
        }
        assertEquals(
                picture.columns().stream().map(ReturnColumn::element).sorted().toList(),
                found.stream().sorted().toList());
    }

    @Test
    void aBasinStandsAsHighAsItsVoltageAndItsJointTakesItsShare() {
        // Scale 0 to 100 mV: a floor at 50 mV lies half way up; with 20 mV over the joint the dark part is two fifths
        // of the way.
        Basin half = basin("G1", 0.050, 10, 0.020);
        Basin full = basin("G2", 0.100, 20, 0);
        Scene scene = new ReturnPicture(Text.of("Cruise"), Text.of(""), Text.of("BAT1 −"), List.of(half, full))
                .scene(FONTS, 150, 95);
        List<Box> way = boxes(scene, "G1");
        Extent rest = way.get(0).extent();
        Extent joint = way.get(1).extent();
        assertEquals(Ink.RETURN, way.get(1).fill().inside().orElseThrow());
        assertEquals(0.4, joint.heightMm() / (joint.heightMm() + rest.heightMm()), EXACT_MM);
        Extent other = boxes(scene, "G2").get(0).extent();
        assertEquals(2, other.heightMm() / (joint.heightMm() + rest.heightMm()), EXACT_MM);
        assertEquals(2, other.widthMm() / rest.widthMm(), EXACT_MM, "20 A is twice as wide as 10 A");
        assertEquals(joint.topMm(), floor(scene, "G1"), EXACT_MM);
    }

    @Test
    void aBasinBelowTheReferenceHangsThere() {
        Scene scene = new ReturnPicture(
                        Text.of("Charging"),
                        Text.of(""),
                        Text.of("BAT1 −"),
                        List.of(basin("G1", -0.030, -5, -0.010), basin("G2", 0.060, 5, 0)))
                .scene(FONTS, 150, 95);
        Extent up = boxes(scene, "G2").get(0).extent();
        Extent down = boxes(scene, "G1").get(0).extent();
        // Both end at the reference; 60 mV reaches twice as far as 30 mV, of which the joint has taken a third.
        assertEquals(up.bottomMm(), down.topMm(), EXACT_MM);
        assertEquals(up.heightMm() / 2 * 2 / 3, down.heightMm(), EXACT_MM);
        assertEquals(List.of(), ChartPicturesTest.overlaps(scene));
        assertEquals(List.of(), ChartPicturesTest.outside(scene));
    }

    @Test
    void aGroundWithoutCurrentHasADottedWayAndAFifthTerminalStandsInASecondRow() {
        Basin idle = new Basin("G1", "G1", "", Text.of(""), "", 5, 4, 0, 0.05, 0, 0, OptionalDouble.empty());
        Scene scene =
                new ReturnPicture(Text.of(""), Text.of(""), Text.of("BAT1 −"), List.of(idle)).scene(FONTS, 150, 95);
        assertTrue(scene.itemsOf("G1").stream()
                .anyMatch(item -> item.mark() instanceof Line line && line.pattern() == LinePattern.DOTTED));
        List<Disc> dots = scene.itemsOf("G1").stream()
                .filter(item -> item.mark() instanceof Disc)
                .map(item -> (Disc) item.mark())
                .toList();
        assertEquals(5, dots.size());
        assertEquals(2, dots.stream().map(dot -> dot.centre().yMm()).distinct().count());
        assertEquals(
                4, dots.stream().filter(dot -> dot.fill().inside().isPresent()).count(), "the fifth is hollow");
    }

    @Test
    void limitsLieAtTheirHeightAndWhatIsBeyondSaysSoWithoutColour() {
        Gauge over = gauge("U1", Gauge.Kind.UNIT_GROUND, 0.08, 0.05);
        Gauge within = gauge("S1", Gauge.Kind.SENSOR_RETURN, 0.02, 0.1);
        Scene scene = new ReturnPicture(Text.of(""), Text.of(""), Text.of("BAT1 −"), List.of(over, within))
                .scene(FONTS, 150, 95);
        List<Line> limits = scene.items().stream()
                .filter(item -> item.mark() instanceof Line line
                        && line.pattern() == LinePattern.DASHED
                        && line.points().get(0).xMm() > 5
                        && item.layer() == Layer.NUMBERS)
                .map(item -> (Line) item.mark())
                .toList();
        assertEquals(2, limits.size());
        List<Extent> tubes = boxes(scene, "U1").stream().map(Box::extent).toList();
        Extent whole = tubes.get(0);
        // Scale 0 to 100 mV: 50 mV lies in the middle of the tube, 100 mV at its top.
        assertEquals(whole.centre().yMm(), limits.get(0).points().get(0).yMm(), EXACT_MM);
        assertEquals(whole.topMm(), limits.get(1).points().get(0).yMm(), EXACT_MM);
        assertTrue(scene.items().stream()
                .anyMatch(item -> item.mark() instanceof Area area
                        && area.points().size() == 3
                        && area.fill().inside().filter(Ink.CAUTION::equals).isPresent()));
        assertTrue(
                over.description().english().contains("beyond its limit"),
                over.description().english());
        assertFalse(
                within.description().english().contains("beyond"),
                within.description().english());
    }

    @Test
    void aLimitFarAboveEveryHeightIsNamedInsteadOfDrawn() {
        Scene scene = new ReturnPicture(
                        Text.of(""),
                        Text.of(""),
                        Text.of("BAT1 −"),
                        List.of(gauge("U1", Gauge.Kind.UNIT_GROUND, 0.001, 0.05)))
                .scene(FONTS, 150, 95);
        List<String> texts = ChartPicturesTest.texts(scene).stream()
                .map(org.ohmloom.draw.Text::text)
                .toList();
        assertTrue(texts.contains("limit 50 mV, above"), texts.toString());
    }

    @Test
    void kindsOfGaugesDifferInShape() {
        List<Class<? extends Mark>> shapes = new ArrayList<>();
        for (Gauge.Kind kind : Gauge.Kind.values()) {
            shapes.add(GaugeDrawing.mark(kind, new Point(0, 0)).getClass());
        }
        assertEquals(3, shapes.stream().distinct().count());
    }

    @Test
    void aPictureWithoutColumnsIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new ReturnPicture(Text.of(""), Text.of(""), Text.of("BAT1 −"), List.of()));
    }

    private static double floor(Scene scene, String element) {
        return scene.itemsOf(element).stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Area area && area.points().size() == 4)
                .map(mark -> ((Area) mark).points().get(1).yMm())
                .findFirst()
                .orElseThrow();
    }

    private static List<Box> boxes(Scene scene, String element) {
        return scene.itemsOf(element).stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Box)
                .map(mark -> (Box) mark)
                .toList();
    }

    private static Basin basin(String id, double volts, double amps, double jointVolts) {
        return new Basin(id, id, "", Text.of("Frame"), "", 3, 4, amps, volts, jointVolts, 0, OptionalDouble.empty());
    }

    private static Gauge gauge(String id, Gauge.Kind kind, double volts, double limitVolts) {
        return new Gauge(id, id, "", kind, "BAT1", "", volts, 0, OptionalDouble.of(limitVolts));
    }

    /** A picture as a harness of that size might give: short and long names, idle grounds, some below the reference. */
    static ReturnPicture picture(int grounds, long seed) {
        Random random = new Random(seed * 1000 + grounds);
        List<ReturnColumn> columns = new ArrayList<>();
        String state = seed % 2 == 0 ? "" : "Night driving in the rain";
        double scale = Math.pow(10, random.nextInt(4) - 3);
        for (int k = 1; k <= grounds; k++) {
            double volts = scale * (random.nextDouble() * 1.2 - (seed == 2 ? 0.4 : 0));
            double amps = random.nextInt(5) == 0 ? 0 : 200 * Math.pow(random.nextDouble(), 3);
            String id = random.nextInt(4) == 0 ? "GND-ENGINE-BAY-LEFT-" + k : "G" + k;
            columns.add(new Basin(
                    id,
                    id,
                    random.nextBoolean() ? "Left inner wing behind the battery" : "Frame",
                    Text.of("Body " + k * 4 / (grounds + 1)),
                    state,
                    random.nextInt(10),
                    4,
                    amps,
                    volts,
                    volts * random.nextDouble(),
                    random.nextInt(3) == 0 ? scale * 0.2 * random.nextDouble() : 0,
                    OptionalDouble.of(0.1)));
        }
        List<Gauge.Kind> kinds = new ArrayList<>();
        for (int k = 0; k < grounds / 3 + 1; k++) {
            kinds.add(Gauge.Kind.values()[random.nextInt(3)]);
        }
        kinds.sort(null);
        for (int k = 0; k < kinds.size(); k++) {
            boolean unit = kinds.get(k) == Gauge.Kind.UNIT_GROUND;
            columns.add(new Gauge(
                    "N" + k,
                    "N" + k,
                    "Engine temperature",
                    kinds.get(k),
                    unit ? "BAT1" : "U1",
                    state,
                    scale * (random.nextDouble() - 0.2),
                    random.nextInt(3) == 0 ? scale * 0.1 : 0,
                    OptionalDouble.of(unit ? 0.05 : 0.1)));
        }
        return new ReturnPicture(
                Text.of("Returns, " + grounds + " ground points"),
                Text.of("Height: mean voltage above the reference. Width: mean current."),
                Text.of("BAT1 negative"),
                columns);
    }

    @Test
    void everyStyleHasItsOwnInkForEveryPart() {
        Scene scene = picture(7, 1).scene(FONTS, 240, 130);
        assertTrue(scene.items().size() > 100);
        assertTrue(Arrays.stream(DrawStyle.values()).allMatch(style -> scene.items().stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof org.ohmloom.draw.Text)
                .map(mark -> ((org.ohmloom.draw.Text) mark).ink())
                .noneMatch(ink -> style.colour(ink).equals(style.colour(Ink.GROUND)))));
    }
}
