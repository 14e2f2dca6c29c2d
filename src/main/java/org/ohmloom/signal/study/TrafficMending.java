package org.ohmloom.signal.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetIdentifier;
import org.ohmloom.edit.SetUpdateRate;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Measurement;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.bus.traffic.BusTraffic;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.channel.UpdateRate;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.SignalTables;

/** Changes of rates and identifiers that mend what is wrong with what is sent on a data bus, where one is clear. */
public final class TrafficMending {
    private final SignalStudy study;
    private final SignalTables tables;

    /**
     * Changes for a harness.
     *
     * @param study  its channels and buses
     * @param tables limits and figures
     */
    public TrafficMending(SignalStudy study, SignalTables tables) {
        this.study = study;
        this.tables = tables;
    }

    /** Sends a value at the rate suggested, or where it is aliased at the least usual rate above twice what reaches the converter. */
    public Optional<Edit> rate(ChannelReading reading, UpdateRate.Kind kind) {
        UpdateRate rate = reading.rate();
        return switch (kind) {
            case TOO_SLOW -> rate.suggestedHertz().stream()
                    .mapToObj(hertz -> sending(reading.channel(), hertz))
                    .findFirst();
            case ALIASED -> rate.fastestHertz().stream()
                    .map(hertz -> UpdateRate.above(2 * hertz))
                    .mapToObj(hertz -> sending(reading.channel(), hertz))
                    .findFirst();
            case SENSOR_TOO_SLOW -> Optional.empty();
        };
    }

    /** A message under an identifier nobody else has on the bus, next to its own; empty for those made of channels. */
    public Optional<Edit> identifier(BusReading reading, String message) {
        DataBus bus = reading.bus();
        return bus.messages().stream()
                .filter(each -> each.name().equals(message))
                .findFirst()
                .flatMap(sent -> {
                    Set<Integer> taken = taken(reading, sent);
                    int free = sent.identifier();
                    while (taken.contains(free)) {
                        free++;
                    }
                    return free < 1 << sent.identifierBits()
                            ? Optional.of(new SetIdentifier(bus.id(), message, free))
                            : Optional.empty();
                });
    }

    private static Set<Integer> taken(BusReading reading, DataBus.Sent of) {
        Set<Integer> taken = reading.traffic().messages().stream()
                .map(each -> each.message())
                .filter(each -> each.format().identifierBits() == of.identifierBits())
                .map(each -> each.identifier())
                .collect(Collectors.toSet());
        reading.bus().messages().stream()
                .filter(each -> each.identifierBits() == of.identifierBits())
                .forEach(each -> taken.add(each.identifier()));
        return taken;
    }

    /** A late message of a data sheet first of all its like, where everything then comes in time. */
    public Optional<Edit> sooner(BusReading reading, MessageTiming late) {
        DataBus bus = reading.bus();
        Optional<DataBus.Sent> sent = bus.messages().stream()
                .filter(each -> each.name().equals(late.message().id()))
                .findFirst();
        return sent.flatMap(each -> {
            int first = taken(reading, each).stream()
                            .mapToInt(Integer::intValue)
                            .min()
                            .orElse(0)
                    - 1;
            if (first < 0) {
                return Optional.empty();
            }
            DataBus changed = bus.sendingUnder(each.name(), first);
            List<SensorChannel> channels =
                    study.channels().stream().map(ChannelReading::channel).toList();
            boolean well =
                    BusTraffic.of(changed, channels, tables).timings().stream().allMatch(MessageTiming::isInTime);
            return well ? Optional.of(new SetIdentifier(bus.id(), each.name(), first)) : Optional.empty();
        });
    }

    /** Channels of the nodes that are sent more often than suggested, at the rate suggested, where that leaves the bus calm enough. */
    public Optional<Edit> calmer(BusReading reading) {
        Set<ComponentId> nodes =
                reading.bus().nodes().stream().map(DataBus.Node::unit).collect(Collectors.toSet());
        List<Edit> edits = new ArrayList<>();
        List<SensorChannel> calmed = new ArrayList<>();
        for (ChannelReading each : study.channels()) {
            OptionalDouble suggested = each.rate().suggestedHertz();
            boolean oftener = suggested.isPresent()
                    && each.rate().hertz().orElse(0) > suggested.getAsDouble()
                    && nodes.contains(each.channel().unit().id());
            SensorChannel channel = each.channel();
            if (oftener) {
                edits.add(sending(channel, suggested.getAsDouble()));
                Optional<Measurement> sent = channel.measurement().map(now -> now.sentAt(suggested.getAsDouble()));
                channel = channel.with(channel.sensor().measuring(sent));
            }
            calmed.add(channel);
        }
        double most = tables.figure(BusFigure.LOAD_MOST).value();
        return edits.isEmpty() || BusTraffic.of(reading.bus(), calmed, tables).loadFraction() > most
                ? Optional.empty()
                : Optional.of(new Compound(
                        SignalTexts.text("send-calmer", reading.bus().id()), edits));
    }

    private static Edit sending(SensorChannel channel, double hertz) {
        return new SetUpdateRate(channel.component().id(), hertz);
    }
}
