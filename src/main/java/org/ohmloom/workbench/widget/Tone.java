package org.ohmloom.workbench.widget;

import java.awt.Color;
import javax.swing.UIManager;

/** How a text stands out; every tone but the plain one has a mark or words of its own beside the colour. */
public enum Tone {
    PLAIN("Table.foreground"),
    /** Of second rank: not entered but worked out, or of an earlier harness. */
    SOFT("Ohmloom.soft"),
    GOOD("Ohmloom.good"),
    NOTE("Ohmloom.note"),
    WARNING("Ohmloom.warning"),
    ERROR("Ohmloom.error");

    private final String key;

    Tone(String key) {
        this.key = key;
    }

    /** Its colour in the look that is on now. */
    public Color colour() {
        return colour(key);
    }

    /** A colour of the look that is on now. */
    public static Color colour(String key) {
        Color found = UIManager.getColor(key);
        return found == null ? Color.GRAY : found;
    }
}
