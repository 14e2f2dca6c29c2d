package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.draw.CavityView;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.CavityGrid;
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

/** The table of one connector: its cavities as they lie, what it is made of, and what is in each cavity. */
final class CavityTables {
    private static final double PICTURE_MM = 130;

    private static final List<Column> COLUMNS = List.of(
            Column.fileOnly("Connector"),
            Column.fileOnly("Connector name"),
            Column.code("Cavity"),
            Column.code("Unit pin or mate"),
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
            Column.code("Crimp tool").mentioning(),
            Column.words("Crimp"));

    private final Harness harness;
    private final SceneFonts fonts;
    private final Wording wording;
    private final Map<String, List<Wire>> wiresByEnd;

    CavityTables(Harness harness, SceneFonts fonts, Map<String, List<Wire>> wiresByEnd) {
        this.harness = harness;
        this.fonts = fonts;
        this.wording = new Wording(harness);
        this.wiresByEnd = wiresByEnd;
    }

    Block block(Connector connector) {
        List<Row> rows = new ArrayList<>();
        for (Cavity cavity : connector.cavities()) {
            List<Wire> wires = wires(connector, cavity);
            if (wires.isEmpty()) {
                rows.add(unused(connector, cavity));
            }
            wires.forEach(wire -> rows.add(used(connector, cavity, wire, wires)));
        }
        CavityView view = CavityView.of(connector, cavity -> wires(connector, cavity));
        String title = connector.id() + "  " + connector.name();
        return new Block.Kept(List.of(
                new Block.Heading(title, Optional.of(connector.id().value())),
                new Block.Beside(view.scene(fonts, PICTURE_MM), facts(connector)),
                new Block.Table("", COLUMNS, rows, "")));
    }

    private List<Wire> wires(Connector connector, Cavity cavity) {
        return wiresByEnd.getOrDefault(end(connector, cavity).text(), List.of());
    }

    private static WireEnd end(Connector connector, Cavity cavity) {
        return new WireEnd.AtCavity(connector.id(), cavity.name());
    }

    private List<Block.Fact> facts(Connector connector) {
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact("View", view(connector)));
        facts.add(new Block.Fact(
                "Housing", connector.part().map(wording::described).orElse(Wording.NOT_CHOSEN)));
        connector
                .component()
                .map(harness.components()::get)
                .ifPresent(component -> facts.add(new Block.Fact(
                        "Plugs into",
                        component.id() + " " + component.name()
                                + component.part().map(part -> ", part " + part).orElse(""))));
        harness.mate(connector)
                .ifPresent(mate -> facts.add(new Block.Fact(
                        "Mates with",
                        mate.id() + " " + mate.name()
                                + mate.part().map(part -> ", part " + part).orElse(""))));
        facts.add(new Block.Fact("Cavities", counts(connector)));
        facts.add(
                new Block.Fact("Lock", connector.lock().map(wording::described).orElse("none entered")));
        facts.add(new Block.Fact(
                "Backshell or boot",
                connector.backshell().map(wording::described).orElse("none entered")));
        connector
                .at()
                .map(harness.breakouts()::get)
                .ifPresent(at -> facts.add(new Block.Fact("Ends at", at.id() + " " + at.name())));
        connector.limitCelsius().ifPresent(limit -> facts.add(new Block.Fact("Rated to", Formats.celsius(limit))));
        if (!wording.assembly(connector.assembly()).isEmpty()) {
            facts.add(new Block.Fact("Assembly", wording.assembly(connector.assembly())));
        }
        if (connector.existing()) {
            facts.add(new Block.Fact("Supply", "already in the vehicle"));
        }
        return facts;
    }

    private static String view(Connector connector) {
        return connector
                .grid()
                .map(grid -> grid.seenFrom() == CavityGrid.Side.WIRE_SIDE
                        ? "wire side, as on the maker's sheet"
                        : "wire side: the maker's view of the mating side, turned over")
                .orElse("wire side, schematic: no grid of the housing is entered");
    }

    /** "8: 6 used, 1 plugged, 1 open". */
    private String counts(Connector connector) {
        long used = connector.cavities().stream()
                .filter(cavity -> !wires(connector, cavity).isEmpty())
                .count();
        long plugged = connector.cavities().stream()
                .filter(cavity ->
                        wires(connector, cavity).isEmpty() && cavity.plug().isPresent())
                .count();
        long open = connector.cavities().size() - used - plugged;
        return connector.cavities().size() + ": " + used + " used, " + plugged + " plugged, " + open + " open";
    }

    private Row used(Connector connector, Cavity cavity, Wire wire, List<Wire> wires) {
        WireEnd here = end(connector, cavity);
        WireEnd there = wire.from().equals(here) ? wire.to() : wire.from();
        Optional<ContactPart> contact = cavity.contact().map(harness.contacts()::get);
        return Row.of(
                Cell.text(connector.id().value()),
                Cell.text(connector.name()),
                Cell.text(cavity.name()).toned(Cell.Tone.STRONG),
                beyond(connector, cavity),
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
                Cell.text(contact.flatMap(ContactPart::tool).map(tool -> tool.value())),
                crimp(cavity, wire, wires));
    }

    /** Where a cavity leads when the connector is mated: the pin of the unit, or the cavity of the other half by that name. */
    private Cell beyond(Connector connector, Cavity cavity) {
        Optional<String> mating = harness.mate(connector)
                .filter(mate -> mate.cavity(cavity.name()).isPresent())
                .map(mate -> new WireEnd.AtCavity(mate.id(), cavity.name()).text());
        return Cell.text(cavity.terminal().or(() -> mating));
    }

    /** Which wires share a crimp; nothing for a wire by itself. */
    private static Cell crimp(Cavity cavity, Wire wire, List<Wire> wires) {
        if (wires.size() < 2) {
            return Cell.empty();
        }
        String others = Wording.ids(
                wires.stream().map(Wire::id).filter(id -> !id.equals(wire.id())).toList());
        String words = (wires.size() == 2 ? "double, with " : wires.size() + " wires, with ") + others;
        return cavity.doubleCrimp() ? Cell.text(words) : Cell.missing(words + ": not entered as meant");
    }

    private Row unused(Connector connector, Cavity cavity) {
        Cell empty = Cell.empty();
        return Row.of(
                Cell.text(connector.id().value()),
                Cell.text(connector.name()),
                Cell.text(cavity.name()).toned(Cell.Tone.STRONG),
                beyond(connector, cavity),
                Cell.text("unused").toned(Cell.Tone.SOFT),
                empty,
                empty,
                empty,
                empty,
                empty,
                empty,
                empty,
                cavity.plug()
                        .map(plug -> Cell.text(plug.value()))
                        .orElse(Cell.text("open").toned(Cell.Tone.SOFT)),
                empty,
                empty,
                empty);
    }
}
