package org.ohmloom.draw;

import java.util.Optional;

/**
 * How a closed shape is filled and outlined.
 *
 * @param inside      colour inside; empty leaves it open
 * @param edge        colour of the outline; empty draws none
 * @param edgeWidthMm width of the outline, mm, 0 or more
 */
public record Fill(Optional<Ink> inside, Optional<Ink> edge, double edgeWidthMm) {

    /** Filled, without an outline. */
    public static Fill of(Ink inside) {
        return new Fill(Optional.of(inside), Optional.empty(), 0);
    }

    /** Outlined only. */
    public static Fill edge(Ink edge, double edgeWidthMm) {
        return new Fill(Optional.empty(), Optional.of(edge), edgeWidthMm);
    }

    /** Filled and outlined. */
    public static Fill of(Ink inside, Ink edge, double edgeWidthMm) {
        return new Fill(Optional.of(inside), Optional.of(edge), edgeWidthMm);
    }

    Fill placed(Placement placement) {
        return new Fill(inside, edge, placement.length(edgeWidthMm));
    }

    double reachMm() {
        return edge.isPresent() ? edgeWidthMm / 2 : 0;
    }

    String dump() {
        return inside.map(ink -> " fill " + Dump.word(ink)).orElse("")
                + edge.map(ink -> " edge " + Dump.word(ink) + " " + Dump.mm(edgeWidthMm))
                        .orElse("");
    }
}
