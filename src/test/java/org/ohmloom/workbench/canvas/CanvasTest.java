package org.ohmloom.workbench.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.Text;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Selection;

/** The layout of an example on a canvas without a screen. */
class CanvasTest {

    @Test
    void aFurtherClickAtThePlaceSelectsWhatLiesBelow() {
        List<String> here = List.of("X1", "SG1", "W3");
        assertEquals(List.of("X1"), Clicking.next(List.of(), here));
        assertEquals(List.of("SG1"), Clicking.next(List.of("X1"), here));
        assertEquals(List.of("X1"), Clicking.next(List.of("W3"), here));
        assertEquals(List.of(), Clicking.next(List.of("W3"), List.of()));
    }

    @Test
    void whatIsDrawnIsFoundUnderItsPixel() {
        LayoutCanvas canvas = canvas("teaching");
        OnEventThread.run(() -> {
            Extent card = canvas.scene().orElseThrow().bounds("BT1").orElseThrow();
            Point2D pixel = canvas.transform().toScreen(card.centre());
            assertTrue(canvas.under((int) pixel.getX(), (int) pixel.getY()).contains("BT1"));
            assertTrue(canvas.isFitted());
        });
    }

    @Test
    void aSelectionToBeCentredComesIntoViewLargeEnoughToRead() {
        LayoutCanvas canvas = canvas("rescue-pickup");
        OnEventThread.run(() -> {
            double before = canvas.transform().scale();
            canvas.select(Selection.of(List.of("FAN1")).centred());
            Extent card = canvas.scene().orElseThrow().bounds("FAN1").orElseThrow();
            assertTrue(canvas.transform()
                    .seen(canvas.getWidth(), canvas.getHeight())
                    .contains(card));
            assertTrue(canvas.transform().scale() > before);
            assertFalse(canvas.isFitted());
            canvas.fit();
            assertEquals(before, canvas.transform().scale(), 1e-9);
        });
    }

    /** The layout comes later; until then a harness that was made anew does not ask for a file. */
    @Test
    void aNewHarnessAsksForNoFileBeforeItIsLaidOut() {
        Stage stage = new Stage();
        LayoutCanvas canvas = stage.view.layoutPane().canvas();
        assertFalse(OnEventThread.get(canvas::emptyText).isEmpty());
        assertEquals("", OnEventThread.get(() -> {
            stage.view.book().get("new-empty").run();
            return canvas.emptyText();
        }));
    }

    @Test
    void labelsSeenFromAfarDoNotLieOnEachOther() {
        LayoutCanvas canvas = canvas("rescue-pickup");
        OnEventThread.run(() -> {
            Scene scene = canvas.scene().orElseThrow();
            double scale = canvas.transform().scale();
            assertTrue(FarLabels.areNeeded(scale));
            List<Text> labels = FarLabels.chosen(scene, scale);
            assertTrue(
                    labels.stream().map(Text::text).collect(Collectors.toSet()).contains("BT1"));
            for (Text one : labels) {
                scene.items().stream()
                        .filter(item -> item.layer() == Layer.NUMBERS && item.mark() instanceof Text)
                        .map(item -> (Text) item.mark())
                        .filter(small -> small.text().equals(one.text())
                                && small.at().xMm() == one.at().xMm())
                        .forEach(small -> assertEquals(
                                small.at().yMm() - small.heightMm(),
                                one.at().yMm() - one.heightMm(),
                                1e-9,
                                one.text() + " grows away from its run"));
                for (Text other : labels) {
                    assertTrue(one == other || !one.bounds().grown(-0.5 / scale).overlaps(other.bounds()), one.text());
                }
            }
        });
    }

    @Test
    void numbersOnTopHideNeitherLabelsNorEachOther() {
        LayoutCanvas canvas = canvas("rescue-pickup");
        OnEventThread.run(() -> {
            Scene scene = canvas.scene().orElseThrow();
            double scale = canvas.transform().scale();
            List<Text> below = FarLabels.chosen(scene, scale);
            List<Text> over = FarLabels.over(scene, scene.items(), scale);
            assertFalse(over.isEmpty(), "some find room above their run");
            Stream.concat(below.stream(), over.stream()).forEach(one -> over.stream()
                    .filter(other -> other != one)
                    .forEach(other -> assertFalse(
                            one.bounds().grown(-0.5 / scale).overlaps(other.bounds()),
                            one.text() + " and " + other.text())));
        });
    }

    private static LayoutCanvas canvas(String example) {
        Stage stage = new Stage();
        LayoutCanvas canvas = stage.view.layoutPane().canvas();
        OnEventThread.run(() -> canvas.setSize(900, 500));
        stage.openExample(example);
        OnEventThread.await("the layout", () -> !stage.view.layoutPane().isBusy());
        OnEventThread.run(canvas::fit);
        assertEquals(Optional.of(true), OnEventThread.get(() -> canvas.scene()
                .map(scene -> scene.items().size() > 10)));
        return canvas;
    }
}
