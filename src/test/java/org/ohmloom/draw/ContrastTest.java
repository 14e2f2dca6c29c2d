package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.SignalClass;

/** Lines can be told from what lies behind them, texts can be read, and no meaning rests on colour alone. */
@BesideOthers
class ContrastTest {

    private static final double ROUNDING = 0.01;

    /** Everything a wire, a symbol or a text may lie on. */
    private static final List<Ink> GROUNDS =
            List.of(Ink.GROUND, Ink.PLATE, Ink.BUNDLE_INSIDE, Ink.ZONE_COOL, Ink.ZONE_WARM, Ink.ZONE_HOT);

    private static final List<Ink> TEXT_GROUNDS = List.of(
            Ink.GROUND,
            Ink.PLATE,
            Ink.COMPONENT,
            Ink.CONNECTOR,
            Ink.TABLE_HEAD,
            Ink.CHART_BAND,
            Ink.CHART_SPAN,
            Ink.ZONE_COOL,
            Ink.ZONE_WARM,
            Ink.ZONE_HOT);

    @Test
    void contrastIsThatOfTheGuidelines() {
        // WCAG 2.2: black on white is (1 + 0.05) / (0 + 0.05) = 21; #777777 on white is the well-known 4.48.
        assertEquals(21, Contrast.ratio(Color.BLACK, Color.WHITE), ROUNDING);
        assertEquals(4.48, Contrast.ratio(new Color(0x777777), Color.WHITE), ROUNDING);
        assertEquals(1, Contrast.ratio(Color.RED, Color.RED), ROUNDING);
    }

    @ParameterizedTest
    @EnumSource(DrawStyle.class)
    void linesHaveThreeToOne(DrawStyle style) {
        for (SignalClass each : SignalClass.values()) {
            requireContrast(style, SignalLook.of(each).ink(), GROUNDS, Contrast.LINES);
        }
        for (Ink ink : List.of(Ink.BUNDLE, Ink.FRAME, Ink.SPLICE, Ink.EARTH, Ink.CAUTION)) {
            requireContrast(style, ink, GROUNDS, Contrast.LINES);
        }
        for (Ink ink : List.of(Ink.CHART_FIRST, Ink.CHART_SECOND, Ink.CHART_THIRD, Ink.CHART_FOURTH, Ink.CAUTION)) {
            requireContrast(style, ink, List.of(Ink.GROUND, Ink.CHART_BAND, Ink.CHART_SPAN), Contrast.LINES);
        }
        requireContrast(style, Ink.COMPONENT_EDGE, List.of(Ink.COMPONENT, Ink.GROUND), Contrast.LINES);
        requireContrast(style, Ink.CONNECTOR_EDGE, List.of(Ink.CONNECTOR, Ink.GROUND), Contrast.LINES);
    }

    @ParameterizedTest
    @EnumSource(DrawStyle.class)
    void textsHaveFourAndAHalfToOne(DrawStyle style) {
        for (Ink ink : List.of(Ink.TEXT, Ink.SOFT_TEXT)) {
            requireContrast(style, ink, TEXT_GROUNDS, Contrast.TEXT);
        }
    }

    /** Cool, warm and hot zones side by side on paper: as far from each other as from the paper, in steps of a byte. */
    @Test
    void theTintsOfZonesAreToldApartInPrint() {
        List<Ink> tints = List.of(Ink.GROUND, Ink.ZONE_COOL, Ink.ZONE_WARM, Ink.ZONE_HOT);
        for (int one = 0; one < tints.size(); one++) {
            for (int other = one + 1; other < tints.size(); other++) {
                Color a = DrawStyle.PRINT.colour(tints.get(one));
                Color b = DrawStyle.PRINT.colour(tints.get(other));
                double apart = Math.sqrt(Math.pow(a.getRed() - b.getRed(), 2)
                        + Math.pow(a.getGreen() - b.getGreen(), 2)
                        + Math.pow(a.getBlue() - b.getBlue(), 2));
                assertTrue(apart > 25, tints.get(one) + " and " + tints.get(other) + ": " + apart);
            }
        }
    }

    @Test
    void onLightPaperAHueThatIsDarkEnoughStaysAsItIs() {
        assertEquals(new Color(0x0072B2), DrawStyle.PRINT.colour(Ink.DATA_BUS));
    }

    @Test
    void everySignalClassHasALinePatternOfItsOwn() {
        Set<LinePattern> patterns = new HashSet<>();
        Arrays.stream(SignalClass.values())
                .forEach(each -> patterns.add(SignalLook.of(each).pattern()));
        assertEquals(SignalClass.values().length, patterns.size());
        assertEquals(LinePattern.DASHED, SignalLook.of(SignalClass.SHIELD).pattern());
    }

    private static void requireContrast(DrawStyle style, Ink ink, List<Ink> grounds, double wanted) {
        for (Ink ground : grounds) {
            double ratio = Contrast.ratio(style.colour(ink), style.colour(ground));
            assertTrue(ratio >= wanted, style + ": " + ink + " on " + ground + " has " + ratio);
        }
    }
}
