package org.ohmloom.workbench.drafting;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.model.Position;
import org.ohmloom.workbench.widget.Tone;

/** Paints the grid's crossings and the lines along which something stands level with something else. */
final class GridLines {

    /** Crossings nearer to each other than this are left out, px. */
    private static final double NEAREST_PX = 14;

    private GridLines() {}

    static void paint(Graphics2D g, Easel easel, BoardPlaces places) {
        double scale = easel.canvas().transform().scale();
        double pitch = easel.grid().pitchMm();
        while (pitch * scale < UIScale.scale((float) NEAREST_PX)) {
            pitch *= 2;
        }
        Color line = Tone.SOFT.colour();
        g.setColor(new Color(line.getRed(), line.getGreen(), line.getBlue(), 90));
        Point2D origin = easel.canvas().transform().toScreen(places.toScene(new Position(0, 0)));
        double step = pitch * scale;
        int size = Math.max(1, UIScale.scale(1));
        for (double y = origin.getY() - step * Math.floor(origin.getY() / step);
                y < easel.canvas().getHeight();
                y += step) {
            for (double x = origin.getX() - step * Math.floor(origin.getX() / step);
                    x < easel.canvas().getWidth();
                    x += step) {
                g.fillRect((int) Math.round(x), (int) Math.round(y), size, size);
            }
        }
    }

    /** The lines of a snap across the canvas. */
    static void paint(Graphics2D g, Easel easel, BoardPlaces places, Grid.Snap snap) {
        g.setColor(Tone.colour("Ohmloom.path"));
        g.setStroke(new BasicStroke(UIScale.scale(1f)));
        Point2D at = easel.canvas().transform().toScreen(places.toScene(snap.at()));
        if (snap.guideX().isPresent()) {
            g.draw(new Line2D.Double(at.getX(), 0, at.getX(), easel.canvas().getHeight()));
        }
        if (snap.guideY().isPresent()) {
            g.draw(new Line2D.Double(0, at.getY(), easel.canvas().getWidth(), at.getY()));
        }
    }
}
