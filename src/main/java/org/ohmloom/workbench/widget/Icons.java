package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.extras.FlatSVGIcon;
import java.net.URL;
import java.util.Optional;
import javax.swing.Icon;

/** The icons of the workbench: drawn for it, in one grey that follows the look. */
public final class Icons {

    private static final int SIZE = 16;

    private Icons() {}

    /** The icon of that name, if there is one. */
    public static Optional<Icon> find(String name) {
        URL url = Icons.class.getResource("icons/" + name + ".svg");
        return url == null ? Optional.empty() : Optional.of(new FlatSVGIcon(url).derive(SIZE, SIZE));
    }

    /** The icon of that name for a button in the accent colour. */
    public static Icon onAccent(String name) {
        FlatSVGIcon icon = new FlatSVGIcon((FlatSVGIcon) of(name));
        icon.setColorFilter(new FlatSVGIcon.ColorFilter(colour -> Tone.colour("Button.default.foreground")));
        return icon;
    }

    /**
     * The icon of that name.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static Icon of(String name) {
        return find(name).orElseThrow(() -> new IllegalArgumentException("no icon '" + name + "'"));
    }
}
