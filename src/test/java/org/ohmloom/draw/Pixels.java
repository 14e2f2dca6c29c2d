package org.ohmloom.draw;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Compares pictures pixel by pixel. */
final class Pixels {

    private Pixels() {}

    /** Count of pixels of which a channel differs by more than the tolerance, 0 to 255. */
    static int differing(BufferedImage one, BufferedImage other, int tolerance) {
        int count = 0;
        for (int x = 0; x < one.getWidth(); x++) {
            for (int y = 0; y < one.getHeight(); y++) {
                count += distance(one.getRGB(x, y), other.getRGB(x, y)) > tolerance ? 1 : 0;
            }
        }
        return count;
    }

    /** The rectangle, in mm, of the pixels that are not of the ground. */
    static Optional<Extent> inked(BufferedImage image, Color ground, double pixelsPerMm) {
        List<Point> found = new ArrayList<>();
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                if (distance(image.getRGB(x, y), ground.getRGB()) > 64) {
                    found.add(new Point((x + 0.5) / pixelsPerMm, (y + 0.5) / pixelsPerMm));
                }
            }
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(Extent.around(found));
    }

    private static int distance(int one, int other) {
        Color a = new Color(one);
        Color b = new Color(other);
        return Math.max(
                Math.abs(a.getRed() - b.getRed()),
                Math.max(Math.abs(a.getGreen() - b.getGreen()), Math.abs(a.getBlue() - b.getBlue())));
    }
}
