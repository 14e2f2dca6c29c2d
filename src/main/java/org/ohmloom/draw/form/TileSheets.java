package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SheetPen;
import org.ohmloom.draw.Text;
import org.ohmloom.model.TitleBlock;

/** The tiles of form boards as sheets: what each shows of its board at 1:1, its marks, and the strip below. */
public final class TileSheets {

    private final SceneFonts fonts;
    private final TitleBlock block;

    /** Sheets that carry the number and revision of a title block. */
    public TileSheets(SceneFonts fonts, TitleBlock block) {
        this.fonts = fonts;
        this.block = block;
    }

    /**
     * The sheets of a board, row by row.
     *
     * @param board  the board
     * @param prefix what stands before the names of its tiles, as "1-"; empty for the only board
     * @param before sheets before its first one
     * @param of     all sheets of the document
     */
    public List<Scene> sheets(FormBoard board, String prefix, int before, int of) {
        List<Scene> sheets = new ArrayList<>();
        List<String> names = board.tileNames();
        for (int[] tile : board.tiles()) {
            sheets.add(sheet(board, names, prefix, tile[0], tile[1], before + sheets.size() + 1, of));
        }
        return sheets;
    }

    private Scene sheet(FormBoard board, List<String> names, String prefix, int column, int row, int sheet, int of) {
        TileGrid grid = board.grid();
        Extent shown = grid.picture(column, row);
        Extent picture = grid.pictureOnSheet();
        Placement place = Placement.moved(picture.leftMm() - shown.leftMm(), picture.topMm() - shown.topMm());
        List<Item> items = new ArrayList<>();
        TileClip clip = new TileClip(shown);
        for (Item item : board.items()) {
            if (item.mark().bounds().overlaps(shown)) {
                for (Mark mark : parts(item, shown, grid, clip)) {
                    items.add(new Item(item.layer(), mark, item.element(), item.description()).placed(place));
                }
            }
        }
        SheetPen pen = new SheetPen(new Lettering(fonts));
        cover(pen, grid, picture);
        TileMarks marks = new TileMarks(pen, grid);
        marks.border(column, row, names);
        marks.scaleBars();
        marks.neighbours(column, row, names, prefix);
        boolean only = grid.columns() * grid.rows() == 1;
        marks.foot(block, board.name(), only ? "" : prefix + TileGrid.name(column, row), sheet, of);
        items.addAll(pen.items());
        return new Scene(grid.sheetWidthMm(), grid.sheetHeightMm(), items);
    }

    /** What a tile shows of a mark: of a text that runs over its edge only the letters that are whole. */
    private List<Mark> parts(Item item, Extent shown, TileGrid grid, TileClip clip) {
        if (!(item.mark() instanceof Text text)) {
            return clip.of(item.mark());
        }
        if (shown.contains(text.bounds())) {
            return List.of(text);
        }
        return grid.shows(text.bounds())
                ? List.of()
                : letters(text, shown).stream().toList();
    }

    private Optional<Mark> letters(Text text, Extent shown) {
        double start = -text.widthMm() * text.anchor().fraction();
        double cos = Headings.cos(text.rotationDegrees());
        double sin = Headings.sin(text.rotationDegrees());
        int first = -1;
        int last = -1;
        int count = text.text().length();
        for (int k = 0; k < count; k++) {
            double from = start + fonts.widthMm(text.text().substring(0, k), text.weight(), text.heightMm());
            Text letter = one(text, k, k + 1, from, cos, sin);
            if (shown.contains(letter.bounds())) {
                first = first < 0 ? k : first;
                last = k;
            }
        }
        if (first < 0 || text.text().substring(first, last + 1).isBlank()) {
            return Optional.empty();
        }
        double from = start + fonts.widthMm(text.text().substring(0, first), text.weight(), text.heightMm());
        return Optional.of(one(text, first, last + 1, from, cos, sin));
    }

    private Text one(Text text, int first, int end, double fromMm, double cos, double sin) {
        String part = text.text().substring(first, end);
        return new Text(
                part,
                text.at().plus(fromMm * cos, fromMm * sin),
                text.heightMm(),
                fonts.widthMm(part, text.weight(), text.heightMm()),
                Anchor.START,
                text.rotationDegrees(),
                text.weight(),
                text.ink());
    }

    /** Whites out what reaches over the edges of the picture. */
    private static void cover(SheetPen pen, TileGrid grid, Extent picture) {
        double wide = grid.sheetWidthMm();
        double high = grid.sheetHeightMm();
        for (Extent each : List.of(
                new Extent(0, 0, wide, picture.topMm()),
                new Extent(0, picture.bottomMm(), wide, high),
                new Extent(0, 0, picture.leftMm(), high),
                new Extent(picture.rightMm(), 0, wide, high))) {
            pen.add(Item.of(Layer.SHEET, new Box(each, 0, Fill.of(Ink.GROUND))));
        }
    }
}
