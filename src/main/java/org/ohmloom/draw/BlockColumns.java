package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Puts blocks in columns on as many sheets as they need. */
final class BlockColumns {

    private static final double COLUMN_GAP_MM = 8;

    private final Extent area;
    private final Lettering lettering;
    private final int columns;
    private final double gapMm;
    private final List<Sheet> sheets = new ArrayList<>();
    private final Set<String> subjects = new LinkedHashSet<>();
    private SheetPen pen;
    private int column;
    private double yMm;

    /**
     * One sheet.
     *
     * @param items    what is drawn
     * @param subjects what it is about
     */
    record Sheet(List<Item> items, List<String> subjects) {}

    BlockColumns(Extent area, Lettering lettering) {
        this.area = area;
        this.lettering = lettering;
        this.columns =
                Math.max(1, (int) Math.floor((area.widthMm() + COLUMN_GAP_MM) / (SheetBlock.WIDTH_MM + COLUMN_GAP_MM)));
        double spare = area.widthMm() - columns * SheetBlock.WIDTH_MM;
        this.gapMm = columns > 1 ? Math.min(4 * COLUMN_GAP_MM, spare / (columns - 1)) : 0;
        this.pen = new SheetPen(lettering);
        this.yMm = area.topMm();
    }

    /** The sheets of blocks in their order. */
    List<Sheet> sheets(List<? extends SheetBlock> blocks) {
        for (SheetBlock block : blocks) {
            for (SheetBlock part : block.parts(leftMm(), area.heightMm())) {
                put(part);
            }
        }
        turn();
        return List.copyOf(sheets);
    }

    private double leftMm() {
        return area.bottomMm() - yMm;
    }

    private void put(SheetBlock block) {
        if (yMm > area.topMm() && block.heightMm() > leftMm() + SheetBlock.SPACE_BELOW_MM) {
            column++;
            yMm = area.topMm();
        }
        if (column == columns) {
            turn();
        }
        subjects.add(block.subject());
        block.draw(pen, area.leftMm() + column * (SheetBlock.WIDTH_MM + gapMm), yMm);
        yMm += block.heightMm();
    }

    private void turn() {
        if (!pen.items().isEmpty()) {
            sheets.add(new Sheet(pen.items(), List.copyOf(subjects)));
        }
        pen = new SheetPen(lettering);
        subjects.clear();
        column = 0;
        yMm = area.topMm();
    }
}
