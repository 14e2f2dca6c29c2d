package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Placement;

/** A narrow table that goes on beside itself: down the first column, then down the next, as a newspaper does. */
final class BesideTable {

    /** So many rows of a column stand together at least. */
    private static final int TOGETHER_ROWS = 3;

    private final TableSetting setting;
    private final Flow flow;
    private final Runnable continued;

    /**
     * A table on pages.
     *
     * @param continued says on a new page what the table on it belongs to
     */
    BesideTable(TableSetting setting, Flow flow, Runnable continued) {
        this.setting = setting;
        this.flow = flow;
        this.continued = continued;
    }

    /**
     * A piece of the table, and whether the next must follow in the same column.
     *
     * @param piece the piece
     * @param keeps whether it is the name of a group
     */
    private record Entry(Piece piece, boolean keeps) {}

    private static List<Entry> entries(Block.Table table, List<List<Piece>> rows) {
        List<Entry> entries = new ArrayList<>();
        for (int k = 0; k < rows.size(); k++) {
            boolean keeps = table.rows().get(k).kind() == Row.Kind.GROUP;
            rows.get(k).forEach(piece -> entries.add(new Entry(piece, keeps)));
        }
        return entries;
    }

    /** The whole table as one piece, however high. */
    Piece whole(Block.Table table, List<List<Piece>> rows) {
        return piece(columns(entries(table, rows), Double.MAX_VALUE));
    }

    /** Width of the table when it stands whole, mm. */
    double widthMm(List<List<Piece>> rows) {
        return most(rows.stream().mapToInt(List::size).sum()) * setting.stepMm() - TableSetting.BESIDE_MM;
    }

    /** How many columns so many entries go into. */
    private int most(int entries) {
        return Math.max(1, Math.min(setting.across(), entries / TOGETHER_ROWS));
    }

    /** Puts the rows, as many pages as it takes; on the last one all columns are as high as each other. */
    void put(Block.Table table, List<List<Piece>> rows) {
        List<Entry> entries = entries(table, rows);
        int from = 0;
        while (from < entries.size()) {
            double first = setting.head().heightMm()
                    + heightMm(entries.subList(from, Math.min(entries.size(), from + TOGETHER_ROWS)));
            if (flow.isFull(first)) {
                flow.turn();
                continued.run();
            }
            double room = flow.pageMm() - flow.usedMm() - setting.head().heightMm();
            List<List<Entry>> columns = columns(entries.subList(from, entries.size()), room);
            flow.put(piece(columns));
            from += columns.stream().mapToInt(List::size).sum();
        }
    }

    private static double heightMm(List<Entry> entries) {
        return entries.stream().mapToDouble(entry -> entry.piece().heightMm()).sum();
    }

    /** The columns of one page: no higher than the room, and no higher than all that is left needs. */
    private List<List<Entry>> columns(List<Entry> left, double roomMm) {
        int count = most(left.size());
        double high = 0;
        for (int k = 0; k < left.size() && high <= roomMm; k++) {
            high += left.get(k).piece().heightMm();
            if (high * count < heightMm(left) - 1e-9 || high > roomMm) {
                continue;
            }
            List<List<Entry>> even = filled(left, count, high);
            if (even.stream().mapToInt(List::size).sum() == left.size()) {
                return even;
            }
        }
        return filled(left, setting.across(), roomMm);
    }

    /** Columns filled one by one up to a height; at least one entry in the first. */
    private static List<List<Entry>> filled(List<Entry> entries, int count, double mostMm) {
        List<List<Entry>> columns = new ArrayList<>();
        int from = 0;
        for (int column = 0; column < count && from < entries.size(); column++) {
            double used = 0;
            int to = from;
            while (to < entries.size() && used + entries.get(to).piece().heightMm() <= mostMm + 1e-6) {
                used += entries.get(to).piece().heightMm();
                to++;
            }
            if (to < entries.size() && to - 1 > from && entries.get(to - 1).keeps()) {
                to--;
            }
            to = column == 0 ? Math.max(to, from + 1) : to;
            columns.add(entries.subList(from, to));
            from = to;
        }
        return columns;
    }

    private Piece piece(List<List<Entry>> columns) {
        List<Mark> marks = new ArrayList<>();
        List<Mention> mentions = new ArrayList<>();
        double high = 0;
        for (int k = 0; k < columns.size(); k++) {
            if (columns.get(k).isEmpty()) {
                continue;
            }
            double x = k * setting.stepMm();
            double y = 0;
            List<Piece> pieces = new ArrayList<>(List.of(setting.head()));
            columns.get(k).forEach(entry -> pieces.add(entry.piece()));
            for (Piece piece : pieces) {
                Placement place = Placement.moved(x, y);
                piece.marks().forEach(mark -> marks.add(mark.placed(place)));
                for (Mention mention : piece.mentions()) {
                    mentions.add(new Mention(0, mention.extent().moved(x, y), mention.name(), mention.home()));
                }
                y += piece.heightMm();
            }
            high = Math.max(high, y);
        }
        return new Piece(high, marks, mentions);
    }
}
