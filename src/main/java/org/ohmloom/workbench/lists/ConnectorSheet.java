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
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The connectors as a list. */
final class ConnectorSheet implements ElementSheet<ConnectorSheet.Row> {
    private static final Words WORDS = Words.of("lists");

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
        return WORDS.get("connector.connectors");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>text(
                        WORDS.term("connector.connector"),
                        WORDS.get("connector.connector.about"),
                        10,
                        row -> row.connector().id().value()),
                Column.text(WORDS.term("connector.name"), WORDS.get("connector.name.about"), 28, row -> row.connector()
                        .name()),
                Column.text(
                        WORDS.term("connector.mates-with"), WORDS.get("connector.mates-with.about"), 26, Row::mates),
                Column.<Row>number(
                        WORDS.term("connector.cavities"),
                        "",
                        WORDS.get("connector.cavities.about"),
                        row -> CellText.of(row.connector().cavities().size())),
                Column.number(
                        WORDS.term("connector.wired"),
                        "",
                        WORDS.get("connector.wired.about"),
                        row -> CellText.of(row.wired())),
                Column.<Row>number(
                        WORDS.term("connector.stands"),
                        "°C",
                        WORDS.get("connector.stands.about"),
                        row -> CellText.of(row.connector().limitCelsius())),
                Column.text(WORDS.term("connector.at"), WORDS.get("connector.at.about"), 9, row -> row.connector()
                        .at()
                        .map(ElementId::value)
                        .orElse("")),
                Column.text(
                        WORDS.term("connector.housing"),
                        WORDS.get("connector.housing.about"),
                        16,
                        row -> row.connector().part().map(ElementId::value).orElse("")),
                Column.text(
                        WORDS.term("connector.existing"),
                        WORDS.get("connector.existing.about"),
                        8,
                        row -> TypedNumbers.yesIf(row.connector().existing())));
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
                .or(() -> harness.mate(connector).map(mate -> WORDS.get("connector.in-line", mate.id())))
                .orElse("");
    }

    @Override
    public ElementId id(Row row) {
        return row.connector().id();
    }
}
