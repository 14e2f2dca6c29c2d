package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;

/** Layouts shaded by their numbers: where the limits lie, what falls into which step, and that steps can be told apart. */
@BesideOthers
class HeatScaleTest {

    /** Contrast of one step with the next, in colours as usual and as colour-blind eyes see them. */
    private static final double TOLD_APART = 1.2;

    /**
     * What eyes without one kind of cones see, linear red, green and blue from the same: Machado, Oliveira and Fernandes, "A
     * Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6), 2009, severity 1, from memory.
     */
    private static final double[][][] EYES = {
        {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
        {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}},
        {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}},
        {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}
    };

    @Test
    void currentsGoByOneAndThreeOfEachDecadeUpToTheLargest() {
        // largest 45 A: 30 A is the last preferred number below it, before it come 10, 3 and 1 A
        HeatScale scale = HeatScale.of(SceneOptions.Numbers.CURRENT, 0, 45);
        assertEquals(List.of(1.0, 3.0, 10.0, 30.0), scale.limits());
        assertEquals(HeatStep.FIRST, scale.step(0.99));
        assertEquals(HeatStep.SECOND, scale.step(1));
        assertEquals(HeatStep.FIFTH, scale.step(45));
        assertEquals("below 1 A", scale.span(HeatStep.FIRST).words());
        assertEquals("10 A to 30 A", scale.span(HeatStep.FOURTH).words());
        assertEquals("30 A and more", scale.span(HeatStep.FIFTH).words());
        assertEquals(
                List.of(0.01, 0.03, 0.1, 0.3),
                HeatScale.of(SceneOptions.Numbers.DROP, 0, 0.3).limits());
    }

    @Test
    void sizesGoByOneTwoAndFiveAndTemperaturesByEqualSteps() {
        assertEquals(
                List.of(5.0, 10.0, 20.0, 50.0),
                HeatScale.of(SceneOptions.Numbers.SIZE, 0.5, 95).limits());
        // 22 to 71 degrees: five steps of 10 from 20 reach 70 only, five of 20 from 20 reach 120
        assertEquals(
                List.of(40.0, 60.0, 80.0, 100.0),
                HeatScale.of(SceneOptions.Numbers.TEMPERATURE, 22, 71).limits());
        assertEquals(
                List.of(30.0, 40.0, 50.0, 60.0),
                HeatScale.of(SceneOptions.Numbers.TEMPERATURE, 22, 69).limits());
        // all alike: any step serves that holds it
        assertEquals(
                HeatStep.FIRST,
                HeatScale.of(SceneOptions.Numbers.TEMPERATURE, 20, 20).step(20));
    }

    @Test
    void theSmallestMarginIsTheHottest() {
        HeatScale scale = HeatScale.of(SceneOptions.Numbers.MARGIN, -0.2, 0.9);
        assertEquals(HeatStep.FIFTH, scale.step(-0.01));
        assertEquals(HeatStep.FOURTH, scale.step(0));
        assertEquals(HeatStep.FIRST, scale.step(0.5));
        assertEquals("50 % and more", scale.span(HeatStep.FIRST).words());
        assertEquals("0 % to 10 %", scale.span(HeatStep.FOURTH).words());
        assertEquals("below 0 %", scale.span(HeatStep.FIFTH).words());
    }

    @ParameterizedTest
    @EnumSource(DrawStyle.class)
    void everyStepIsBrighterOrDarkerThanTheLastForEveryEye(DrawStyle style) {
        for (double[][] eye : EYES) {
            for (int k = 1; k < HeatStep.values().length; k++) {
                double cooler = luminance(style.colour(HeatStep.values()[k - 1].ink()), eye);
                double hotter = luminance(style.colour(HeatStep.values()[k].ink()), eye);
                double contrast = style.dark() ? (hotter + 0.05) / (cooler + 0.05) : (cooler + 0.05) / (hotter + 0.05);
                assertTrue(contrast >= TOLD_APART, style + " " + Arrays.deepToString(eye) + " " + k + ": " + contrast);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(DrawStyle.class)
    void everyStepCanBeToldFromWhatLiesBehindIt(DrawStyle style) {
        for (HeatStep step : HeatStep.values()) {
            for (Ink ground : List.of(Ink.GROUND, Ink.BUNDLE_INSIDE, Ink.ZONE_COOL, Ink.ZONE_WARM, Ink.ZONE_HOT)) {
                double ratio = Contrast.ratio(style.colour(step.ink()), style.colour(ground));
                assertTrue(ratio >= Contrast.LINES, style + " " + step + " on " + ground + ": " + ratio);
            }
        }
    }

    @Test
    void everyWireIsDrawnInTheStepOfItsNumberAndHotterOnesAreWider() {
        Analysis analysis = AnalysedExamples.of("star-ground");
        LaidOut shaded = laidOut(analysis, new SceneOptions(SceneOptions.Numbers.CURRENT, true, true));
        Scene scene = shaded.scene();
        HeatScale scale = shaded.scale().orElseThrow();
        double coolestMm = 0;
        double hottestMm = 0;
        for (WireId wire : analysis.harness().wires().ids()) {
            HeatStep step = scale.step(analysis.ratings().get(wire).worstAmps());
            for (Line line : lines(scene, wire.value())) {
                assertEquals(step.ink(), line.ink(), wire.value());
                coolestMm = step == HeatStep.FIRST ? Math.max(coolestMm, line.widthMm()) : coolestMm;
                hottestMm = step == HeatStep.FIFTH ? Math.max(hottestMm, line.widthMm()) : hottestMm;
            }
        }
        assertTrue(coolestMm > 0 && hottestMm > coolestMm, coolestMm + " and " + hottestMm);
    }

    @Test
    void theMarginOnASegmentIsTheSmallestOfItsWires() {
        // margin = 1 - current / ampacity of the same wire
        Analysis analysis = AnalysedExamples.of("teaching");
        double smallest = List.of("W4", "W6").stream()
                .map(id -> analysis.ratings().get(new WireId(id)))
                .mapToDouble(HeatScaleTest::margin)
                .min()
                .orElseThrow();
        String texts = String.join("|", texts(shaded("teaching", SceneOptions.Numbers.MARGIN), "SG3"));
        assertTrue(texts.contains("min " + Formats.percent(smallest) + " in W"), texts);
    }

    private static double margin(WireRating rating) {
        return 1 - rating.worstAmps() / rating.ampacity().orElseThrow().limitAmps();
    }

    @Test
    void theDiameterOnASegmentIsThatOverItsCovering() {
        Analysis analysis = AnalysedExamples.of("teaching");
        double finishedMm = analysis.evidence()
                .bundles()
                .of(new SegmentId("SG3"))
                .orElseThrow()
                .finishedMm();
        List<String> texts = texts(shaded("teaching", SceneOptions.Numbers.DIAMETER), "SG3");
        assertTrue(texts.contains("Ø " + Formats.millimetres(finishedMm)), texts::toString);
    }

    @Test
    void everyWireCarriesItsNumberInsideItsBundleForWhoLooksClosely() {
        Analysis analysis = AnalysedExamples.of("teaching");
        String amps = Formats.amps(analysis.ratings().get(new WireId("W4")).worstAmps());
        List<String> texts = texts(shaded("teaching", SceneOptions.Numbers.CURRENT), "W4");
        assertTrue(texts.contains("W4  " + amps), texts::toString);
    }

    @Test
    void withoutHeatOrNumbersNothingIsShaded() {
        Analysis analysis = AnalysedExamples.of("teaching");
        for (SceneOptions options : List.of(
                new SceneOptions(SceneOptions.Numbers.CURRENT, true, false),
                new SceneOptions(SceneOptions.Numbers.NONE, true, true))) {
            assertEquals(Optional.empty(), laidOut(analysis, options).scale());
        }
    }

    private static Scene shaded(String example, SceneOptions.Numbers numbers) {
        return laidOut(AnalysedExamples.of(example), new SceneOptions(numbers, true, true))
                .scene();
    }

    private static LaidOut laidOut(Analysis analysis, SceneOptions options) {
        return new SceneLayout(Drawn.FONTS)
                .layOut(
                        analysis.harness(),
                        Optional.of(analysis),
                        Optional.empty(),
                        options,
                        SceneLayout.SCREEN_ASPECT_RATIO);
    }

    private static List<Line> lines(Scene scene, String id) {
        return scene.itemsOf(id).stream()
                .map(Item::mark)
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .toList();
    }

    private static List<String> texts(Scene scene, String id) {
        return scene.itemsOf(id).stream()
                .map(Item::mark)
                .filter(Text.class::isInstance)
                .map(mark -> ((Text) mark).text())
                .collect(Collectors.toList());
    }

    private static double luminance(Color colour, double[][] eye) {
        double[] seen = {linear(colour.getRed()), linear(colour.getGreen()), linear(colour.getBlue())};
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int row = 0; row < seen.length; row++) {
            double channel = 0;
            for (int k = 0; k < seen.length; k++) {
                channel += eye[row][k] * seen[k];
            }
            sum += weights[row] * Math.max(0, Math.min(1, channel));
        }
        return sum;
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
