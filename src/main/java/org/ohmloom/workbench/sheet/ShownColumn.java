package org.ohmloom.workbench.sheet;

import java.util.Optional;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.units.Unit;

/**
 * A column in the units a person reads and types in. The column itself, its cells and its edits stay in their own unit.
 *
 * @param column the column
 * @param holds  what its text is in the row meant
 * @param units  the units
 */
record ShownColumn(Column<?> column, Column.Holds holds, ShownUnits units) {

    /** The unit of the column where it may be shown in another one. */
    private Optional<Unit> unit() {
        return ShownUnits.convertible(column.unit());
    }

    /** Title with unit: "Length (ft)". */
    String head() {
        String symbol = unit().map(units::of).map(Unit::symbol).orElse(column.unit());
        return symbol.isEmpty() ? column.title() : column.title() + " (" + symbol + ")";
    }

    /** A cell of the column as it is read and copied. */
    CellText cell(CellText cell) {
        String tip = units.text(cell.tip());
        if (!cell.isNumber()) {
            String text = text(cell.text());
            String exact = holds == Column.Holds.AS_IT_IS ? cell.exact() : start(cell.exact());
            return new CellText(text, exact, cell.number(), cell.tone(), tip);
        }
        double value = cell.number().orElseThrow();
        Unit own = unit().orElse(Unit.FRACTION);
        String text = units.digits(value, own);
        String exact = units.of(own) == own ? units.signed(cell.exact()) : units.exact(value, own);
        return new CellText(text, exact, cell.number(), cell.tone(), tip);
    }

    private String text(String text) {
        return switch (holds) {
            case AS_IT_IS -> column.numeric() ? units.text(text) : text;
            case QUANTITIES -> units.text(text);
            case SIZES -> units.label(text);
        };
    }

    /** What editing a cell starts from. */
    String start(String text) {
        return switch (holds) {
            case AS_IT_IS -> column.numeric() ? units.start(text, unit().orElse(Unit.FRACTION)) : text;
            case QUANTITIES, SIZES -> units.signed(text);
        };
    }

    /** What was typed into a cell, as the column takes it. */
    String typed(String text) {
        return switch (holds) {
            case AS_IT_IS -> column.numeric() ? units.typed(text, unit().orElse(Unit.FRACTION)) : text;
            case QUANTITIES -> units.pointed(text);
            case SIZES -> units.typedSize(text);
        };
    }
}
