package org.ohmloom.workbench.manual;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URL;
import java.util.Dictionary;
import java.util.HashMap;
import java.util.Hashtable;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.ohmloom.manual.Manual;
import org.ohmloom.workbench.words.Words;

/** The pictures of the page in front, brought to the width there is. */
final class Pictures {

    private final Map<String, BufferedImage> read = new HashMap<>();
    private final Dictionary<URL, Image> shown = new Hashtable<>();

    /** What the text component looks pictures up in. */
    Dictionary<URL, Image> shown() {
        return shown;
    }

    /**
     * The attributes with which a page shows a picture; none when it is not there.
     *
     * @param widest width there is, px
     */
    Map<String, String> attributes(String file, int widest) {
        Optional<URL> place = Manual.bundledPicture(Words.language(), file);
        Optional<BufferedImage> picture = place.flatMap(url -> read(file, url));
        if (picture.isEmpty()) {
            return Map.of();
        }
        int natural = UIScale.scale(picture.get().getWidth());
        int width = Math.max(1, Math.min(natural, widest));
        int height = Math.max(
                1,
                Math.round(picture.get().getHeight()
                        * (width / (float) picture.get().getWidth())));
        shown.put(place.get(), scaled(picture.get(), width, height));
        return Map.of(
                "src", place.get().toExternalForm(), "width", String.valueOf(width), "height", String.valueOf(height));
    }

    private Optional<BufferedImage> read(String file, URL url) {
        if (!read.containsKey(file)) {
            try {
                read.put(file, ImageIO.read(url));
            } catch (IOException unreadable) {
                return Optional.empty();
            }
        }
        return Optional.ofNullable(read.get(file));
    }

    private static BufferedImage scaled(BufferedImage picture, int width, int height) {
        BufferedImage result = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = result.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            g.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
            g.drawImage(picture, 0, 0, width, height, null);
        } finally {
            g.dispose();
        }
        return result;
    }
}
