package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ohmloom.model.BreakoutId;

/**
 * What hangs at a breakout of the trunk, shared out to its sides.
 *
 * @param above rows above the trunk, growing to the right
 * @param below rows below the trunk, growing to the right
 * @param end   rows at an end of the trunk, on both sides of it
 * @param other rows at the other side of a trunk that is a single breakout
 */
record Fan(Bush above, Bush below, Bush end, Bush other) {

    /** The rows at a breakout of the trunk, shared out as suits its place there. */
    static Fan of(BreakoutId at, List<Twig> twigs, boolean alone, boolean atEnd) {
        return alone ? star(at, twigs) : atEnd ? end(at, twigs) : inner(at, twigs);
    }

    /** A single breakout with all rows to the right. */
    static Fan toTheRight(BreakoutId at, List<Twig> twigs) {
        return new Fan(none(at), none(at), none(at), Bush.of(at, twigs));
    }

    /** At an end of the trunk everything grows outwards. */
    private static Fan end(BreakoutId at, List<Twig> twigs) {
        return new Fan(none(at), none(at), Bush.of(at, twigs), none(at));
    }

    /** Along the trunk the rows are shared out so that both sides are about as high. */
    private static Fan inner(BreakoutId at, List<Twig> twigs) {
        List<List<Twig>> sides = shared(twigs);
        return new Fan(Bush.of(at, sides.get(0)), Bush.of(at, sides.get(1)), none(at), none(at));
    }

    /** A single breakout has rows to the left and to the right. */
    private static Fan star(BreakoutId at, List<Twig> twigs) {
        List<List<Twig>> sides = shared(twigs);
        return new Fan(none(at), none(at), Bush.of(at, sides.get(0)), Bush.of(at, sides.get(1)));
    }

    /** Count of rows. */
    int count() {
        return above.twigs().size()
                + below.twigs().size()
                + end.twigs().size()
                + other.twigs().size();
    }

    double widthMm() {
        return Math.max(above.widthMm(), below.widthMm());
    }

    private static Bush none(BreakoutId at) {
        return Bush.of(at, List.of());
    }

    private static List<List<Twig>> shared(List<Twig> twigs) {
        List<Twig> highestFirst = new ArrayList<>(twigs);
        highestFirst.sort(Comparator.comparingDouble(Twig::heightMm).reversed());
        List<Twig> one = new ArrayList<>();
        List<Twig> other = new ArrayList<>();
        double balance = 0;
        for (Twig twig : highestFirst) {
            boolean first = balance <= 0;
            (first ? one : other).add(twig);
            balance += first ? twig.heightMm() : -twig.heightMm();
        }
        one.sort(Comparator.comparingInt(twigs::indexOf));
        other.sort(Comparator.comparingInt(twigs::indexOf));
        return List.of(one, other);
    }
}
