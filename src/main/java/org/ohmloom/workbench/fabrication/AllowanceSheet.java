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
import org.ohmloom.workbench.words.TypedNumbers;

/** What each wire gets more at single connectors than its way is long; what is not entered is as everywhere else. */
final class AllowanceSheet implements ElementSheet<AllowanceSheet.Row> {

    private static final String BY_ALL = "Not entered: as at all connectors";

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
        return "Connectors";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Connector", "Identity of the connector", 10, row -> row.connector()
                        .id()
                        .value()),
                Column.text("Name", "What people call it", 30, row -> row.connector()
                        .name()),
                amount(
                        "Depth",
                        "From the wire entry, where segments are measured to, to the crimp",
                        ConnectorAllowance::depthMm,
                        FabricationFigure.CONNECTOR_DEPTH,
                        (was, mm) -> new ConnectorAllowance(
                                was.connector(), mm, was.serviceLoopMm(), was.dripLoop(), was.dripLoopMm())),
                amount(
                        "Service loop",
                        "Loop to reach another cavity or to open the connector",
                        ConnectorAllowance::serviceLoopMm,
                        FabricationFigure.SERVICE_LOOP,
                        (was, mm) -> new ConnectorAllowance(
                                was.connector(), was.depthMm(), mm, was.dripLoop(), was.dripLoopMm())),
                ColumnEdits.words(
                        "Drip loop",
                        "yes where wires come down to it and need a drip loop",
                        9,
                        row -> row.own().dripLoop() ? "yes" : "",
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
                        "Drip loop takes",
                        "What that loop takes",
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
            String title,
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
            return CellText.of(used).in(Tone.SOFT).saying(BY_ALL);
        };
        return Column.number(title, "mm", tip + "; empty as at all connectors", cell)
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
        String of = rows.size() == 1 ? rows.get(0).connector().id().value() : rows.size() + " connectors";
        return new ChangeFabrication("Set allowance of " + of, FabricationParts.withAllowances(rules, all));
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
}
