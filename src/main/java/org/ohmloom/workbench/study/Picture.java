package org.ohmloom.workbench.study;

import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.units.ShownUnits;

/**
 * A chart that is laid out when the size of its pane is known.
 *
 * @param description what it shows, in a sentence, for people who cannot see it
 * @param drawing     lays it out
 */
public record Picture(String description, Drawing drawing) {

    /** This chart with its texts in the units a person reads. */
    public Picture in(ShownUnits units) {
        return units.equals(ShownUnits.USUAL)
                ? this
                : new Picture(
                        units.text(description), (fonts, widthMm, heightMm) -> drawing.scene(fonts, widthMm, heightMm)
                                .saying(units::label));
    }

    /** Lays a chart out. */
    @FunctionalInterface
    public interface Drawing {
        /**
         * The chart on a rectangle; it may come out higher than that, never wider.
         *
         * @param widthMm  width, mm
         * @param heightMm height, mm
         */
        Scene scene(SceneFonts fonts, double widthMm, double heightMm);
    }
}
