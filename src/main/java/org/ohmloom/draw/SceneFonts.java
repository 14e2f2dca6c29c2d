package org.ohmloom.draw;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The one font of all drawings, for screen, picture and PDF alike: Roboto (Apache-2.0), TrueType outlines, bundled; with it goes
 * the language that drawings are lettered in. Loaded once and handed in. Safe to share between threads.
 * <p>A text with letters the font does not have is set in the platform's own sans-serif font.
 */
public final class SceneFonts {

    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";
    private static final float MEASURED_AT = 100;
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    /** Height of the capitals of the font as a share of its size; from its own outlines. */
    private static final double CAPITAL_RATIO = 0.711;

    /** Measured texts that are remembered for each weight. */
    private static final int MOST_KNOWN = 50_000;

    private final Font regular;
    private final Font bold;
    private final Locale language;
    private final Map<String, Double> regularWidths = new ConcurrentHashMap<>();
    private final Map<String, Double> boldWidths = new ConcurrentHashMap<>();

    private SceneFonts(Font regular, Font bold, Locale language) {
        this.regular = regular;
        this.bold = bold;
        this.language = language;
    }

    /**
     * Reads the bundled font, for drawings in English.
     *
     * @throws UncheckedIOException when it is not on the class path, or is damaged
     */
    public static SceneFonts load() {
        return new SceneFonts(read(Weight.REGULAR), read(Weight.BOLD), Locale.ROOT);
    }

    /** The same font for drawings in another language. */
    public SceneFonts in(Locale other) {
        return new SceneFonts(regular, bold, other);
    }

    /** A text as drawings letter it. */
    public String said(org.ohmloom.words.Text text) {
        return text.in(language);
    }

    /** A new stream of the font file, TrueType, to be registered in a PDF; the caller closes it. */
    public static InputStream open(Weight weight) {
        String file = FOLDER + (weight == Weight.BOLD ? "Roboto-Medium.ttf" : "Roboto-Regular.ttf");
        InputStream stream = SceneFonts.class.getResourceAsStream(file);
        if (stream == null) {
            throw new UncheckedIOException(new IOException("the drawing font " + file + " is not on the class path"));
        }
        return stream;
    }

    private static Font read(Weight weight) {
        try (InputStream stream = open(weight)) {
            return Font.createFont(Font.TRUETYPE_FONT, stream);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (FontFormatException failed) {
            throw new UncheckedIOException(new IOException("the drawing font is damaged", failed));
        }
    }

    /**
     * The font for a text whose capitals are to be of a height.
     *
     * @param heightMm height of the capitals, mm; one unit of the font's size is one mm
     */
    public Font font(String text, Weight weight, double heightMm) {
        return face(text, weight).deriveFont((float) (heightMm / CAPITAL_RATIO));
    }

    /** Size of the font whose capitals are of a height, mm. */
    public static double sizeMm(double heightMm) {
        return heightMm / CAPITAL_RATIO;
    }

    /** Width of a text whose capitals are of a height, mm. */
    public double widthMm(String text, Weight weight, double heightMm) {
        Map<String, Double> known = weight == Weight.BOLD ? boldWidths : regularWidths;
        Double width = known.get(text);
        if (width == null) {
            width = face(text, weight)
                            .deriveFont(MEASURED_AT)
                            .getStringBounds(text, MEASURE)
                            .getWidth()
                    / MEASURED_AT
                    / CAPITAL_RATIO;
            if (known.size() < MOST_KNOWN) {
                known.put(text, width);
            }
        }
        return width * heightMm;
    }

    private Font face(String text, Weight weight) {
        Font bundled = weight == Weight.BOLD ? bold : regular;
        return bundled.canDisplayUpTo(text) < 0
                ? bundled
                : new Font(Font.SANS_SERIF, weight == Weight.BOLD ? Font.BOLD : Font.PLAIN, 1);
    }
}
