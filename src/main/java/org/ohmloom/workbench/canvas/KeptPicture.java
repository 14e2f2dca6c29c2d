package org.ohmloom.workbench.canvas;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.Text;

/**
 * A scene as it was painted, the view and some room around it, in the pixels of the screen.
 *
 * @param asked what was to be painted
 * @param image the picture
 */
record KeptPicture(Asked asked, BufferedImage image) {

    /**
     * What is to be painted.
     *
     * @param transform where the scene lies on the component
     * @param widthPx   width of the component, px
     * @param heightPx  its height, px
     * @param pixels    pixels of the screen for one of the component
     * @param room      how much is painted beyond each side, in widths and heights of the component
     */
    record Asked(
            Scene scene,
            ViewTransform transform,
            DrawStyle style,
            int widthPx,
            int heightPx,
            double pixels,
            double room) {

        int roomX() {
            return (int) (widthPx * room);
        }

        int roomY() {
            return (int) (heightPx * room);
        }

        /** The part of the scene that is painted. */
        Extent part() {
            return new ViewTransform(transform.scale(), transform.xPx() + roomX(), transform.yPx() + roomY())
                    .seen(widthPx + 2.0 * roomX(), heightPx + 2.0 * roomY());
        }

        private boolean isLike(Asked other) {
            return scene == other.scene && style == other.style && pixels == other.pixels;
        }

        /** Whether a picture of this shows all of another view as sharp as a picture of that. */
        boolean covers(Asked view) {
            Extent all = part().grown(1e-6);
            Extent seen = view.transform.seen(view.widthPx, view.heightPx);
            return isLike(view) && transform.scale() == view.transform.scale() && all.contains(seen);
        }
    }

    /** Paints a picture; stops half way when that is asked for. */
    static KeptPicture of(Asked asked, ScenePainter painter, Cancel stop) {
        int wide = (int) Math.ceil((asked.widthPx() + 2 * asked.roomX()) * asked.pixels());
        int high = (int) Math.ceil((asked.heightPx() + 2 * asked.roomY()) * asked.pixels());
        BufferedImage image = new BufferedImage(Math.max(1, wide), Math.max(1, high), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(asked.style().colour(Ink.GROUND));
            g.fillRect(0, 0, wide, high);
            g.scale(asked.pixels(), asked.pixels());
            g.translate(asked.roomX(), asked.roomY());
            ViewTransform transform = asked.transform();
            Graphics2D inMm = (Graphics2D) g.create();
            inMm.transform(transform.affine());
            painter.paintSeen(
                    inMm,
                    asked.scene(),
                    asked.style(),
                    asked.part(),
                    transform.scale() * asked.pixels(),
                    stop::isRequested);
            inMm.dispose();
            if (FarLabels.areNeeded(transform.scale())) {
                List<Text> labels = FarLabels.chosen(asked.scene(), transform.scale());
                FarLabels.paint(g, labels, transform, painter, asked.style());
            }
        } finally {
            g.dispose();
        }
        return new KeptPicture(asked, image);
    }

    /** Shows the picture where its scene lies now: as it is, moved, or larger or smaller than it was painted. */
    void show(Graphics2D g, ViewTransform now) {
        double ratio = now.scale() / asked.transform().scale();
        Graphics2D own = (Graphics2D) g.create();
        try {
            own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_NEAREST_NEIGHBOR);
            own.translate(
                    now.xPx() - asked.transform().xPx() * ratio,
                    now.yPx() - asked.transform().yPx() * ratio);
            if (ratio != 1) {
                own.scale(ratio, ratio);
            }
            int x = -asked.roomX();
            int y = -asked.roomY();
            own.drawImage(image, x, y, asked.widthPx() + 2 * asked.roomX(), asked.heightPx() + 2 * asked.roomY(), null);
        } finally {
            own.dispose();
        }
    }
}
