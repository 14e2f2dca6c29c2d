package org.ohmloom.workbench.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

class ViewTransformTest {

    private static final double EXACT = 1e-9;

    @Test
    void zoomingKeepsThePointUnderThePointer() {
        ViewTransform before = new ViewTransform(2, 30, 40);
        Point under = before.toScene(130, 240);
        ViewTransform after = before.zoomed(1.7, 130, 240);
        assertEquals(under.xMm(), after.toScene(130, 240).xMm(), EXACT);
        assertEquals(under.yMm(), after.toScene(130, 240).yMm(), EXACT);
        assertEquals(3.4, after.scale(), EXACT);
    }

    @Test
    void fittingShowsAllOfItInTheMiddle() {
        // 100 x 50 mm in 420 x 420 px with 10 px around: 400 / 100 = 4 px for a mm.
        Extent part = Extent.at(20, 10, 100, 50);
        ViewTransform fitting = ViewTransform.fitting(part, 420, 420, 10);
        assertEquals(4, fitting.scale(), EXACT);
        assertEquals(10, fitting.toScreen(new Point(20, 10)).getX(), EXACT);
        assertEquals(110, fitting.toScreen(new Point(20, 10)).getY(), EXACT);
        assertTrue(fitting.seen(420, 420).contains(part));
    }

    @Test
    void zoomingStopsAtItsLimits() {
        ViewTransform near = new ViewTransform(70, 0, 0).zoomed(10, 5, 5);
        assertEquals(ViewTransform.LARGEST, near.scale(), EXACT);
        ViewTransform far = new ViewTransform(0.3, 0, 0).zoomed(0.01, 5, 5);
        assertEquals(ViewTransform.SMALLEST, far.scale(), EXACT);
    }

    @Test
    void aBoardWithNextToNothingOnItIsNotShownFromAsNearAsThereIsRoom() {
        // 5 x 5 mm in 420 x 420 px would be 80 px for a mm, a letter of 3 mm as high as a hand
        ViewTransform fitting = ViewTransform.fitting(Extent.at(20, 10, 5, 5), 420, 420, 10);
        assertEquals(ViewTransform.LARGEST_FITTED, fitting.scale(), EXACT);
        assertEquals(210, fitting.toScreen(new Point(22.5, 12.5)).getX(), EXACT);
    }
}
