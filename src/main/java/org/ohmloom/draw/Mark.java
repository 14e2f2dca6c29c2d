package org.ohmloom.draw;

/** One thing drawn: pure geometry with the meaning of its colour. Everything in millimetres. */
public sealed interface Mark permits Line, Box, Disc, Area, Text, Swatch {

    /** The smallest rectangle around it, line widths included. */
    Extent bounds();

    /** Whether a point lies on it or within a tolerance of it, mm, 0 or more. */
    boolean hits(Point point, double toleranceMm);

    /** This mark made larger or smaller about the origin and then moved. */
    Mark placed(Placement placement);

    /** One line of text that describes it exactly, for comparing scenes. */
    String dump();
}
