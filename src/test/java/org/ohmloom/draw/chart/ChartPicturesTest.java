package org.ohmloom.draw.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.Text;

/** On every size from a narrow pane to A4, no text of a chart lies on another or leaves the chart. */
@BesideOthers
public class ChartPicturesTest {

    /** Texts may share this much, mm: room for accents that most texts do not have. */
    private static final double ALLOWED_MM = 0.1;

    /** A pane of 800 px at 96 dots to the inch, half of it, and the width inside the frame of A4 lying. */
    private static final List<double[]> SIZES =
            List.of(new double[] {211, 95}, new double[] {110, 70}, new double[] {267, 120});

    private static final SceneFonts FONTS = SceneFonts.load();

    @Test
    void noTextLiesOnAnotherOrLeavesTheChart() throws IOException {
        for (Map.Entry<String, Scene> each : scenes().entrySet()) {
            assertEquals(List.of(), overlaps(each.getValue()), each.getKey());
            assertEquals(List.of(), outside(each.getValue()), each.getKey());
            keep(each.getKey(), each.getValue());
        }
    }

    @Test
    void everyStyleDrawsTheSameSceneWithInk() {
        Scene scene = ChartExamples.fuse().scene(FONTS, 211, 95);
        for (DrawStyle style : DrawStyle.values()) {
            BufferedImage image = picture(scene, style, 2);
            int ground = image.getRGB(1, image.getHeight() - 2);
            int inked = 0;
            for (int x = 0; x < image.getWidth(); x++) {
                for (int y = 0; y < image.getHeight(); y++) {
                    inked += image.getRGB(x, y) == ground ? 0 : 1;
                }
            }
            assertTrue(inked > 0.05 * image.getWidth() * image.getHeight(), style + " shows " + inked + " pixels");
        }
    }

    private static Map<String, Scene> scenes() {
        Map<String, Scene> scenes = new TreeMap<>();
        for (double[] size : SIZES) {
            String name = "-" + (int) size[0];
            scenes.put("start" + name, ChartExamples.start().scene(FONTS, size[0], size[1]));
            scenes.put("sequence" + name, ChartExamples.sequence().scene(FONTS, size[0], size[1]));
            scenes.put("fuse" + name, ChartExamples.fuse().scene(FONTS, size[0], size[1]));
            scenes.put("bars" + name, ChartExamples.bars().scene(FONTS, size[0]));
        }
        return scenes;
    }

    /** Pairs of texts of which one covers a part of the other. */
    public static List<String> overlaps(Scene scene) {
        List<Text> texts = texts(scene);
        List<String> found = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = i + 1; j < texts.size(); j++) {
                if (texts.get(i)
                        .bounds()
                        .grown(-ALLOWED_MM)
                        .overlaps(texts.get(j).bounds())) {
                    found.add(texts.get(i).text() + " on " + texts.get(j).text());
                }
            }
        }
        return found;
    }

    /** Marks that reach over the sides of the scene. */
    public static List<String> outside(Scene scene) {
        return scene.items().stream()
                .filter(item -> !scene.extent().grown(0.01).contains(item.mark().bounds()))
                .map(item -> item.mark().dump())
                .toList();
    }

    static List<Text> texts(Scene scene) {
        return scene.items().stream()
                .map(Item::mark)
                .filter(mark -> mark instanceof Text)
                .map(mark -> (Text) mark)
                .toList();
    }

    private static BufferedImage picture(Scene scene, DrawStyle style, double pixelsPerMm) {
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

    /** Writes the picture to the folder named by the property {@code ohmloom.pictures}, if there is one. */
    static void keep(String name, Scene scene) throws IOException {
        String folder = System.getProperty("ohmloom.pictures");
        if (folder != null) {
            for (DrawStyle style : List.of(DrawStyle.LIGHT, DrawStyle.DARK, DrawStyle.PRINT_MONO)) {
                File file = new File(folder, "chart-" + name + "-" + style + ".png");
                ImageIO.write(picture(scene, style, 96 / 25.4), "png", file);
            }
        }
    }
}
