package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** The lines of the pin tables: what sits in each cavity, on each terminal, splice and ground point. */
final class PinRows {

    private final Harness harness;
    private final Figures figures;
    private final NoteFlags flags;

    PinRows(Harness harness, Figures figures, NoteFlags flags) {
        this.harness = harness;
        this.figures = figures;
        this.flags = flags;
    }

    /** The cavities of a connector; unused ones together in the last lines. */
    List<PinRow> of(Connector connector) {
        List<PinRow> rows = new ArrayList<>();
        List<Cavity> open = new ArrayList<>();
        List<Cavity> plugged = new ArrayList<>();
        for (Cavity cavity : connector.cavities()) {
            List<PinRow> wires = rows(new WireEnd.AtCavity(connector.id(), cavity.name()), cavity.name());
            if (!wires.isEmpty()) {
                rows.addAll(wires);
            } else if (cavity.plug().isPresent()) {
                plugged.add(cavity);
            } else {
                open.add(cavity);
            }
        }
        if (!plugged.isEmpty()) {
            rows.add(PinRow.note("", "Plugged: " + names(plugged)));
        }
        if (!open.isEmpty()) {
            rows.add(PinRow.note("", "Unused: " + names(open)));
        }
        return rows;
    }

    /** Everything that is not in a cavity: terminals of components, ground points and splices. */
    List<PinRow> elsewhere() {
        List<PinRow> rows = new ArrayList<>();
        harness.wires().all().stream()
                .flatMap(wire -> wire.ends().stream())
                .filter(end -> !(end instanceof WireEnd.AtCavity) && !(end instanceof WireEnd.Loose))
                .distinct()
                .sorted((one, other) -> NaturalOrder.INSTANCE.compare(one.text(), other.text()))
                .forEach(end -> rows.addAll(rows(end, end.text())));
        return rows;
    }

    /** The wires in a cavity. */
    List<Wire> wires(Connector connector, Cavity cavity) {
        WireEnd end = new WireEnd.AtCavity(connector.id(), cavity.name());
        return harness.wires().all().stream()
                .filter(wire -> wire.ends().contains(end))
                .toList();
    }

    private List<PinRow> rows(WireEnd end, String at) {
        List<PinRow> rows = new ArrayList<>();
        for (Wire wire : harness.wires().all()) {
            if (wire.from().equals(end)) {
                rows.add(row(at, wire, wire.to()));
            }
            if (wire.to().equals(end)) {
                rows.add(row(at, wire, wire.from()));
            }
        }
        return rows;
    }

    private PinRow row(String at, Wire wire, WireEnd other) {
        String size = figures.gauge(wire.id()).map(Words::size).orElse("to be chosen");
        String word = SignalLook.of(wire.signalClass()).word().english();
        String flag = flags.of(wire.id().value());
        String id = wire.id() + (flag.isEmpty() ? "" : " " + flag);
        return new PinRow(at, id, size, wire.colour(), wire.circuit().orElse(word), other.text(), "");
    }

    private static String names(List<Cavity> cavities) {
        return cavities.stream().map(Cavity::name).collect(Collectors.joining(", "));
    }
}
