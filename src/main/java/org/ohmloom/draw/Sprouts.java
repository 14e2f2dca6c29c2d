package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;

/** Measures what hangs at each breakout of a tree, from the ends inwards. */
final class Sprouts {

    static final double SPUR_MM = 7;

    private static final double LEAST_ROW_MM = 9;
    private static final double SHEET_ROW_MM = 10;
    private static final double PAIR_ROW_MM = 15;

    private final Harness harness;
    private final Stations stations;
    private final RunTexts texts;
    private final Thickness thickness;
    private final Lettering lettering;
    private final Elsewhere elsewhere;

    Sprouts(
            Harness harness,
            Stations stations,
            RunTexts texts,
            Thickness thickness,
            Lettering lettering,
            Elsewhere elsewhere) {
        this.harness = harness;
        this.stations = stations;
        this.texts = texts;
        this.thickness = thickness;
        this.lettering = lettering;
        this.elsewhere = elsewhere;
    }

    /** The rows at a breakout: its cards, the ends of loops, the ties that lead away from it but for those left out. */
    List<Twig> twigs(Tree tree, BreakoutId at, List<Tie> without) {
        List<Twig> twigs = new ArrayList<>();
        for (Card card : stations.at(at)) {
            twigs.add(card(card));
        }
        for (Tie loop : tree.loops()) {
            if (loop.touches(at)) {
                twigs.add(card(interrupted(loop, at)));
            }
        }
        for (Tie tie : tree.at(at)) {
            if (!without.contains(tie)) {
                twigs.add(tie(tree, tie, at));
            }
        }
        return twigs;
    }

    /** What stands at the end of a tie that is drawn elsewhere. */
    private Card interrupted(Tie tie, BreakoutId at) {
        BreakoutId other = tie.other(at);
        String name = Spot.name(harness.breakouts().get(other));
        String here = Spot.name(harness.breakouts().get(at));
        return tie.segment()
                .map(segment -> elsewhere.onSheets()
                        ? stations.maker().matchLine(segment, elsewhere.letter(tie), here, name)
                        : stations.maker().continuation(segment, name))
                .orElseGet(() -> stations.maker()
                        .half(
                                tie.pair().get(tie.from().equals(at) ? 0 : 1),
                                tie.pair().get(tie.from().equals(at) ? 1 : 0),
                                name,
                                elsewhere.onSheets()));
    }

    private Twig card(Card card) {
        double body = thickness.bodyMm(card.element());
        double height = Math.max(card.heightMm(), card.tabs().isEmpty() ? body + 1 : 0);
        return new Twig(Optional.of(card), Optional.empty(), Optional.empty(), SPUR_MM, 0, height, height / 2);
    }

    private Twig tie(Tree tree, Tie tie, BreakoutId near) {
        BreakoutId far = tie.other(near);
        List<Twig> rows = twigs(tree, far, List.of(tie));
        Bush beyond = Bush.of(far, rows);
        if (rows.isEmpty()) {
            double name = lettering.widthMm(texts.joint(far, true), Weight.REGULAR, RunTexts.SMALL_MM);
            beyond = new Bush(far, List.of(), name + 3, 0);
        }
        boolean branching = rows.size() != 1;
        double height = Math.max(beyond.heightMm(), rowMm(tie, far, branching));
        double line = (height - beyond.heightMm()) / 2 + beyond.middleMm();
        return new Twig(
                Optional.empty(),
                Optional.of(tie),
                Optional.of(beyond),
                runMm(tie, near, branching, false),
                0,
                height,
                line);
    }

    /** Room that the line of a tie and its texts need, mm: as much above it as below. */
    private double rowMm(Tie tie, BreakoutId far, boolean branching) {
        double body = thickness.bodyMm(tie.id());
        if (!texts.onSheet()) {
            return LEAST_ROW_MM + body;
        }
        return tie.segment().isEmpty()
                ? PAIR_ROW_MM
                : SHEET_ROW_MM + body + 2 * besideMm(texts.of(tie, far, branching, false));
    }

    private static double besideMm(RunText text) {
        return Math.max(text.aboveMm(), text.belowMm());
    }

    /** Length a tie is drawn with, mm. */
    double runMm(Tie tie, BreakoutId near, boolean branching, boolean first) {
        BreakoutId far = tie.other(near);
        double bars = thickness.bodyMm(near.value()) / 2 + thickness.bodyMm(far.value()) / 2;
        if (tie.segment().isEmpty()) {
            double tabs = tie.pair().stream()
                    .mapToDouble(
                            each -> stations.maker().tabWidthMm(stations.maker().tab(each)))
                    .sum();
            double names = texts.of(tie, far, branching, first).widthMm();
            return Math.max(tabs + 2 * SPUR_MM, names) + bars;
        }
        return texts.of(tie, far, branching, first).widthMm() + texts.splicesMm(tie) + bars;
    }
}
