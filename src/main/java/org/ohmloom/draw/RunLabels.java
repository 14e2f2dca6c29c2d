package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.BreakoutId;

/** Writes length, identity, zone, covering and number along a run, and the names of the breakouts at its ends. */
final class RunLabels {

    private static final double PAIR_BELOW_MM = 6.4;

    private final Lettering lettering;
    private final Thickness thickness;
    private final boolean dimensioned;

    /** Labels that leave room for a dimension line between the run and its length, or not. */
    RunLabels(Lettering lettering, Thickness thickness, boolean dimensioned) {
        this.lettering = lettering;
        this.thickness = thickness;
        this.dimensioned = dimensioned;
    }

    /**
     * The texts of a run.
     *
     * @param near where the breakout it is drawn from lies; off the run's own level when a person has moved it
     */
    List<Item> of(Board.Run run, Point near) {
        if (run.text().length().isEmpty()) {
            return dimensioned ? pair(run) : List.of();
        }
        double lengthMm = run.from().distanceMm(run.to());
        boolean beside = lengthMm < run.text().widthMm() - 1
                && Math.abs(near.yMm() - run.to().yMm()) > lengthMm;
        return beside ? beside(run, near) : along(run);
    }

    private List<Item> along(Board.Run run) {
        List<Item> items = new ArrayList<>();
        boolean rightwards = run.from().xMm() <= run.to().xMm();
        double left = Math.min(run.from().xMm(), run.to().xMm()) + inset(rightwards ? run.near() : run.far());
        double right = Math.max(run.from().xMm(), run.to().xMm()) - inset(rightwards ? run.far() : run.near());
        double half = thickness.bodyMm(run.tie().id()) / 2;
        double above = run.from().yMm() - (dimensioned ? dimensionMm(half) + 0.8 : half + 0.9);
        if (!run.text().more().isEmpty()) {
            items.add(number(small(run.text().more(), new Point(left, above), Anchor.START, Ink.SOFT_TEXT), run));
            above -= run.text().aboveMm();
        }
        double below = run.from().yMm() + (dimensioned ? Math.max(half, 0.75) + 1.1 : half + 0.8) + RunTexts.SMALL_MM;
        Text length = length(run, new Point(left, above));
        items.add(number(length, run));
        double next = left + length.widthMm() + RunTexts.BETWEEN_MM;
        Text soft = small(run.text().soft(), new Point(next, above), Anchor.START, Ink.SOFT_TEXT);
        items.add(number(soft, run));
        FlagDrawing.marks(lettering, run.text().flag(), new Point(next + soft.widthMm(), above))
                .forEach(
                        mark -> items.add(Item.of(Layer.NUMBERS, mark, run.tie().id(), describe(run))));
        String atLeft = rightwards ? run.text().near() : run.text().far();
        String atRight = rightwards ? run.text().far() : run.text().near();
        String leftId = (rightwards ? run.near() : run.far()).value();
        String rightId = (rightwards ? run.far() : run.near()).value();
        double after = left;
        if (!atLeft.isEmpty()) {
            items.add(breakout(atLeft, new Point(left, below), Anchor.START, leftId));
            after += smallMm(atLeft) + RunTexts.BETWEEN_MM;
        }
        if (!atRight.isEmpty()) {
            items.add(breakout(atRight, new Point(right, below), Anchor.END, rightId));
        }
        double start = after;
        double room = right - after - (atRight.isEmpty() ? 0 : smallMm(atRight) + RunTexts.BETWEEN_MM);
        run.text().number().ifPresent(text -> items.add(number(besideOrBelow(text, start, left, below, room), run)));
        if (!run.text().running().isEmpty()) {
            boolean atEnd = rightwards == run.text().runningAt().equals(Optional.of(run.far()));
            double x = atEnd ? right : left;
            Point at = new Point(x, below + RunTexts.LINE_MM);
            items.add(number(small(run.text().running(), at, atEnd ? Anchor.END : Anchor.START, Ink.TEXT), run));
        }
        return items;
    }

    /** How far above the middle of a run the line of its dimension lies, mm: clear of the bundle and of splices. */
    static double dimensionMm(double halfBodyMm) {
        return Math.max(halfBodyMm, 1.6) + 0.9;
    }

    /** How far above the middle of a run on a sheet its texts reach, mm. */
    static double aboveMm(double halfBodyMm, RunText text) {
        return dimensionMm(halfBodyMm) + 0.8 + text.aboveMm() + RunTexts.LENGTH_MM * Text.ASCENT_RATIO;
    }

    /** The names of the breakouts of an in-line pair, below it. */
    private List<Item> pair(Board.Run run) {
        boolean rightwards = run.from().xMm() <= run.to().xMm();
        double left = Math.min(run.from().xMm(), run.to().xMm()) + inset(rightwards ? run.near() : run.far());
        double right = Math.max(run.from().xMm(), run.to().xMm()) - inset(rightwards ? run.far() : run.near());
        double y = run.from().yMm() + PAIR_BELOW_MM;
        List<Item> items = new ArrayList<>();
        if (!run.text().near().isEmpty()) {
            Point at = new Point(rightwards ? left : right, y);
            String id = run.near().value();
            items.add(breakout(run.text().near(), at, rightwards ? Anchor.START : Anchor.END, id));
        }
        Point at = new Point(rightwards ? right : left, y);
        items.add(breakout(
                run.text().far(),
                at,
                rightwards ? Anchor.END : Anchor.START,
                run.far().value()));
        return items;
    }

    /** The number between the names; below them on a run that a person has made too short for all three. */
    private Text besideOrBelow(String text, double start, double left, double y, double roomMm) {
        boolean fits = smallMm(text) <= roomMm + 0.01;
        Point at = fits ? new Point(start, y) : new Point(left, y + RunTexts.SMALL_MM + 0.8);
        return small(text, at, Anchor.START, Ink.TEXT);
    }

    private double smallMm(String text) {
        return lettering.widthMm(text, Weight.REGULAR, RunTexts.SMALL_MM);
    }

    /** Beside the upright part, near the far breakout, one text below the other. */
    private List<Item> beside(Board.Run run, Point near) {
        List<Item> items = new ArrayList<>();
        boolean down = near.yMm() < run.to().yMm();
        double x = run.from().xMm() + inset(run.near());
        double step = 3;
        double lines = run.text().number().isPresent() ? 4 : 3;
        double y = down ? run.to().yMm() - 3 - (lines - 1) * step : run.to().yMm() + 3 + RunTexts.LENGTH_MM;
        items.add(number(length(run, new Point(x, y)), run));
        items.add(number(small(run.text().soft(), new Point(x, y + step), Anchor.START, Ink.SOFT_TEXT), run));
        items.add(breakout(
                run.text().far(),
                new Point(x, y + 2 * step),
                Anchor.START,
                run.far().value()));
        Point last = new Point(x, y + 3 * step);
        run.text().number().ifPresent(text -> items.add(number(small(text, last, Anchor.START, Ink.TEXT), run)));
        return items;
    }

    /** The name of a breakout. */
    Item breakout(String text, Point at, Anchor anchor, String id) {
        return Item.of(Layer.NUMBERS, small(text, at, anchor, Ink.SOFT_TEXT), id, lettering.say("breakout", text));
    }

    /** A segment in plain words. */
    String describe(Board.Run run) {
        org.ohmloom.words.Text wires = Words.wires(thickness.count(run.tie().id()));
        return lettering.say("segment.told", run.tie().id(), run.text().length(), wires)
                + run.text().number().map(number -> ", " + number).orElse("");
    }

    private double inset(BreakoutId joint) {
        return RunTexts.INSET_MM + thickness.bodyMm(joint.value()) / 2;
    }

    private Text length(Board.Run run, Point at) {
        return lettering.text(run.text().length(), at, RunTexts.LENGTH_MM, Anchor.START, Weight.BOLD, Ink.TEXT);
    }

    private Text small(String text, Point at, Anchor anchor, Ink ink) {
        return lettering.text(text, at, RunTexts.SMALL_MM, anchor, Weight.REGULAR, ink);
    }

    private Item number(Text text, Board.Run run) {
        return Item.of(Layer.NUMBERS, text, run.tie().id(), describe(run));
    }
}
