package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Weight;

/** Sets named values: label over value, as many to a line as fit the room. */
final class FactSetting {
    private static final double BODY_MM = 2.0;
    private static final double LABEL_MM = 1.8;
    private static final double PITCH_MM = BODY_MM * Typesetter.PITCH;
    private static final double GAP_MM = 6;
    private static final double BELOW_MM = 2.6;

    /** A value is not broken into lines before it is so wide, mm. */
    private static final double LEAST_MM = 90;

    private final Typesetter typesetter;
    private final double roomMm;

    FactSetting(Typesetter typesetter, double roomMm) {
        this.typesetter = typesetter;
        this.roomMm = roomMm;
    }

    /** The lines of values, from the top. */
    List<Piece> pieces(List<Block.Fact> facts) {
        List<Piece> pieces = new ArrayList<>();
        double most = Math.max(roomMm / 2 - GAP_MM, Math.min(roomMm, LEAST_MM));
        List<Mark> marks = new ArrayList<>();
        double x = 0;
        double high = 0;
        for (Block.Fact fact : facts) {
            List<String> lines = typesetter.lines(fact.value(), Weight.REGULAR, BODY_MM, most);
            double width = typesetter.widthMm(fact.label(), Weight.REGULAR, LABEL_MM);
            for (String line : lines) {
                width = Math.max(width, typesetter.widthMm(line, Weight.REGULAR, BODY_MM));
            }
            if (x > 0 && x + width > roomMm) {
                pieces.add(new Piece(high, marks));
                marks = new ArrayList<>();
                x = 0;
                high = 0;
            }
            marks.add(
                    typesetter.text(fact.label(), x, LABEL_MM, LABEL_MM, Anchor.START, Weight.REGULAR, Ink.SOFT_TEXT));
            double y = LABEL_MM;
            for (String line : lines) {
                y += PITCH_MM;
                marks.add(typesetter.text(line, x, y, BODY_MM, Anchor.START, Weight.REGULAR, Ink.TEXT));
            }
            high = Math.max(high, y + BELOW_MM);
            x += width + GAP_MM;
        }
        if (!marks.isEmpty()) {
            pieces.add(new Piece(high, marks));
        }
        return pieces;
    }
}
