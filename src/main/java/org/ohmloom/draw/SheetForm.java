package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Revision;
import org.ohmloom.model.TitleBlock;

/**
 * An empty sheet: frame, title block, notes and cautions, and the area left for drawing. The first sheet has the revision
 * table, the notes and the cautions in full.
 */
public final class SheetForm {

    private static final double AIR_MM = 6;
    private static final String NO_DIMENSIONS = "no dimensions";

    private final TitleBlock block;
    private final String tolerance;
    private final SheetNotes notes;
    private final Paper paper;
    private final Lettering lettering;

    /**
     * Sheets without dimensions, with notes of their own.
     *
     * @param notes      notes of the first sheet
     * @param everywhere lines that later sheets repeat
     */
    public SheetForm(TitleBlock block, List<String> notes, List<String> everywhere, Paper paper, Lettering lettering) {
        this(block, new SheetNotes(notes, everywhere), NO_DIMENSIONS, paper, lettering);
    }

    SheetForm(TitleBlock block, SheetNotes notes, Paper paper, Lettering lettering) {
        this(block, notes, "note " + GeneralNotes.TOLERANCE_NOTE + ", sheet 1", paper, lettering);
    }

    private SheetForm(TitleBlock block, SheetNotes notes, String tolerance, Paper paper, Lettering lettering) {
        this.tolerance = tolerance;
        this.block = block;
        this.notes = notes;
        this.paper = paper;
        this.lettering = lettering;
    }

    Paper paper() {
        return paper;
    }

    Lettering lettering() {
        return lettering;
    }

    /** The area for the drawing, on the first sheet or on a later one. */
    public Extent area(boolean first) {
        Extent space = paper.drawingSpace();
        return new Extent(
                space.leftMm() + AIR_MM,
                space.topMm() + AIR_MM,
                space.rightMm() - AIR_MM,
                foot(first).topMm() - AIR_MM);
    }

    /** The field of the frame a point lies in, as "B3"; empty on paper without fields. */
    public Optional<String> zone(Point point) {
        return Optional.of(GridReference.of(paper, point)).filter(field -> !field.isEmpty());
    }

    private List<Revision> revisions(boolean first) {
        return first ? block.revisions() : List.of();
    }

    /** The strip along the lower side that the title block, the revisions and the notes share. */
    private Extent foot(boolean first) {
        Extent space = paper.drawingSpace();
        double corner = TitleBlockDrawing.HEIGHT_MM + RevisionTable.heightMm(revisions(first));
        double words = notes.draw(new SheetPen(lettering), notesAt(0), first);
        boolean above = notesAt(0).widthMm() >= space.widthMm();
        double height = above ? corner + words : Math.max(corner, words);
        return new Extent(space.leftMm(), space.bottomMm() - height, space.rightMm(), space.bottomMm());
    }

    /** Room of the notes from a height on: left of the title block, or above it on a narrow sheet. */
    private Extent notesAt(double topMm) {
        Extent space = paper.drawingSpace();
        double beside = space.widthMm() - TitleBlockDrawing.WIDTH_MM;
        double width = beside < TitleBlockDrawing.WIDTH_MM ? space.widthMm() : beside;
        return new Extent(space.leftMm(), topMm, space.leftMm() + width, topMm);
    }

    /** A sheet with the items drawn in its area. */
    public Scene sheet(List<Item> drawing, String documentType, int sheet, int sheets) {
        SheetPen pen = new SheetPen(lettering);
        Extent space = paper.drawingSpace();
        boolean first = sheet == 1;
        Extent foot = foot(first);
        SheetFrame.draw(pen, paper);
        notes.draw(pen, notesAt(foot.topMm()), first);
        double left = space.rightMm() - TitleBlockDrawing.WIDTH_MM;
        double top = space.bottomMm() - TitleBlockDrawing.HEIGHT_MM;
        RevisionTable.draw(pen, revisions(first), left, top);
        TitleBlockDrawing.draw(pen, block, paper, documentType, tolerance, sheet, sheets);
        pen.line(SheetPen.MEDIUM_MM, Ink.FRAME, foot.leftMm(), foot.topMm(), foot.rightMm(), foot.topMm());
        List<Item> items = new ArrayList<>(drawing);
        items.addAll(pen.items());
        return new Scene(paper.widthMm(), paper.heightMm(), items);
    }
}
