package org.ohmloom.model;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** A table of two quantities, both rising or falling from row to row, read either way: straight between its rows and beyond its ends. */
final class TableLine {

    private TableLine() {}

    /**
     * One quantity where the other one is known.
     *
     * @param rows   at least two
     * @param known  the quantity that is known, of a row
     * @param sought the other one, of a row
     * @param at     the known quantity
     */
    static <T> double at(List<T> rows, ToDoubleFunction<T> known, ToDoubleFunction<T> sought, double at) {
        double turn = known.applyAsDouble(rows.get(1)) - known.applyAsDouble(rows.get(0));
        int row = 1;
        while (row < rows.size() - 1 && (at - known.applyAsDouble(rows.get(row))) * turn > 0) {
            row++;
        }
        T from = rows.get(row - 1);
        T to = rows.get(row);
        double start = known.applyAsDouble(from);
        double first = sought.applyAsDouble(from);
        return first + (at - start) / (known.applyAsDouble(to) - start) * (sought.applyAsDouble(to) - first);
    }
}
