package org.ohmloom.tables;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/** Reads the cells of one row by column name, in canonical units; every refusal names file, line and column. */
final class RowReader {
    private final TableSheet sheet;
    private final TableRow row;

    RowReader(TableSheet sheet, TableRow row) {
        this.sheet = sheet;
        this.row = row;
    }

    /** The cell's text, which must not be empty. */
    String text(String column) {
        return optionalText(column).orElseThrow(() -> unfit(column, Refusals.text("the cell is empty; write a value")));
    }

    /** The cell's text; empty when the cell is empty or there is no such column. */
    Optional<String> optionalText(String column) {
        int index = sheet.columnIndex(column);
        return index < 0 || row.cells().get(index).isEmpty()
                ? Optional.empty()
                : Optional.of(row.cells().get(index));
    }

    /** The cell's text, where "none" stands for nothing. */
    Optional<String> textOrNone(String column) {
        String text = text(column);
        return text.equals(Citation.NONE) ? Optional.empty() : Optional.of(text);
    }

    /** The cell's number as it stands, for columns whose unit changes from row to row. */
    double plainNumber(String column) {
        return parse(column, text(column));
    }

    /** The cell's number in the given unit, converted from the unit the head declares for the column. */
    double number(String column, String unit) {
        requireColumn(column);
        TableUnit target = TableUnit.of(unit).orElseThrow();
        TableColumn declared = sheet.columns().get(sheet.columnIndex(column));
        TableUnit from = TableUnit.of(declared.unit())
                .filter(known -> known.dimension().equals(target.dimension()))
                .orElseThrow(() -> unfit(
                        column,
                        Refusals.text(
                                "'%s' is not a unit for this column; declare one of %s in '# units'",
                                declared.unit(), TableUnit.choices(target.dimension()))));
        return from.convert(parse(column, text(column)), target);
    }

    /** The cell's number in the given unit, more than zero. */
    double positive(String column, String unit) {
        double number = number(column, unit);
        if (number <= 0) {
            throw unfit(column, Refusals.text("'%s' is not more than zero; write a positive number", text(column)));
        }
        return number;
    }

    /** The cell's number in the given unit, more than zero; empty when the cell is empty or there is no such column. */
    OptionalDouble optionalPositive(String column, String unit) {
        return optionalText(column).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(positive(column, unit));
    }

    /** The cell as a conductor size; the column's unit, AWG or mm2, is added where the head declares one. */
    Gauge gauge(String column) {
        String text = text(column);
        String unit = sheet.columns().get(sheet.columnIndex(column)).unit();
        try {
            return Gauge.parse(unit.isEmpty() ? text : text + " " + unit);
        } catch (IllegalArgumentException e) {
            throw unfit(
                    column,
                    Refusals.text(
                            "'%s' is not a conductor size; write one such as 14 AWG or 2.5 mm2, or the number alone with the unit in '# units'",
                            text));
        }
    }

    /** A whole number of at least one. */
    int count(String column) {
        double number = number(column, "1");
        if (number < 1 || number != Math.rint(number) || number > Integer.MAX_VALUE) {
            throw unfit(column, Refusals.text("'%s' is not a count; write a whole number of 1 or more", text(column)));
        }
        return (int) number;
    }

    /**
     * Where a cell comes from: the row's own document, edition and clause where the file has such columns and cells,
     * else the head's; founded no better than the row and the column.
     */
    Citation citation(String rowText, String column) {
        requireColumn(column);
        return new Citation(
                optionalText("document").orElse(sheet.source()),
                optionalText("edition").orElse(sheet.edition()),
                optionalText("clause").orElse(sheet.table()),
                rowText,
                sheet.cellStatus(row, sheet.columnIndex(column)));
    }

    /** The row's line in its file, from 1. */
    int line() {
        return row.line();
    }

    /** Refuses a cell of this row. */
    TableFormatException unfit(String column, Text problem) {
        return new TableFormatException(sheet.fileName(), row.line(), column, problem);
    }

    private void requireColumn(String column) {
        if (sheet.columnIndex(column) < 0) {
            throw unfit(column, Refusals.text("there is no such column; add it to the header line and to every row"));
        }
    }

    private double parse(String column, String text) {
        double number;
        try {
            number = Double.parseDouble(text);
        } catch (NumberFormatException e) {
            number = Double.NaN;
        }
        if (!Double.isFinite(number) || !text.toLowerCase(Locale.ROOT).matches("[-+.0-9e]+")) {
            throw unfit(column, Refusals.text("'%s' is not a number; write a decimal number such as 12.5", text));
        }
        return number;
    }
}
