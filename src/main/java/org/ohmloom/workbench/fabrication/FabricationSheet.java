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
import org.ohmloom.workbench.words.Words;

/** The figures of how the harness is made: what is entered, what the table says, and which of both is used. */
final class FabricationSheet implements Sheet<FabricationSheet.Row> {
    private static final Words WORDS = Words.of("fabrication");

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
            return figure.map(FabricationFigure::label).orElse(WORDS.get("fabrication.currency"));
        }

        String meaning() {
            return figure.map(FabricationFigure::meaning).orElse(WORDS.get("fabrication.currency-of-the-prices"));
        }
    }

    @Override
    public String title() {
        return WORDS.get("fabrication.figures");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("fabrication.figure"), WORDS.get("fabrication.figure.about"), 18, Row::label),
                new Column<Row>(
                                WORDS.term("fabrication.entered"),
                                "",
                                WORDS.get("fabrication.entered.about"),
                                10,
                                Row::shown,
                                Optional.empty())
                        .edited(ColumnEdits.of(row -> true, Row::entered, row -> row, FabricationSheet::enter)),
                new Column<Row>(
                        WORDS.term("fabrication.by-table"),
                        "",
                        WORDS.get("fabrication.by-table.about"),
                        9,
                        Row::byTable,
                        Optional.empty()),
                Column.text(WORDS.term("fabrication.unit"), WORDS.get("fabrication.unit.about"), 6, Row::symbol),
                Column.text(
                        WORDS.term("fabrication.from"),
                        WORDS.get("fabrication.from.about"),
                        44,
                        FabricationSheet::source),
                Column.text(
                        WORDS.term("fabrication.what-it-is"),
                        WORDS.get("fabrication.what-it-is.about"),
                        60,
                        Row::meaning));
    }

    private static String source(Row row) {
        return row.entered().isEmpty()
                ? row.usual().map(usual -> usual.citation().text()).orElse(WORDS.get("fabrication.nothing-is-asked"))
                : WORDS.get("fabrication.design-rules-of-the");
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
        String what = rows.size() == 1
                ? rows.get(0).label().toLowerCase(Locale.ROOT)
                : WORDS.get("fabrication.figures-2", rows.size());
        return new ChangeFabrication(WORDS.text("fabrication.set", what), rules);
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
