package org.ohmloom.workbench.lists;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.Field;
import org.ohmloom.edit.SetOfHarness;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.words.Words;

/** What holds for the whole harness, as a list: the fields of its title block and the rules it is judged by. */
final class DesignSheet implements Sheet<DesignSheet.Row> {

    /** What is said of it, from top to bottom. */
    enum Item {
        TITLE("title", null),
        SECOND_LINE("supplementaryTitle", null),
        NUMBER("number", null),
        OWNER("owner", null),
        CREATOR("creator", null),
        APPROVER("approver", null),
        DATE("date", null),
        LANGUAGE("language", null),
        REVISIONS("revisions", null),
        BASIS("basis", null),
        VOLTAGE("nominalVolts", Unit.VOLT),
        DROP("allowedDropFraction", Unit.PERCENT),
        SIZES("gaugeSystem", null),
        LEAST_SIZE("minimumGauge", null),
        INSULATION("insulation", null),
        AMBIENT("ambientCelsius", Unit.DEGREE_CELSIUS);

        private final Field field;

        Item(String path, @Nullable Unit unit) {
            this.field = unit == null ? Field.of(path) : Field.of(path, unit);
        }

        private String key() {
            return "design." + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        private Column.Holds holds() {
            if (this == LEAST_SIZE) {
                return Column.Holds.SIZES;
            }
            return field.unit().isPresent() ? Column.Holds.QUANTITIES : Column.Holds.AS_IT_IS;
        }

        private boolean inTitleBlock() {
            return compareTo(BASIS) < 0;
        }
    }

    /**
     * One line.
     *
     * @param item    what is said
     * @param harness the harness it is said of
     * @param tables  the tables a basis and an insulation are found in
     */
    record Row(Item item, Harness harness, WireTables tables) {

        String value() {
            if (item == Item.REVISIONS) {
                return RevisionText.of(harness.titleBlock().revisions());
            }
            String text = item.inTitleBlock()
                    ? SetOfHarness.titleText(harness, item.field)
                    : SetOfHarness.rulesText(harness, item.field);
            return text.equals("awg") ? "AWG" : text;
        }
    }

    private final Words words = Words.of("lists");

    @Override
    public String title() {
        return words.get("design");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(
                        words.term("design.what"),
                        words.get("design.what.about"),
                        20,
                        row -> words.get(row.item().key())),
                ColumnEdits.<Row>words(
                                words.term("design.value"),
                                words.get("design.value.about"),
                                34,
                                Row::value,
                                (rows, typed) -> edit(rows.get(0), typed))
                        .holding(row -> row.item().holds()),
                Column.text(
                        words.term("design.meaning"),
                        words.get("design.meaning.about"),
                        64,
                        row -> words.get(row.item().key() + ".about")));
    }

    private Edit edit(Row row, String typed) {
        Item item = row.item();
        String what = words.get(item.key()).toLowerCase(Locale.ROOT);
        if (item == Item.REVISIONS) {
            return RevisionText.edit(typed);
        }
        if (item.inTitleBlock()) {
            return SetOfHarness.title(row.harness(), item.field, what, typed);
        }
        String text =
                switch (item) {
                    case BASIS -> known(
                            what, typed, row.tables().bases().stream().map(DesignBasis::id));
                    case INSULATION -> known(
                            what, typed, row.tables().insulations().stream().map(InsulationType::id));
                    default -> typed;
                };
        return SetOfHarness.rules(row.harness(), item.field, what, text);
    }

    /** The identity of a row of the tables that is meant. */
    private String known(String what, String typed, Stream<String> rows) {
        List<String> ids = rows.toList();
        String wanted = typed.strip();
        return ids.stream()
                .filter(wanted::equalsIgnoreCase)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        words.get("design.unknown", wanted, what, String.join(", ", ids))));
    }

    @Override
    public List<Row> rows(Readout readout) {
        WireTables tables =
                readout.analysis().map(analysis -> analysis.evidence().tables()).orElseGet(WireTables::bundled);
        return Arrays.stream(Item.values())
                .map(item -> new Row(item, readout.harness(), tables))
                .toList();
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
