package org.ohmloom.workbench.settings;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What suits one person's eyes and hands.
 *
 * @param zoomPercent  size of everything in the window, one of {@link #ZOOMS}
 * @param fontPoints   size of the font, points, {@link #LEAST_POINTS} to {@link #MOST_POINTS}; 0 takes the system's
 * @param followSystem whether the look follows the system's, where it can be told
 * @param keys         keys other than the usual ones, by id of the command, as {@link javax.swing.KeyStroke} writes them; blank
 *                     for none
 * @param units        units and decimal sign
 */
public record Personal(
        int zoomPercent, int fontPoints, boolean followSystem, Map<String, String> keys, UnitChoice units) {

    /** Sizes to choose from, percent. */
    public static final List<Integer> ZOOMS = List.of(100, 125, 150, 175, 200, 250, 300);

    /** Bounds of the font's size, points. */
    public static final int LEAST_POINTS = 8, MOST_POINTS = 24;

    /** As the system is. */
    public static final Personal DEFAULT = new Personal(100, 0, false, Map.of());

    /** In the usual units. */
    public Personal(int zoomPercent, int fontPoints, boolean followSystem, Map<String, String> keys) {
        this(zoomPercent, fontPoints, followSystem, keys, UnitChoice.DEFAULT);
    }

    public Personal {
        if (!ZOOMS.contains(zoomPercent)) {
            throw new IllegalArgumentException("the size is one of " + ZOOMS + " percent, not " + zoomPercent);
        }
        if (fontPoints != 0 && (fontPoints < LEAST_POINTS || fontPoints > MOST_POINTS)) {
            throw new IllegalArgumentException(
                    "the font has " + LEAST_POINTS + " to " + MOST_POINTS + " points, not " + fontPoints);
        }
        keys = Collections.unmodifiableMap(new TreeMap<>(keys));
    }

    /** With what is damaged as it usually is. */
    static Personal of(
            int zoomPercent, int fontPoints, boolean followSystem, Map<String, String> keys, UnitChoice units) {
        return new Personal(
                ZOOMS.contains(zoomPercent) ? zoomPercent : DEFAULT.zoomPercent,
                fontPoints >= LEAST_POINTS && fontPoints <= MOST_POINTS ? fontPoints : 0,
                followSystem,
                keys,
                units);
    }

    public Personal withZoomPercent(int changed) {
        return new Personal(changed, fontPoints, followSystem, keys, units);
    }

    public Personal withFontPoints(int changed) {
        return new Personal(zoomPercent, changed, followSystem, keys, units);
    }

    public Personal withFollowSystem(boolean changed) {
        return new Personal(zoomPercent, fontPoints, changed, keys, units);
    }

    public Personal withKeys(Map<String, String> changed) {
        return new Personal(zoomPercent, fontPoints, followSystem, changed, units);
    }

    public Personal withUnits(UnitChoice changed) {
        return new Personal(zoomPercent, fontPoints, followSystem, keys, changed);
    }
}
