package org.ohmloom.pack;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.ohmloom.units.Require;

/**
 * As what pictures each sheet of the drawing is written beside its PDF.
 *
 * @param svg         as SVG
 * @param png         as PNG
 * @param dotsPerInch resolution of PNG, dots to the inch, 20 to 1200
 */
public record PictureOptions(boolean svg, boolean png, int dotsPerInch) {

    /** SVG only, which is small; PNG at 200 dots to the inch when asked for. */
    public static final PictureOptions USUAL = new PictureOptions(true, false, 200);

    public PictureOptions {
        Require.within(dotsPerInch, 20, 1200, "dots to the inch");
    }

    /**
     * The kinds of a list as typed, {@code svg,png} or {@code none}, at this resolution.
     *
     * @throws PackException when one is no kind of picture
     */
    PictureOptions of(String list) throws PackException {
        List<String> kinds = Arrays.stream(list.toLowerCase(Locale.ROOT).split(",", -1))
                .map(String::strip)
                .toList();
        for (String kind : kinds) {
            if (!List.of("svg", "png", "none").contains(kind)) {
                throw new PackException("'%s' is no kind of picture; choose from svg, png, none", kind);
            }
        }
        return new PictureOptions(kinds.contains("svg"), kinds.contains("png"), dotsPerInch);
    }
}
