package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Weight;

/** The title block: 180 mm wide in the lower right corner of the frame, fields of ISO 7200:2004. */
final class TitlePanel {
    static final double WIDTH_MM = 180;
    static final double HEIGHT_MM = 25.5;

    private static final double ROW_MM = HEIGHT_MM / 3;
    private static final double LABEL_MM = 1.8;
    private static final double VALUE_MM = 2.5;
    private static final double PADDING_MM = 1.1;
    private static final double LINE_MM = 0.25;

    private final Typesetter typesetter;

    TitlePanel(Typesetter typesetter) {
        this.typesetter = typesetter;
    }

    /** Its marks from its upper left corner. */
    List<Mark> marks(TitleFields fields, String paper, int sheet, int of) {
        List<Mark> marks = new ArrayList<>();
        field(marks, 0, 0, 52, "Legal owner", fields.owner().orElse(""));
        field(marks, 0, 52, 76, "Title", fields.title());
        field(marks, 0, 128, 52, "Document type", fields.documentType());
        field(marks, 1, 0, 26, "Created by", fields.creator().orElse(""));
        field(marks, 1, 26, 26, "Approved by", fields.approver().orElse(""));
        field(
                marks,
                1,
                52,
                76,
                "Supplementary title",
                fields.supplementaryTitle().orElse(""));
        field(marks, 1, 128, 52, "Identification number", fields.number());
        field(marks, 2, 0, 26, "Date of issue", fields.date().orElse(""));
        field(marks, 2, 26, 13, "Language", fields.language().orElse(""));
        field(marks, 2, 39, 13, "Paper", paper);
        field(marks, 2, 52, 76, "Units", "As headed; a decimal point; temperatures in °C");
        field(marks, 2, 128, 20, "Revision", fields.revision());
        field(marks, 2, 148, 32, "Sheet", sheet + " of " + of);
        marks.add(new Box(Extent.at(0, 0, WIDTH_MM, HEIGHT_MM), 0, Fill.edge(Ink.FRAME, 2 * LINE_MM)));
        return marks;
    }

    private void field(List<Mark> marks, int row, double left, double width, String label, String value) {
        double top = row * ROW_MM;
        marks.add(new Box(Extent.at(left, top, width, ROW_MM), 0, Fill.edge(Ink.FRAME, LINE_MM)));
        double x = left + PADDING_MM;
        double base = top + PADDING_MM + LABEL_MM;
        marks.add(typesetter.text(label, x, base - 0.2, LABEL_MM, Anchor.START, Weight.REGULAR, Ink.SOFT_TEXT));
        if (value.isBlank()) {
            return;
        }
        double room = width - 2 * PADDING_MM;
        double below = ROW_MM - PADDING_MM - LABEL_MM;
        double height = VALUE_MM;
        List<String> lines = typesetter.lines(value, Weight.BOLD, height, room);
        while (lines.size() > 1 && (lines.size() * height * 1.45 > below - 0.4 || height > LABEL_MM)) {
            height -= 0.05;
            lines = typesetter.lines(value, Weight.BOLD, height, room);
        }
        double y = lines.size() > 1 ? base + 0.9 + height : base + 1.1 + VALUE_MM;
        for (String line : lines) {
            marks.add(typesetter.text(line, x, y, height, Anchor.START, Weight.BOLD, Ink.TEXT));
            y += height * 1.45;
        }
    }
}
