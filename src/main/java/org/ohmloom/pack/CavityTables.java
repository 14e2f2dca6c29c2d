package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** The table of one connector: what is in each cavity. */
final class CavityTables {
    private static final List<Column> COLUMNS = List.of(
            Column.fileOnly("Connector"),
            Column.fileOnly("Connector name"),
            Column.code("Cavity"),
            Column.code("Meets"),
            Column.code("Wire").mentioning(),
            Column.code("Size"),
            Column.colour("Colour"),
            Column.words("Carries"),
            Column.words("Circuit"),
            Column.code("Goes to").mentioning(),
            Column.words("Goes to name"),
            Column.code("Contact").mentioning(),
            Column.code("Seal or plug").mentioning(),
            Column.number("Strip", Unit.MILLIMETRE, 1),
            Column.code("Crimp tool").mentioning());

    private final Harness harness;
    private final Wording wording;
    private final Map<String, List<Wire>> wiresByEnd;

    CavityTables(Harness harness, Map<String, List<Wire>> wiresByEnd) {
        this.harness = harness;
        this.wording = new Wording(harness);
        this.wiresByEnd = wiresByEnd;
    }

    List<Block> blocks(Connector connector) {
        List<Row> rows = new ArrayList<>();
        for (Cavity cavity : connector.cavities()) {
            List<Wire> wires = wiresByEnd.getOrDefault(end(connector, cavity).text(), List.of());
            if (wires.isEmpty()) {
                rows.add(unused(connector, cavity));
            }
            wires.forEach(wire -> rows.add(used(connector, cavity, wire)));
        }
        String title = connector.id() + "  " + connector.name();
        return List.of(
                new Block.Heading(title, Optional.of(connector.id().value())),
                new Block.Facts(facts(connector)),
                new Block.Table("", COLUMNS, rows, ""));
    }

    private static WireEnd end(Connector connector, Cavity cavity) {
        return new WireEnd.AtCavity(connector.id(), cavity.name());
    }

    private List<Block.Fact> facts(Connector connector) {
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact("View", "wire side"));
        facts.add(new Block.Fact(
                "Housing", connector.part().map(wording::described).orElse(Wording.NOT_CHOSEN)));
        connector
                .component()
                .map(harness.components()::get)
                .ifPresent(
                        component -> facts.add(new Block.Fact("Plugs into", component.id() + " " + component.name())));
        connector
                .mate()
                .map(harness.connectors()::get)
                .ifPresent(mate -> facts.add(new Block.Fact("Mates with", mate.id() + " " + mate.name())));
        connector.lock().ifPresent(part -> facts.add(new Block.Fact("Lock", wording.described(part))));
        connector.backshell().ifPresent(part -> facts.add(new Block.Fact("Backshell", wording.described(part))));
        connector
                .at()
                .map(harness.breakouts()::get)
                .ifPresent(at -> facts.add(new Block.Fact("Ends at", at.id() + " " + at.name())));
        connector.limitCelsius().ifPresent(limit -> facts.add(new Block.Fact("Stands", Formats.celsius(limit))));
        if (!wording.assembly(connector.assembly()).isEmpty()) {
            facts.add(new Block.Fact("Assembly", wording.assembly(connector.assembly())));
        }
        if (connector.existing()) {
            facts.add(new Block.Fact("Supply", "already in the vehicle"));
        }
        return facts;
    }

    private Row used(Connector connector, Cavity cavity, Wire wire) {
        WireEnd here = end(connector, cavity);
        WireEnd there = wire.from().equals(here) ? wire.to() : wire.from();
        Optional<ContactPart> contact = cavity.contact().map(harness.contacts()::get);
        return Row.of(
                Cell.text(connector.id().value()),
                Cell.text(connector.name()),
                Cell.text(cavity.name()).toned(Cell.Tone.STRONG),
                Cell.text(cavity.terminal()),
                Cell.text(Wording.wire(wire)),
                Wording.size(wire),
                Wording.colour(wire),
                Cell.text(Wording.signalClass(wire)),
                Cell.text(wire.circuit()),
                Wording.end(there),
                Cell.text(wording.joinedTo(there)),
                Wording.part(contact.flatMap(ContactPart::part)),
                Cell.text(contact.flatMap(ContactPart::seal)
                        .map(seal -> seal.part().value())),
                contact.map(part -> Cell.number(part.stripLengthMm())).orElse(Cell.empty()),
                Cell.text(contact.flatMap(ContactPart::tool).map(tool -> tool.value())));
    }

    private static Row unused(Connector connector, Cavity cavity) {
        return Row.of(
                Cell.text(connector.id().value()),
                Cell.text(connector.name()),
                Cell.text(cavity.name()).toned(Cell.Tone.STRONG),
                Cell.text(cavity.terminal()),
                Cell.text("unused").toned(Cell.Tone.SOFT),
                Cell.empty(),
                Cell.empty(),
                Cell.empty(),
                Cell.empty(),
                Cell.empty(),
                Cell.empty(),
                Cell.empty(),
                cavity.plug()
                        .map(plug -> Cell.text(plug.value()))
                        .orElse(Cell.text("open").toned(Cell.Tone.SOFT)),
                Cell.empty(),
                Cell.empty());
    }
}
