package org.ohmloom.draw;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Scenes drawn into pictures, for tests. */
final class Drawn {

    static final SceneFonts FONTS = SceneFonts.load();

    private Drawn() {}

    /** The scene as a picture at so many pixels for each millimetre. */
    static BufferedImage picture(Scene scene, DrawStyle style, double pixelsPerMm) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(scene.widthMm() * pixelsPerMm),
                (int) Math.ceil(scene.heightMm() * pixelsPerMm),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.scale(pixelsPerMm, pixelsPerMm);
            new ScenePainter(FONTS).paint(g, scene, style);
        } finally {
            g.dispose();
        }
        return image;
    }

    /** Writes a picture to a folder named by the property {@code ohmloom.pictures}; does nothing without it. */
    static void keep(String name, Scene scene, DrawStyle style, double pixelsPerMm) {
        String folder = System.getProperty("ohmloom.pictures");
        if (folder == null) {
            return;
        }
        File file = new File(folder, name + ".png");
        try {
            file.getParentFile().mkdirs();
            ImageIO.write(picture(scene, style, pixelsPerMm), "png", file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
