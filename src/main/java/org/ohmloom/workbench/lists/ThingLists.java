package org.ohmloom.workbench.lists;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.ohmloom.edit.CavityEdits;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.Field;
import org.ohmloom.edit.NewDevice;
import org.ohmloom.edit.NewThing;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.sheet.Adding;
import org.ohmloom.workbench.sheet.CellEdit;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The lists in which a whole harness can be entered: what is typed in each, and what can be added to it. */
final class ThingLists {

    private final Words words = Words.of("lists");
    private final Supplier<Optional<Harness>> harness;

    ThingLists(Supplier<Optional<Harness>> harness) {
        this.harness = harness;
    }

    private <R> FieldColumns<R> of(Function<R, ? extends Element> element) {
        return new FieldColumns<>(harness, element);
    }

    private static Adding adding(String words, Function<Harness, PutElements> make) {
        return new Adding(words, now -> {
            PutElements edit = make.apply(now);
            return new Adding.Made(
                    edit,
                    edit.elements().stream().map(each -> each.id().value()).toList());
        });
    }

    private static List<Adding> adds(NewThing... kinds) {
        return Arrays.stream(kinds)
                .map(kind -> adding(TradeWords.named(kind), kind::added))
                .toList();
    }

    private static List<Adding> devices(boolean loads) {
        return Arrays.stream(NewDevice.values())
                .filter(kind -> kind.isLoad() == loads)
                .map(kind -> adding(TradeWords.named(kind), kind::added))
                .toList();
    }

    private static <R> List<Column<R>> details(List<Column<R>> columns) {
        return columns.stream().map(Column::chosenOnly).toList();
    }

    Sheet<WireSheet.Row> wires() {
        FieldColumns<WireSheet.Row> of = of(WireSheet.Row::wire);
        return new EditedSheet<>(
                new WireSheet(),
                Map.of(
                        "wire.wire", of.renaming(),
                        "wire.from", of.edit(Field.of("from"), words.get("end")),
                        "wire.to", of.edit(Field.of("to"), words.get("end")),
                        "wire.carries", of.edit(Field.of("signalClass"), words.get("signal-class")),
                        "wire.colour", of.edit(Field.of("colour"), words.get("colour"))),
                details(List.of(
                        of.text("circuit", 12, "circuit"),
                        of.text("family", 14, "family"),
                        of.text("insulation", 14, "insulation"),
                        of.text("cable", 8, "cable"),
                        of.number("present-current", Unit.AMP, "presentAmps"),
                        of.number("measured-resistance", Unit.MILLIOHM, "measuredOhms"),
                        of.text("assembly", 10, "assembly"),
                        of.text("existing", 8, "existing"),
                        of.text("locked", 8, "locked"))),
                adds(NewThing.WIRE));
    }

    Sheet<LoadSheet.Row> loads() {
        FieldColumns<LoadSheet.Row> of = of(LoadSheet.Row::component);
        return new EditedSheet<>(
                new LoadSheet(),
                Map.of(
                        "load.load", of.renaming(),
                        "load.name", of.edit(Field.of("name"), words.get("name")),
                        "load.rated-at",
                                of.edit(Field.of("device.draw.ratedVolts", Unit.VOLT), words.get("rated-voltage"))),
                details(List.of(
                        of.number("start-current", Unit.AMP, "device.draw.startAmps"),
                        of.text("control", 10, "device.control"),
                        of.number("allowed-drop", Unit.VOLT, "device.allowedDropVolts"),
                        of.text("part", 14, "part"),
                        of.text("zone", 12, "zone"),
                        of.text("at", 9, "at"),
                        of.text("existing", 8, "existing"))),
                devices(true));
    }

    Sheet<ConnectorSheet.Row> connectors() {
        FieldColumns<ConnectorSheet.Row> of = of(ConnectorSheet.Row::connector);
        return new EditedSheet<>(
                new ConnectorSheet(),
                Map.of(
                        "connector.connector", of.renaming(),
                        "connector.name", of.edit(Field.of("name"), words.get("name")),
                        "connector.mates-with", typed(ThingLists::mate, CavityEdits::mate),
                        "connector.cavities", typed(ThingLists::cavityNames, CavityEdits::names),
                        "connector.stands", of.edit(Field.of("limitCelsius", Unit.DEGREE_CELSIUS), words.get("stands")),
                        "connector.at", of.edit(Field.of("at"), words.get("at")),
                        "connector.housing", of.edit(Field.of("part"), words.get("part")),
                        "connector.existing", of.edit(Field.of("existing"), words.get("existing"))),
                details(List.of(
                        of.text("lock", 14, "lock"),
                        of.text("backshell", 14, "backshell"),
                        of.text("zone", 12, "zone"),
                        of.text("assembly", 10, "assembly"))),
                adds(NewThing.CONNECTOR));
    }

    /** Makes the edit of what was typed of a connector. */
    private interface Typing {
        Edit of(Harness harness, ConnectorId connector, String typed);
    }

    private CellEdit<ConnectorSheet.Row> typed(Function<Connector, String> start, Typing typing) {
        return ColumnEdits.of(
                row -> true, row -> start.apply(row.connector()), ConnectorSheet.Row::connector, (connectors, text) -> {
                    List<Edit> edits = connectors.stream()
                            .map(each -> typing.of(harness.get().orElseThrow(), each.id(), text))
                            .toList();
                    return edits.size() == 1
                            ? edits.get(0)
                            : new Compound(words.text("set-connectors", edits.size()), edits);
                });
    }

    private static String mate(Connector connector) {
        return connector
                .component()
                .map(ElementId::value)
                .or(() -> connector.mate().map(ElementId::value))
                .orElse("");
    }

    private static String cavityNames(Connector connector) {
        return connector.cavities().stream().map(Cavity::name).collect(Collectors.joining(", "));
    }

    Sheet<ComponentSheet.Row> components() {
        FieldColumns<ComponentSheet.Row> of = of(ComponentSheet.Row::component);
        return new EditedSheet<>(
                new ComponentSheet(),
                Map.of(
                        "component.component", of.renaming(),
                        "component.name", of.edit(Field.of("name"), words.get("name")),
                        "component.zone", of.edit(Field.of("zone"), words.get("zone")),
                        "component.at", of.edit(Field.of("at"), words.get("at")),
                        "component.part", of.edit(Field.of("part"), words.get("part"))),
                details(List.of(
                        of.text("series", 20, "device.series"),
                        of.number("own-resistance", Unit.MILLIOHM, "device.ohms"),
                        of.number("rated-voltage", Unit.VOLT, "device.ratedVolts"),
                        of.number("breaking-capacity", Unit.AMP, "device.breakingAmps"),
                        of.text("positions", 14, "device.positions"),
                        of.number("contact-resistance", Unit.MILLIOHM, "device.contactOhms"),
                        of.number("limit", Unit.AMP, "device.limitAmps"),
                        of.number("coil", Unit.OHM, "device.coilOhms"),
                        of.number("electromotive-force", Unit.VOLT, "device.emfVolts"),
                        of.number("internal-resistance", Unit.MILLIOHM, "device.internalOhms"),
                        of.number("capacity", Unit.AMP_HOUR, "device.capacityAmpHours"),
                        of.number("own-draw", Unit.AMP, "device.drawAmps"),
                        of.text("terminals", 14, "device.terminals"),
                        of.text("assembly", 10, "assembly"),
                        of.text("existing", 8, "existing"))),
                devices(false));
    }

    Sheet<JunctionSheet.Row> junctions() {
        FieldColumns<JunctionSheet.Row> of = of(JunctionSheet.Row::element);
        return new EditedSheet<>(
                new JunctionSheet(),
                Map.of(
                        "junction.junction", of.renaming(),
                        "junction.name", of.edit(Field.of("name"), words.get("name")),
                        "junction.joint", of.edit(Field.of("jointOhms", Unit.MILLIOHM), words.get("joint"))),
                details(List.of(
                        of.text("place", 16, "place"),
                        of.text("body", 8, "body"),
                        of.text("at", 9, "at"),
                        of.text("zone", 12, "zone"),
                        of.text("part", 14, "part"),
                        of.text("form", 12, "form"),
                        of.text("sealed", 8, "sealed"),
                        of.text("cover", 12, "cover"),
                        of.text("studs", 8, "studs"),
                        of.number("stud-thread", Unit.MILLIMETRE, "studMm"),
                        of.text("torque", 10, "torque"),
                        of.text("assembly", 10, "assembly"),
                        of.text("existing", 8, "existing"))),
                adds(NewThing.SPLICE, NewThing.GROUND));
    }

    Sheet<StateSheet.Row> states() {
        FieldColumns<StateSheet.Row> of = of(StateSheet.Row::state);
        return new EditedSheet<>(
                new StateSheet(),
                Map.of(
                        "state.state", of.renaming(),
                        "state.name", of.edit(Field.of("name"), words.get("name")),
                        "state.engine", of.edit(Field.of("mode"), words.get("engine"))),
                details(List.of(of.number("duration", Unit.SECOND, "durationSeconds"))),
                adds(NewThing.STATE));
    }

    Sheet<Part> parts() {
        FieldColumns<Part> of = of(part -> part);
        return new EditedSheet<>(
                new PartSheet(),
                Map.of(
                        "part.part", of.renaming(),
                        "part.description", of.edit(Field.of("description"), words.get("description")),
                        "part.maker", of.edit(Field.of("maker"), words.get("maker"))),
                List.of(of.number("mass", Unit.GRAM, "massKg").chosenOnly()),
                adds(NewThing.PART));
    }

    Sheet<ContactSheet.Row> contacts() {
        FieldColumns<ContactSheet.Row> of = of(ContactSheet.Row::contact);
        return new EditedSheet<>(
                new ContactSheet(),
                Map.of(
                        "contact.contact", of.renaming(),
                        "contact.part", of.edit(Field.of("part"), words.get("part")),
                        "contact.from",
                                of.edit(
                                        Field.of("conductorMinMm2", Unit.SQUARE_MILLIMETRE),
                                        words.get("smallest-conductor")),
                        "contact.to",
                                of.edit(
                                        Field.of("conductorMaxMm2", Unit.SQUARE_MILLIMETRE),
                                        words.get("largest-conductor")),
                        "contact.plating", of.edit(Field.of("plating"), words.get("plating"))),
                details(List.of(
                        of.number("contact-resistance", Unit.MILLIOHM, "contactOhms"),
                        of.number("insulation-from", Unit.MILLIMETRE, "insulationMinMm"),
                        of.number("insulation-to", Unit.MILLIMETRE, "insulationMaxMm"),
                        of.number("rated-voltage", Unit.VOLT, "ratedVolts"))),
                adds(NewThing.CONTACT));
    }

    /** What had no list of its own, by key: everything else a harness is made of. */
    Map<String, Sheet<?>> others() {
        Map<String, Sheet<?>> sheets = new LinkedHashMap<>();
        put(
                sheets,
                "bodies",
                s -> s.bodies().all(),
                NewThing.BODY,
                of -> List.of(
                        of.text("name", 22, "name"),
                        of.text("isolated", 8, "isolated"),
                        ColumnEdits.words(
                                words.term("paths"),
                                words.get("paths.about"),
                                40,
                                PointsText::paths,
                                (bodies, typed) ->
                                        PointsText.paths(harness.get().orElseThrow(), bodies, typed)),
                        BodyRules.toMiddle(),
                        BodyRules.source()));
        put(
                sheets,
                "straps",
                s -> s.straps().all(),
                NewThing.STRAP,
                of -> List.of(
                        of.text("name", 22, "name"),
                        of.text("from", 9, "from"),
                        of.text("to", 9, "to"),
                        of.number("own-resistance", Unit.MILLIOHM, "ohms"),
                        of.number("length", Unit.METRE, "lengthMetres"),
                        of.number("area", Unit.SQUARE_MILLIMETRE, "areaMm2"),
                        of.text("part", 14, "part"),
                        of.text("existing", 8, "existing")));
        put(
                sheets,
                "breakouts",
                s -> s.breakouts().all(),
                NewThing.BREAKOUT,
                of -> List.of(of.text("name", 26, "name"), of.text("assembly", 10, "assembly")));
        put(
                sheets,
                "segments",
                s -> s.segments().all(),
                NewThing.SEGMENT,
                of -> List.of(
                        of.text("from", 9, "from"),
                        of.text("to", 9, "to"),
                        of.number("length", Unit.METRE, "lengthMetres"),
                        of.text("zone", 12, "zone"),
                        of.number("lay", Unit.MILLIMETRE, "layLengthMm"),
                        of.text("assembly", 10, "assembly")));
        put(
                sheets,
                "zones",
                s -> s.zones().all(),
                NewThing.ZONE,
                of -> List.of(
                        of.text("name", 22, "name"),
                        of.number("ambient", Unit.DEGREE_CELSIUS, "ambientCelsius"),
                        of.text("engine-space", 12, "engineSpace")));
        put(
                sheets,
                "cables",
                s -> s.cables().all(),
                NewThing.CABLE,
                of -> List.of(
                        of.text("name", 22, "name"),
                        of.text("cable-kind", 14, "kind"),
                        of.text("shielded", 8, "shielded"),
                        of.number("outside-diameter", Unit.MILLIMETRE, "outsideDiameterMm"),
                        of.number("lay", Unit.MILLIMETRE, "layLengthMm"),
                        of.text("part", 14, "part")));
        put(
                sheets,
                "assemblies",
                s -> s.assemblies().all(),
                NewThing.ASSEMBLY,
                of -> List.of(
                        of.text("name", 26, "name"),
                        of.text("number", 14, "number"),
                        of.text("revision", 8, "revision")));
        put(
                sheets,
                "notes",
                s -> s.notes().all(),
                NewThing.NOTE,
                of -> List.of(of.text("about", 10, "about"), of.text("note", 70, "text")));
        return sheets;
    }

    private <E extends Element> void put(
            Map<String, Sheet<?>> sheets,
            String key,
            Function<Harness, Collection<E>> all,
            NewThing kind,
            Function<FieldColumns<E>, List<Column<E>>> columns) {
        FieldColumns<E> of = of(each -> each);
        List<Column<E>> shown = new ArrayList<>();
        shown.add(of.identity(TradeWords.named(kind), words.get("identity.about"), 10));
        shown.addAll(columns.apply(of));
        sheets.put(key, new ThingSheet<>(words.get(key), all, shown, adds(kind)));
    }
}
