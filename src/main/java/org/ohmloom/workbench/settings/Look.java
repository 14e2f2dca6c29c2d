package org.ohmloom.workbench.settings;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import org.ohmloom.draw.DrawStyle;

/** Light or dark, for the window and the drawing in it alike. */
public enum Look {
    LIGHT(DrawStyle.LIGHT),
    DARK(DrawStyle.DARK);

    private final DrawStyle style;

    Look(DrawStyle style) {
        this.style = style;
    }

    /** The style of the drawing. */
    DrawStyle style() {
        return style;
    }

    /** The other one. */
    public Look other() {
        return this == LIGHT ? DARK : LIGHT;
    }

    /** Puts it on; windows already open follow with {@link FlatLaf#updateUI()}. */
    public void install() {
        FlatInterFont.install();
        FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
        FlatLaf.setPreferredLightFontFamily(FlatInterFont.FAMILY);
        FlatLaf.setPreferredSemiboldFontFamily(FlatInterFont.FAMILY_SEMIBOLD);
        FlatLaf.registerCustomDefaultsSource("org.ohmloom.workbench");
        if (this == DARK) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
    }
}
