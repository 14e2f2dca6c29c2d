package org.ohmloom.workbench.lists;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.ohmloom.edit.CavityEdits;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The cavities of all connectors as one list. */
final class CavitySheet implements Sheet<CavitySheet.Row> {

    private final Words words = Words.of("lists");
    private final Supplier<Optional<Harness>> harness;

    CavitySheet(Supplier<Optional<Harness>> harness) {
        this.harness = harness;
    }

    /**
     * A cavity.
     *
     * @param connector its connector
     * @param cavity    the cavity
     * @param wires     the wires in it
     */
    record Row(Connector connector, Cavity cavity, List<Wire> wires) {
        WireEnd.AtCavity end() {
            return new WireEnd.AtCavity(connector.id(), cavity.name());
        }
    }

    @Override
    public String title() {
        return words.get("cavities");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(words.term("connector"), words.get("connector.about"), 10, row -> row.connector()
                        .id()
                        .value()),
                Column.text(words.term("cavity"), words.get("cavity.about"), 8, row -> row.cavity()
                        .name()),
                Column.text(
                        words.term("wires-there"),
                        words.get("wires-there.about"),
                        12,
                        row -> String.join(
                                ", ",
                                row.wires().stream()
                                        .map(wire -> wire.id().value())
                                        .toList())),
                typed("terminal", 10, row -> row.cavity().terminal().orElse(""), CavityEdits::terminal),
                typed(
                        "contact",
                        12,
                        row -> row.cavity().contact().map(ElementId::value).orElse(""),
                        CavityEdits::contact),
                typed(
                        "plug",
                        12,
                        row -> row.cavity().plug().map(ElementId::value).orElse(""),
                        CavityEdits::plug),
                typed(
                        "double-crimp",
                        12,
                        row -> TypedNumbers.yesIf(row.cavity().doubleCrimp()),
                        (now, ends, text) -> CavityEdits.doubleCrimp(ends, TypedNumbers.yes(text))));
    }

    /** Makes the edit of what was typed. */
    private interface Typing {
        Edit of(Harness harness, List<WireEnd.AtCavity> cavities, String typed);
    }

    private Column<Row> typed(String key, int letters, Function<Row, String> cell, Typing typing) {
        BiFunction<List<WireEnd.AtCavity>, String, Edit> parse =
                (ends, text) -> typing.of(harness.get().orElseThrow(), ends, text);
        return Column.<Row>text(words.term(key), words.get(key + ".about"), letters, cell)
                .edited(ColumnEdits.of(row -> true, cell, Row::end, parse));
    }

    @Override
    public List<Row> rows(Readout readout) {
        Map<WireEnd, List<Wire>> wires = new HashMap<>();
        readout.harness().wires().all().forEach(wire -> wire.ends().stream()
                .distinct()
                .forEach(end ->
                        wires.computeIfAbsent(end, each -> new ArrayList<>()).add(wire)));
        List<Row> rows = new ArrayList<>();
        for (Connector connector : readout.harness().connectors().all()) {
            for (Cavity cavity : connector.cavities()) {
                WireEnd end = new WireEnd.AtCavity(connector.id(), cavity.name());
                rows.add(new Row(connector, cavity, wires.getOrDefault(end, List.of())));
            }
        }
        return rows;
    }

    @Override
    public String key(Row row) {
        return row.end().text();
    }

    @Override
    public List<String> about(Row row) {
        return List.of(row.connector().id().value());
    }
}
