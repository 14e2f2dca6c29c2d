package org.ohmloom.draw;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Paints scenes into any {@code Graphics2D}: screen, picture, PDF, printer. One unit of the given graphics is one
 * millimetre; the caller sets that transform. Works without a display.
 */
public final class ScenePainter {

    private static final double FLATTEST_DASH_MM = 0.01;

    /** Height of capitals of the smallest texts painted on a screen, px. */
    private static final double LEAST_TEXT_PX = 2.2;

    /** Height of the whole letters of the smallest names of wires painted on a screen, px. */
    private static final double LEAST_NAME_PX = 7;

    /** Width below which a line of a screen is drawn one pixel wide, px. */
    private static final double HAIR_PX = 0.25;

    /** Gap of dashes below which they run together on a screen, px. */
    private static final double LEAST_GAP_PX = 0.8;

    private static final int ITEMS_AT_A_TIME = 256;

    private final SceneFonts fonts;

    /** A painter with the drawing font. */
    public ScenePainter(SceneFonts fonts) {
        this.fonts = fonts;
    }

    /** The drawing font. */
    public SceneFonts fonts() {
        return fonts;
    }

    /** Paints the ground and the scene; leaves {@code g} as it was found. Safe on any thread that owns {@code g}. */
    public void paint(Graphics2D g, Scene scene, DrawStyle style) {
        Graphics2D own = (Graphics2D) g.create();
        try {
            prepare(own);
            own.setColor(style.colour(Ink.GROUND));
            own.fill(rectangle(scene.extent()));
            for (Item item : scene.items()) {
                paint(own, item.mark(), style);
            }
        } finally {
            own.dispose();
        }
    }

    /**
     * Paints the ground and what of a scene can be seen: marks outside the part shown, texts too small to be read, and the
     * names of wires in their bundles unless they can be, are left out. Leaves {@code g} as it was found.
     *
     * @param seen           the part shown
     * @param pixelsForAMm   pixels of the screen for a millimetre
     * @param stop           asks to leave off half way
     */
    public void paintSeen(
            Graphics2D g, Scene scene, DrawStyle style, Extent seen, double pixelsForAMm, BooleanSupplier stop) {
        Graphics2D own = (Graphics2D) g.create();
        try {
            prepare(own);
            own.setColor(style.colour(Ink.GROUND));
            own.fill(rectangle(scene.extent()));
            List<Item> items = scene.items();
            for (int k = 0; k < items.size() && !(k % ITEMS_AT_A_TIME == 0 && stop.getAsBoolean()); k++) {
                Item item = items.get(k);
                if (isSeen(item, seen, pixelsForAMm)) {
                    if (item.mark() instanceof Line line) {
                        fine(own, line, style, pixelsForAMm);
                    } else {
                        paint(own, item.mark(), style);
                    }
                }
            }
        } finally {
            own.dispose();
        }
    }

    /** A line as it can be told on a screen: dashes that would run together are left out, a hair's breadth is one pixel. */
    private static void fine(Graphics2D g, Line line, DrawStyle style, double pixelsForAMm) {
        g.setColor(style.colour(line.ink()));
        double widthPx = line.widthMm() * pixelsForAMm;
        if (widthPx < HAIR_PX) {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
            g.setStroke(new BasicStroke(0));
            g.draw(path(line.points(), false));
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            return;
        }
        List<Double> dashes = line.pattern().widths();
        boolean runTogether = !dashes.isEmpty() && dashes.get(1) * widthPx < LEAST_GAP_PX;
        g.setStroke(
                runTogether
                        ? new BasicStroke((float) line.widthMm(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                        : stroke(line));
        g.draw(path(line.points(), false));
    }

    private static boolean isSeen(Item item, Extent seen, double pixelsForAMm) {
        Mark mark = item.mark();
        if (mark instanceof Text text && text.heightMm() * pixelsForAMm < LEAST_TEXT_PX) {
            return false;
        }
        Extent bounds = mark.bounds();
        if (StrandNames.isFine(item) && bounds.heightMm() * pixelsForAMm < LEAST_NAME_PX) {
            return false;
        }
        return bounds.grown(0.01).overlaps(seen);
    }

    /** Paints one mark without a ground, for overlays; leaves {@code g} as it was found. */
    public void paintMark(Graphics2D g, Mark mark, DrawStyle style) {
        Graphics2D own = (Graphics2D) g.create();
        try {
            prepare(own);
            paint(own, mark, style);
        } finally {
            own.dispose();
        }
    }

    private static void prepare(Graphics2D g) {
        g.setComposite(AlphaComposite.SrcOver);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
    }

    private void paint(Graphics2D g, Mark mark, DrawStyle style) {
        if (mark instanceof Line line) {
            g.setColor(style.colour(line.ink()));
            g.setStroke(stroke(line));
            g.draw(path(line.points(), false));
        } else if (mark instanceof Box box) {
            double corner = 2 * box.cornerMm();
            Extent extent = box.extent();
            Shape shape = corner == 0
                    ? rectangle(extent)
                    : new RoundRectangle2D.Double(
                            extent.leftMm(), extent.topMm(), extent.widthMm(), extent.heightMm(), corner, corner);
            fill(g, shape, box.fill(), style);
        } else if (mark instanceof Disc disc) {
            double size = 2 * disc.radiusMm();
            fill(
                    g,
                    new Ellipse2D.Double(
                            disc.centre().xMm() - disc.radiusMm(), disc.centre().yMm() - disc.radiusMm(), size, size),
                    disc.fill(),
                    style);
        } else if (mark instanceof Area area) {
            fill(g, path(area.points(), true), area.fill(), style);
        } else if (mark instanceof Text text) {
            text(g, text, style);
        } else if (mark instanceof Swatch swatch) {
            swatch(g, swatch, style);
        }
    }

    private static void fill(Graphics2D g, Shape shape, Fill fill, DrawStyle style) {
        fill.inside().ifPresent(ink -> {
            g.setColor(style.colour(ink));
            g.fill(shape);
        });
        fill.edge().filter(ink -> fill.edgeWidthMm() > 0).ifPresent(ink -> {
            g.setColor(style.colour(ink));
            g.setStroke(new BasicStroke((float) fill.edgeWidthMm(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
            g.draw(shape);
        });
    }

    private void text(Graphics2D g, Text text, DrawStyle style) {
        if (text.rotationDegrees() == 0) {
            g.setColor(style.colour(text.ink()));
            g.setFont(fonts.font(text.text(), text.weight(), text.heightMm()));
            double left = text.at().xMm() - text.widthMm() * text.anchor().fraction();
            g.drawString(text.text(), (float) left, (float) text.at().yMm());
            return;
        }
        Graphics2D turned = (Graphics2D) g.create();
        try {
            turned.translate(text.at().xMm(), text.at().yMm());
            turned.rotate(Math.toRadians(text.rotationDegrees()));
            turned.setColor(style.colour(text.ink()));
            turned.setFont(fonts.font(text.text(), text.weight(), text.heightMm()));
            turned.drawString(
                    text.text(), (float) (-text.widthMm() * text.anchor().fraction()), 0f);
        } finally {
            turned.dispose();
        }
    }

    private static void swatch(Graphics2D g, Swatch swatch, DrawStyle style) {
        for (Swatch.Stripe stripe : swatch.stripes(style)) {
            g.setColor(stripe.colour());
            g.fill(rectangle(stripe.extent()));
        }
        g.setColor(style.colour(Ink.TEXT));
        g.setStroke(new BasicStroke((float) Swatch.EDGE_MM));
        g.draw(rectangle(swatch.extent()));
    }

    private static BasicStroke stroke(Line line) {
        float width = (float) line.widthMm();
        List<Double> widths = line.pattern().widths();
        if (widths.isEmpty()) {
            return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
        float[] dashes = new float[widths.size()];
        for (int k = 0; k < dashes.length; k++) {
            dashes[k] = (float) Math.max(FLATTEST_DASH_MM, widths.get(k) * width);
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10f, dashes, 0f);
    }

    private static Rectangle2D rectangle(Extent extent) {
        return new Rectangle2D.Double(extent.leftMm(), extent.topMm(), extent.widthMm(), extent.heightMm());
    }

    private static Path2D path(List<Point> points, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).xMm(), points.get(0).yMm());
        points.stream().skip(1).forEach(point -> path.lineTo(point.xMm(), point.yMm()));
        if (closed) {
            path.closePath();
        }
        return path;
    }
}
