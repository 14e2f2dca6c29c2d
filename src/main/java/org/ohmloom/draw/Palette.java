package org.ohmloom.draw;

import java.awt.Color;

/**
 * Colours of the inks on a ground. Signal classes start from six colours of the Okabe-Ito set (from memory; told apart by
 * most colour-blind eyes) and three of our own, darkened or lightened until they have 3:1 against their ground and every
 * tint that may lie behind them.
 */
final class Palette {

    private static final Color HOT = new Color(0xCB5A3C);
    /** Share of the tint of hot zones on paper, the darkest there. */
    private static final double HOT_ON_PAPER = 0.36;

    private Palette() {}

    static Color colour(Ink ink, Color ground, boolean mono) {
        boolean dark = Contrast.luminance(ground) < 0.18;
        return switch (ink) {
            case GROUND -> ground;
            case PLATE -> dark ? new Color(0x24282E) : Color.WHITE;
            case TEXT, FRAME -> dark ? new Color(0xECEFF2) : new Color(mono ? 0x000000 : 0x16191D);
            case SOFT_TEXT -> dark ? new Color(0xAEB6C0) : new Color(mono ? 0x333333 : 0x4A525C);
            case RULE -> dark ? new Color(0x59616C) : new Color(mono ? 0x777777 : 0xAAB1B9);
            case BUNDLE -> dark ? new Color(0x9AA5B1) : new Color(mono ? 0x4D4D4D : 0x4B5560);
            case BUNDLE_INSIDE -> dark ? new Color(0x262B31) : Color.WHITE;
            case COMPONENT -> dark ? new Color(0x2A3038) : new Color(mono ? 0xFFFFFF : 0xF1F4F8);
            case COMPONENT_EDGE -> dark ? new Color(0x8D99A7) : new Color(mono ? 0x000000 : 0x55616E);
            case CONNECTOR -> dark ? new Color(0x39434F) : new Color(mono ? 0xEEEEEE : 0xDDE5EE);
            case CONNECTOR_EDGE -> dark ? new Color(0xB4C0CC) : new Color(mono ? 0x000000 : 0x33404D);
            case TABLE_HEAD -> dark ? new Color(0x2E353E) : new Color(mono ? 0xEBEBEB : 0xE6EBF1);
            case SPLICE, EARTH -> dark ? new Color(0xD5DCE4) : new Color(mono ? 0x000000 : 0x22282F);
            case ZONE_COOL -> mono ? ground : place(ground, new Color(0x5C8DB8), dark, 0.18);
            case ZONE_WARM -> mono ? ground : place(ground, new Color(0xD9A33C), dark, 0.32);
            case ZONE_HOT -> mono ? ground : place(ground, HOT, dark, HOT_ON_PAPER);
            case ZONE_EDGE -> dark ? new Color(0xA3ADB9) : new Color(mono ? 0x555555 : 0x5A626C);
            case HEAT_FIRST -> heat(mono, dark, 0x777777, 0x3F759D, 0x6F8FC8);
            case HEAT_SECOND -> heat(mono, dark, 0x5E5E5E, 0x5557A4, 0xA49BE0);
            case HEAT_THIRD -> heat(mono, dark, 0x454545, 0x7C2680, 0xF4B0A8);
            case HEAT_FOURTH -> heat(mono, dark, 0x2A2A2A, 0x680E20, 0xF6DC80);
            case HEAT_FIFTH -> heat(mono, dark, 0x000000, 0x2A0808, 0xFFFDF0);
            case CHART_FIRST -> mono ? Color.BLACK : line(hue(Ink.DATA_BUS), ground);
            case CHART_SECOND -> mono ? Color.BLACK : line(hue(Ink.FEED), ground);
            case CHART_THIRD -> mono ? Color.BLACK : line(hue(Ink.REFERENCE_RETURN), ground);
            case CHART_FOURTH -> mono ? Color.BLACK : line(hue(Ink.PULSE_SIGNAL), ground);
            case CHART_BAND -> mono ? new Color(0xE2E2E2) : zone(ground, new Color(0x4A90C2), dark);
            case CHART_SPAN -> mono
                    ? new Color(0xF3F3F3)
                    : Contrast.mix(ground, new Color(0x8A93A0), dark ? 0.14 : 0.08);
            case CAUTION -> mono ? Color.BLACK : line(new Color(0xB3261E), ground);
            default -> mono ? monochrome(ink) : line(hue(ink), ground);
        };
    }

    /** The plain hue of a signal class. */
    static Color hue(Ink ink) {
        return switch (ink) {
            case FEED -> new Color(0xD55E00);
            case SWITCHED_OUTPUT -> new Color(0xE69F00);
            case RETURN -> new Color(0x5F6B76);
            case REFERENCE_SUPPLY -> new Color(0xCC79A7);
            case REFERENCE_RETURN -> new Color(0x009E73);
            case ANALOGUE_SIGNAL -> new Color(0x56B4E9);
            case PULSE_SIGNAL -> new Color(0x8C6BB1);
            case DATA_BUS -> new Color(0x0072B2);
            case SHIELD -> new Color(0x9AA0A6);
            default -> throw new IllegalArgumentException(ink + " is not the ink of a signal class");
        };
    }

    /**
     * Steps of a scale: on light grounds the hotter the darker, on dark grounds the hotter the brighter, by the same ratio of
     * luminance from each to the next.
     */
    private static Color heat(boolean mono, boolean dark, int onPaper, int onLight, int onDark) {
        return mono
                ? new Color(onPaper)
                : Contrast.reach(
                        new Color(dark ? onDark : onLight),
                        dark ? new Color(0x3A434E) : new Color(0xE9E5DC),
                        Contrast.LINES);
    }

    private static Color monochrome(Ink ink) {
        return ink == Ink.SHIELD || ink == Ink.RETURN ? new Color(0x555555) : Color.BLACK;
    }

    private static Color zone(Color ground, Color tint, boolean dark) {
        return Contrast.mix(ground, tint, dark ? 0.16 : 0.13);
    }

    /** A zone of the harness: faint on a screen, on paper as strong as tells zones apart in print. */
    private static Color place(Color ground, Color tint, boolean dark, double onPaper) {
        return ground.equals(Color.WHITE) ? Contrast.mix(ground, tint, onPaper) : zone(ground, tint, dark);
    }

    /** Made to be told from the ground and from every tint behind it; the least favourable ground decides. */
    private static Color line(Color hue, Color ground) {
        boolean dark = Contrast.luminance(ground) < 0.18;
        Color light = ground.equals(Color.WHITE) ? Contrast.mix(ground, HOT, HOT_ON_PAPER) : new Color(0xE9E5DC);
        return Contrast.reach(hue, dark ? new Color(0x3A434E) : light, Contrast.LINES);
    }
}
