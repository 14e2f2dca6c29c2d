package org.ohmloom.workbench.lists;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireEnd;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ElementSheet;

/** The connectors as a list. */
final class ConnectorSheet implements ElementSheet<ConnectorSheet.Row> {

    /**
     * One connector.
     *
     * @param connector the connector
     * @param mates     what it plugs into
     * @param wired     count of cavities with a wire
     */
    record Row(Connector connector, String mates, int wired) {}

    @Override
    public String title() {
        return "Connectors";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>text("Connector", "Identity of the connector", 10, row -> row.connector()
                        .id()
                        .value()),
                Column.text("Name", "What people call it", 28, row -> row.connector()
                        .name()),
                Column.text("Mates with", "Component or connector it plugs into", 26, Row::mates),
                Column.<Row>number(
                        "Cavities",
                        "",
                        "Count of cavities",
                        row -> CellText.of(row.connector().cavities().size())),
                Column.number("Wired", "", "Cavities with a wire in them", row -> CellText.of(row.wired())),
                Column.<Row>number(
                        "Stands",
                        "°C",
                        "Highest temperature the housing stands",
                        row -> CellText.of(row.connector().limitCelsius())),
                Column.text("At", "Where it ends on the harness", 9, row -> row.connector()
                        .at()
                        .map(ElementId::value)
                        .orElse("")),
                Column.text("Housing", "Entry of the parts list", 16, row -> row.connector()
                        .part()
                        .map(ElementId::value)
                        .orElse("")),
                Column.text(
                        "Existing",
                        "Already in the vehicle",
                        8,
                        row -> row.connector().existing() ? "yes" : ""));
    }

    @Override
    public List<Row> rows(Readout readout) {
        Harness harness = readout.harness();
        Set<WireEnd> ends = new HashSet<>();
        harness.wires().all().forEach(wire -> ends.addAll(wire.ends()));
        return harness.connectors().all().stream()
                .map(connector -> new Row(connector, mates(connector, harness), wired(connector, ends)))
                .toList();
    }

    private static int wired(Connector connector, Set<WireEnd> ends) {
        return (int) connector.cavities().stream()
                .filter(cavity -> ends.contains(new WireEnd.AtCavity(connector.id(), cavity.name())))
                .count();
    }

    private static String mates(Connector connector, Harness harness) {
        return connector
                .component()
                .map(id -> id + ", " + harness.components().get(id).name())
                .or(() -> connector.mate().map(id -> id + " (in-line)"))
                .orElse("");
    }

    @Override
    public ElementId id(Row row) {
        return row.connector().id();
    }
}
