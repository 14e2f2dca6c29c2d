package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/** The board with what already lies on it, in cells so that only neighbours are looked at. */
final class Room {

    /** Owner of a card: no run may pass it. */
    static final int CARD = -1;

    private static final double CELL_MM = 60;
    private static final double LONGEST_MM = 240;
    private static final int FIRST_NODE = -2;

    private final Extent board;
    private final int across;
    private final int down;
    private final List<List<Capsule>> cells = new ArrayList<>();
    private final List<Extent> cards = new ArrayList<>();
    private long looks;

    /** An empty board; nothing may leave the extent. */
    Room(Extent board) {
        this.board = board;
        this.across = Math.max(1, (int) Math.ceil(board.widthMm() / CELL_MM));
        this.down = Math.max(1, (int) Math.ceil(board.heightMm() / CELL_MM));
        for (int k = 0; k < across * down; k++) {
            cells.add(new ArrayList<>(0));
        }
    }

    Extent board() {
        return board;
    }

    /** Owner of the room kept free around a node for the runs that are still to leave it. */
    static int keptFor(int node) {
        return FIRST_NODE - node;
    }

    /** How often a place was looked at: a measure of the work done. */
    long looks() {
        return looks;
    }

    /** Counts other work as if places had been looked at. */
    void worked(int asLooks) {
        looks += asLooks;
    }

    void add(Capsule capsule) {
        int pieces = Math.max(1, (int) Math.ceil(capsule.a().distanceMm(capsule.b()) / LONGEST_MM));
        for (int k = 0; k < pieces; k++) {
            Point a = capsule.a().towards(capsule.b(), (double) k / pieces);
            Point b = capsule.a().towards(capsule.b(), (double) (k + 1) / pieces);
            Capsule piece = new Capsule(a, b, capsule.reachMm(), capsule.owner());
            forCells(piece, cell -> {
                cell.add(piece);
                return true;
            });
        }
    }

    /** Adds a card: no run may pass it, and no other card may lie on it. */
    void addCard(Extent card) {
        cards.add(card);
        Capsule.of(card, CARD).forEach(this::add);
    }

    /** Whether a card would lie on another, corners and all, which the room around its rows leaves out. */
    boolean isOnCard(Extent card) {
        return cards.stream().anyMatch(card::overlaps);
    }

    /** Frees the room kept around a node. */
    void release(int owner) {
        cells.forEach(cell -> cell.removeIf(each -> each.owner() == owner));
    }

    /** Whether a stretch with its room lies on the board and meets nothing but what is to be ignored. */
    boolean isFree(Capsule capsule, IntPredicate ignored) {
        looks++;
        double reach = capsule.reachMm();
        Extent inner = board.grown(-reach);
        if (!inner.contains(capsule.a()) || !inner.contains(capsule.b())) {
            return false;
        }
        return forCells(capsule, cell -> {
            for (Capsule each : cell) {
                if (each.meets(capsule) && !ignored.test(each.owner())) {
                    return false;
                }
            }
            return true;
        });
    }

    private interface CellVisit {
        boolean visit(List<Capsule> cell);
    }

    /** Visits the cells a stretch touches until one visit says no. */
    private boolean forCells(Capsule capsule, CellVisit visit) {
        double reach = capsule.reachMm();
        Extent bounds = Extent.around(List.of(capsule.a(), capsule.b())).grown(reach);
        int left = column(bounds.leftMm());
        int right = column(bounds.rightMm());
        int top = row(bounds.topMm());
        int bottom = row(bounds.bottomMm());
        for (int y = top; y <= bottom; y++) {
            for (int x = left; x <= right; x++) {
                if (!visit.visit(cells.get(y * across + x))) {
                    return false;
                }
            }
        }
        return true;
    }

    private int column(double xMm) {
        return Math.max(0, Math.min(across - 1, (int) Math.floor((xMm - board.leftMm()) / CELL_MM)));
    }

    private int row(double yMm) {
        return Math.max(0, Math.min(down - 1, (int) Math.floor((yMm - board.topMm()) / CELL_MM)));
    }
}
