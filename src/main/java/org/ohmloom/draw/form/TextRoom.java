package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Text;

/** Finds places for texts: never on another text or a card, if it can be not on a bundle and not over the edge of a tile. */
final class TextRoom {

    private static final double CELL_MM = 50;
    private static final double AIR_MM = 0.8;

    private final Extent board;
    private final OneTile onOneTile;
    private final Map<Long, List<Extent>> taken = new HashMap<>();
    private final Map<Long, List<Extent>> hindered = new HashMap<>();

    /**
     * Room on a board.
     *
     * @param onOneTile whether a text is shown whole by a tile
     */
    TextRoom(Extent board, OneTile onOneTile) {
        this.board = board;
        this.onOneTile = onOneTile;
    }

    /** Nothing may be written here. */
    void take(Extent extent) {
        add(taken, extent);
    }

    /** Nothing should be written along here. */
    void hinder(List<Point> line, double widthMm) {
        double step = Math.max(2, widthMm / 2);
        double length = Way.lengthMm(line);
        for (double at = 0; at < length + step; at += step) {
            Point point = Way.along(line, Math.min(at, length));
            double half = widthMm / 2;
            add(hindered, new Extent(point.xMm(), point.yMm(), point.xMm(), point.yMm()).grown(half));
        }
    }

    /**
     * The first of some texts that can stand where it is; it takes its place. Best it lies on no bundle and on one tile with what it
     * names, then on one tile at least, then beside the bundles only, then anywhere free.
     *
     * @param named what the texts name, if that is in one place
     */
    Optional<Text> place(List<Text> candidates, Optional<Point> named) {
        for (int strictness = 0; strictness < 4; strictness++) {
            for (Text each : candidates) {
                Extent extent = each.bounds().grown(AIR_MM);
                boolean free = board.contains(extent)
                        && isFree(taken, extent)
                        && (strictness > 1 || onOneTile.shows(each.bounds(), strictness > 0 ? Optional.empty() : named))
                        && (strictness > 2 || isFree(hindered, extent))
                        && onOneTile.isPrinted(each.bounds());
                if (free) {
                    take(extent);
                    return Optional.of(each);
                }
            }
        }
        return Optional.empty();
    }

    private static void add(Map<Long, List<Extent>> cells, Extent extent) {
        for (long key : keys(extent)) {
            cells.computeIfAbsent(key, each -> new ArrayList<>()).add(extent);
        }
    }

    private static boolean isFree(Map<Long, List<Extent>> cells, Extent extent) {
        for (long key : keys(extent)) {
            for (Extent each : cells.getOrDefault(key, List.of())) {
                if (each.overlaps(extent)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static List<Long> keys(Extent extent) {
        List<Long> keys = new ArrayList<>();
        for (long x = cell(extent.leftMm()); x <= cell(extent.rightMm()); x++) {
            for (long y = cell(extent.topMm()); y <= cell(extent.bottomMm()); y++) {
                keys.add(x * 100_003L + y);
            }
        }
        return keys;
    }

    private static long cell(double mm) {
        return (long) Math.floor(mm / CELL_MM);
    }
}
