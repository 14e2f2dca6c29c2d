package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.ZoneId;
import org.ohmloom.units.Formats;

/** Makes the cards and measures them. */
final class CardMaker {

    static final double TITLE_MM = 2.2;
    static final double NAME_MM = 2.0;
    static final double SMALL_MM = 1.8;
    static final double PAD_MM = 1.5;
    static final double LINE_MM = 3.3;

    private static final double LEAST_BOX_MM = 20;
    private static final double MOST_NAME_MM = 36;
    private static final double LEAST_REMARK_MM = 24;
    private static final double LEAST_TAB_MM = 9;
    private static final double MOST_TAB_MM = 20;
    private static final double MOST_TERMINALS_MM = 14;
    private static final double TAB_HEIGHT_MM = 7.6;

    private final Harness harness;
    private final Lettering lettering;
    private final NoteFlags flags;
    private final Map<ComponentId, SortedSet<String>> terminals = new HashMap<>();

    CardMaker(Harness harness, Lettering lettering, NoteFlags flags) {
        this.harness = harness;
        this.lettering = lettering;
        this.flags = flags;
        harness.wires().all().stream().flatMap(wire -> wire.ends().stream()).forEach(end -> {
            if (end instanceof WireEnd.AtTerminal at) {
                terminals
                        .computeIfAbsent(at.component(), id -> new TreeSet<>(NaturalOrder.INSTANCE))
                        .add(at.terminal());
            }
        });
    }

    /** A component with those of its connectors and terminals that are in one place. */
    Card component(Component component, List<Connector> connectors, List<Tab> terminals) {
        List<Tab> tabs = new ArrayList<>(connectors.stream().map(this::tab).toList());
        tabs.addAll(terminals);
        Optional<ZoneId> zone = component.zone();
        for (Connector connector : connectors) {
            zone = zone.or(connector::zone);
        }
        String id = component.id().value();
        String remark = lettering.said(Words.told(component.device()));
        String text = existing(id + ", " + component.name() + ", " + remark, component.existing());
        return card(Card.Kind.COMPONENT, id, remark, component.name(), tabs, zone, text);
    }

    /** A connector that plugs into no component of the harness, alone or with its mate beside it. */
    Card connector(Connector connector, Optional<Connector> mate) {
        List<Tab> tabs = new ArrayList<>(List.of(tab(connector)));
        mate.ifPresent(other -> tabs.add(tab(other)));
        String id = connector.id().value();
        String remark =
                mate.map(other -> lettering.say("mates-with", other.id())).orElseGet(() -> lettering.say("free-end"));
        String text = id + ", " + connector.name() + ", " + lettering.said(Words.ways(connector));
        return card(Card.Kind.CONNECTOR, id, remark, connector.name(), tabs, connector.zone(), text);
    }

    Card ground(GroundPoint ground) {
        String body = harness.bodies().get(ground.body()).name();
        String id = ground.id().value();
        String text = lettering.say("ground.told", id, ground.name(), body);
        return card(
                Card.Kind.GROUND, id, lettering.say("ground-on", body), ground.name(), List.of(), ground.zone(), text);
    }

    Card splice(Splice splice) {
        String id = splice.id().value();
        String text = lettering.say("splice.told", id, splice.name());
        return card(Card.Kind.SPLICE, id, lettering.say("splice"), splice.name(), List.of(), Optional.empty(), text);
    }

    /** An end of a wire that is joined to nothing. */
    Card loose(Wire wire) {
        String id = wire.id().value();
        String text = lettering.say("loose.told", id);
        return card(
                Card.Kind.CONTINUATION, id, lettering.say("joined-to-nothing"), id, List.of(), Optional.empty(), text);
    }

    /** The end of a segment that is drawn elsewhere. */
    Card continuation(BundleSegment segment, String elsewhere) {
        String id = segment.id().value();
        String length = Formats.millimetres(segment.lengthMetres() * 1000);
        String name = lettering.say("goes-on-at", elsewhere);
        return card(Card.Kind.CONTINUATION, id, length, name, List.of(), Optional.empty(), id + ", " + name);
    }

    /** The end of a segment at a match line. */
    Card matchLine(BundleSegment segment, String letter, String from, String to) {
        String id = segment.id().value();
        String title = "Match line " + letter;
        String length = Formats.millimetres(segment.lengthMetres() * 1000);
        List<String> lines = new ArrayList<>(wrapped(from + " to " + to));
        lines.add(Elsewhere.PLACE);
        String text = id + ", " + title + ", from " + from + " to " + to + ", " + length + " in all";
        return card(Card.Kind.MATCH_LINE, id, title, "", id + " " + length, lines, List.of(), Optional.empty(), text);
    }

    /** One half of an in-line pair whose other half is drawn elsewhere. */
    Card half(Connector connector, Connector mate, String elsewhere, boolean onSheets) {
        String id = connector.id().value();
        String remark = lettering.say("mates-with", mate.id());
        String where = lettering.say("mate-at", elsewhere);
        String text = id + ", " + connector.name() + ", " + remark + ", " + where;
        List<String> lines = new ArrayList<>(wrapped(where));
        if (onSheets) {
            lines.add(Elsewhere.PLACE);
        }
        return card(
                Card.Kind.CONNECTOR,
                id,
                id,
                flags.of(id),
                remark,
                lines,
                List.of(tab(connector)),
                connector.zone(),
                text);
    }

    private List<String> wrapped(String text) {
        return lettering.wrapped(text, Weight.REGULAR, NAME_MM, MOST_NAME_MM, 2);
    }

    private String existing(String text, boolean existing) {
        return existing ? lettering.say("existing", text) : text;
    }

    Tab tab(Connector connector) {
        String id = connector.id().value();
        String ways = lettering.said(Words.ways(connector));
        String text = existing(lettering.say("connector.told", id, connector.name(), ways), connector.existing());
        return new Tab(id, lettering.cut(id, Weight.BOLD, NAME_MM, MOST_TAB_MM), ways, true, text);
    }

    /** The terminals of a component that wires are fastened to without a connector, if there are any. */
    List<Tab> terminals(Component component) {
        List<String> names = List.copyOf(terminals.getOrDefault(component.id(), new TreeSet<>()));
        if (names.isEmpty()) {
            return List.of();
        }
        String all = lettering.cut(String.join(" ", names), Weight.BOLD, NAME_MM, MOST_TERMINALS_MM);
        String id = component.id().value();
        String text = lettering.say("terminals.told", id, String.join(", ", names));
        return List.of(new Tab(id, all, lettering.say(names.size() == 1 ? "terminal" : "terminals"), false, text));
    }

    /** Width a tab wants, mm. */
    double tabWidthMm(Tab tab) {
        double title = lettering.widthMm(tab.title(), Weight.BOLD, NAME_MM);
        double subtitle = lettering.widthMm(tab.subtitle(), Weight.REGULAR, SMALL_MM);
        return Math.max(LEAST_TAB_MM, Math.max(title, subtitle) + 2 * PAD_MM);
    }

    private Card card(
            Card.Kind kind,
            String id,
            String remark,
            String name,
            List<Tab> tabs,
            Optional<ZoneId> zone,
            String description) {
        List<String> lines = name.equals(id) ? List.of() : wrapped(name);
        return card(kind, id, id, flags.of(id), remark, lines, tabs, zone, description);
    }

    private Card card(
            Card.Kind kind,
            String id,
            String heading,
            String flag,
            String remark,
            List<String> lines,
            List<Tab> tabs,
            Optional<ZoneId> zone,
            String description) {
        String title = lettering.cut(heading, Weight.BOLD, TITLE_MM, MOST_NAME_MM);
        double titleMm = lettering.widthMm(title, Weight.BOLD, TITLE_MM) + FlagDrawing.widthMm(lettering, flag);
        String kept =
                lettering.cut(remark, Weight.REGULAR, SMALL_MM, Math.max(LEAST_REMARK_MM, MOST_NAME_MM - titleMm));
        double widest = titleMm + (kept.isEmpty() ? 0 : 1.5 + lettering.widthMm(kept, Weight.REGULAR, SMALL_MM));
        for (String line : lines) {
            widest = Math.max(widest, lettering.widthMm(line, Weight.REGULAR, NAME_MM));
        }
        double symbol = kind.symbolMm();
        double tabWidth = tabs.stream().mapToDouble(this::tabWidthMm).max().orElse(0);
        double box = Math.max(symbol > 0 ? 0 : LEAST_BOX_MM, widest + 2 * PAD_MM);
        double textHeight = 2 * PAD_MM + TITLE_MM + lines.size() * LINE_MM;
        double height = Math.max(textHeight, Math.max(TAB_HEIGHT_MM, tabs.size() * TAB_HEIGHT_MM));
        double width = symbol + tabWidth + box;
        return new Card(kind, id, title, flag, kept, lines, tabs, tabWidth, width, height, zone, description);
    }
}
