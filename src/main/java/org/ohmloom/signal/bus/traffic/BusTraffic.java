package org.ohmloom.signal.bus.traffic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DataBus;
import org.ohmloom.signal.bus.Message;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.bus.ResponseTimes;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.channel.UpdateRate;
import org.ohmloom.tables.SignalTables;

/**
 * What is sent on one bus and how late it can come.
 *
 * @param bus      the bus
 * @param messages messages in the order of their priority, the first one first
 * @param timings  timing of each, in the same order
 * @param loadFraction share of its time the bus is busy with every frame as long as it can be
 * @param unsent   channels of its nodes that have no rate, or for which there is no identifier left
 * @param clashing names of messages that have the identifier of another and are left out of the timing
 * @param seldom   channels whose message a person has entered is sent less often than their rate asks
 */
public record BusTraffic(
        DataBus bus,
        List<PackedMessage> messages,
        List<MessageTiming> timings,
        double loadFraction,
        List<String> unsent,
        List<String> clashing,
        List<String> seldom) {

    /** A message may come later by so much of its value's period: not by rounding alone. */
    private static final double NOISE_RATIO = 1e-9;

    public BusTraffic {
        messages = List.copyOf(messages);
        timings = List.copyOf(timings);
        unsent = List.copyOf(unsent);
        clashing = List.copyOf(clashing);
        seldom = List.copyOf(seldom);
    }

    /** The traffic of a bus: what its nodes read, each value at its rate, and what is entered. */
    public static BusTraffic of(DataBus bus, List<SensorChannel> channels, SignalTables tables) {
        Set<ComponentId> nodes = bus.nodes().stream().map(DataBus.Node::unit).collect(Collectors.toSet());
        int bits = bus.packing().orElse(DataBus.Packing.USUAL).valueBits();
        List<BusSignal> signals = new ArrayList<>();
        List<String> unsent = new ArrayList<>();
        for (SensorChannel channel : channels) {
            if (nodes.contains(channel.unit().id())) {
                OptionalDouble hertz = UpdateRate.of(channel, tables).hertz();
                OptionalDouble sent = hertz.isPresent() ? hertz : entered(bus, channel);
                if (sent.isPresent()) {
                    signals.add(new BusSignal(channel.name(), channel.unit().id(), sent.getAsDouble(), bits));
                } else {
                    unsent.add(channel.name());
                }
            }
        }
        return of(bus, signals, unsent);
    }

    /** How often an entered message that names a channel is sent, Hz; empty where none does. */
    private static OptionalDouble entered(DataBus bus, SensorChannel channel) {
        return bus.messages().stream()
                .filter(each -> each.sender().equals(channel.unit().id())
                        && each.signals().contains(channel.name()))
                .mapToDouble(each -> 1 / each.periodSeconds())
                .max();
    }

    /** The traffic of a bus with these values on it. */
    public static BusTraffic of(DataBus bus, List<BusSignal> signals) {
        return of(bus, signals, List.of());
    }

    private static BusTraffic of(DataBus bus, List<BusSignal> signals, List<String> withoutRate) {
        List<PackedMessage> packed = FramePacking.of(bus, signals);
        List<String> unsent = new ArrayList<>(withoutRate);
        signals.stream()
                .filter(each ->
                        packed.stream().noneMatch(message -> message.signals().contains(each)))
                .forEach(each -> unsent.add(each.name()));
        Map<String, PackedMessage> byIdentifier = new HashMap<>();
        List<PackedMessage> sent = new ArrayList<>();
        List<String> clashing = new ArrayList<>();
        for (PackedMessage each : packed) {
            String key = each.message().format() + each.identifierText();
            if (byIdentifier.putIfAbsent(key, each) == null) {
                sent.add(each);
            } else {
                clashing.add(each.message().id());
            }
        }
        ResponseTimes times =
                ResponseTimes.of(sent.stream().map(PackedMessage::message).toList(), bus.bitsPerSecond());
        List<Message> order =
                times.messages().stream().map(MessageTiming::message).toList();
        sent.sort(Comparator.comparingInt(each -> order.indexOf(each.message())));
        return new BusTraffic(bus, sent, times.messages(), times.utilisation(), unsent, clashing, seldom(sent));
    }

    /** Values in messages that come less often than the values are to be sent. */
    private static List<String> seldom(List<PackedMessage> sent) {
        return sent.stream()
                .flatMap(message -> message.signals().stream()
                        .filter(each -> each.rateHertz() * message.message().periodSeconds() > 1 + NOISE_RATIO))
                .map(BusSignal::name)
                .distinct()
                .toList();
    }

    /**
     * Whether every message would come in time at another bit rate, without the bus being busier than so much of its time.
     *
     * @param bitsPerSecond bit rate, bit/s, more than 0
     * @param mostFraction  share of its time
     */
    public boolean isInTimeAt(double bitsPerSecond, double mostFraction) {
        ResponseTimes times =
                ResponseTimes.of(messages.stream().map(PackedMessage::message).toList(), bitsPerSecond);
        return times.utilisation() <= Math.max(mostFraction, loadFraction)
                && times.messages().stream().allMatch(MessageTiming::isInTime);
    }

    /** The message a channel's value is in. */
    public Optional<PackedMessage> messageOf(SensorChannel channel) {
        return messages.stream()
                .filter(message -> message.sender().equals(channel.unit().id())
                        && message.signals().stream()
                                .anyMatch(signal -> signal.name().equals(channel.name())))
                .findFirst();
    }

    /** The timing of a message. */
    public Optional<MessageTiming> timingOf(PackedMessage message) {
        return timings.stream()
                .filter(each -> each.message().equals(message.message()))
                .findFirst();
    }
}
