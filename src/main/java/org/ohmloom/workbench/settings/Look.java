package org.ohmloom.workbench.settings;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.InputMap;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import org.ohmloom.draw.DrawStyle;

/** Light or dark, for the window and the drawing in it alike. */
public enum Look {
    LIGHT(DrawStyle.LIGHT),
    DARK(DrawStyle.DARK);

    private static final List<String> KEY_MAPS = List.of(
            "Table.ancestorInputMap",
            "TabbedPane.ancestorInputMap",
            "ScrollPane.ancestorInputMap",
            "List.focusInputMap");

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
        leaveViewKeys();
    }

    /** Ctrl+Page Down goes from view to view everywhere; tables and tabs would take it for themselves. */
    private static void leaveViewKeys() {
        for (String map : KEY_MAPS) {
            if (UIManager.get(map) instanceof InputMap keys) {
                for (int key : new int[] {KeyEvent.VK_PAGE_DOWN, KeyEvent.VK_PAGE_UP}) {
                    keys.remove(KeyStroke.getKeyStroke(key, InputEvent.CTRL_DOWN_MASK));
                }
            }
        }
    }
}
