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
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Weight;

/** Sets a report on framed sheets: A4 landscape, filing margin 20 mm on the left, 10 mm elsewhere (ISO 5457). */
public final class ReportPages {
    /** The paper of reports: what any printer in a shop takes. */
    public static final Paper PAPER = Paper.A4;

    private static final Extent FRAME = new Extent(20, 10, PAPER.widthMm() - 10, PAPER.heightMm() - 10);
    private static final double FRAME_MM = 0.7;
    private static final double INNER_MM = 3.5;
    private static final double REMARK_MM = 1.8;

    private final Typesetter typesetter;

    /** Pages set in the drawing font. */
    public ReportPages(SceneFonts fonts) {
        this.typesetter = new Typesetter(fonts);
    }

    /**
     * Sheets with their bookmarks.
     *
     * @param scenes    sheets in order
     * @param bookmarks headings and the sheets they are on
     */
    public record Pages(List<Scene> scenes, List<Bookmark> bookmarks) {
        public Pages {
            scenes = List.copyOf(scenes);
            bookmarks = List.copyOf(bookmarks);
        }
    }

    /** Where the content of a sheet lies. */
    static Extent area() {
        return new Extent(
                FRAME.leftMm() + INNER_MM,
                FRAME.topMm() + INNER_MM,
                FRAME.rightMm() - INNER_MM,
                FRAME.bottomMm() - TitlePanel.HEIGHT_MM - INNER_MM);
    }

    /** The frame of a sheet. */
    static Extent frame() {
        return FRAME;
    }

    /** Sets a report. */
    public Pages set(Report report, TitleFields fields) {
        Flow flow = new Flow(area());
        BlockSetting setting = new BlockSetting(typesetter, flow, report.blocks());
        setting.title(
                fields.documentType() + ": " + fields.title(),
                fields.number() + ", revision " + fields.revision()
                        + fields.supplementaryTitle().map(text -> ", " + text).orElse(""));
        report.blocks().forEach(setting::put);
        List<Scene> scenes = new ArrayList<>();
        int of = flow.pages().size();
        for (int k = 0; k < of; k++) {
            List<Item> items = new ArrayList<>(flow.pages().get(k));
            sheet(items, report, fields, k + 1, of);
            scenes.add(new Scene(PAPER.widthMm(), PAPER.heightMm(), items));
        }
        return new Pages(scenes, flow.bookmarks());
    }

    private void sheet(List<Item> items, Report report, TitleFields fields, int sheet, int of) {
        items.add(Item.of(Layer.SHEET, new Box(FRAME, 0, Fill.edge(Ink.FRAME, FRAME_MM))));
        double left = FRAME.rightMm() - TitlePanel.WIDTH_MM;
        double top = FRAME.bottomMm() - TitlePanel.HEIGHT_MM;
        Placement place = Placement.moved(left, top);
        for (Mark mark : new TitlePanel(typesetter).marks(fields, PAPER.name(), sheet, of)) {
            items.add(Item.of(Layer.SHEET, mark.placed(place)));
        }
        double room = left - FRAME.leftMm() - 2 * INNER_MM;
        double y = top + 1.2;
        for (String line : typesetter.lines(report.remark(), Weight.REGULAR, REMARK_MM, room)) {
            y += REMARK_MM * 1.7;
            items.add(Item.of(
                    Layer.SHEET,
                    typesetter.text(
                            line,
                            FRAME.leftMm() + INNER_MM,
                            y,
                            REMARK_MM,
                            Anchor.START,
                            Weight.REGULAR,
                            Ink.SOFT_TEXT)));
        }
    }
}
