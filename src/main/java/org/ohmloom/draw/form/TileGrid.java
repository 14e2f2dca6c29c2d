package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Point;

/**
 * How a board is cut into tiles for a paper. Each tile shows its cell and half the overlap around it; the corners of the cell are its
 * registration marks, and those of neighbours are the same points of the board.
 *
 * @param sheetWidthMm  width of a sheet, mm
 * @param sheetHeightMm height of a sheet, mm
 * @param leftMm   left side of the first column on the board, mm
 * @param topMm    upper side of the first row, mm
 * @param columns  columns
 * @param rows     rows
 */
public record TileGrid(double sheetWidthMm, double sheetHeightMm, double leftMm, double topMm, int columns, int rows) {

    /** Strip shared by neighbours, mm. */
    static final double OVERLAP_MM = 12;

    /** Room beside the picture: what printers cannot reach, the scale bars and the names of neighbours, mm. */
    private static final double LEFT_MM = 15, RIGHT_MM = 10, TOP_MM = 10, FOOT_MM = 30;

    /** A single sheet is no smaller than the foot and the upright scale bar need, mm. */
    private static final double LEAST_WIDTH_MM = 210, LEAST_HEIGHT_MM = 180;

    /** Room for texts around what lies on the board, mm. */
    private static final double AROUND_MM = 10;

    private static final int SHIFTS = 16;

    /** So many grids of those with fewest cells that something lies in are looked at for tiles that may be left out. */
    private static final int LOOKED_AT = 24;

    /** Where the picture lies on the sheet. */
    Extent pictureOnSheet() {
        return new Extent(LEFT_MM, TOP_MM, sheetWidthMm() - RIGHT_MM, sheetHeightMm() - FOOT_MM);
    }

    double cellWidthMm() {
        return pictureOnSheet().widthMm() - OVERLAP_MM;
    }

    double cellHeightMm() {
        return pictureOnSheet().heightMm() - OVERLAP_MM;
    }

    /** A cell on the board. */
    Extent cell(int column, int row) {
        return Extent.at(leftMm + column * cellWidthMm(), topMm + row * cellHeightMm(), cellWidthMm(), cellHeightMm());
    }

    /** What a tile shows of the board. */
    Extent picture(int column, int row) {
        return cell(column, row).grown(OVERLAP_MM / 2);
    }

    /** Column and row of the tile that a point belongs to; one beside the grid for a point outside. */
    int[] tileAt(Point point) {
        return new int[] {
            (int) Math.floor((point.xMm() - leftMm) / cellWidthMm()),
            (int) Math.floor((point.yMm() - topMm) / cellHeightMm())
        };
    }

    /** Whether some tile shows all of a rectangle. */
    boolean shows(Extent extent) {
        int[] tile = tileAt(extent.centre());
        return tile[0] >= 0
                && tile[1] >= 0
                && tile[0] < columns
                && tile[1] < rows
                && picture(tile[0], tile[1]).contains(extent);
    }

    /** All that the tiles show together. */
    Extent covered() {
        return picture(0, 0).with(picture(columns - 1, rows - 1));
    }

    /** Name of a tile: rows by letters, columns by numbers. */
    static String name(int column, int row) {
        return rowName(row) + (column + 1);
    }

    /** Letters of a row: A to Z, then AA. */
    static String rowName(int row) {
        StringBuilder letters = new StringBuilder();
        for (int left = row; left >= 0; left = left / 26 - 1) {
            letters.insert(0, (char) ('A' + left % 26));
        }
        return letters.toString();
    }

    /** The cells that a thing lies in, row by row. */
    List<int[]> cells(Extent thing) {
        List<int[]> cells = new ArrayList<>();
        cells(thing, cell -> cells.add(new int[] {cell % columns, cell / columns}));
        return cells;
    }

    /** The cells that something lies in, row by row; those left out of which the overlap of others shows all there is. */
    List<int[]> used(Collection<Extent> things) {
        Map<Integer, List<Extent>> byCell = new TreeMap<>();
        for (Extent each : things) {
            cells(each, cell -> byCell.computeIfAbsent(cell, key -> new ArrayList<>())
                    .add(each));
        }
        for (int cell : List.copyOf(byCell.keySet())) {
            if (byCell.get(cell).stream().allMatch(each -> isShownBeside(each, cell, byCell.keySet()))) {
                byCell.remove(cell);
            }
        }
        return byCell.keySet().stream()
                .map(cell -> new int[] {cell % columns, cell / columns})
                .toList();
    }

    /** Whether a neighbour of a cell shows all of a thing. */
    private boolean isShownBeside(Extent thing, int cell, Set<Integer> used) {
        int column = cell % columns;
        int row = cell / columns;
        for (int y = Math.max(0, row - 1); y <= Math.min(rows - 1, row + 1); y++) {
            for (int x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
                int other = y * columns + x;
                if (other != cell && used.contains(other) && picture(x, y).contains(thing)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int clamp(double cell, int count) {
        return Math.max(0, Math.min(count - 1, (int) Math.floor(cell)));
    }

    /**
     * The grid that takes the fewest sheets for what lies on a board: the paper both ways, moved in steps. Of grids with as many
     * sheets the one that cuts fewest cards.
     *
     * @param things what lies there, in small rectangles
     * @param cards  the cards among it
     */
    static TileGrid best(Paper paper, Collection<Extent> things, Collection<Extent> cards) {
        Extent all = around(things);
        List<Weighed> grids = new ArrayList<>();
        for (boolean turned : new boolean[] {false, true}) {
            double sheetWidth = turned ? paper.heightMm() : paper.widthMm();
            double sheetHeight = turned ? paper.widthMm() : paper.heightMm();
            TileGrid one = new TileGrid(sheetWidth, sheetHeight, 0, 0, 1, 1);
            double w = one.cellWidthMm();
            double h = one.cellHeightMm();
            for (int kx = 0; kx < SHIFTS; kx++) {
                for (int ky = 0; ky < SHIFTS; ky++) {
                    double left = all.leftMm() - spare(all.widthMm(), w) * kx / (SHIFTS - 1);
                    double top = all.topMm() - spare(all.heightMm(), h) * ky / (SHIFTS - 1);
                    int columns = count(all.rightMm() - left, w);
                    int rows = count(all.bottomMm() - top, h);
                    TileGrid grid = new TileGrid(sheetWidth, sheetHeight, left, top, columns, rows);
                    long cut = cards.stream().filter(card -> !grid.shows(card)).count();
                    grids.add(new Weighed(grid, grid.touched(things), cut));
                }
            }
        }
        return grids.stream()
                .sorted(Comparator.comparingLong(Weighed::weight))
                .limit(LOOKED_AT)
                .map(each -> new Weighed(each.grid(), each.grid().used(things).size(), each.cut()))
                .min(Comparator.comparingLong(Weighed::weight))
                .orElseThrow()
                .grid();
    }

    /**
     * A grid that may serve.
     *
     * @param sheets how many of its tiles are printed
     * @param cut    how many cards it cuts
     */
    private record Weighed(TileGrid grid, int sheets, long cut) {
        long weight() {
            return sheets * 10_000L + cut;
        }
    }

    /** How many cells something lies in. */
    private int touched(Collection<Extent> things) {
        BitSet touched = new BitSet(columns * rows);
        things.forEach(each -> cells(each, touched::set));
        return touched.cardinality();
    }

    private void cells(Extent thing, IntConsumer each) {
        int left = clamp((thing.leftMm() - leftMm) / cellWidthMm(), columns);
        int right = clamp((thing.rightMm() - leftMm) / cellWidthMm(), columns);
        int top = clamp((thing.topMm() - topMm) / cellHeightMm(), rows);
        int bottom = clamp((thing.bottomMm() - topMm) / cellHeightMm(), rows);
        for (int row = top; row <= bottom; row++) {
            for (int column = left; column <= right; column++) {
                each.accept(row * columns + column);
            }
        }
    }

    /** One sheet as large as it must be. */
    static TileGrid whole(Collection<Extent> things) {
        Extent all = around(things).grown(OVERLAP_MM);
        double wide = Math.max(LEAST_WIDTH_MM, all.widthMm() + OVERLAP_MM + LEFT_MM + RIGHT_MM);
        double high = Math.max(LEAST_HEIGHT_MM, all.heightMm() + OVERLAP_MM + TOP_MM + FOOT_MM);
        return new TileGrid(wide, high, all.leftMm(), all.topMm(), 1, 1);
    }

    private static Extent around(Collection<Extent> things) {
        return Extent.union(things).orElse(new Extent(0, 0, 100, 100)).grown(AROUND_MM);
    }

    private static int count(double lengthMm, double cellMm) {
        return Math.max(1, (int) Math.ceil(lengthMm / cellMm - 1e-9));
    }

    private static double spare(double lengthMm, double cellMm) {
        return count(lengthMm, cellMm) * cellMm - lengthMm;
    }
}
