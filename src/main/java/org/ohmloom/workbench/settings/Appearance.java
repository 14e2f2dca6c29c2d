package org.ohmloom.workbench.settings;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Font;
import java.awt.Toolkit;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Logger;
import javax.swing.UIManager;

/** Puts look, size and font on, all windows following at once. Belongs to the event thread. */
public final class Appearance {

    private static final String FONT = "defaultFont";
    private static final float WHOLE = 100;

    /** Kept here, since a logger that nobody holds forgets its filter. */
    private static final Logger LOOK_AND_FEEL = Logger.getLogger(FlatLaf.class.getName());

    private Appearance() {}

    /** Puts on what is settled; a look that follows the system is settled anew first. */
    public static void install(PreferenceStore preferences) {
        if (preferences.now().personal().followSystem()) {
            ofSystem().ifPresent(found -> preferences.change(before -> before.withLook(found)));
        }
        // without the desktop's own file dialog ours serves; that is nothing to tell of
        LOOK_AND_FEEL.setFilter(told -> !(told.getThrown() instanceof UnsatisfiedLinkError));
        Personal personal = preferences.now().personal();
        Look look = preferences.now().look();
        UIManager.put(FONT, null);
        look.install();
        if (personal.fontPoints() > 0) {
            Font usual = UIManager.getFont(FONT);
            UIManager.put(FONT, usual.deriveFont((float) personal.fontPoints()));
            look.install();
        }
        UIScale.setZoomFactor(personal.zoomPercent() / WHOLE);
        FlatLaf.updateUI();
    }

    /** The system's look, where it can be told. */
    static Optional<Look> ofSystem() {
        Object theme = Toolkit.getDefaultToolkit().getDesktopProperty("gnome.Net/ThemeName");
        return theme == null
                ? Optional.empty()
                : Optional.of(String.valueOf(theme).toLowerCase(Locale.ROOT).contains("dark") ? Look.DARK : Look.LIGHT);
    }
}
