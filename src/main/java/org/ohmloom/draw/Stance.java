package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.WireId;

/** A place in a column of a circuit: a card with the wires at its sides, or a wire that only passes. */
final class Stance {

    static final double PORT_MM = 4.2;

    private static final double PASSING_MM = 3.2;
    private static final double HEAD_MM = 10;
    private static final double BAR_HEAD_MM = 5;

    /**
     * Where a wire meets a side.
     *
     * @param wire   the wire
     * @param second whether it is the second end of a wire whose first end is here too
     * @param label  the cavity or terminal
     */
    record Port(WireId wire, boolean second, String label) {}

    private final Optional<Card> card;
    private final List<Port> left = new ArrayList<>();
    private final List<Port> right = new ArrayList<>();
    private double topMm;

    Stance(Optional<Card> card) {
        this.card = card;
    }

    Optional<Card> card() {
        return card;
    }

    List<Port> ports(boolean onLeft) {
        return onLeft ? left : right;
    }

    double topMm() {
        return topMm;
    }

    void moveTo(double newTopMm) {
        topMm = newTopMm;
    }

    /** Room above the first port for what is written there, mm. */
    double headMm() {
        return card.map(each -> each.kind().symbolMm() > 0
                        ? BAR_HEAD_MM + each.lines().size() * CardMaker.LINE_MM
                        : HEAD_MM + extraLinesMm(each))
                .orElse(0.0);
    }

    private static double extraLinesMm(Card card) {
        return Math.max(0, card.lines().size() - 1) * CardMaker.LINE_MM;
    }

    double heightMm() {
        return card.isEmpty() ? PASSING_MM : headMm() + Math.max(1, Math.max(left.size(), right.size())) * PORT_MM;
    }

    /** Height of a port below the top of the stance, mm. */
    double offsetMm(WireId wire, boolean second, boolean onLeft) {
        if (card.isEmpty()) {
            return PASSING_MM / 2;
        }
        List<Port> ports = ports(onLeft);
        for (int k = 0; k < ports.size(); k++) {
            if (ports.get(k).wire().equals(wire) && ports.get(k).second() == second) {
                return headMm() + (k + 0.5) * PORT_MM;
            }
        }
        return headMm();
    }

    double yMm(WireId wire, boolean second, boolean onLeft) {
        return topMm + offsetMm(wire, second, onLeft);
    }
}
