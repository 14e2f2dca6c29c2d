package org.ohmloom.workbench.canvas;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.Text;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.Tone;

/** Paints a canvas: the scene from a picture kept in the pixels of the screen, selection and pointer fresh on top. */
final class CanvasPainting {

    private static final int HALO = 5;

    /** Of the way of what a study shows, such as a loop: a band wider than that of what is selected in it. */
    private static final int BAND = 9;

    /** How much of a large scene is painted beyond each side of the view, so that it can be dragged about. */
    private static final double ROOM = 0.25;

    /** How long a large scene must lie still before it is painted anew, ms. */
    private static final int STILL_MILLIS = 40;

    private final ScenePainter painter;
    private @Nullable KeptPicture kept;
    private @Nullable KeptPicture whole;
    private KeptPicture.@Nullable Asked asked;
    private @Nullable LatestWins<KeptPicture.Asked, KeptPicture> pictures;

    CanvasPainting(ScenePainter painter) {
        this.painter = painter;
    }

    /** Forgets the kept pictures, after another document or look came. */
    void forget() {
        kept = null;
        whole = null;
        asked = null;
    }

    void paint(Graphics2D g, LayoutCanvas canvas, Scene scene, Optional<String> hovered) {
        double pixels = Math.max(1, g.getTransform().getScaleX());
        DrawStyle style = Samples.style();
        ViewTransform transform = canvas.transform();
        boolean large = canvas.isShowing() && scene.items().size() >= SceneLookup.LARGE;
        KeptPicture.Asked view = new KeptPicture.Asked(
                scene, transform, style, canvas.getWidth(), canvas.getHeight(), pixels, large ? ROOM : 0);
        if (kept == null || !kept.asked().covers(view)) {
            if (large) {
                ask(view, canvas);
            } else {
                kept = KeptPicture.of(view, painter, Cancel.NEVER);
            }
        }
        if (large) {
            g.setColor(style.colour(Ink.GROUND));
            g.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
            if (whole != null && kept != null && !kept.asked().covers(view)) {
                whole.show(g, transform);
            }
        }
        if (kept != null) {
            kept.show(g, transform);
        }
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Selection selection = canvas.selection();
        SceneLookup lookup = canvas.lookup();
        paintPath(g, selection, canvas.transform(), lookup);
        hovered.filter(id -> !selection.ids().contains(id))
                .ifPresent(id -> highlight(g, canvas.transform(), lookup, id, Tone.colour("Ohmloom.hover"), 0.25));
        selection.ids().forEach(id -> {
            highlight(g, canvas.transform(), lookup, id, Tone.colour("Ohmloom.selection"), 0.45);
        });
        paintTrail(g, canvas, style);
        if (selection.ids().size() == 1) {
            again(g, canvas.transform(), lookup, selection.ids(), style);
        }
    }

    /** Paints what is shown on top of the scene; its texts in a readable size, as many as there is room for. */
    private void paintTrail(Graphics2D g, LayoutCanvas canvas, DrawStyle style) {
        if (FarLabels.areNeeded(canvas.transform().scale()) && canvas.scene().isPresent()) {
            List<Item> lines = canvas.trail().stream()
                    .filter(item -> item.mark() instanceof Line)
                    .toList();
            Graphics2D inMm = (Graphics2D) g.create();
            inMm.transform(canvas.transform().affine());
            lines.forEach(item -> painter.paintMark(inMm, item.mark(), style));
            inMm.dispose();
            Scene scene = canvas.scene().get();
            double scale = canvas.transform().scale();
            if (!lines.isEmpty()) {
                FarLabels.paint(g, FarLabels.chosen(scene, scale), canvas.transform(), painter, style);
            }
            FarLabels.paint(g, FarLabels.over(scene, canvas.trail(), scale), canvas.transform(), painter, style);
            return;
        }
        Graphics2D own = (Graphics2D) g.create();
        try {
            own.transform(canvas.transform().affine());
            canvas.trail().forEach(item -> painter.paintMark(own, item.mark(), style));
        } finally {
            own.dispose();
        }
    }

    /** Paints what a selection shows besides its elements: a loop as one band, what a finding points at more faintly. */
    private static void paintPath(Graphics2D g, Selection selection, ViewTransform transform, SceneLookup lookup) {
        boolean found = selection.finding().isPresent();
        selection.path().stream()
                .filter(id -> !found || !selection.ids().contains(id))
                .forEach(id -> highlight(
                        g,
                        transform,
                        lookup,
                        id,
                        Tone.colour("Ohmloom.path"),
                        found ? 0.25 : 0.4,
                        found ? HALO : BAND));
    }

    /** Has a large scene painted on a thread of its own; until it is there, the pictures that are there are moved and scaled. */
    private void ask(KeptPicture.Asked view, LayoutCanvas canvas) {
        if (asked != null && asked.covers(view)) {
            return;
        }
        if (pictures == null) {
            pictures = new LatestWins<>(
                    "canvas",
                    (question, cancel, soFar) -> KeptPicture.of(question, painter, cancel),
                    Duration.ofMillis(STILL_MILLIS),
                    EventQueue::invokeLater,
                    outcome -> outcome.answer().ifPresent(picture -> receive(picture, canvas)));
        }
        asked = view;
        pictures.ask(view);
    }

    /** Whether what was painted last is as sharp as it will be. */
    boolean isSharp() {
        return asked == null;
    }

    private void receive(KeptPicture picture, LayoutCanvas canvas) {
        kept = picture;
        asked = null;
        if (picture.asked().part().contains(picture.asked().scene().extent())) {
            whole = picture;
        } else if (whole != null && whole.asked().scene() != picture.asked().scene()) {
            whole = null;
        }
        canvas.repaint();
    }

    /** Draws what is selected once more over the halo, so that it stays sharp. */
    private void again(Graphics2D g, ViewTransform transform, SceneLookup lookup, List<String> ids, DrawStyle style) {
        Graphics2D own = (Graphics2D) g.create();
        try {
            own.transform(transform.affine());
            for (String id : ids) {
                for (Item item : lookup.itemsOf(id)) {
                    painter.paintMark(own, item.mark(), style);
                }
            }
        } finally {
            own.dispose();
        }
    }

    /** Paints a halo along lines and an outline around the other shapes of an element. */
    private static void highlight(
            Graphics2D g, ViewTransform transform, SceneLookup lookup, String id, Color colour, double strength) {
        highlight(g, transform, lookup, id, colour, strength, HALO);
    }

    private static void highlight(
            Graphics2D g,
            ViewTransform transform,
            SceneLookup lookup,
            String id,
            Color colour,
            double strength,
            int reach) {
        Graphics2D own = (Graphics2D) g.create();
        try {
            own.transform(transform.affine());
            double px = 1 / transform.scale();
            Color halo =
                    new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(255 * strength));
            for (Item item : lookup.itemsOf(id)) {
                Mark mark = item.mark();
                if (mark instanceof Line line) {
                    own.setColor(halo);
                    float width = (float) (line.widthMm() + 2 * UIScale.scale(reach) * px);
                    own.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
                    own.draw(path(line.points()));
                } else if (!(mark instanceof Text)) {
                    own.setColor(colour);
                    own.setStroke(new BasicStroke((float) (2.2 * px * UIScale.getUserScaleFactor())));
                    own.draw(around(mark, 3 * px * UIScale.getUserScaleFactor()));
                }
            }
        } finally {
            own.dispose();
        }
    }

    private static Shape around(Mark mark, double gapMm) {
        Extent extent = mark.bounds().grown(gapMm);
        if (mark instanceof Disc) {
            return new Ellipse2D.Double(extent.leftMm(), extent.topMm(), extent.widthMm(), extent.heightMm());
        }
        if (mark instanceof Area area) {
            Path2D closed = path(area.points());
            closed.closePath();
            return closed;
        }
        double round = 2 * gapMm;
        return new RoundRectangle2D.Double(
                extent.leftMm(), extent.topMm(), extent.widthMm(), extent.heightMm(), round, round);
    }

    private static Path2D path(List<Point> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).xMm(), points.get(0).yMm());
        points.stream().skip(1).forEach(point -> path.lineTo(point.xMm(), point.yMm()));
        return path;
    }
}
