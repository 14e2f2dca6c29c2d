package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ohmloom.draw.Extent;

/**
 * The pieces of one board where they lie on it, its upper left corner at 0, 0.
 *
 * @param pieces   the pieces
 * @param laid     how each is laid, in the same order
 * @param widthMm  width the board needs, mm
 * @param heightMm height it needs, mm
 */
record FormPlan(List<FormPiece> pieces, List<Laid> laid, double widthMm, double heightMm) {

    /** Room between the outermost thing and the side of the board, mm. */
    static final double MARGIN_MM = 20;

    private static final double BETWEEN_MM = 30;
    private static final List<Double> SHARES = List.of(0.9, 0.8, 0.7, 0.6, 0.5);

    FormPlan {
        pieces = List.copyOf(pieces);
        laid = List.copyOf(laid);
    }

    /**
     * Pieces laid one by one and put on shelves, the highest first, no wider than the board if they can be; when several are too high
     * together, each is laid again on less.
     */
    static FormPlan of(List<FormPiece> pieces, double boardWidthMm, double boardHeightMm) {
        double wide = boardWidthMm - 2 * MARGIN_MM;
        double high = boardHeightMm - 2 * MARGIN_MM;
        FormPlan best = laid(pieces, wide, high);
        for (double share : SHARES) {
            if (pieces.size() < 2 || best.heightMm() <= boardHeightMm) {
                break;
            }
            FormPlan other = laid(pieces, wide, high * share);
            boolean smaller =
                    other.heightMm() < best.heightMm() && other.widthMm() <= Math.max(best.widthMm(), boardWidthMm);
            best = smaller ? other : best;
        }
        return best;
    }

    /** The same pieces laid otherwise on the same board. */
    FormPlan withLaid(List<Laid> otherwise) {
        return new FormPlan(pieces, otherwise, widthMm, heightMm);
    }

    private static FormPlan laid(List<FormPiece> pieces, double wide, double high) {
        List<FormPiece> sorted = new ArrayList<>();
        List<Laid> all = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        List<Laid> laid = pieces.stream()
                .map(piece -> PieceLaying.lay(piece.tree(), wide, high))
                .toList();
        for (int k = 0; k < laid.size(); k++) {
            order.add(k);
        }
        order.sort(Comparator.comparingDouble(k -> -laid.get(k).bounds().heightMm()));
        double widest =
                laid.stream().mapToDouble(each -> each.bounds().widthMm()).max().orElse(0);
        double room = Math.max(wide, widest);
        double x = 0;
        double y = 0;
        double shelf = 0;
        double right = 0;
        for (int k : order) {
            Extent bounds = laid.get(k).bounds();
            if (x > 0 && x + bounds.widthMm() > room) {
                x = 0;
                y += shelf + BETWEEN_MM;
                shelf = 0;
            }
            sorted.add(pieces.get(k));
            all.add(laid.get(k).moved(MARGIN_MM + x - bounds.leftMm(), MARGIN_MM + y - bounds.topMm()));
            right = Math.max(right, x + bounds.widthMm());
            shelf = Math.max(shelf, bounds.heightMm());
            x += bounds.widthMm() + BETWEEN_MM;
        }
        return new FormPlan(sorted, all, right + 2 * MARGIN_MM, y + shelf + 2 * MARGIN_MM);
    }
}
