package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;

/** Sets texts: measured with the drawing font, shortened, narrowed or wrapped so that they stay in their place. */
public final class Lettering {

    /** Smallest lettering of a printed sheet, mm: the smallest of the ISO 3098 series. */
    public static final double SMALLEST_MM = 1.8;

    private static final String ELLIPSIS = "…";

    private final SceneFonts fonts;

    /** Texts set with the drawing font. */
    public Lettering(SceneFonts fonts) {
        this.fonts = fonts;
    }

    /** A text of the bundle {@code drawings}, in the language of the drawing. */
    String say(String key, Object... values) {
        return fonts.said(Words.text(key, values));
    }

    /** A text in the language of the drawing. */
    String said(org.ohmloom.words.Text text) {
        return fonts.said(text);
    }

    public double widthMm(String text, Weight weight, double heightMm) {
        return fonts.widthMm(text, weight, heightMm);
    }

    public Text text(String raw, Point at, double heightMm, Anchor anchor, Weight weight, Ink ink) {
        String text = printable(raw);
        return new Text(text, at, heightMm, widthMm(text, weight, heightMm), anchor, 0, weight, ink);
    }

    /** The text with a space for every control character and line break, and a mark for half a letter. */
    static String printable(String text) {
        boolean plain = text.codePoints().allMatch(Lettering::prints);
        if (plain) {
            return text;
        }
        StringBuilder printable = new StringBuilder();
        text.codePoints()
                .forEach(letter -> printable.appendCodePoint(
                        prints(letter) ? letter : Character.getType(letter) == Character.SURROGATE ? '?' : ' '));
        return printable.toString();
    }

    private static boolean prints(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.FORMAT -> false;
            default -> true;
        };
    }

    public Text turned(String text, Point at, double heightMm, Anchor anchor, double rotationDegrees, Ink ink) {
        double width = widthMm(text, Weight.REGULAR, heightMm);
        return new Text(text, at, heightMm, width, anchor, rotationDegrees, Weight.REGULAR, ink);
    }

    /** A text no wider than the room, cut with an ellipsis when it is too long. */
    public Text fitted(String text, Point at, double heightMm, double roomMm, Anchor anchor, Weight weight, Ink ink) {
        return text(cut(text, weight, heightMm, roomMm), at, heightMm, anchor, weight, ink);
    }

    /** A text no wider than the room: lower first, down to the least height, then cut. */
    public Text shrunk(
            String text,
            Point at,
            double heightMm,
            double leastMm,
            double roomMm,
            Anchor anchor,
            Weight weight,
            Ink ink) {
        double wide = widthMm(text, weight, heightMm);
        double height = wide <= roomMm ? heightMm : Math.max(leastMm, heightMm * roomMm / wide);
        return fitted(text, at, height, roomMm, anchor, weight, ink);
    }

    /** The text, cut with an ellipsis when it is wider than the room. */
    public String cut(String raw, Weight weight, double heightMm, double roomMm) {
        String text = printable(raw);
        if (widthMm(text, weight, heightMm) <= roomMm + 1e-6) {
            return text;
        }
        int[] letters = text.codePoints().toArray();
        for (int count = letters.length - 1; count > 0; count--) {
            String shorter = new String(letters, 0, count).stripTrailing() + ELLIPSIS;
            if (widthMm(shorter, weight, heightMm) <= roomMm) {
                return shorter;
            }
        }
        return widthMm(ELLIPSIS, weight, heightMm) <= roomMm ? ELLIPSIS : "";
    }

    /** The text in lines no wider than the room, broken at spaces; the last line allowed takes the rest and is cut. */
    public List<String> wrapped(String text, Weight weight, double heightMm, double roomMm, int mostLines) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : printable(text).strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            boolean fits = widthMm(longer, weight, heightMm) <= roomMm;
            if (fits || line.isEmpty() || lines.size() == mostLines - 1) {
                line = new StringBuilder(longer);
            } else {
                lines.add(line.toString());
                line = new StringBuilder(word);
            }
        }
        lines.add(line.toString());
        return lines.stream().map(each -> cut(each, weight, heightMm, roomMm)).toList();
    }
}
