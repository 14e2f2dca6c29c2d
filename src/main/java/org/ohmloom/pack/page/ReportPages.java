package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;

/** Sets a report on framed sheets of A4 or ANSI A, lying: what any printer in a shop takes. */
public final class ReportPages {
    private static final String CAUTIONS = "Cautions: sheet 1. ";

    private final Typesetter typesetter;
    private final Paper paper;

    /** Pages set in the drawing font on A4. */
    public ReportPages(SceneFonts fonts) {
        this(fonts, Paper.A4);
    }

    /** Pages set in the drawing font on the office paper that goes with the paper of the drawing. */
    public ReportPages(SceneFonts fonts, Paper paper) {
        this.typesetter = new Typesetter(fonts);
        this.paper = paper;
    }

    /**
     * Sheets with their bookmarks.
     *
     * @param scenes    sheets in order
     * @param bookmarks headings and the sheets they are on
     * @param mentions  where elements of the harness are named
     */
    public record Pages(List<Scene> scenes, List<Bookmark> bookmarks, List<Mention> mentions) {
        public Pages {
            scenes = List.copyOf(scenes);
            bookmarks = List.copyOf(bookmarks);
            mentions = List.copyOf(mentions);
        }
    }

    /** Sets a report that is a document by itself. */
    public Pages set(Report report, TitleFields fields) {
        return set(report, fields, 0);
    }

    /** Sets a report which so many other sheets follow in its document. */
    public Pages set(Report report, TitleFields fields, int following) {
        SheetFrame frame = new SheetFrame(typesetter, paper);
        Flow flow = new Flow(frame.area());
        BlockSetting setting = new BlockSetting(typesetter, flow, report.blocks());
        setting.title(
                fields.documentType() + ": " + fields.title(),
                fields.number() + ", revision " + fields.revision()
                        + fields.supplementaryTitle().map(text -> ", " + text).orElse(""));
        for (int k = 0; k < report.blocks().size(); k++) {
            setting.put(
                    report.blocks().get(k),
                    report.blocks().subList(k + 1, report.blocks().size()));
        }
        List<Scene> scenes = new ArrayList<>();
        int of = flow.pages().size();
        for (int k = 0; k < of; k++) {
            List<Item> items = new ArrayList<>(flow.pages().get(k));
            String remark = k == 0 ? report.remark() : CAUTIONS + report.remark();
            items.addAll(frame.items(fields, remark, k + 1, of + following));
            scenes.add(frame.sheet(items));
        }
        return new Pages(scenes, flow.bookmarks(), flow.mentions());
    }
}
