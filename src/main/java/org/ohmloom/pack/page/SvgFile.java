package org.ohmloom.pack.page;

import java.awt.Color;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Swatch;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;

/**
 * Writes a scene as SVG 1.1 at true size, one unit a millimetre, mark by mark: what stands for an element carries its id and what it is.
 * Text stays text, so that it can be searched, read aloud and edited: in the drawing font where it is installed, in another sans-serif
 * font elsewhere, and always as wide as it was measured. The same scene gives the same bytes.
 */
public final class SvgFile {
    private final DrawStyle style;
    private final StringBuilder out = new StringBuilder();

    private SvgFile(DrawStyle style) {
        this.style = style;
    }

    /** The text of the file. */
    public static String text(Scene scene, String title, DrawStyle style) {
        SvgFile file = new SvgFile(style);
        file.scene(scene, title);
        return file.out.toString();
    }

    private void scene(Scene scene, String title) {
        String wide = mm(scene.widthMm());
        String high = mm(scene.heightMm());
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"" + wide + "mm\" height=\"" + high
                + "mm\" viewBox=\"0 0 " + wide + " " + high + "\" font-family=\"Roboto, Arial, sans-serif\">\n");
        out.append("<title>" + escaped(title) + "</title>\n");
        out.append("<rect width=\"" + wide + "\" height=\"" + high + "\" fill=\"" + colour(Ink.GROUND) + "\"/>\n");
        for (Item item : scene.items()) {
            boolean named = item.element().isPresent();
            if (named) {
                out.append("<g data-element=\"" + escaped(item.element().get()) + "\">");
                item.description().ifPresent(words -> out.append("<title>" + escaped(words) + "</title>"));
            }
            mark(item.mark());
            out.append(named ? "</g>\n" : "\n");
        }
        out.append("</svg>\n");
    }

    private void mark(Mark mark) {
        if (mark instanceof Line line) {
            String dashes = line.pattern().widths().stream()
                    .map(each -> mm(Math.max(0.01, each * line.widthMm())))
                    .collect(Collectors.joining(" "));
            out.append("<polyline points=\"" + points(line.points()) + "\" fill=\"none\" stroke=\"" + colour(line.ink())
                    + "\" stroke-width=\"" + mm(line.widthMm()) + "\" stroke-linejoin=\"round\""
                    + (dashes.isEmpty() ? " stroke-linecap=\"round\"" : " stroke-dasharray=\"" + dashes + "\"") + "/>");
        } else if (mark instanceof Box box) {
            String corner = box.cornerMm() > 0 ? " rx=\"" + mm(box.cornerMm()) + "\"" : "";
            out.append("<rect " + rectangle(box.extent()) + corner + fill(box.fill()) + "/>");
        } else if (mark instanceof Disc disc) {
            out.append("<circle cx=\"" + mm(disc.centre().xMm()) + "\" cy=\""
                    + mm(disc.centre().yMm()) + "\" r=\"" + mm(disc.radiusMm()) + "\"" + fill(disc.fill()) + "/>");
        } else if (mark instanceof Area area) {
            out.append("<polygon points=\"" + points(area.points()) + "\"" + fill(area.fill()) + "/>");
        } else if (mark instanceof Text text) {
            text(text);
        } else if (mark instanceof Swatch swatch) {
            swatch(swatch);
        }
    }

    private void text(Text text) {
        if (text.text().isBlank()) {
            return;
        }
        String anchor = text.anchor() == Anchor.START ? "" : text.anchor() == Anchor.MIDDLE ? "middle" : "end";
        String x = mm(text.at().xMm());
        String y = mm(text.at().yMm());
        out.append("<text x=\"" + x + "\" y=\"" + y + "\" font-size=\"" + mm(SceneFonts.sizeMm(text.heightMm())) + "\""
                + (text.weight() == Weight.BOLD ? " font-weight=\"500\"" : "")
                + (anchor.isEmpty() ? "" : " text-anchor=\"" + anchor + "\"")
                + (text.rotationDegrees() == 0
                        ? ""
                        : " transform=\"rotate(" + mm(text.rotationDegrees()) + " " + x + " " + y + ")\"")
                + " textLength=\"" + mm(text.widthMm()) + "\" lengthAdjust=\"spacingAndGlyphs\" fill=\""
                + colour(text.ink()) + "\" stroke=\"none\" xml:space=\"preserve\">" + escaped(text.text()) + "</text>");
    }

    private void swatch(Swatch swatch) {
        List<Swatch.Stripe> stripes = swatch.stripes(style);
        for (Swatch.Stripe stripe : stripes) {
            out.append("<rect " + rectangle(stripe.extent()) + " fill=\"" + hex(stripe.colour()) + "\"/>");
        }
        out.append("<rect " + rectangle(swatch.extent()) + " fill=\"none\" stroke=\"" + colour(Ink.TEXT)
                + "\" stroke-width=\"0.13\"/>");
    }

    private String fill(Fill fill) {
        String inside = fill.inside().map(this::colour).orElse("none");
        String edge = fill.edge()
                .filter(ink -> fill.edgeWidthMm() > 0)
                .map(ink -> " stroke=\"" + colour(ink) + "\" stroke-width=\"" + mm(fill.edgeWidthMm())
                        + "\" stroke-linejoin=\"round\"")
                .orElse(" stroke=\"none\"");
        return " fill=\"" + inside + "\"" + edge;
    }

    private static String rectangle(Extent extent) {
        return "x=\"" + mm(extent.leftMm()) + "\" y=\"" + mm(extent.topMm()) + "\" width=\"" + mm(extent.widthMm())
                + "\" height=\"" + mm(extent.heightMm()) + "\"";
    }

    private static String points(List<Point> points) {
        return points.stream()
                .map(each -> mm(each.xMm()) + "," + mm(each.yMm()))
                .collect(Collectors.joining(" "));
    }

    private String colour(Ink ink) {
        return hex(style.colour(ink));
    }

    private static String hex(Color colour) {
        return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xFFFFFF);
    }

    /** A length with three decimals at most. */
    private static String mm(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        String shorter = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        return shorter.equals("-0") ? "0" : shorter;
    }

    private static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> {
                    boolean allowed = letter >= 0x20
                            && (letter < 0xD800 || letter > 0xDFFF)
                            && letter != 0xFFFE
                            && letter != 0xFFFF;
                    safe.appendCodePoint(allowed ? letter : ' ');
                }
            }
        });
        return safe.toString();
    }
}
