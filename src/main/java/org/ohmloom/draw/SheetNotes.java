package org.ohmloom.draw;

import java.util.List;
import java.util.stream.Stream;
import org.ohmloom.review.Cautions;

/** The notes and the cautions beside the title block. */
final class SheetNotes {

    private static final double TEXT_MM = SheetPen.SMALL_MM;
    private static final double PAD_MM = 2;
    private static final double BETWEEN_MM = 3.6;
    private static final double INDENT_MM = 4;

    /** How lengths and views of this drawing are to be read. */
    static final List<String> NOTES = List.of(
            "Not to scale; lengths in mm.",
            "Datum of lengths: between breakout centres; at a connector from its rear face, at a ring terminal from the"
                    + " middle of its hole.",
            "Connectors are shown from the wire side. The arrangement of cavities is schematic: the names moulded into"
                    + " the housing decide.",
            "Line thickness grows with the count of wires. Insulation colours by the letter codes of IEC 60757.");

    /** The cautions every surface shows. */
    static final List<String> CAUTIONS =
            Stream.concat(Stream.of(Cautions.STANDING), Cautions.ALL.stream()).toList();

    private SheetNotes() {}

    /** Draws both in columns side by side; gives the height they take, measured from the top of the extent. */
    static double draw(SheetPen pen, Extent extent) {
        double column = extent.widthMm() / 2;
        double notes = list(pen, "Notes", NOTES, extent.leftMm(), extent.topMm(), column, Ink.TEXT);
        double cautions =
                list(pen, "Cautions", CAUTIONS, extent.leftMm() + column, extent.topMm(), column, Ink.CAUTION);
        return Math.max(notes, cautions) - extent.topMm() + PAD_MM;
    }

    private static double list(
            SheetPen pen, String title, List<String> lines, double left, double top, double widthMm, Ink heading) {
        double y = top + PAD_MM + SheetPen.NORMAL_MM;
        double room = widthMm - 2 * PAD_MM;
        if (heading == Ink.CAUTION) {
            pen.mark(new Area(
                    List.of(
                            new Point(left + PAD_MM, y),
                            new Point(left + PAD_MM + 3.4, y),
                            new Point(left + PAD_MM + 1.7, y - 3)),
                    Fill.edge(Ink.CAUTION, SheetPen.MEDIUM_MM)));
            pen.line(0.4, Ink.CAUTION, left + PAD_MM + 1.7, y - 1.9, left + PAD_MM + 1.7, y - 1);
        }
        double x = left + PAD_MM + (heading == Ink.CAUTION ? 4.6 : 0);
        pen.text(title, x, y, SheetPen.NORMAL_MM, room - 5, Weight.BOLD, heading);
        int number = 1;
        y += 0.6;
        for (String line : lines) {
            y += BETWEEN_MM;
            pen.text(number + ".", left + PAD_MM, y, TEXT_MM, INDENT_MM, Weight.REGULAR, Ink.SOFT_TEXT);
            y = pen.paragraph(line, left + PAD_MM + INDENT_MM, y, TEXT_MM, room - INDENT_MM, Ink.TEXT);
            number++;
        }
        return y;
    }
}
