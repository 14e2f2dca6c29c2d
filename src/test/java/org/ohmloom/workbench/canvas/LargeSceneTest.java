package org.ohmloom.workbench.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SceneLayout;
import org.ohmloom.draw.SceneOptions;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.ShopHarness;

/** A scene of many things on a canvas: what lies where is found by cells, and a picture that is there is moved and scaled. */
class LargeSceneTest {

    private static final SceneFonts FONTS = SceneFonts.load();
    private static final long SEED = 11;
    private static final int WIRES = 420;
    private static final int PLACES = 400;
    private static final Scene SCENE = layOut();

    private static Scene layOut() {
        Scene scene = new SceneLayout(FONTS)
                .layoutBoard(
                        ShopHarness.of(SEED, WIRES),
                        Optional.empty(),
                        Optional.empty(),
                        new SceneOptions(SceneOptions.Numbers.SIZE, true));
        assertTrue(scene.items().size() >= SceneLookup.LARGE, scene.items().size() + " items");
        return scene;
    }

    @Test
    void cellsFindTheSameInTheSameOrderAsTheSceneItself() {
        SceneLookup lookup = new SceneLookup(SCENE, Runnable::run);
        Random random = new Random(SEED);
        int found = 0;
        for (int k = 0; k < PLACES; k++) {
            Point at = new Point(random.nextDouble() * SCENE.widthMm(), random.nextDouble() * SCENE.heightMm());
            double tolerance = random.nextDouble() * 6;
            List<String> expected = SCENE.hit(at.xMm(), at.yMm(), tolerance);
            assertEquals(expected, lookup.hit(at, tolerance), at.toString());
            found += expected.size();
        }
        assertTrue(found > PLACES, found + " found");
    }

    @Test
    void theTableOfElementsAnswersAsTheSceneDoes() {
        SceneLookup lookup = new SceneLookup(SCENE, Runnable::run);
        SceneLookup asking = new SceneLookup(SCENE, task -> {});
        for (String id : SCENE.elements().subList(0, 40)) {
            assertEquals(SCENE.itemsOf(id), lookup.itemsOf(id));
            assertEquals(SCENE.bounds(id), lookup.bounds(id));
            assertEquals(asking.description(id), lookup.description(id));
        }
        assertEquals(List.of(), lookup.itemsOf("no-such-thing"));
    }

    @Test
    void aPictureWithRoomAroundItServesWhileTheSceneIsDraggedWithinThatRoomOnly() {
        ViewTransform fitted =
                ViewTransform.fitting(SCENE.extent(), 400, 300, 10).zoomed(4, 200, 150);
        KeptPicture.Asked asked = asked(fitted, 0.25);
        assertTrue(asked.covers(asked(fitted.moved(99, -74), 0)));
        assertFalse(asked.covers(asked(fitted.moved(102, 0), 0)));
        assertFalse(asked.covers(asked(fitted.zoomed(1.1, 0, 0), 0)));
    }

    @Test
    void aMovedPictureHasTheSamePixelsAsOnePaintedThere() {
        ViewTransform near = ViewTransform.fitting(SCENE.extent(), 400, 300, 10).zoomed(6, 200, 150);
        ScenePainter painter = new ScenePainter(FONTS);
        KeptPicture kept = KeptPicture.of(asked(near, 0.25), painter, Cancel.NEVER);
        ViewTransform moved = near.moved(60, -40);
        KeptPicture anew = KeptPicture.of(asked(moved, 0), painter, Cancel.NEVER);
        BufferedImage shown = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        kept.show(shown.createGraphics(), moved);
        int different = 0;
        for (int x = 0; x < 400; x++) {
            for (int y = 0; y < 300; y++) {
                different += shown.getRGB(x, y) == anew.image().getRGB(x, y) ? 0 : 1;
            }
        }
        // letters are laid at fractions of a pixel, so that single pixels of them may differ
        assertTrue(different < 400 * 300 / 100, different + " pixels differ");
    }

    @Test
    void paintingStopsWhenItIsNotWantedAnyMore() {
        List<Integer> questions = new ArrayList<>();
        ViewTransform fitted = ViewTransform.fitting(SCENE.extent(), 400, 300, 10);
        KeptPicture.of(asked(fitted, 0), new ScenePainter(FONTS), () -> questions.add(1) && questions.size() > 2);
        assertEquals(3, questions.size());
    }

    private static KeptPicture.Asked asked(ViewTransform transform, double room) {
        return new KeptPicture.Asked(SCENE, transform, DrawStyle.LIGHT, 400, 300, 1, room);
    }

    @Test
    void whatIsSeenOfTheSceneIsInsideThePart() {
        ViewTransform fitted = ViewTransform.fitting(SCENE.extent(), 400, 300, 10);
        Extent part = asked(fitted, 0.25).part();
        assertTrue(part.contains(SCENE.extent()), part.toString());
    }
}
