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

/** What the harness asks of the shop that makes it, as a list: class of workmanship, waste, currency. */
final class WorkshopSheet implements Sheet<WorkshopSheet.Row> {

    /** What is asked. */
    enum Item {
        WORKMANSHIP(
                "Workmanship class", "1, 2 or 3 of IPC/WHMA-A-620; it stands on cover, drawing, cut list and tests"),
        WASTE("Waste", "share bought beyond what is used, such as 10 %; empty takes the usual one"),
        CURRENCY("Currency", "currency of the prices in the list of parts, such as EUR");

        private final String words;
        private final String meaning;

        Item(String words, String meaning) {
            this.words = words;
            this.meaning = meaning;
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
        return "Workshop";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Asked", "What is asked of the shop", 20, row -> row.item().words),
                ColumnEdits.words(
                        "Value",
                        "What it is; empty where nothing is asked",
                        16,
                        WorkshopSheet::value,
                        (rows, typed) -> edit(rows.get(0), typed)),
                Column.text("Meaning", "What it means", 70, row -> row.item().meaning));
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
        SetWorkshop edit = new SetWorkshop("Set " + row.item().words.toLowerCase(Locale.ROOT), asked, waste, currency);
        // refuses here what the rules would refuse, so that the cell says why
        row.rules().withWorkshop(asked, waste, currency);
        return edit;
    }

    private static int workmanship(String text) {
        String number = text.replaceFirst("(?i)^class\\s*", "");
        if (!number.matches("[1-3]")) {
            throw new IllegalArgumentException("'" + text + "' is no class of workmanship: 1, 2 or 3");
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
