package org.ohmloom.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.words.Refusals;

/** Reads the head and the rows of one sheet for a certain use; every refusal names file, line and column. */
final class SheetReader {
    private final TableSheet sheet;

    SheetReader(TableSheet sheet) {
        this.sheet = sheet;
    }

    TableSheet sheet() {
        return sheet;
    }

    /** Reads each row, in file order. */
    <T> List<T> rows(Function<RowReader, T> reader) {
        List<T> rows = new ArrayList<>();
        for (TableRow row : sheet.rows()) {
            rows.add(reader.apply(new RowReader(sheet, row)));
        }
        return rows;
    }

    /** A head text this kind of table must have. */
    String headText(String key) {
        String text = sheet.head().get(key);
        if (text == null) {
            throw new TableFormatException(
                    sheet.fileName(),
                    1,
                    "",
                    Refusals.text("the head has no %s; add a line such as '# %s: ...'", key, key));
        }
        return text;
    }

    /** A head number this kind of table must have. */
    double headNumber(String key) {
        String text = headText(key);
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new TableFormatException(
                    sheet.fileName(),
                    1,
                    "",
                    Refusals.text("the head's %s '%s' is not a number; write a number", key, text));
        }
    }

    /** The columns named by a prefix, a temperature and C, as in "amps105C", by temperature in Celsius. */
    SortedMap<Double, String> temperatureColumns(String prefix) {
        Pattern pattern = Pattern.compile(Pattern.quote(prefix) + "(\\d+)C");
        SortedMap<Double, String> columns = new TreeMap<>();
        for (TableColumn column : sheet.columns()) {
            Matcher matcher = pattern.matcher(column.name());
            if (matcher.matches()) {
                columns.put(Double.valueOf(matcher.group(1)), column.name());
            }
        }
        if (columns.isEmpty()) {
            throw new TableFormatException(
                    sheet.fileName(),
                    sheet.rows().get(0).line() - 1,
                    prefix,
                    Refusals.text(
                            "there is no column for a temperature; name such columns %s105C and the like", prefix));
        }
        return columns;
    }
}
