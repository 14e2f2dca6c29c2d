package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;

/**
 * Which of its pieces each source stands at: its straight line of voltage over current, another line while it is charged,
 * its most current, or its least; a source with a sense point holds the voltage there instead of its line.
 *
 * @param pieces piece of each source, in the order of the sources
 */
record SourceMode(List<Piece> pieces) {
    /** Most modes that are looked at. */
    static final int MOST = 27;

    /** A piece of the characteristic of a source. */
    enum Piece {
        LINE,
        CHARGED,
        SENSED,
        MOST,
        LEAST
    }

    SourceMode {
        pieces = List.copyOf(pieces);
    }

    /** Every mode of some sources, first all on their lines or holding their sense points; empty when there are more than {@link #MOST}. */
    static Optional<List<SourceMode>> of(List<Branch> sources, Set<BranchId> sensed) {
        List<List<Piece>> modes = new ArrayList<>(List.of(List.of()));
        for (Branch source : sources) {
            List<List<Piece>> longer = new ArrayList<>();
            for (Piece piece : piecesOf((Law.VoltageSource) source.law(), sensed.contains(source.id()))) {
                for (List<Piece> mode : modes) {
                    List<Piece> next = new ArrayList<>(mode);
                    next.add(piece);
                    longer.add(next);
                }
            }
            modes = longer;
            if (modes.size() > MOST) {
                return Optional.empty();
            }
        }
        return Optional.of(modes.stream().map(SourceMode::new).toList());
    }

    private static List<Piece> piecesOf(Law.VoltageSource source, boolean sensed) {
        List<Piece> pieces = new ArrayList<>(List.of(sensed ? Piece.SENSED : Piece.LINE));
        if (hasChargeLine(source)) {
            pieces.add(Piece.CHARGED);
        }
        if (Double.isFinite(source.maximumAmps())) {
            pieces.add(Piece.MOST);
        }
        if (Double.isFinite(source.minimumAmps())) {
            pieces.add(Piece.LEAST);
        }
        return pieces;
    }

    /** Whether a source takes current through another resistance than it gives it through. */
    static boolean hasChargeLine(Law.VoltageSource source) {
        return source.minimumAmps() < 0 && source.chargeOhms() != source.ohms();
    }

    /** This mode with a source at its least current instead of holding its sense point. */
    SourceMode idle() {
        return new SourceMode(pieces.stream()
                .map(piece -> piece == Piece.SENSED ? Piece.LEAST : piece)
                .toList());
    }
}
