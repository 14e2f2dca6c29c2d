package org.ohmloom.draw;

import java.awt.Color;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** Where a scene is drawn: turns every {@link Ink} into a colour that can be told from its ground there. */
public enum DrawStyle {
    /** A light screen. */
    LIGHT(new Color(0xFAFAF7), false),
    /** A dark screen. */
    DARK(new Color(0x1B1E22), false),
    /** Paper in colour. */
    PRINT(Color.WHITE, false),
    /** Paper in black and grey. */
    PRINT_MONO(Color.WHITE, true);

    private final Map<Ink, Color> colours;
    private final boolean mono;

    DrawStyle(Color ground, boolean mono) {
        this.mono = mono;
        Map<Ink, Color> all = new EnumMap<>(Ink.class);
        for (Ink ink : Ink.values()) {
            all.put(ink, Palette.colour(ink, ground, mono));
        }
        this.colours = Collections.unmodifiableMap(all);
    }

    /** The colour of an ink in this style. */
    public Color colour(Ink ink) {
        return colours.getOrDefault(ink, Color.BLACK);
    }

    /** Whether only black and greys are used. */
    public boolean mono() {
        return mono;
    }

    /** Whether the ground is dark. */
    public boolean dark() {
        return this == DARK;
    }
}
