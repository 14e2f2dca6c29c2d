package org.ohmloom.pack.page;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.ScenePainter;

/** Writes a scene as PNG at a resolution; one that would be too large gets a lower resolution. */
public final class PngFile {
    private static final double MM_PER_INCH = 25.4;

    /** No picture has more pixels than this. */
    static final double MOST_PIXELS = 64e6;

    private PngFile() {}

    /**
     * The bytes of the file.
     *
     * @param dotsPerInch resolution, dots to the inch, more than 0; less where the picture would have more than 64 million pixels
     * @throws IOException when the platform writes no PNG
     */
    public static byte[] bytes(Scene scene, SceneFonts fonts, DrawStyle style, double dotsPerInch) throws IOException {
        double most = Math.sqrt(MOST_PIXELS / (scene.widthMm() * scene.heightMm()));
        double dotsPerMm = Math.min(dotsPerInch / MM_PER_INCH, most);
        int wide = Math.max(1, (int) Math.floor(scene.widthMm() * dotsPerMm + 1e-6));
        int high = Math.max(1, (int) Math.floor(scene.heightMm() * dotsPerMm + 1e-6));
        BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.scale(wide / scene.widthMm(), high / scene.heightMm());
            new ScenePainter(fonts).paint(graphics, scene, style);
        } finally {
            graphics.dispose();
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (!ImageIO.write(image, "png", out)) {
            throw new IOException("this Java writes no PNG");
        }
        return out.toByteArray();
    }
}
