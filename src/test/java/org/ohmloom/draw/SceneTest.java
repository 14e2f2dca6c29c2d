package org.ohmloom.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** What is asked of a scene, and one small scene held word for word and pixel by pixel. */
@BesideOthers
class SceneTest {

    /** Letters are smoothed a little differently from one Java to the next. */
    private static final int LEVELS = 64;

    private static final double DIFFERING_SHARE = 0.005;

    /** Set to rewrite what the tests expect: {@code -Dohmloom.update=true}. */
    private static final boolean UPDATE = Boolean.getBoolean("ohmloom.update");

    private static final Path EXPECTED = Path.of("src", "test", "resources", "draw");

    private static final Scene LAMP =
            ExamplesDrawTest.board(SmallBoard.harness(), new SceneOptions(SceneOptions.Numbers.SIZE, true));

    @Test
    void aSmallHarnessIsDrawnWordForWordAsBefore() throws IOException {
        Path file = EXPECTED.resolve("lamp.scene.txt");
        if (UPDATE) {
            Files.createDirectories(EXPECTED);
            Files.writeString(file, LAMP.dump());
        }
        assertEquals(Files.readString(file), LAMP.dump());
    }

    @Test
    void aSmallHarnessLooksAsBefore() throws IOException {
        Path file = EXPECTED.resolve("lamp.png");
        BufferedImage now = Drawn.picture(LAMP, DrawStyle.LIGHT, 4);
        if (UPDATE) {
            ImageIO.write(now, "png", file.toFile());
        }
        BufferedImage before = ImageIO.read(file.toFile());
        assertEquals(before.getWidth(), now.getWidth());
        assertEquals(before.getHeight(), now.getHeight());
        int allowed = (int) (DIFFERING_SHARE * now.getWidth() * now.getHeight());
        int differing = Pixels.differing(before, now, LEVELS);
        assertTrue(differing <= allowed, differing + " pixels differ, " + allowed + " may");
    }

    @Test
    void theSameHarnessGivesTheSameScene() {
        Scene again = ExamplesDrawTest.board(SmallBoard.harness(), new SceneOptions(SceneOptions.Numbers.SIZE, true));
        assertEquals(LAMP, again);
    }

    @Test
    void theTopmostElementAtAPointComesFirst() {
        // Three boxes of 10 mm, each on a higher layer and 2 mm further right: at x = 5 all lie, the highest first.
        Scene scene = new Scene(
                40,
                20,
                List.of(box(Layer.NUMBERS, 4, "top"), box(Layer.BUNDLES, 0, "low"), box(Layer.WIRES, 2, "middle")));
        assertEquals(List.of("top", "middle", "low"), scene.hit(5, 5, 0));
        assertEquals(List.of("low"), scene.hit(1, 5, 0));
        assertEquals(List.of(), scene.hit(20, 5, 0));
        assertEquals(List.of("top"), scene.hit(14.9, 5, 1));
    }

    @Test
    void aWireIsHitNearItsLineAndNotBetweenItsTurns() {
        Line line = Line.of(0.4, Ink.FEED, new Point(0, 0), new Point(10, 0), new Point(10, 10));
        assertTrue(line.hits(new Point(5, 0.6), 0.5));
        assertFalse(line.hits(new Point(5, 1), 0.5));
        assertFalse(line.hits(new Point(5, 5), 0.5));
    }

    @Test
    void anOutlineIsHitOnItsEdgeOnly() {
        Box open = new Box(Extent.at(0, 0, 10, 10), 0, Fill.edge(Ink.FRAME, 0.5));
        assertTrue(open.hits(new Point(0.1, 5), 0.2));
        assertFalse(open.hits(new Point(5, 5), 0.2));
    }

    @Test
    void boundsDescriptionAndLayersCanBeAsked() {
        Extent card = LAMP.bounds("LA1").orElseThrow();
        Extent plug = LAMP.bounds("X1").orElseThrow();
        assertTrue(plug.rightMm() <= card.rightMm() && plug.topMm() >= card.topMm() - 1);
        assertEquals(Optional.empty(), LAMP.bounds("nothing"));
        assertEquals("W1, feed, BT1.+ to X1.1, 1.5 mm²", LAMP.description("W1").orElseThrow());
        assertTrue(LAMP.only(Set.of(Layer.WIRES)).items().stream().allMatch(item -> item.layer() == Layer.WIRES));
    }

    private static Item box(Layer layer, double left, String id) {
        return Item.of(layer, new Box(Extent.at(left, 0, 10, 10), 0, Fill.of(Ink.PLATE)), id, id);
    }
}
