package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;

/** Sets a report on framed sheets: A4 landscape, filing margin 20 mm on the left, 10 mm elsewhere (ISO 5457). */
public final class ReportPages {
    /** The paper of reports: what any printer in a shop takes. */
    public static final Paper PAPER = Paper.A4;

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

    /** Sets a report. */
    public Pages set(Report report, TitleFields fields) {
        SheetFrame frame = new SheetFrame(typesetter, PAPER);
        Flow flow = new Flow(frame.area());
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
            items.addAll(frame.items(fields, report.remark(), k + 1, of));
            scenes.add(new Scene(PAPER.widthMm(), PAPER.heightMm(), items));
        }
        return new Pages(scenes, flow.bookmarks());
    }
}
