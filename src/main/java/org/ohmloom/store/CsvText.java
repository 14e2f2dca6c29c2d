package org.ohmloom.store;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;
import org.ohmloom.units.Require;

/**
 * Writes comma-separated text by RFC 4180: a head line, lines ended by CR LF, quotes only where they are needed, a decimal
 * point, UTF-8 when it becomes a file.
 * <p>A spreadsheet runs a cell that begins with {@code =}, {@code +}, {@code -} or {@code @} as a formula, and drops a tab
 * or a line end before looking. Such a text gets an apostrophe in front, which spreadsheets take as "this is text"; a
 * number, and a lone sign such as the name of a battery terminal, is no formula and stays as it is.
 */
public final class CsvText {
    private static final Pattern FORMULA =
            Pattern.compile("[=+\\-@\\t\\r\\n\\uFF1D\\uFF0B\\uFF0D\\uFF20].*", Pattern.DOTALL);
    private static final Pattern HARMLESS = Pattern.compile("[+-]|[+-]?(\\d+([.,]\\d+)?|[.,]\\d+)([eE][+-]?\\d+)?");
    private static final CSVFormat RFC_4180 =
            CSVFormat.RFC4180.builder().setQuoteMode(QuoteMode.MINIMAL).get();

    private final int columns;
    private final List<List<String>> rows = new ArrayList<>();

    /** A text with these column heads, at least one. */
    public CsvText(String... heads) {
        Require.positive(heads.length, "count of columns");
        columns = heads.length;
        row((Object[]) heads);
    }

    /**
     * Adds a row: texts, numbers, true or false; an empty optional is an empty cell, as is a number that is not finite.
     *
     * @throws IllegalArgumentException when there are not as many cells as heads
     */
    public CsvText row(Object... cells) {
        Require.that(cells.length == columns, "a row of %s cells under %s heads", cells.length, columns);
        List<String> texts = new ArrayList<>();
        for (Object cell : cells) {
            texts.add(cell(cell));
        }
        rows.add(texts);
        return this;
    }

    /** The whole text. */
    public String text() {
        StringWriter out = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(out, RFC_4180)) {
            printer.printRecords(rows);
        } catch (IOException impossible) {
            throw new IllegalStateException("a text in memory refused to be written", impossible);
        }
        return out.toString();
    }

    private static String cell(Object cell) {
        if (cell instanceof Optional<?> optional) {
            return optional.isPresent() ? cell(optional.get()) : "";
        }
        if (cell instanceof OptionalDouble optional) {
            return number(optional.orElse(Double.NaN));
        }
        if (cell instanceof Double || cell instanceof Float) {
            return number(((Number) cell).doubleValue());
        }
        return guarded(cell.toString());
    }

    private static String number(double value) {
        return Double.isFinite(value) ? JsonNumbers.text(JsonNumbers.node(value)) : "";
    }

    private static String guarded(String text) {
        boolean formula =
                FORMULA.matcher(text).matches() && !HARMLESS.matcher(text).matches();
        return formula ? "'" + text : text;
    }
}
