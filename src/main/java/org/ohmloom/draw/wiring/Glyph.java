package org.ohmloom.draw.wiring;

import java.util.List;
import org.ohmloom.draw.Area;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;

/**
 * Plain symbols of what lies between two terminals, drawn by us in the manner of IEC 60617 (from memory), about a middle, the
 * leads to the left and right of it.
 */
enum Glyph {
    /** A rectangle with the conductor through it. */
    FUSE(3.5),
    /** A contact with a cross. */
    BREAKER(3),
    /** An open contact. */
    CONTACT(3),
    /** Two contacts of a pair of connectors, plugged together. */
    PLUG(1.2),
    /** The winding of a relay. */
    COIL(3),
    /** An electronic output: a contact in a box. */
    OUTPUT(3.5),
    /** A diode. */
    DIODE(1.5),
    /** A lamp: a circle with a cross. */
    LAMP(2.2),
    /** A motor: a circle with a shaft. */
    MOTOR(2.2),
    /** A generator: a circle with a G. */
    GENERATOR(2.2),
    /** A resistance: any other load. */
    RESISTANCE(3.5),
    /** What turns one quantity into another: sensor, converter, supply. */
    TRANSDUCER(2.4),
    /** Cells of a battery. */
    BATTERY(1.8);

    /** Half the height of the highest of them, mm. */
    static final double HALF_HEIGHT_MM = 2.4;

    private static final double W = 0.3;

    private final double halfMm;

    Glyph(double halfMm) {
        this.halfMm = halfMm;
    }

    /** Half its width, mm: where its leads begin. */
    double halfMm() {
        return halfMm;
    }

    /** Its marks about a middle. */
    List<Mark> marks(Point at) {
        return switch (this) {
            case FUSE -> List.of(box(at, halfMm, 1.2), line(at.plus(-halfMm, 0), at.plus(halfMm, 0)));
            case BREAKER -> List.of(
                    line(at.plus(-halfMm + 0.7, -0.7), at.plus(-halfMm - 0.7, 0.7)),
                    line(at.plus(-halfMm + 0.7, 0.7), at.plus(-halfMm - 0.7, -0.7)),
                    line(at.plus(-halfMm, 0), at.plus(halfMm - 0.4, -1.9)));
            case CONTACT -> List.of(
                    new Disc(at.plus(halfMm, 0), 0.35, Fill.of(Ink.TEXT)),
                    new Disc(at.plus(-halfMm, 0), 0.35, Fill.of(Ink.TEXT)),
                    line(at.plus(-halfMm, 0), at.plus(halfMm - 0.4, -1.9)));
            case PLUG -> List.of(
                    line(at.plus(-halfMm, -1.2), at.plus(0, 0), at.plus(-halfMm, 1.2)),
                    line(at.plus(0, -1.2), at.plus(halfMm, 0), at.plus(0, 1.2)),
                    line(at.plus(-halfMm, 0), at.plus(halfMm, 0)));
            case COIL -> List.of(box(at, halfMm, 1.7), line(at.plus(-1, 1.7), at.plus(1, -1.7)));
            case OUTPUT -> List.of(
                    box(at, halfMm, 2.2),
                    line(at.plus(-halfMm, 0), at.plus(-1.6, 0), at.plus(1.4, -1.4)),
                    line(at.plus(1.6, 0), at.plus(halfMm, 0)));
            case DIODE -> List.of(
                    new Area(
                            List.of(at.plus(-halfMm, -1.6), at.plus(-halfMm, 1.6), at.plus(halfMm, 0)),
                            Fill.edge(Ink.TEXT, W)),
                    line(at.plus(halfMm, -1.6), at.plus(halfMm, 1.6)));
            case LAMP -> List.of(
                    new Disc(at, halfMm, Fill.edge(Ink.TEXT, W)),
                    line(at.plus(-1.55, -1.55), at.plus(1.55, 1.55)),
                    line(at.plus(-1.55, 1.55), at.plus(1.55, -1.55)));
            case MOTOR -> List.of(
                    new Disc(at, halfMm, Fill.edge(Ink.TEXT, W)),
                    line(at.plus(-1, 1), at.plus(-1, -1), at.plus(0, 0.3), at.plus(1, -1), at.plus(1, 1)));
            case GENERATOR -> List.of(
                    new Disc(at, halfMm, Fill.edge(Ink.TEXT, W)),
                    line(
                            at.plus(0.8, -0.8),
                            at.plus(0.3, -1.1),
                            at.plus(-0.4, -1.1),
                            at.plus(-0.9, -0.5),
                            at.plus(-0.9, 0.5),
                            at.plus(-0.4, 1.1),
                            at.plus(0.3, 1.1),
                            at.plus(0.9, 0.7),
                            at.plus(0.9, 0.1),
                            at.plus(0.1, 0.1)));
            case RESISTANCE -> List.of(box(at, halfMm, 1.4));
            case TRANSDUCER -> List.of(
                    box(at, halfMm, halfMm), line(at.plus(-halfMm, halfMm), at.plus(halfMm, -halfMm)));
            case BATTERY -> List.of(
                    line(at.plus(-1.8, -0.9), at.plus(-1.8, 0.9)),
                    line(at.plus(-0.6, -2), at.plus(-0.6, 2)),
                    line(at.plus(0.6, -0.9), at.plus(0.6, 0.9)),
                    line(at.plus(1.8, -2), at.plus(1.8, 2)));
        };
    }

    private static Mark box(Point at, double halfWidth, double halfHeight) {
        Extent extent =
                new Extent(at.xMm() - halfWidth, at.yMm() - halfHeight, at.xMm() + halfWidth, at.yMm() + halfHeight);
        return new Box(extent, 0, Fill.edge(Ink.TEXT, W));
    }

    private static Mark line(Point... points) {
        return Line.of(W, Ink.TEXT, points);
    }
}
