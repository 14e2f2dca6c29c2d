package org.ohmloom.signal.study;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.ohmloom.graph.Network;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.bus.traffic.BusTraffic;
import org.ohmloom.signal.bus.traffic.PackedMessage;
import org.ohmloom.signal.bus.wiring.BusWiringStudy;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.channel.SensorChannels;
import org.ohmloom.signal.channel.UpdateRate;
import org.ohmloom.signal.plan.PlanCheck;
import org.ohmloom.signal.plan.PlanProblem;
import org.ohmloom.tables.SignalTables;

/**
 * Channels and data buses of a harness. Nothing of it rests on currents; {@link SignalResults} works it out
 * when it is first asked for.
 *
 * @param channels channels in the order of the units and their pins
 * @param buses    data buses in the order of their ids
 * @param plan     what is wrong with the plans of the units' pins
 */
public record SignalStudy(List<ChannelReading> channels, List<BusReading> buses, List<PlanProblem> plan) {
    public SignalStudy {
        channels = List.copyOf(channels);
        buses = List.copyOf(buses);
        plan = List.copyOf(plan);
    }

    /** A channel on each bus its unit is a node of. */
    public List<ChannelOnBus> busesOf(SensorChannel channel) {
        return buses.stream()
                .filter(reading -> reading.bus().nodes().stream()
                        .anyMatch(node -> node.unit().equals(channel.unit().id())))
                .map(reading -> {
                    Optional<PackedMessage> message = reading.traffic().messageOf(channel);
                    return new ChannelOnBus(reading.bus(), message, message.flatMap(reading.traffic()::timingOf));
                })
                .toList();
    }

    /**
     * Studies a harness.
     *
     * @param harness the harness
     * @param network its network as drawn
     * @param lengths length of each wire where it is known, m
     * @param tables  limits and figures
     */
    public static SignalStudy of(
            Harness harness, Network network, SortedMap<WireId, Double> lengths, SignalTables tables) {
        ReturnRules rules = harness.rules().returnRules();
        List<SensorChannel> channels = SensorChannels.of(harness, network);
        return new SignalStudy(
                channels.stream()
                        .map(channel -> {
                            UpdateRate rate = UpdateRate.of(channel, tables);
                            return new ChannelReading(
                                    channel, rate, SensorCalibration.of(channel, rate.hertz(), rules));
                        })
                        .toList(),
                harness.buses().all().stream()
                        .map(bus -> new BusReading(
                                bus,
                                BusWiringStudy.of(harness, network, lengths, tables, bus),
                                BusTraffic.of(bus, channels, tables)))
                        .toList(),
                PlanCheck.of(harness, channels));
    }
}
