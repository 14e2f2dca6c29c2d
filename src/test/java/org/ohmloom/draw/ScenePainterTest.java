package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.WireColour;

/** What every painter owes its caller, in every style; runs without a display. */
@BesideOthers
class ScenePainterTest {

    /** One grey level of 255 is lost to rounding. */
    private static final int LEVELS = 1;

    private final ScenePainter painter = new ScenePainter(Drawn.FONTS);

    @ParameterizedTest
    @EnumSource(DrawStyle.class)
    void theGraphicsIsLeftAsItWasFound(DrawStyle style) {
        BufferedImage image = new BufferedImage(200, 200, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.translate(3, 4);
        g.setColor(Color.MAGENTA);
        g.setFont(new Font(Font.SERIF, Font.ITALIC, 31));
        g.setStroke(new BasicStroke(7));
        g.setComposite(AlphaComposite.Src);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        g.clipRect(0, 0, 150, 150);
        AffineTransform transform = g.getTransform();
        Shape clip = g.getClip();
        RenderingHints hints = g.getRenderingHints();

        painter.paint(g, everyMark(), style);

        assertEquals(transform, g.getTransform());
        assertEquals(Color.MAGENTA, g.getColor());
        assertEquals(new Font(Font.SERIF, Font.ITALIC, 31), g.getFont());
        assertEquals(new BasicStroke(7), g.getStroke());
        assertEquals(AlphaComposite.Src, g.getComposite());
        assertEquals(hints, g.getRenderingHints());
        assertEquals(clip, g.getClip());
        g.dispose();
    }

    @ParameterizedTest
    @EnumSource(DrawStyle.class)
    void paintingDependsOnNothingThatTheCallerLeftBehind(DrawStyle style) {
        BufferedImage clean = new BufferedImage(400, 400, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = clean.createGraphics();
        g.scale(4, 4);
        painter.paint(g, everyMark(), style);
        BufferedImage littered = new BufferedImage(400, 400, BufferedImage.TYPE_INT_RGB);
        Graphics2D other = littered.createGraphics();
        other.scale(4, 4);
        other.setColor(null);
        other.setXORMode(Color.PINK);
        other.setStroke(new BasicStroke(9));
        other.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_OFF);
        painter.paint(other, everyMark(), style);
        assertEquals(0, Pixels.differing(clean, littered, 0));
    }

    @ParameterizedTest
    @EnumSource(DrawStyle.class)
    void theWholeGroundIsPainted(DrawStyle style) {
        BufferedImage image = Drawn.picture(everyMark(), style, 4);
        Color ground = style.colour(Ink.GROUND);
        for (int[] corner : new int[][] {{0, 0}, {399, 0}, {0, 399}, {399, 399}}) {
            assertEquals(ground.getRGB(), image.getRGB(corner[0], corner[1]));
        }
    }

    @Test
    void aPictureInBlackAndGreyHasNoColourInIt() {
        BufferedImage image = Drawn.picture(everyMark(), DrawStyle.PRINT_MONO, 4);
        int coloured = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                Color pixel = new Color(image.getRGB(x, y));
                boolean grey = Math.abs(pixel.getRed() - pixel.getGreen()) <= LEVELS
                        && Math.abs(pixel.getGreen() - pixel.getBlue()) <= LEVELS;
                coloured += grey ? 0 : 1;
            }
        }
        assertEquals(0, coloured);
    }

    @Test
    void aTextStaysInTheWidthItWasMeasuredWith() {
        // Drawn black on white at 10 pixels for 1 mm, no ink may lie outside the bounds that hit testing uses.
        Lettering lettering = new Lettering(Drawn.FONTS);
        for (String words : List.of("Wbgjpq|", "Left cooling fan", "X1.3 12.6 V 0.5 mm²", "4-way", "漢字 Ωµ")) {
            Text text = lettering.text(words, new Point(10, 15), 3, Anchor.START, Weight.REGULAR, Ink.TEXT);
            Scene scene = new Scene(80, 30, List.of(Item.of(Layer.SHEET, text)));
            BufferedImage image = Drawn.picture(scene, DrawStyle.PRINT, 10);
            Extent seen = Pixels.inked(image, Color.WHITE, 10).orElseThrow();
            assertTrue(text.bounds().grown(0.35).contains(seen), words + " seen " + seen + " of " + text.bounds());
        }
    }

    private static Scene everyMark() {
        Lettering lettering = new Lettering(Drawn.FONTS);
        List<Mark> marks = new ArrayList<>();
        for (int k = 0; k < LinePattern.values().length; k++) {
            marks.add(new Line(
                    List.of(new Point(5, 10 + 3 * k), new Point(60, 10 + 3 * k)),
                    0.5,
                    Ink.values()[Ink.FEED.ordinal() + k],
                    LinePattern.values()[k]));
        }
        marks.add(new Box(Extent.at(65, 10, 20, 8), 1, Fill.of(Ink.COMPONENT, Ink.COMPONENT_EDGE, 0.3)));
        marks.add(new Box(Extent.at(65, 20, 20, 8), 0, Fill.edge(Ink.FRAME, 0.7)));
        marks.add(new Disc(new Point(75, 35), 4, Fill.of(Ink.ZONE_HOT, Ink.CAUTION, 0.2)));
        marks.add(new Area(List.of(new Point(65, 42), new Point(85, 42), new Point(75, 50)), Fill.of(Ink.SPLICE)));
        marks.add(lettering.text("Fuse box, 30 A", new Point(8, 60), 3.5, Anchor.START, Weight.BOLD, Ink.TEXT));
        marks.add(lettering.turned("0.85 m", new Point(75, 80), 2.5, Anchor.MIDDLE, -90, Ink.SOFT_TEXT));
        marks.add(new Swatch(Extent.at(10, 70, 8, 3), WireColour.parse("RDWH")));
        marks.add(new Swatch(Extent.at(10, 75, 8, 3), WireColour.parse("BK")));
        return new Scene(
                100,
                100,
                marks.stream()
                        .map(mark -> new Item(Layer.SHEET, mark, Optional.empty(), Optional.empty()))
                        .toList());
    }
}
