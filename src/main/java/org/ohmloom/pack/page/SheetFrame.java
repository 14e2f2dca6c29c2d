package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.Weight;

/**
 * Frame of a lying sheet of office paper: A4 with the borders of ISO 5457, 20 mm on the left for filing and 10 mm elsewhere, or
 * ANSI A with those of ASME Y14.1; line 0.7 mm; title block in the lower right corner and a remark to its left.
 */
final class SheetFrame {
    private static final double FRAME_MM = 0.7;
    private static final double INNER_MM = 3.5;
    private static final double REMARK_MM = 1.8;

    private final Typesetter typesetter;
    private final Paper paper;
    private final Extent frame;

    /** The frame on the office paper that goes with a paper. */
    SheetFrame(Typesetter typesetter, Paper paper) {
        this.typesetter = typesetter;
        this.paper = paper.office();
        Extent space = this.paper.drawingSpace();
        boolean upright = this.paper.heightMm() > this.paper.widthMm();
        this.frame = upright ? lying(space, this.paper) : space;
    }

    /** The drawing space of an upright sheet on the sheet laid down: the filing border stays on the left. */
    private static Extent lying(Extent space, Paper paper) {
        double beyond = paper.widthMm() - space.rightMm();
        double below = paper.heightMm() - space.bottomMm();
        return new Extent(space.leftMm(), space.topMm(), paper.heightMm() - beyond, paper.widthMm() - below);
    }

    /** An empty sheet with the items on it. */
    Scene sheet(List<Item> items) {
        double wide = Math.max(paper.widthMm(), paper.heightMm());
        double high = Math.min(paper.widthMm(), paper.heightMm());
        return new Scene(wide, high, items);
    }

    /** Where the content of the sheet lies: above the title block. */
    Extent area() {
        return new Extent(
                frame.leftMm() + INNER_MM,
                frame.topMm() + INNER_MM,
                frame.rightMm() - INNER_MM,
                frame.bottomMm() - TitlePanel.HEIGHT_MM - INNER_MM);
    }

    /** Frame, title block and remark of a sheet. */
    List<Item> items(TitleFields fields, String remark, int sheet, int of) {
        List<Item> items = new ArrayList<>();
        items.add(Item.of(Layer.SHEET, new Box(frame, 0, Fill.edge(Ink.FRAME, FRAME_MM))));
        double left = frame.rightMm() - TitlePanel.WIDTH_MM;
        double top = frame.bottomMm() - TitlePanel.HEIGHT_MM;
        Placement place = Placement.moved(left, top);
        for (Mark mark : new TitlePanel(typesetter).marks(fields, paper.label(), sheet, of)) {
            items.add(Item.of(Layer.SHEET, mark.placed(place)));
        }
        double x = frame.leftMm() + INNER_MM;
        double y = top + 1.2;
        for (String line : typesetter.lines(remark, Weight.REGULAR, REMARK_MM, left - INNER_MM - x)) {
            y += REMARK_MM * 1.7;
            Mark text = typesetter.text(line, x, y, REMARK_MM, Anchor.START, Weight.REGULAR, Ink.SOFT_TEXT);
            items.add(Item.of(Layer.SHEET, text));
        }
        return items;
    }
}
