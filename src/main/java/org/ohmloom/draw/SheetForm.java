package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.TitleBlock;

/** An empty sheet: frame, title block, revision table, notes and cautions, and the area left for drawing. */
final class SheetForm {

    private static final double AIR_MM = 6;

    private final TitleBlock block;
    private final Paper paper;
    private final Lettering lettering;

    SheetForm(TitleBlock block, Paper paper, Lettering lettering) {
        this.block = block;
        this.paper = paper;
        this.lettering = lettering;
    }

    Paper paper() {
        return paper;
    }

    Lettering lettering() {
        return lettering;
    }

    /** The area for the drawing. */
    Extent area() {
        Extent space = paper.drawingSpace();
        return new Extent(
                space.leftMm() + AIR_MM, space.topMm() + AIR_MM, space.rightMm() - AIR_MM, foot().topMm() - AIR_MM);
    }

    /** The strip along the lower side that the title block, the revisions and the notes share. */
    private Extent foot() {
        Extent space = paper.drawingSpace();
        double corner = TitleBlockDrawing.HEIGHT_MM + RevisionTable.heightMm(block.revisions());
        double notes = SheetNotes.draw(new SheetPen(lettering), notesAt(0));
        boolean above = notesAt(0).widthMm() >= space.widthMm();
        double height = above ? corner + notes : Math.max(corner, notes);
        return new Extent(space.leftMm(), space.bottomMm() - height, space.rightMm(), space.bottomMm());
    }

    /** Room of the notes from a height on: left of the title block, or above it on a narrow sheet. */
    private Extent notesAt(double topMm) {
        Extent space = paper.drawingSpace();
        double beside = space.widthMm() - TitleBlockDrawing.WIDTH_MM;
        double width = beside < TitleBlockDrawing.WIDTH_MM ? space.widthMm() : beside;
        double most = 2 * TitleBlockDrawing.WIDTH_MM;
        boolean narrow = width >= space.widthMm();
        double right = space.leftMm() + (narrow ? width : Math.min(width, most));
        return new Extent(space.leftMm(), topMm, right, topMm);
    }

    /** A sheet with the items drawn in its area. */
    Scene sheet(List<Item> drawing, String documentType, int sheet, int sheets) {
        SheetPen pen = new SheetPen(lettering);
        Extent space = paper.drawingSpace();
        Extent foot = foot();
        SheetFrame.draw(pen, paper);
        SheetNotes.draw(pen, notesAt(foot.topMm()));
        double left = space.rightMm() - TitleBlockDrawing.WIDTH_MM;
        double top = space.bottomMm() - TitleBlockDrawing.HEIGHT_MM;
        RevisionTable.draw(pen, block.revisions(), left, top);
        TitleBlockDrawing.draw(pen, block, paper, documentType, sheet, sheets);
        pen.line(SheetPen.MEDIUM_MM, Ink.FRAME, foot.leftMm(), foot.topMm(), foot.rightMm(), foot.topMm());
        List<Item> items = new ArrayList<>(drawing);
        items.addAll(pen.items());
        return new Scene(paper.widthMm(), paper.heightMm(), items);
    }
}
