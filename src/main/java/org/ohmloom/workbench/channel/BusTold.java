package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.bus.traffic.BusSignal;
import org.ohmloom.signal.bus.traffic.BusTraffic;
import org.ohmloom.signal.bus.traffic.PackedMessage;
import org.ohmloom.signal.bus.wiring.BusWiringStudy;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.wiring.TrunkEnds;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.BusLimit;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.SignalTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.Words;

/** What comes of a data bus as it is typed: its limits, its load, each message with its worst response, and what is wrong. */
final class BusTold {

    private final Words words;
    private final Harness harness;
    private final SignalTables tables;
    private final List<SensorChannel> channels;

    BusTold(Words words, Harness harness, SignalTables tables, List<SensorChannel> channels) {
        this.words = words;
        this.harness = harness;
        this.tables = tables;
        this.channels = channels;
    }

    List<String> lines(DataBus bus) {
        List<String> lines = new ArrayList<>();
        wrong(bus, lines);
        lines.add(limits(bus));
        BusTraffic traffic = BusTraffic.of(bus, channels, tables);
        lines.add(words.get(
                "bus.told.load",
                Formats.percent(traffic.loadFraction()),
                Formats.percent(tables.figure(BusFigure.LOAD_MOST).value())));
        if (!traffic.clashing().isEmpty()) {
            lines.add(words.get("bus.clashing", String.join(", ", traffic.clashing())));
        }
        if (!traffic.seldom().isEmpty()) {
            lines.add(words.get("bus.seldom", String.join(", ", traffic.seldom())));
        }
        if (!traffic.unsent().isEmpty()) {
            lines.add(words.get("bus.unsent", String.join(", ", traffic.unsent())));
        }
        traffic.messages().forEach(each -> lines.add(message(traffic, each)));
        return lines;
    }

    private void wrong(DataBus bus, List<String> lines) {
        for (DataBus other : harness.buses().all()) {
            bus.nodes().stream()
                    .filter(node -> !other.id().equals(bus.id())
                            && other.nodes().stream()
                                    .anyMatch(each -> each.unit().equals(node.unit())
                                            && (each.high().equals(node.high())
                                                    || each.low().equals(node.low()))))
                    .forEach(node -> lines.add(words.get("bus.told.on-other", node.unit(), other.id())));
        }
        if (bus.nodes().size() < 2) {
            lines.add(words.get("bus.told.few"));
        }
        if (bus.terminations().size() != 2) {
            lines.add(words.get("bus.told.ends", bus.terminations().size()));
        } else {
            List<String> inside = bus.terminations().stream()
                    .flatMap(each -> each.insideUnit().stream())
                    .map(each -> each.value())
                    .sorted()
                    .toList();
            List<String> ends = TrunkEnds.of(harness, bus.nodes()).stream()
                    .map(node -> node.unit().value())
                    .sorted()
                    .toList();
            if (inside.size() == 2 && !inside.equals(ends)) {
                lines.add(words.get("bus.told.not-at-ends", String.join(", ", ends)));
            }
        }
        for (DataBus.Sent each : bus.messages()) {
            List<String> known = names(each);
            each.signals().stream()
                    .filter(name -> !known.contains(name))
                    .forEach(name -> lines.add(words.get("bus.told.no-channel", each.sender(), name, each.name())));
        }
    }

    private List<String> names(DataBus.Sent of) {
        List<String> names = new ArrayList<>();
        channels.stream().filter(each -> each.unit().id().equals(of.sender())).forEach(each -> names.add(each.name()));
        if (harness.components().get(of.sender()).device() instanceof ControlUnit unit) {
            unit.channels().forEach(each -> names.add(each.name()));
        }
        return names;
    }

    private String limits(DataBus bus) {
        Optional<BusLimit> limit = tables.limit(BusWiringStudy.limitSet(bus, tables), bus.bitsPerSecond());
        return limit.map(each -> words.get(
                        "bus.told.limits",
                        each.title(),
                        Formats.in(each.bitsPerSecond() / 1000, Unit.KILOBIT_PER_SECOND),
                        metres(each.busMetres()),
                        metres(each.stubMetres()),
                        each.nodes()
                                .map(most -> String.valueOf((int) most.value()))
                                .orElseGet(() -> words.get("bus.told.open"))))
                .orElseGet(() -> words.get("bus.told.no-limits"));
    }

    private String metres(Optional<CitedValue> most) {
        return most.map(each -> Formats.metres(each.value())).orElseGet(() -> words.get("bus.told.open"));
    }

    private String message(BusTraffic traffic, PackedMessage message) {
        Optional<MessageTiming> timing = traffic.timingOf(message);
        String response = timing.map(MessageTiming::responseSeconds)
                .filter(OptionalDouble::isPresent)
                .map(each -> Formats.seconds(each.getAsDouble()))
                .orElseGet(() -> words.get("bus.no-bound"));
        String values = message.signals().stream().map(BusSignal::name).collect(Collectors.joining(", "));
        return words.get(
                timing.filter(each -> !each.isInTime()).isPresent() ? "bus.told.late" : "bus.told.message",
                message.message().id(),
                message.identifierText(),
                message.sender(),
                Formats.seconds(message.message().periodSeconds()),
                response,
                values.isEmpty() ? words.get("bus.told.own-values") : values);
    }
}
