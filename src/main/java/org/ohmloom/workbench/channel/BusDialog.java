package org.ohmloom.workbench.channel;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.BusId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.study.ChannelReading;
import org.ohmloom.signal.wiring.TrunkEnds;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.WireTables;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** Asks for a data bus: a new one, or one that is there. */
final class BusDialog {

    /** Bit rate a new bus begins with, bit/s: common practice in vehicles, no source. */
    private static final double USUAL_BITS_PER_SECOND = 500_000;

    private BusDialog() {}

    /** The edit that enters it; empty when a person gives up or changes nothing. */
    static Optional<Edit> ask(Component over, Desk desk, DataBus bus) {
        List<SensorChannel> channels = desk.analysis().stream()
                .flatMap(results -> results.evidence().signals().channels().stream())
                .map(ChannelReading::channel)
                .toList();
        return new PaneDialog(over, "bus-dialog", Words.of("channels").get("bus.title", bus.id()))
                .noSmaller()
                .ask(answer -> new BusPane(desk.harness().orElseThrow(), bus, channels, answer), BusPane::okButton);
    }

    /** The bus that is selected, else the first; empty where there is none. */
    static Optional<DataBus> chosen(Desk desk) {
        List<DataBus> all =
                desk.harness().map(now -> List.copyOf(now.buses().all())).orElse(List.of());
        return all.stream()
                .filter(bus ->
                        desk.selection().lead().filter(bus.id().value()::equals).isPresent())
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    /** How a new bus begins: every unit with bus pins that is on none, terminated inside the two furthest apart. */
    static DataBus fresh(Harness harness) {
        List<DataBus.Node> nodes = BusNodes.free(harness);
        double ohms =
                WireTables.bundled().signals().figure(BusFigure.TERMINATION).value();
        return DataBus.of(
                        new BusId(new FreshIds(harness).next("CAN")),
                        Words.of("channels").get("bus.new.name"),
                        USUAL_BITS_PER_SECOND,
                        DataBus.SHORT_BITS,
                        nodes)
                .terminated(
                        nodes.size() < 2
                                ? List.of()
                                : TrunkEnds.of(harness, nodes).stream()
                                        .map(node -> DataBus.Termination.inside(ohms, node))
                                        .toList());
    }
}
