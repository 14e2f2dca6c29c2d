package org.ohmloom.solve;

import java.util.Arrays;

/**
 * Decides which of the stiff sources with current limits regulate, and which stand at a limit.
 *
 * <p>The characteristic of such a source is a vertical line between two horizontal ones: at next to no internal resistance
 * the whole way from no current to full current takes less than a trillionth of a volt, and no search along the voltage hits
 * it. So each of them is held at one piece: a voltage, or a current. After the network has settled the pieces are checked:
 *
 * <ul>
 *   <li>a source that regulates must give between its least and its most current;
 *   <li>at its most current its voltage must not be above what its law asks, at its least not below.
 * </ul>
 *
 * <p>Those that fail change their piece and the network settles again; all at once at first, then one at a time, which
 * cannot go round in circles (Murty, Opsearch 11, 1974). The first guess comes from the same network with {@link
 * #SOFT_OHMS} in each of them.
 */
final class Regulation {

    /** Sources below this internal resistance are stiff, ohm. */
    static final double STIFF_OHMS = 1e-3;

    /** Resistance of stiff sources in the two stages of the search, ohm. */
    static final double SOFT_OHMS = 1e-2;

    /** A regulating source may be so far beyond its limit: an idle one before a blocking diode takes what that leaks. */
    private static final double SLACK_AMPS = 1e-13;

    private static final double SLACK_RATIO = 1e-13;
    private static final int ALL_AT_ONCE_ROUNDS = 8;
    private static final int MOST_ROUNDS = 200;

    private enum Piece {
        REGULATES,
        AT_MOST,
        AT_LEAST
    }

    private final Circuit circuit;
    private final Newton newton;
    private Piece[] pieces;

    Regulation(Circuit circuit, Newton newton) {
        this.circuit = circuit;
        this.newton = newton;
        pieces = new Piece[circuit.branches().size()];
        Arrays.fill(pieces, Piece.REGULATES);
    }

    /** Begun with the pieces another has found on the same circuit. */
    Regulation(Circuit circuit, Newton newton, Regulation like) {
        this.circuit = circuit;
        this.newton = newton;
        pieces = like.pieces.clone();
    }

    /** Takes every source to regulate again. */
    void forget() {
        Arrays.fill(pieces, Piece.REGULATES);
    }

    /** The characteristics with stiff sources softened. */
    static Characteristic[] softened(Characteristic[] laws) {
        Characteristic[] soft = laws.clone();
        Arrays.setAll(soft, each -> isStiff(laws[each]) ? ((LimitedSource) laws[each]).soft(SOFT_OHMS) : laws[each]);
        return soft;
    }

    /** Takes the pieces the softened sources stand at as the first guess. */
    void guess(Characteristic[] softened, PreciseRow volts) {
        for (int branch = 0; branch < pieces.length; branch++) {
            if (softened[branch] instanceof LimitedSource source) {
                double amps = source.amps(circuit.along(branch, volts)).value();
                pieces[branch] = amps >= source.maximumAmps()
                        ? Piece.AT_MOST
                        : amps <= source.minimumAmps() ? Piece.AT_LEAST : Piece.REGULATES;
            }
        }
    }

    /** Settles the network with stiff sources at the right pieces. */
    Newton.Result settle(Characteristic[] laws, PreciseRow start) {
        Piece[] before = pieces.clone();
        Newton.Result result = newton.settle(held(laws), start);
        for (int round = 0; round < MOST_ROUNDS && result.end() == Newton.End.BALANCED; round++) {
            if (!change(laws, result.volts(), round < ALL_AT_ONCE_ROUNDS)) {
                return result;
            }
            result = newton.settle(held(laws), result.volts());
        }
        pieces = before;
        return result.end() == Newton.End.BALANCED
                ? new Newton.Result(Newton.End.LOST, result.volts(), result.ratio())
                : result;
    }

    /** The characteristics with each stiff source held at its piece. */
    Characteristic[] held(Characteristic[] laws) {
        Characteristic[] held = laws.clone();
        for (int branch = 0; branch < laws.length; branch++) {
            if (isStiff(laws[branch])) {
                LimitedSource source = (LimitedSource) laws[branch];
                held[branch] = switch (pieces[branch]) {
                    case REGULATES -> source.withoutLimits();
                    case AT_MOST -> new ForcedCurrent(source.maximumAmps());
                    case AT_LEAST -> new ForcedCurrent(source.minimumAmps());};
            }
        }
        return held;
    }

    private boolean change(Characteristic[] laws, PreciseRow volts, boolean allAtOnce) {
        boolean changed = false;
        for (int branch = 0; branch < laws.length && (allAtOnce || !changed); branch++) {
            if (isStiff(laws[branch])) {
                Piece right = right((LimitedSource) laws[branch], pieces[branch], circuit.along(branch, volts));
                changed |= right != pieces[branch];
                pieces[branch] = right;
            }
        }
        return changed;
    }

    private static Piece right(LimitedSource source, Piece piece, Precise volts) {
        double lawAmps = source.withoutLimits().amps(volts).value();
        if (piece == Piece.REGULATES) {
            return lawAmps > source.maximumAmps() * (1 + SLACK_RATIO) + SLACK_AMPS
                    ? Piece.AT_MOST
                    : lawAmps < source.minimumAmps() - SLACK_AMPS ? Piece.AT_LEAST : Piece.REGULATES;
        }
        boolean stays = piece == Piece.AT_MOST ? lawAmps >= source.maximumAmps() : lawAmps <= source.minimumAmps();
        return stays ? piece : Piece.REGULATES;
    }

    private static boolean isStiff(Characteristic law) {
        return law instanceof LimitedSource source && source.canGoFlat() && source.leastOhms() < STIFF_OHMS;
    }
}
