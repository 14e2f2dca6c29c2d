package org.ohmloom.workbench.widget;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;

/** The sign of the program: wires that cross like the threads of a loom. */
public final class AppIcon {

    private AppIcon() {}

    /** The sign in the sizes that desktops ask for. */
    public static List<Image> images() {
        return IntStream.of(16, 24, 32, 48, 64, 128)
                .mapToObj(AppIcon::image)
                .map(Image.class::cast)
                .toList();
    }

    /** The sign. */
    static BufferedImage image(int size) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.scale(size / 32.0, size / 32.0);
            g.setColor(new Color(0x173B40));
            g.fill(new RoundRectangle2D.Double(1, 1, 30, 30, 8, 8));
            g.setStroke(new BasicStroke(2.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            Color[] colours = {new Color(0xE69F00), new Color(0x56B4E9), new Color(0xF2F4F1)};
            for (int k = 0; k < colours.length; k++) {
                g.setColor(colours[k]);
                g.draw(thread(9 + 7 * k, 23 - 7 * k));
            }
        } finally {
            g.dispose();
        }
        return image;
    }

    private static Path2D thread(double fromY, double toY) {
        Path2D path = new Path2D.Double();
        path.moveTo(5.5, fromY);
        path.curveTo(15, fromY, 17, toY, 26.5, toY);
        return path;
    }
}
