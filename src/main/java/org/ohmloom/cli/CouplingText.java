package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.ground.coupling.Coupling;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;

/** What switching wires put onto signals beside them, as text and JSON. */
final class CouplingText {

    private static final int MOST_ROWS = 20;

    private CouplingText() {}

    static void print(Analysis analysis, PrintWriter out) {
        List<Coupling> couplings = analysis.evidence().returns().couplings();
        if (couplings.isEmpty()) {
            return;
        }
        TextTable table = new TextTable()
                .left("SWITCHING WIRE")
                .left("SIGNAL WIRE")
                .left("SENSOR")
                .right("SIDE BY SIDE")
                .right("EDGE")
                .right("IN")
                .right("ELECTRIC")
                .right("MAGNETIC")
                .right("AT THE INPUT")
                .right("MAY BE")
                .left("GUARDED BY");
        couplings.stream()
                .limit(MOST_ROWS)
                .forEach(each -> table.row(
                        each.culprit().value(),
                        each.victim().value(),
                        each.sensor().value(),
                        Formats.metres(each.lengthMetres()),
                        Formats.volts(each.edge().volts()) + ", "
                                + Formats.amps(each.edge().amps()),
                        Formats.seconds(each.edge().seconds()),
                        Formats.volts(each.capacitiveVolts()),
                        Formats.volts(each.inductiveVolts()),
                        Formats.volts(each.arrivingVolts()),
                        each.limitVolts().isPresent()
                                ? Formats.volts(each.limitVolts().getAsDouble())
                                : "-",
                        each.guardedBy().english()));
        out.println();
        out.println(
                "COUPLING ALONG BUNDLES (wires taken to lie side by side wherever they share a segment; at the input:"
                        + " behind its filter where that is entered)");
        table.print(out);
        if (couplings.size() > MOST_ROWS) {
            out.println("  " + (couplings.size() - MOST_ROWS) + " more in JSON.");
        }
    }

    static void write(Analysis analysis, JsonObjectWriter root) {
        root.array("couplings", array -> analysis.evidence()
                .returns()
                .couplings()
                .forEach(each -> array.object(item -> {
                    item.put("culprit", each.culprit().value());
                    item.put("victim", each.victim().value());
                    item.put("sensor", each.sensor().value());
                    item.put("state", each.state().value());
                    item.put("lengthMetres", each.lengthMetres());
                    item.put("separationMetres", each.separationMetres());
                    item.put("edgeVolts", each.edge().volts());
                    item.put("edgeAmps", each.edge().amps());
                    item.put("edgeSeconds", each.edge().seconds());
                    item.put("capacitiveVolts", each.capacitiveVolts());
                    item.put("inductiveVolts", each.inductiveVolts());
                    item.put("volts", each.volts());
                    item.put("filteredVolts", each.filteredVolts());
                    item.put("limitVolts", each.limitVolts());
                    item.put("guardedBy", each.guardedBy().english());
                })));
    }
}
