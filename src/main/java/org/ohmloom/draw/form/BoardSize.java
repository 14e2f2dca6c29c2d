package org.ohmloom.draw.form;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.units.Require;

/**
 * The largest board there is to build on.
 *
 * @param widthMm  width, mm, 300 or more
 * @param heightMm height, mm, 300 or more
 */
public record BoardSize(double widthMm, double heightMm) {

    /** One sheet of plywood of 8 by 4 feet: common practice, no source. */
    public static final BoardSize PLYWOOD = new BoardSize(2440, 1220);

    /** No board is smaller or larger than this, mm. */
    private static final double LEAST_MM = 300, MOST_MM = 50_000;

    private static final Pattern TEXT =
            Pattern.compile("\\s*(\\d+(?:[.,]\\d+)?)\\s*(?:mm)?\\s*[x×X*]\\s*(\\d+(?:[.,]\\d+)?)\\s*(?:mm)?\\s*");

    public BoardSize {
        Require.within(widthMm, LEAST_MM, MOST_MM, "width of a board");
        Require.within(heightMm, LEAST_MM, MOST_MM, "height of a board");
    }

    /** A size as typed, in mm: {@code 2440x1220}; empty when it is none or out of range. */
    public static Optional<BoardSize> parsed(String text) {
        Matcher found = TEXT.matcher(text);
        if (!found.matches()) {
            return Optional.empty();
        }
        double wide = Double.parseDouble(found.group(1).replace(',', '.'));
        double high = Double.parseDouble(found.group(2).replace(',', '.'));
        boolean within = wide >= LEAST_MM && wide <= MOST_MM && high >= LEAST_MM && high <= MOST_MM;
        return within ? Optional.of(new BoardSize(wide, high)) : Optional.empty();
    }

    /** In words: "2440 mm by 1220 mm". */
    public String text() {
        return Math.round(widthMm) + " mm by " + Math.round(heightMm) + " mm";
    }
}
