package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.bus.traffic.PackedMessage;
import org.ohmloom.signal.bus.wiring.NodePlace;
import org.ohmloom.signal.study.BusReading;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** The data buses as text. */
final class BusesText {

    private BusesText() {}

    static void print(Analysis analysis, PrintWriter out) {
        for (BusReading reading : analysis.evidence().signals().buses()) {
            out.println();
            out.println("DATA BUS " + reading.bus().id() + " at "
                    + Formats.in(reading.bus().bitsPerSecond() / 1000, Unit.KILOBIT_PER_SECOND) + " (trunk "
                    + Formats.metres(reading.wiring().trunkMetres()) + ", stubs "
                    + Formats.metres(reading.wiring().stubsMetres()) + ", load "
                    + Formats.percent(reading.traffic().loadFraction()) + " of its time)");
            nodes(reading, out);
            messages(reading, out);
        }
    }

    private static void nodes(BusReading reading, PrintWriter out) {
        TextTable table =
                new TextTable().left("NODE").right("ALONG").right("STUB").right("AT REST");
        for (NodePlace node : reading.wiring().nodes()) {
            table.row(
                    node.unit().value(),
                    metres(node.alongMetres()),
                    metres(node.stubMetres()),
                    node.restOhms().isPresent() ? Formats.ohms(node.restOhms().getAsDouble()) : "-");
        }
        table.print(out);
    }

    private static void messages(BusReading reading, PrintWriter out) {
        if (reading.traffic().messages().isEmpty()) {
            return;
        }
        TextTable table = new TextTable()
                .left("MESSAGE")
                .left("IDENTIFIER")
                .left("SENDER")
                .right("BYTES")
                .right("PERIOD")
                .right("FRAME")
                .right("WORST RESPONSE");
        for (PackedMessage message : reading.traffic().messages()) {
            MessageTiming timing = reading.traffic().timingOf(message).orElseThrow();
            table.row(
                    message.message().id(),
                    message.identifierText(),
                    message.sender().value(),
                    String.valueOf(message.message().dataBytes()),
                    Formats.seconds(message.message().periodSeconds()),
                    Formats.seconds(timing.frameSeconds()),
                    timing.responseSeconds().isPresent()
                            ? Formats.seconds(timing.responseSeconds().getAsDouble())
                            : "never");
        }
        table.print(out);
    }

    private static String metres(OptionalDouble metres) {
        return metres.isPresent() ? Formats.metres(metres.getAsDouble()) : "-";
    }
}
