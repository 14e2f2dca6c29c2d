package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.Law;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.words.Text;

/**
 * The models of a situation, one for each mode of its sources, and whether their bounds may be claimed.
 *
 * @param searched the models that can be searched
 * @param doubts   why no bound is claimed, in sentences; empty where bounds hold
 * @param isPulsed whether something is switched at a duty
 */
record Models(List<TargetSearch.Model> searched, List<Text> doubts, boolean isPulsed) {
    /** A transfer resistance below this counts as negative, ohm. */
    private static final double NEGATIVE_OHMS = -1e-9;

    /** Makes the models of a closed network. */
    static Models of(ClosedNetwork closed, Blocks blocks, BooleanSupplier cancelled) {
        List<Text> doubts = new ArrayList<>();
        boolean pulsed = blocks.takers().stream().anyMatch(Taker::isPulsed);
        List<TargetSearch.Model> searched = new ArrayList<>();
        Optional<List<SourceMode>> modes = SourceMode.of(closed.sources(), closed.sensed());
        if (modes.isEmpty() || closed.sensed().size() > 1) {
            return new Models(List.of(), List.of(SolveTexts.text("doubt.many-modes")), pulsed);
        }
        for (SourceMode mode : modes.get()) {
            Optional<LinearModel> model = LinearModel.of(closed, mode, blocks.takers(), cancelled);
            model.ifPresent(linear -> search(closed, mode, linear, blocks, pulsed, searched, doubts, cancelled));
        }
        doubt(closed, blocks, doubts);
        return new Models(searched, doubts.stream().distinct().toList(), pulsed);
    }

    private static void search(
            ClosedNetwork closed,
            SourceMode mode,
            LinearModel linear,
            Blocks blocks,
            boolean pulsed,
            List<TargetSearch.Model> searched,
            List<Text> doubts,
            BooleanSupplier cancelled) {
        boolean soft = pulsed && mode.pieces().contains(SourceMode.Piece.SENSED);
        LinearModel lowest = soft
                ? LinearModel.of(closed, mode.idle(), blocks.takers(), cancelled)
                        .orElse(linear)
                : linear;
        Box box = Box.of(linear, lowest, blocks.blockOf());
        if (!box.holds()) {
            doubts.add(SolveTexts.text("doubt.collapse"));
        }
        searched.add(new TargetSearch.Model(linear, linear.conditions(), box));
        if (!linear.isRadial()) {
            doubts.add(SolveTexts.text("doubt.several-ways"));
        }
        if (isCrossed(linear) || isCrossed(lowest)) {
            doubts.add(SolveTexts.text("doubt.raises"));
        }
    }

    private static void doubt(ClosedNetwork closed, Blocks blocks, List<Text> doubts) {
        if (closed.hasDiodes()) {
            doubts.add(SolveTexts.text("doubt.diode"));
        }
        for (Taker taker : blocks.takers()) {
            if (taker.branch().law() instanceof Law.PowerOf) {
                doubts.add(SolveTexts.text("doubt.converter", taker.id()));
            } else if (!taker.isExact() && !taker.isSeen()) {
                doubts.add(SolveTexts.text("doubt.seen", taker.id()));
            }
        }
    }

    /** Whether a current that depends on its voltage is raised by another that does. */
    private static boolean isCrossed(LinearModel model) {
        for (int row = 0; row < model.takers().size(); row++) {
            for (int column = 0; column < model.takers().size(); column++) {
                if (varies(model, row) && varies(model, column) && model.transferOhms()[row][column] < NEGATIVE_OHMS) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean varies(LinearModel model, int taker) {
        Taker each = model.takers().get(taker);
        return each.current().kind() != TakenCurrent.Kind.CONSTANT;
    }

    List<LinearModel> linear() {
        return Collections.unmodifiableList(
                searched.stream().map(TargetSearch.Model::linear).toList());
    }
}
