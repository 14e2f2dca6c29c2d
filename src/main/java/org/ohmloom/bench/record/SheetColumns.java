package org.ohmloom.bench.record;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.store.CsvTable;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.QuantityFormatException;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.Texts;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.UnfitException;

/** The columns of a filled-in sheet, found by their names whatever their case; the unit of a number stands behind the name. */
final class SheetColumns {

    /** What the test sheet prints for the bench and the record does not need. */
    private static final Set<String> TOLD = Set.of(
            "net",
            "wires at 20 °c",
            "contacts, joints",
            "instrument mω",
            "at least, 20 °c",
            "at most, 20 °c",
            "wires",
            "against",
            "because",
            "at least",
            "good",
            "name",
            "look at",
            "must be",
            "part",
            "tool",
            "crimps",
            "set of requirements",
            "voltage",
            "feed drop",
            "return drop",
            "drop at most",
            "current");

    private final CsvTable table;
    private final Set<String> used = new LinkedHashSet<>();

    SheetColumns(CsvTable table) {
        this.table = table;
    }

    /** Whether there is a column of that name. */
    boolean has(String name) {
        return head(name).isPresent();
    }

    /** The column of that name, with or without a unit behind it. */
    private Optional<String> head(String name) {
        Optional<String> exact =
                table.heads().stream().filter(head -> lower(head).equals(name)).findFirst();
        return exact.or(() -> table.heads().stream()
                .filter(head ->
                        lower(head).startsWith(name + " ") && unit(head, name).isPresent())
                .findFirst());
    }

    private static String lower(String head) {
        return head.toLowerCase(Locale.ROOT);
    }

    /** The unit behind a name: {@code Measured mΩ}, {@code Measured (mOhm)}, {@code Measured [mΩ]}. */
    private static Optional<Unit> unit(String head, String name) {
        String rest =
                head.substring(Math.min(head.length(), name.length())).strip().replaceAll("^[(\\[]|[)\\]]$", "");
        if (rest.isEmpty()) {
            return Optional.empty();
        }
        for (Dimension dimension : Dimension.values()) {
            try {
                return Optional.of(QuantityParser.parse("1 " + rest, dimension).unit());
            } catch (QuantityFormatException otherDimension) {
                continue;
            }
        }
        return Optional.empty();
    }

    /** What a line says in the column of exactly that name; empty for nothing. */
    Optional<String> text(CsvTable.Row row, String name) {
        return cell(
                row,
                table.heads().stream().filter(head -> lower(head).equals(name)).findFirst());
    }

    /** What a line says in a column of numbers, whatever it is; empty for nothing. */
    Optional<String> written(CsvTable.Row row, String name) {
        return cell(row, head(name));
    }

    private Optional<String> cell(CsvTable.Row row, Optional<String> head) {
        head.ifPresent(used::add);
        return head.map(row::cell).filter(cell -> !cell.isEmpty());
    }

    /**
     * A number of a line.
     *
     * @throws IllegalArgumentException when it is none in a unit of that dimension; it names the column
     */
    Optional<Double> number(CsvTable.Row row, String name, Dimension dimension) {
        Optional<String> text = written(row, name);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String head = head(name).orElseThrow();
        Optional<Unit> unit = unit(head, name);
        String written = table.decimalComma() ? text.get().replace(',', '.') : text.get();
        try {
            if (unit.isPresent() && unit.get().dimension() != dimension) {
                throw new QuantityFormatException(
                        "%s is not the head of %s", Texts.quoted(head), Refusals.text(dimension.nounWithArticle()));
            }
            Quantity value = unit.isPresent()
                    ? QuantityParser.parse(written, unit.get())
                    : QuantityParser.parse(written, dimension);
            return Optional.of(value.canonical());
        } catch (QuantityFormatException wrong) {
            throw new UnfitException(
                    Refusals.text(
                            unit.isEmpty()
                                    ? "column %s: %s; or name the unit in the head of the column"
                                    : "column %s: %s",
                            Texts.quoted(head),
                            wrong.words()),
                    wrong);
        }
    }

    /** Columns nobody asked for that the test sheet does not print either. */
    List<String> leftOut() {
        List<String> left = new ArrayList<>(table.heads());
        left.removeIf(head -> used.contains(head) || isTold(head));
        return left;
    }

    private static boolean isTold(String head) {
        String lower = lower(head);
        return TOLD.stream()
                .anyMatch(told -> lower.equals(told)
                        || lower.startsWith(told + " ") && unit(head, told).isPresent());
    }
}
