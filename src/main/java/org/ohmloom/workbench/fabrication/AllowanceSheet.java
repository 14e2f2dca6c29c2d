package org.ohmloom.workbench.fabrication;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.ohmloom.edit.ChangeFabrication;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorAllowance;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What each wire gets more at single connectors than its way is long; what is not entered is as everywhere else. */
final class AllowanceSheet implements ElementSheet<AllowanceSheet.Row> {
    private static final Words WORDS = Words.of("fabrication");

    /**
     * One connector.
     *
     * @param connector the connector
     * @param own       its own allowance, nothing in it where it has none
     * @param rules     the rules as they are
     * @param tables    what is used where neither says anything
     */
    record Row(Connector connector, ConnectorAllowance own, FabricationRules rules, WireTables tables) {}

    @Override
    public String title() {
        return WORDS.get("allowance.connectors");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(
                        WORDS.term("allowance.connector"),
                        WORDS.get("allowance.connector.about"),
                        10,
                        row -> row.connector().id().value()),
                Column.text(WORDS.term("allowance.name"), WORDS.get("allowance.name.about"), 30, row -> row.connector()
                        .name()),
                amount(
                        WORDS.term("allowance.depth"),
                        WORDS.get("allowance.depth.about"),
                        ConnectorAllowance::depthMm,
                        FabricationFigure.CONNECTOR_DEPTH,
                        (was, mm) -> new ConnectorAllowance(
                                was.connector(), mm, was.serviceLoopMm(), was.dripLoop(), was.dripLoopMm())),
                amount(
                        WORDS.term("allowance.service-loop"),
                        WORDS.get("allowance.service-loop.about"),
                        ConnectorAllowance::serviceLoopMm,
                        FabricationFigure.SERVICE_LOOP,
                        (was, mm) -> new ConnectorAllowance(
                                was.connector(), was.depthMm(), mm, was.dripLoop(), was.dripLoopMm())),
                ColumnEdits.words(
                        WORDS.term("allowance.drip-loop"),
                        WORDS.get("allowance.drip-loop.about"),
                        9,
                        row -> TypedNumbers.yesIf(row.own().dripLoop()),
                        (rows, typed) -> {
                            boolean yes = TypedNumbers.yes(typed);
                            return change(
                                    rows,
                                    was -> new ConnectorAllowance(
                                            was.connector(),
                                            was.depthMm(),
                                            was.serviceLoopMm(),
                                            yes,
                                            was.dripLoopMm()));
                        }),
                amount(
                        WORDS.term("allowance.drip-loop-takes"),
                        WORDS.get("allowance.drip-loop-takes.about"),
                        ConnectorAllowance::dripLoopMm,
                        FabricationFigure.DRIP_LOOP,
                        (was, mm) -> new ConnectorAllowance(
                                was.connector(), was.depthMm(), was.serviceLoopMm(), was.dripLoop(), mm)));
    }

    /** Puts an amount into an allowance. */
    private interface Put {
        ConnectorAllowance of(ConnectorAllowance was, OptionalDouble millimetres);
    }

    private static Column<Row> amount(
            Term title,
            String tip,
            Function<ConnectorAllowance, OptionalDouble> own,
            FabricationFigure figure,
            Put put) {
        Function<Row, CellText> cell = row -> {
            OptionalDouble entered = own.apply(row.own());
            if (entered.isPresent()) {
                return CellText.of(entered.getAsDouble());
            }
            OptionalDouble everywhere = figure.entered(row.rules());
            double used = everywhere.orElseGet(() -> row.tables()
                    .fabrication()
                    .value(figure.item(false).orElseThrow())
                    .value());
            return CellText.of(used).in(Tone.SOFT).saying(asAtAll());
        };
        return Column.number(title, "mm", WORDS.get("allowance.empty-as-at-all", tip), cell)
                .edited(ColumnEdits.of(
                        row -> true,
                        row -> own.apply(row.own()).isPresent()
                                ? TypedNumbers.exact(own.apply(row.own()).getAsDouble()) + " mm"
                                : "",
                        row -> row,
                        (rows, typed) -> {
                            OptionalDouble metres = TypedNumbers.optional(typed, Unit.MILLIMETRE);
                            OptionalDouble millimetres = metres.isPresent()
                                    ? OptionalDouble.of(Unit.MILLIMETRE.fromCanonical(metres.getAsDouble()))
                                    : metres;
                            return change(rows, was -> put.of(was, millimetres));
                        }));
    }

    private static Edit change(List<Row> rows, UnaryOperator<ConnectorAllowance> change) {
        FabricationRules rules = rows.get(0).rules();
        List<ConnectorAllowance> all = new ArrayList<>(rules.connectors());
        for (Row row : rows) {
            ConnectorAllowance changed = change.apply(row.own());
            all.removeIf(each -> each.connector().equals(changed.connector()));
            if (!changed.equals(none(row.connector()))) {
                all.add(changed);
            }
        }
        String of = rows.size() == 1
                ? rows.get(0).connector().id().value()
                : WORDS.get("allowance.connectors-2", rows.size());
        return new ChangeFabrication(
                WORDS.text("allowance.set-allowance-of", of), FabricationParts.withAllowances(rules, all));
    }

    private static ConnectorAllowance none(Connector connector) {
        return new ConnectorAllowance(
                connector.id(), OptionalDouble.empty(), OptionalDouble.empty(), false, OptionalDouble.empty());
    }

    @Override
    public List<Row> rows(Readout readout) {
        FabricationRules rules = readout.harness().rules().fabricationRules();
        WireTables tables =
                readout.analysis().map(analysis -> analysis.evidence().tables()).orElseGet(WireTables::bundled);
        return readout.harness().connectors().all().stream()
                .map(connector -> new Row(
                        connector,
                        Optional.of(connector.id()).flatMap(rules::at).orElseGet(() -> none(connector)),
                        rules,
                        tables))
                .toList();
    }

    @Override
    public ElementId id(Row row) {
        return row.connector().id();
    }

    private static String asAtAll() {
        return WORDS.get("allowance.not-entered-as-at");
    }
}
