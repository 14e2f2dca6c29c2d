package org.ohmloom.workbench.fabrication;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.ChangeFabrication;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.widget.Tone;

/** The figures of how the harness is made: what is entered, what the table says, and which of both is used. */
final class FabricationSheet implements Sheet<FabricationSheet.Row> {

    /**
     * One figure, or the currency of the prices.
     *
     * @param figure which; empty for the currency
     * @param rules  the rules as they are
     * @param usual  what the table says
     * @param units  units in which it is read and typed
     */
    record Row(
            Optional<FabricationFigure> figure, FabricationRules rules, Optional<CitedValue> usual, ShownUnits units) {

        private Unit unit() {
            return figure.flatMap(FabricationFigure::unit).orElse(Unit.FRACTION);
        }

        /** What is entered, as it can be typed again; empty for nothing. */
        String entered() {
            OptionalDouble number = figure.map(each -> each.entered(rules)).orElse(OptionalDouble.empty());
            if (number.isEmpty()) {
                return figure.isEmpty() ? rules.currency().orElse("") : "";
            }
            String exact = units.exact(number.getAsDouble(), unit());
            return units.of(unit()) == unit() || exact.contains(" ")
                    ? exact
                    : exact + " " + units.of(unit()).symbol();
        }

        CellText shown() {
            OptionalDouble number = figure.map(each -> each.entered(rules)).orElse(OptionalDouble.empty());
            return number.isPresent() && units.of(unit()) != unit()
                    ? CellText.of(units.digits(number.getAsDouble(), unit()))
                    : CellText.of(entered());
        }

        CellText byTable() {
            return usual.map(each -> CellText.of(units.converted(each.value(), unit()))
                            .in(entered().isEmpty() ? Tone.PLAIN : Tone.SOFT))
                    .orElse(CellText.EMPTY);
        }

        String symbol() {
            return figure.flatMap(FabricationFigure::unit)
                    .map(units::of)
                    .map(Unit::symbol)
                    .orElse("");
        }

        String label() {
            return figure.map(FabricationFigure::label).orElse("Currency");
        }

        String meaning() {
            return figure.map(FabricationFigure::meaning)
                    .orElse("Currency of the prices of parts, as people write it: EUR");
        }
    }

    @Override
    public String title() {
        return "Figures";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Figure", "What is asked", 18, Row::label),
                new Column<Row>(
                                "Entered",
                                "",
                                "What is asked of this harness; empty leaves it to the table",
                                10,
                                Row::shown,
                                Optional.empty())
                        .edited(ColumnEdits.of(row -> true, Row::entered, row -> row, FabricationSheet::enter)),
                new Column<Row>(
                        "By table", "", "What is used where nothing is entered", 9, Row::byTable, Optional.empty()),
                Column.text("Unit", "Unit of the figure", 6, Row::symbol),
                Column.text("From", "Where the figure in use is from", 44, FabricationSheet::source),
                Column.text("What it is", "What the figure does", 60, Row::meaning));
    }

    private static String source(Row row) {
        return row.entered().isEmpty()
                ? row.usual().map(usual -> usual.citation().text()).orElse("nothing is asked")
                : "design rules of the harness";
    }

    private static Edit enter(List<Row> rows, String typed) {
        FabricationRules rules = rows.get(0).rules();
        for (Row row : rows) {
            FabricationRules before = rules;
            rules = row.figure()
                    .map(figure -> FabricationParts.with(
                            before, figure, figure.typed(row.units().typed(typed, row.unit()))))
                    .orElseGet(() -> FabricationParts.withCurrency(
                            before, Optional.of(typed.strip()).filter(text -> !text.isEmpty())));
        }
        String what = rows.size() == 1 ? rows.get(0).label().toLowerCase(Locale.ROOT) : rows.size() + " figures";
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
                    Optional.of(figure),
                    harness.rules().fabricationRules(),
                    figure.item(boat).map(item -> tables.fabrication().value(item)),
                    readout.units()));
        }
        rows.add(new Row(Optional.empty(), harness.rules().fabricationRules(), Optional.empty(), readout.units()));
        return rows;
    }

    @Override
    public String key(Row row) {
        return row.label();
    }

    @Override
    public List<String> about(Row row) {
        return List.of();
    }
}
