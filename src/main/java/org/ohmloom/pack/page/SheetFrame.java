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
import org.ohmloom.draw.Weight;

/**
 * Frame of a lying A4 sheet with the borders of ISO 5457: 20 mm on the left for filing, 10 mm elsewhere, line 0.7 mm; title
 * block in the lower right corner and a remark to its left.
 */
final class SheetFrame {
    /** Width of the sheet, mm. */
    static final double SHEET_WIDTH_MM = Paper.A4.heightMm();

    /** Height of the sheet, mm. */
    static final double SHEET_HEIGHT_MM = Paper.A4.widthMm();

    private static final Extent FRAME = new Extent(
            Paper.FILING_BORDER_MM,
            Paper.BORDER_MM,
            SHEET_WIDTH_MM - Paper.BORDER_MM,
            SHEET_HEIGHT_MM - Paper.BORDER_MM);
    private static final double FRAME_MM = 0.7;
    private static final double INNER_MM = 3.5;
    private static final double REMARK_MM = 1.8;

    private final Typesetter typesetter;

    SheetFrame(Typesetter typesetter) {
        this.typesetter = typesetter;
    }

    /** Where the content of the sheet lies: above the title block. */
    Extent area() {
        return new Extent(
                FRAME.leftMm() + INNER_MM,
                FRAME.topMm() + INNER_MM,
                FRAME.rightMm() - INNER_MM,
                FRAME.bottomMm() - TitlePanel.HEIGHT_MM - INNER_MM);
    }

    /** Frame, title block and remark of a sheet. */
    List<Item> items(TitleFields fields, String remark, int sheet, int of) {
        List<Item> items = new ArrayList<>();
        items.add(Item.of(Layer.SHEET, new Box(FRAME, 0, Fill.edge(Ink.FRAME, FRAME_MM))));
        double left = FRAME.rightMm() - TitlePanel.WIDTH_MM;
        double top = FRAME.bottomMm() - TitlePanel.HEIGHT_MM;
        Placement place = Placement.moved(left, top);
        for (Mark mark : new TitlePanel(typesetter).marks(fields, Paper.A4.name(), sheet, of)) {
            items.add(Item.of(Layer.SHEET, mark.placed(place)));
        }
        double x = FRAME.leftMm() + INNER_MM;
        double y = top + 1.2;
        for (String line : typesetter.lines(remark, Weight.REGULAR, REMARK_MM, left - INNER_MM - x)) {
            y += REMARK_MM * 1.7;
            Mark text = typesetter.text(line, x, y, REMARK_MM, Anchor.START, Weight.REGULAR, Ink.SOFT_TEXT);
            items.add(Item.of(Layer.SHEET, text));
        }
        return items;
    }
}
