package org.ohmloom.workbench.lists;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetWorkshop;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What the harness asks of the shop that makes it, as a list: class of workmanship, waste, currency. */
final class WorkshopSheet implements Sheet<WorkshopSheet.Row> {
    private static final Words WORDS = Words.of("lists");
    /** What is asked. */
    enum Item {
        WORKMANSHIP,
        WASTE,
        CURRENCY;

        String words() {
            return WORDS.get("workshop.item." + name().toLowerCase(Locale.ROOT));
        }

        String meaning() {
            return WORDS.get("workshop.item." + name().toLowerCase(Locale.ROOT) + ".about");
        }
    }

    /**
     * One of them.
     *
     * @param item  what is asked
     * @param rules the rules of the harness
     */
    record Row(Item item, FabricationRules rules) {}

    @Override
    public String title() {
        return WORDS.get("workshop.workshop");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("workshop.asked"), WORDS.get("workshop.asked.about"), 20, row -> row.item()
                        .words()),
                ColumnEdits.words(
                        WORDS.term("workshop.value"),
                        WORDS.get("workshop.value.about"),
                        16,
                        WorkshopSheet::value,
                        (rows, typed) -> edit(rows.get(0), typed)),
                Column.text(WORDS.term("workshop.meaning"), WORDS.get("workshop.meaning.about"), 70, row -> row.item()
                        .meaning()));
    }

    private static String value(Row row) {
        FabricationRules rules = row.rules();
        return switch (row.item()) {
            case WORKMANSHIP -> rules.workmanshipClass().map(String::valueOf).orElse("");
            case WASTE -> rules.wasteFraction().isPresent()
                    ? Formats.percent(rules.wasteFraction().getAsDouble())
                    : "";
            case CURRENCY -> rules.currency().orElse("");
        };
    }

    private static Edit edit(Row row, String typed) {
        String text = typed.strip();
        Optional<Integer> asked = row.rules().workmanshipClass();
        OptionalDouble waste = row.rules().wasteFraction();
        Optional<String> currency = row.rules().currency();
        switch (row.item()) {
            case WORKMANSHIP -> asked = text.isEmpty() ? Optional.empty() : Optional.of(workmanship(text));
            case WASTE -> waste = TypedNumbers.optional(text, Unit.PERCENT);
            case CURRENCY -> currency = text.isEmpty() ? Optional.empty() : Optional.of(text);
        }
        SetWorkshop edit = new SetWorkshop(
                WORDS.text("workshop.set", row.item().words().toLowerCase(Locale.ROOT)), asked, waste, currency);
        // refuses here what the rules would refuse, so that the cell says why
        row.rules().withWorkshop(asked, waste, currency);
        return edit;
    }

    private static int workmanship(String text) {
        String number = text.replaceFirst("(?i)^class\\s*", "");
        if (!number.matches("[1-3]")) {
            throw new IllegalArgumentException(WORDS.get("workshop.is-no-class-of", text));
        }
        return Integer.parseInt(number);
    }

    @Override
    public List<Row> rows(Readout readout) {
        FabricationRules rules = readout.harness().rules().fabricationRules();
        return Arrays.stream(Item.values()).map(item -> new Row(item, rules)).toList();
    }

    @Override
    public String key(Row row) {
        return row.item().name();
    }

    @Override
    public List<String> about(Row row) {
        return List.of();
    }
}
