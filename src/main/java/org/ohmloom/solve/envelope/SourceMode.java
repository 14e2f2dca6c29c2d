package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.Law;

/**
 * Which of its pieces each source stands at: its straight line of voltage over current, its most current, or its least.
 *
 * @param pieces piece of each source, in the order of the sources
 */
record SourceMode(List<Piece> pieces) {
    /** Most modes that are looked at. */
    static final int MOST = 27;

    /** A piece of the characteristic of a source. */
    enum Piece {
        LINE,
        MOST,
        LEAST
    }

    SourceMode {
        pieces = List.copyOf(pieces);
    }

    /** Every mode of some sources, all on their lines first; empty when there are more than {@link #MOST}. */
    static Optional<List<SourceMode>> of(List<Branch> sources) {
        List<List<Piece>> modes = new ArrayList<>(List.of(List.of()));
        for (Branch source : sources) {
            List<List<Piece>> longer = new ArrayList<>();
            for (Piece piece : piecesOf((Law.VoltageSource) source.law())) {
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

    private static List<Piece> piecesOf(Law.VoltageSource source) {
        List<Piece> pieces = new ArrayList<>(List.of(Piece.LINE));
        if (Double.isFinite(source.maximumAmps())) {
            pieces.add(Piece.MOST);
        }
        if (Double.isFinite(source.minimumAmps())) {
            pieces.add(Piece.LEAST);
        }
        return pieces;
    }

    /** All sources on their lines. */
    static SourceMode lines(int sources) {
        return new SourceMode(Collections.nCopies(sources, Piece.LINE));
    }
}
