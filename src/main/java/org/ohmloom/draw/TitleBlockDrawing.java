package org.ohmloom.draw;

import org.ohmloom.model.TitleBlock;

/**
 * The title block with the fields of ISO 7200:2004 and with what a drawing says beside them, 180 mm wide, in the lower right
 * corner. A field nobody has filled in stays empty, to be written by hand.
 */
final class TitleBlockDrawing {

    static final double WIDTH_MM = 180;
    static final double HEIGHT_MM = 36;

    private static final double ROW_MM = 9;
    private static final double PAD_MM = 1.2;
    private static final double CAPTION_MM = SheetPen.SMALL_MM;

    private final SheetPen pen;
    private final double left;
    private final double top;

    private TitleBlockDrawing(SheetPen pen, Extent space) {
        this.pen = pen;
        this.left = space.rightMm() - WIDTH_MM;
        this.top = space.bottomMm() - HEIGHT_MM;
    }

    /**
     * Draws the block of one sheet of several.
     *
     * @param tolerance what holds for dimensions without one
     */
    static void draw(
            SheetPen pen, TitleBlock block, Paper paper, String documentType, String tolerance, int sheet, int sheets) {
        TitleBlockDrawing drawing = new TitleBlockDrawing(pen, paper.drawingSpace());
        drawing.field("Document type", documentType, 0, 0, 62, 1);
        drawing.field("Created by", block.creator().orElse(""), 62, 0, 44, 1);
        drawing.field("Approved by", block.approver().orElse(""), 106, 0, 44, 1);
        drawing.field("Paper size", paper.label(), 150, 0, 30, 1);
        drawing.field("Legal owner", block.owner().orElse(""), 0, 1, 62, 2);
        drawing.field("Scale and projection", "not to scale, none", 0, 3, 31, 1);
        drawing.field("General tolerance", tolerance, 31, 3, 31, 1);
        drawing.title(block);
        drawing.field("Identification number", block.number(), 130, 1, 50, 1);
        drawing.field("Rev.", block.currentRevision(), 130, 2, 14, 1);
        drawing.field("Date of issue", block.date().orElse(""), 144, 2, 36, 1);
        drawing.field("Lang.", block.language().orElse(""), 130, 3, 14, 1);
        drawing.field("Sheet", sheet + " of " + sheets, 144, 3, 36, 1);
        pen.box(Extent.at(drawing.left, drawing.top, WIDTH_MM, HEIGHT_MM), Fill.edge(Ink.FRAME, SheetPen.WIDE_MM));
    }

    private void field(String caption, String value, double x, int row, double widthMm, int rows) {
        Extent cell = Extent.at(left + x, top + row * ROW_MM, widthMm, rows * ROW_MM);
        pen.box(cell, Fill.of(Ink.GROUND, Ink.FRAME, SheetPen.THIN_MM));
        double room = widthMm - 2 * PAD_MM;
        pen.text(
                caption,
                cell.leftMm() + PAD_MM,
                cell.topMm() + 0.8 + CAPTION_MM,
                CAPTION_MM,
                room,
                Weight.REGULAR,
                Ink.SOFT_TEXT);
        if (rows == 1) {
            pen.shrunk(value, cell.leftMm() + PAD_MM, cell.bottomMm() - 1.9, SheetPen.NORMAL_MM, room, Weight.REGULAR);
        } else if (!value.isEmpty()) {
            double y = cell.topMm() + 8;
            for (String line : pen.lettering().wrapped(value, Weight.REGULAR, SheetPen.NORMAL_MM, room, rows)) {
                pen.text(line, cell.leftMm() + PAD_MM, y, SheetPen.NORMAL_MM, room, Weight.REGULAR, Ink.TEXT);
                y += SheetPen.NORMAL_MM * SheetPen.LINE_RATIO;
            }
        }
    }

    private void title(TitleBlock block) {
        field("Title", "", 62, 1, 68, 3);
        double x = left + 62 + PAD_MM;
        double room = 68 - 2 * PAD_MM;
        double y = top + ROW_MM + 8.5;
        boolean fits = pen.lettering().widthMm(block.title(), Weight.BOLD, SheetPen.LARGE_MM) <= room;
        double height = fits ? SheetPen.LARGE_MM : SheetPen.NORMAL_MM + 0.3;
        for (String line : pen.lettering().wrapped(block.title(), Weight.BOLD, height, room, 2)) {
            pen.text(line, x, y, height, room, Weight.BOLD, Ink.TEXT);
            y += height * 1.6;
        }
        String more = block.supplementaryTitle().orElse("");
        y += 0.4;
        if (!more.isEmpty()) {
            for (String line : pen.lettering().wrapped(more, Weight.REGULAR, SheetPen.NORMAL_MM - 0.3, room, 2)) {
                pen.text(line, x, y, SheetPen.NORMAL_MM - 0.3, room, Weight.REGULAR, Ink.TEXT);
                y += (SheetPen.NORMAL_MM - 0.3) * SheetPen.LINE_RATIO;
            }
        }
    }
}
