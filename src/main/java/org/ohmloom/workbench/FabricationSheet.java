package org.ohmloom.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.ChangeFabrication;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Unit;

/** The figures of how the harness is made: what is entered, what the table says, and which of both is used. */
final class FabricationSheet implements Sheet<FabricationSheet.Row> {

    /**
     * One figure.
     *
     * @param figure which
     * @param rules  the rules as they are
     * @param usual  what the table says
     */
    record Row(FabricationFigure figure, FabricationRules rules, Optional<CitedValue> usual) {

        OptionalDouble entered() {
            return figure.entered(rules);
        }
    }

    @Override
    public String title() {
        return "Figures";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Figure", "What is asked", 18, row -> row.figure().label()),
                new Column<Row>(
                                "Entered",
                                "",
                                "What is asked of this harness; empty leaves it to the table",
                                10,
                                row -> CellText.of(row.entered()),
                                Optional.empty())
                        .edited(ColumnEdits.of(
                                row -> true,
                                row -> row.entered().isPresent()
                                        ? TypedNumbers.exact(row.entered().getAsDouble())
                                        : "",
                                row -> row,
                                FabricationSheet::enter)),
                new Column<Row>(
                        "By table",
                        "",
                        "What is used where nothing is entered",
                        9,
                        row -> row.usual()
                                .map(usual -> CellText.of(usual.value())
                                        .in(row.entered().isPresent() ? Tone.SOFT : Tone.PLAIN))
                                .orElse(CellText.EMPTY),
                        Optional.empty()),
                Column.text("Unit", "Unit of the figure", 6, row -> row.figure()
                        .unit()
                        .map(Unit::symbol)
                        .orElse("")),
                Column.text("From", "Where the figure in use is from", 44, FabricationSheet::source),
                Column.text("What it is", "What the figure does", 60, row -> row.figure()
                        .meaning()));
    }

    private static String source(Row row) {
        return row.entered().isPresent()
                ? "design rules of the harness"
                : row.usual().map(usual -> usual.citation().text()).orElse("nothing is asked");
    }

    private static Edit enter(List<Row> rows, String typed) {
        FabricationRules rules = rows.get(0).rules();
        for (Row row : rows) {
            rules = FabricationParts.with(rules, row.figure(), row.figure().typed(typed));
        }
        String what = rows.size() == 1
                ? rows.get(0).figure().label().toLowerCase(java.util.Locale.ROOT)
                : rows.size() + " figures";
        return new ChangeFabrication("Set " + what, rules);
    }

    @Override
    public List<Row> rows(Readout readout) {
        Harness harness = readout.harness();
        WireTables tables =
                readout.analysis().map(analysis -> analysis.evidence().tables()).orElseGet(WireTables::bundled);
        String basis = harness.rules().basis();
        boolean boat = basis.startsWith("33-cfr") || basis.startsWith("abyc");
        List<Row> rows = new ArrayList<>();
        for (FabricationFigure figure : FabricationFigure.values()) {
            rows.add(new Row(
                    figure,
                    harness.rules().fabricationRules(),
                    figure.item(boat).map(item -> tables.fabrication().value(item))));
        }
        return rows;
    }

    @Override
    public String key(Row row) {
        return row.figure().name();
    }

    @Override
    public List<String> about(Row row) {
        return List.of();
    }
}
