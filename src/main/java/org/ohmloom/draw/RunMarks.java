package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.bundle.section.SupportPlan;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;

/**
 * What a printed board shows along its runs: the line of each dimension from breakout to breakout, where coverings start and
 * end, supports and ties in their order, and the labels of connectors. A mark that would lie on another is left to the table.
 */
final class RunMarks {

    private static final double END_MM = 2.4;
    private static final double APART_MM = 2.4;
    private static final double FROM_DOOR_MM = 2.3;

    private final Board board;
    private final Doors doors;
    private final RunTexts texts;
    private final Thickness thickness;
    private final SheetDetail detail;
    private final Map<BreakoutId, Board.Joint> joints = new HashMap<>();
    private final List<Item> items = new ArrayList<>();

    RunMarks(Board board, Doors doors, RunTexts texts, Thickness thickness, SheetDetail detail) {
        this.board = board;
        this.doors = doors;
        this.texts = texts;
        this.thickness = thickness;
        this.detail = detail;
        board.joints().forEach(joint -> joints.put(joint.id(), joint));
    }

    List<Item> items() {
        for (Board.Run run : board.runs()) {
            if (run.tie().segment().isPresent()) {
                dimension(run);
                covering(run);
                along(run);
            }
        }
        board.cards().forEach(this::labels);
        return items;
    }

    private void dimension(Board.Run run) {
        double half = halfMm(run);
        double y = run.from().yMm() - RunLabels.dimensionMm(half);
        Point left = new Point(edge(leftJoint(run), left(run), y, 1), y);
        Point right = new Point(edge(rightJoint(run), right(run), y, -1), y);
        String id = run.tie().id();
        String text = "length of " + id;
        for (double x : new double[] {left.xMm(), right.xMm()}) {
            add(Layer.NUMBERS, Symbols.extension(x, run.from().yMm() - half, y), id, text);
        }
        Symbols.dimension(left, right).forEach(mark -> add(Layer.NUMBERS, mark, id, text));
    }

    /** Where a dimension ends: at the middle of the breakout, or where its upright line stands in the way at that line's side. */
    private double edge(BreakoutId id, double x, double y, int side) {
        Optional<Board.Joint> joint = Optional.ofNullable(joints.get(id));
        double half = thickness.bodyMm(id.value()) / 2;
        boolean barred = joint.isPresent()
                && joint.get().topMm() - half < y
                && joint.get().bottomMm() + half > y
                && joint.get().bottomMm() > joint.get().topMm();
        return barred ? x + side * half : x;
    }

    private void covering(Board.Run run) {
        if (run.tie().segment().flatMap(segment -> segment.covering()).isEmpty()) {
            return;
        }
        double from = left(run) + endMm(leftJoint(run));
        double to = right(run) - endMm(rightJoint(run));
        String id = run.tie().id();
        Symbols.covering(new Point(from, run.from().yMm()), to, halfMm(run))
                .forEach(mark -> add(Layer.CONNECTORS, mark, id, "covering of " + id));
    }

    private double endMm(BreakoutId joint) {
        return Math.max(1.1, thickness.bodyMm(joint.value()) / 2 + 0.35) + 0.6;
    }

    private void along(Board.Run run) {
        Optional<SupportPlan> plan =
                run.tie().segment().map(segment -> detail.supports().get(segment.id()));
        if (plan.isEmpty()) {
            return;
        }
        List<Double> taken = new ArrayList<>();
        texts.splices(run.tie()).forEach(splice -> doors.of(splice.id().value()).ifPresent(at -> taken.add(at.xMm())));
        double y = run.from().yMm();
        double half = halfMm(run);
        String id = run.tie().id();
        for (double metres : plan.get().supportMetres()) {
            free(run, metres, taken)
                    .ifPresent(x ->
                            add(Layer.CONNECTORS, Symbols.support(new Point(x, y)), id, words(run, "support", metres)));
        }
        for (double metres : plan.get().tieMetres()) {
            free(run, metres, taken)
                    .ifPresent(x ->
                            add(Layer.CONNECTORS, Symbols.tie(new Point(x, y), half), id, words(run, "tie", metres)));
        }
    }

    private static String words(Board.Run run, String what, double metres) {
        return what + " on " + run.tie().id() + ", " + Words.millimetres(metres) + " mm from "
                + run.tie().from();
    }

    private Optional<Double> free(Board.Run run, double metres, List<Double> taken) {
        double x = place(run, metres);
        if (taken.stream().anyMatch(other -> Math.abs(other - x) < APART_MM)) {
            return Optional.empty();
        }
        taken.add(x);
        return Optional.of(x);
    }

    /** Where along the drawn run a distance lies: in proportion between the ends and the splices. */
    private double place(Board.Run run, double metres) {
        boolean rightwards = run.from().xMm() <= run.to().xMm();
        boolean fromNear = run.tie().from().equals(run.near());
        double start = left(run) + endMm(leftJoint(run)) + END_MM;
        double end = right(run) - endMm(rightJoint(run)) - END_MM;
        boolean leftIsFrom = rightwards == fromNear;
        double beforeMetres = 0;
        double beforeMm = leftIsFrom ? start : end;
        List<Splice> splices = texts.splices(run.tie()).stream()
                .sorted(Comparator.comparingDouble(RunMarks::metres))
                .toList();
        for (Splice splice : splices) {
            double at = doors.of(splice.id().value()).map(Point::xMm).orElse(beforeMm);
            if (metres < metres(splice)) {
                return between(metres, beforeMetres, metres(splice), beforeMm, at);
            }
            beforeMetres = metres(splice);
            beforeMm = at;
        }
        return between(metres, beforeMetres, run.tie().lengthMetres(), beforeMm, leftIsFrom ? end : start);
    }

    private static double metres(Splice splice) {
        return ((Place.OnSegment) splice.place().orElseThrow()).distanceMetres();
    }

    private static double between(double metres, double from, double to, double fromMm, double toMm) {
        return to <= from ? fromMm : fromMm + (metres - from) / (to - from) * (toMm - fromMm);
    }

    /** A label at the wires of each connector. */
    private void labels(Board.Placed placed) {
        if (placed.joint().isEmpty()) {
            return;
        }
        for (Tab tab : placed.card().tabs()) {
            if (tab.connector()) {
                Point at = placed.door(tab.element()).plus(placed.mirror() ? FROM_DOOR_MM : -FROM_DOOR_MM, 0);
                double half = thickness.bodyMm(tab.element()) / 2;
                add(Layer.CONNECTORS, Symbols.label(at, half), tab.element(), "label of " + tab.element());
            }
        }
    }

    private double halfMm(Board.Run run) {
        return thickness.bodyMm(run.tie().id()) / 2;
    }

    private static double left(Board.Run run) {
        return Math.min(run.from().xMm(), run.to().xMm());
    }

    private static double right(Board.Run run) {
        return Math.max(run.from().xMm(), run.to().xMm());
    }

    private static BreakoutId leftJoint(Board.Run run) {
        return run.from().xMm() <= run.to().xMm() ? run.near() : run.far();
    }

    private static BreakoutId rightJoint(Board.Run run) {
        return run.from().xMm() <= run.to().xMm() ? run.far() : run.near();
    }

    private void add(Layer layer, Mark mark, String element, String text) {
        items.add(Item.of(layer, mark, element, text));
    }
}
