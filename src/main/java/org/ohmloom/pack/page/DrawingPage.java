package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;

/** Puts a scene on a framed sheet, made smaller where it must be, never larger. */
public final class DrawingPage {
    private final SheetFrame frame;
    private final Paper paper;

    /** Sheets of a paper. */
    public DrawingPage(SceneFonts fonts, Paper paper) {
        this.frame = new SheetFrame(new Typesetter(fonts), paper);
        this.paper = paper;
    }

    /** Width over height of the room for a scene. */
    public double aspectRatio() {
        return frame.area().widthMm() / frame.area().heightMm();
    }

    /** The sheet with the scene in the middle of its room. */
    public Scene set(Scene scene, TitleFields fields, String remark) {
        Extent area = frame.area();
        double scale = Math.min(1, Math.min(area.widthMm() / scene.widthMm(), area.heightMm() / scene.heightMm()));
        Placement place = new Placement(
                scale,
                area.centre().xMm() - scene.widthMm() * scale / 2,
                area.centre().yMm() - scene.heightMm() * scale / 2);
        List<Item> items = new ArrayList<>();
        scene.items().forEach(item -> items.add(item.placed(place)));
        items.addAll(frame.items(fields, remark, 1, 1));
        return new Scene(paper.widthMm(), paper.heightMm(), items);
    }
}
