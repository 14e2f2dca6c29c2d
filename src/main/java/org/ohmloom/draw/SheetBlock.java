package org.ohmloom.draw;

import java.util.List;

/** A block of a sheet that stands with others in columns. */
interface SheetBlock {

    /** Width of every block, mm. */
    double WIDTH_MM = 168;

    /** Space below a block, mm. */
    double SPACE_BELOW_MM = 6;

    /** Which sheets it makes: "dimensions" or "connectors". */
    String subject();

    /** Height it takes with the space below it, mm. */
    double heightMm();

    /**
     * Parts of it that are no higher than the room.
     *
     * @param firstMm room for the first part, mm
     * @param roomMm  room for each of the others, mm
     */
    List<SheetBlock> parts(double firstMm, double roomMm);

    void draw(SheetPen pen, double left, double top);
}
