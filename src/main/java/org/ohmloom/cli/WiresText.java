package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.units.Formats;

/** Wires and protective devices as text, the most loaded first. */
final class WiresText {

    private WiresText() {}

    static void print(Analysis analysis, PrintWriter out) {
        List<WireRating> byLoad = analysis.ratings().values().stream()
                .sorted(Comparator.comparingDouble(WiresText::loading).reversed())
                .toList();
        if (byLoad.isEmpty()) {
            return;
        }
        TextTable table = new TextTable()
                .left("WIRE")
                .left("SIZE")
                .right("LENGTH")
                .right("CURRENT")
                .right("MAY CARRY")
                .right("LOADED")
                .right("DROP")
                .right("HEAT")
                .right("TEMPERATURE")
                .right("LIMIT")
                .left("WORST STATE")
                .right("SHORT PEAK")
                .left("NEEDS")
                .left("BECAUSE OF");
        byLoad.forEach(rating -> row(analysis, rating, table));
        out.println();
        out.println("WIRES (most loaded first; sizes in brackets are not entered yet)");
        table.print(out);
    }

    private static void row(Analysis analysis, WireRating rating, TextTable table) {
        Optional<ConductorChoice> choice =
                Optional.ofNullable(analysis.conductors().get(rating.wire().id()));
        String size = rating.gauge().text();
        table.row(
                rating.wire().id().value(),
                rating.provisional() ? "(" + size + ")" : size,
                rating.lengthMetres().isPresent()
                        ? Formats.metres(rating.lengthMetres().getAsDouble())
                        : "unknown",
                Formats.amps(rating.worstAmps()),
                rating.ampacity().map(limit -> Formats.amps(limit.limitAmps())).orElse("unknown"),
                rating.ampacity().isPresent() ? Formats.percent(loading(rating)) : "-",
                Formats.volts(rating.worstDropVolts()),
                Formats.watts(rating.worstWatts()),
                Formats.celsius(rating.celsius()),
                rating.ampacity()
                        .map(limit -> Formats.celsius(limit.limitCelsius()))
                        .orElse("unknown"),
                rating.worstState()
                        .map(id -> analysis.harness().states().get(id))
                        .map(OperatingState::name)
                        .orElse("-"),
                rating.hasShortPeak() ? Formats.amps(rating.peakAmps()) : "-",
                choice.map(made -> made.gauge().map(gauge -> gauge.text()).orElse("none fits"))
                        .orElse("-"),
                choice.map(made -> made.governing().governor().words()).orElse("-"));
    }

    private static double loading(WireRating rating) {
        return rating.ampacity()
                .map(Ampacity::limitAmps)
                .filter(limit -> limit > 0)
                .map(limit -> rating.worstAmps() / limit)
                .orElse(0.0);
    }

    /** Protective devices with their ratings and what the chooser says. */
    static void devices(Analysis analysis, PrintWriter out) {
        TextTable table = new TextTable()
                .left("DEVICE")
                .right("RATING")
                .right("LARGEST LOAD")
                .right("SMALLEST THAT SERVES");
        analysis.devices()
                .values()
                .forEach(choice -> table.row(
                        choice.device().value(),
                        rating(analysis, choice.device().value()),
                        Formats.amps(choice.loadAmps()),
                        choice.ratingAmps().isPresent()
                                ? Formats.amps(choice.ratingAmps().getAsDouble())
                                : "none fits"));
        if (!table.isEmpty()) {
            out.println();
            out.println("PROTECTIVE DEVICES ('size' and the build pack say why)");
            table.print(out);
        }
    }

    private static String rating(Analysis analysis, String id) {
        return analysis.harness().components().all().stream()
                .filter(component -> component.id().value().equals(id))
                .map(component -> component.device())
                .filter(ProtectiveDevice.class::isInstance)
                .map(device -> Formats.amps(((ProtectiveDevice) device).ratingAmps()))
                .findFirst()
                .orElse("-");
    }
}
