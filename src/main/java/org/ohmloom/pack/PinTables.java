package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;

/** A table for each connector, then the splices, then the wires on studs, screws and ground points. */
final class PinTables {
    private static final List<Column> SPLICES = List.of(
            Column.code("Splice").home(),
            Column.words("Name"),
            Column.words("Place"),
            Column.code("Part").mentioning(),
            Column.code("Wire").mentioning(),
            Column.code("Size"),
            Column.colour("Colour"),
            Column.words("Carries"),
            Column.code("Goes to").mentioning(),
            Column.words("Goes to name"));

    private static final List<Column> TERMINALS = List.of(
            Column.code("Terminal").home(),
            Column.words("On"),
            Column.code("Wire").mentioning(),
            Column.code("Size"),
            Column.colour("Colour"),
            Column.words("Carries"),
            Column.words("Circuit"),
            Column.code("Goes to").mentioning(),
            Column.words("Goes to name"));

    private static final String REMARK =
            "Connectors are seen from the wire side, where the wires enter. Cavity names are"
                    + " those moulded on the housing; check one marked cavity before you fill the rest.";

    private final Harness harness;
    private final SceneFonts fonts;
    private final Wording wording;
    private final Map<String, List<Wire>> wiresByEnd = new TreeMap<>(NaturalOrder.INSTANCE);

    PinTables(Harness harness, SceneFonts fonts) {
        this.harness = harness;
        this.fonts = fonts;
        this.wording = new Wording(harness);
        for (Wire wire : harness.wires().all()) {
            for (WireEnd end : wire.ends()) {
                wiresByEnd
                        .computeIfAbsent(end.text(), text -> new ArrayList<>())
                        .add(wire);
            }
        }
    }

    Report report() {
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        CavityTables cavities = new CavityTables(harness, fonts, wiresByEnd);
        for (Connector connector : harness.connectors().all()) {
            blocks.add(cavities.block(connector));
        }
        if (!harness.splices().isEmpty()) {
            blocks.add(new Block.Heading("Splices"));
            blocks.add(new Block.Table("splices", SPLICES, splices(), ""));
        }
        List<Row> terminals = terminals();
        if (!terminals.isEmpty()) {
            blocks.add(new Block.Heading("Studs, screws and ground points"));
            blocks.add(new Block.Table("terminals", TERMINALS, terminals, ""));
        }
        return new Report(blocks, REMARK);
    }

    private List<Row> splices() {
        List<Row> rows = new ArrayList<>();
        for (Splice splice : harness.splices().all()) {
            WireEnd here = new WireEnd.AtSplice(splice.id());
            List<Wire> wires = wiresByEnd.getOrDefault(here.text(), List.of());
            if (wires.isEmpty()) {
                Cell none = Cell.empty();
                rows.add(spliceRow(splice, Cell.missing("no wire"), none, none, none, none, none));
            }
            for (Wire wire : wires) {
                WireEnd there = wire.from().equals(here) ? wire.to() : wire.from();
                rows.add(spliceRow(
                        splice,
                        Cell.text(wire.id().value()),
                        Wording.size(wire),
                        Wording.colour(wire),
                        Cell.text(Wording.signalClass(wire)),
                        Wording.end(there),
                        Cell.text(wording.joinedTo(there))));
            }
        }
        return rows;
    }

    private Row spliceRow(Splice splice, Cell wire, Cell size, Cell colour, Cell carries, Cell goesTo, Cell name) {
        return Row.of(
                Cell.text(splice.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(splice.name()),
                splice.place()
                        .map(place -> Cell.text(wording.place(place)))
                        .orElseGet(() -> Cell.missing("no place given")),
                splice.existing() ? Cell.text("existing") : Wording.part(splice.part()),
                wire,
                size,
                colour,
                carries,
                goesTo,
                name);
    }

    private List<Row> terminals() {
        List<Row> rows = new ArrayList<>();
        wiresByEnd.forEach((text, wires) -> {
            for (Wire wire : wires) {
                WireEnd here = wire.from().text().equals(text) ? wire.from() : wire.to();
                WireEnd there = wire.from().equals(here) ? wire.to() : wire.from();
                if (here instanceof WireEnd.AtGround || here instanceof WireEnd.AtTerminal) {
                    rows.add(Row.of(
                            Cell.text(text).toned(Cell.Tone.STRONG),
                            Cell.text(wording.joinedTo(here)),
                            Cell.text(Wording.wire(wire)),
                            Wording.size(wire),
                            Wording.colour(wire),
                            Cell.text(Wording.signalClass(wire)),
                            Cell.text(wire.circuit()),
                            Wording.end(there),
                            Cell.text(wording.joinedTo(there))));
                }
            }
        });
        return rows;
    }
}
