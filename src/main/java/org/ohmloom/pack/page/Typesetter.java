package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;

/** Measures and wraps texts in the drawing font. Never cuts one: a text too long for its room takes more lines. */
final class Typesetter {
    /** Distance of base lines over the height of the capitals. */
    static final double PITCH = 1.75;

    private static final double ROUNDING_MM = 1e-6;

    /** Letters from here on may be joined or set in another font; they are measured as a whole. */
    private static final char FIRST_SPECIAL = 0x250;

    private final SceneFonts fonts;
    private final Map<Weight, double[]> letterWidths = new EnumMap<>(Weight.class);

    Typesetter(SceneFonts fonts) {
        this.fonts = fonts;
        for (Weight weight : Weight.values()) {
            double[] widths = new double[FIRST_SPECIAL];
            Arrays.fill(widths, Double.NaN);
            letterWidths.put(weight, widths);
        }
    }

    /** Width of a text, mm. The drawing font is set without kerning, so plain letters add up. */
    double widthMm(String text, Weight weight, double heightMm) {
        double[] widths = letterWidths.get(weight);
        double sum = 0;
        for (int k = 0; k < text.length(); k++) {
            char letter = text.charAt(k);
            if (letter >= FIRST_SPECIAL) {
                return fonts.widthMm(text, weight, heightMm);
            }
            if (Double.isNaN(widths[letter])) {
                widths[letter] = fonts.widthMm(String.valueOf(letter), weight, 1);
            }
            sum += widths[letter];
        }
        return sum * heightMm;
    }

    /** Width of the widest word, mm. */
    double widestWordMm(String text, Weight weight, double heightMm) {
        double widest = 0;
        for (String word : text.split("\\s+")) {
            widest = Math.max(widest, widthMm(word, weight, heightMm));
        }
        return widest;
    }

    Text text(String text, double xMm, double yMm, double heightMm, Anchor anchor, Weight weight, Ink ink) {
        return new Text(text, new Point(xMm, yMm), heightMm, widthMm(text, weight, heightMm), anchor, 0, weight, ink);
    }

    /** The text in lines no wider than the room: broken at spaces, a word too long after its signs, last within it. */
    List<String> lines(String text, Weight weight, double heightMm, double roomMm) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            String line = "";
            for (String word : paragraph.strip().split("\\s+")) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (fits(longer, weight, heightMm, roomMm)) {
                    line = longer;
                    continue;
                }
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = word;
                while (!fits(line, weight, heightMm, roomMm)) {
                    int end = breakAt(line, weight, heightMm, roomMm);
                    lines.add(line.substring(0, end));
                    line = line.substring(end);
                }
            }
            lines.add(line);
        }
        return lines;
    }

    private boolean fits(String text, Weight weight, double heightMm, double roomMm) {
        return text.codePointCount(0, text.length()) <= 1 || widthMm(text, weight, heightMm) <= roomMm + ROUNDING_MM;
    }

    /** Where to break a word too long for the room: after its last sign that fits, otherwise after its last letter. */
    private int breakAt(String word, Weight weight, double heightMm, double roomMm) {
        int most = word.offsetByCodePoints(0, 1);
        int sign = 0;
        for (int end = most; end < word.length(); end = word.offsetByCodePoints(end, 1)) {
            if (!fits(word.substring(0, end), weight, heightMm, roomMm)) {
                break;
            }
            most = end;
            if ("-/.,;:_)+".indexOf(word.charAt(end - 1)) >= 0) {
                sign = end;
            }
        }
        return sign > 0 ? sign : most;
    }
}
