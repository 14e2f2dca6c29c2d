package org.ohmloom.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.channel.UpdateRate;
import org.ohmloom.signal.study.ChannelOnBus;
import org.ohmloom.signal.study.ChannelReading;
import org.ohmloom.signal.study.SignalStudy;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.tables.SignalTables;

/** Channels as the array {@code channels}: of an analysed harness with what was checked of them, or of a plan. */
final class ChannelsJson {

    private ChannelsJson() {}

    /** Every sensor a unit reads and every output its plan names, by unit and pin. */
    static void write(Analysis analysis, JsonObjectWriter root) {
        SignalStudy study = analysis.evidence().signals();
        root.array("channels", array -> {
            for (Component component : analysis.harness().components().all()) {
                if (component.device() instanceof ControlUnit unit) {
                    for (Pin pin : unit.pins()) {
                        read(study, component.id(), pin)
                                .forEach(each -> array.object(item -> reading(study, each, item)));
                        driven(analysis.harness(), unit, pin)
                                .forEach(each -> array.object(item -> head(component.id(), each, "output", item)));
                    }
                }
            }
        });
    }

    private static List<ChannelReading> read(SignalStudy study, ComponentId unit, Pin pin) {
        return study.channels().stream()
                .filter(each -> each.channel().unit().id().equals(unit)
                        && each.channel().pin().name().equals(pin.name()))
                .toList();
    }

    private static List<Channel> driven(Harness harness, ControlUnit unit, Pin pin) {
        return unit.channels().stream()
                .filter(each -> each.pin().equals(pin.name())
                        && !(harness.components().get(each.component()).device() instanceof Sensor))
                .toList();
    }

    private static void reading(SignalStudy study, ChannelReading reading, JsonObjectWriter item) {
        item.put("id", reading.channel().name());
        item.put("unit", reading.channel().unit().id().value());
        item.put("pin", reading.channel().pin().name());
        item.put("sensor", reading.channel().component().id().value());
        item.put("direction", "input");
        item.put("supplyPin", reading.channel().fedBy().map(Pin::name));
        item.put("wired", reading.channel().wired());
        reading.calibration().ifPresent(each -> item.object("calibration", entry -> calibration(each, entry)));
        rate(reading.rate(), item);
        item.put(
                "bandwidthHertz",
                reading.channel()
                        .measurement()
                        .flatMap(Measurement::use)
                        .map(Measurement.Use::bandwidthHertz)
                        .orElse(OptionalDouble.empty()));
        item.put("bandwidthCheck", bandwidth(reading.rate()));
        List<ChannelOnBus> buses = study.busesOf(reading.channel());
        item.put(
                "busCheck",
                buses.stream().map(each -> each.check()).max(Enum::compareTo).map(SegmentsJson::word));
        item.objects("buses", buses, ChannelsJson::bus);
    }

    private static void calibration(SensorCalibration calibration, JsonObjectWriter entry) {
        calibration.curve().ifPresent(curve -> {
            entry.put("gives", SegmentsJson.word(curve.kind()));
            entry.put("formula", curve.formula().english());
        });
        entry.put("lowest", calibration.lowest());
        entry.put("highest", calibration.highest());
        entry.put(
                "coarsestStep",
                calibration.resolution().stream()
                        .mapToDouble(each -> each.coarsest())
                        .findFirst());
        entry.texts(
                "problems",
                calibration.problems().stream()
                        .map(each -> SegmentsJson.word(each.kind()))
                        .toList());
    }

    private static void rate(UpdateRate rate, JsonObjectWriter item) {
        item.put("suggestedHertz", rate.suggestedHertz());
        item.put("rateHertz", rate.hertz());
        item.put(
                "rateCheck",
                rate.suggestedHertz().isEmpty()
                        ? Optional.<String>empty()
                        : Optional.of(rate.has(UpdateRate.Kind.TOO_SLOW) ? "too-slow" : "fast-enough"));
    }

    private static Optional<String> bandwidth(UpdateRate rate) {
        if (rate.has(UpdateRate.Kind.SENSOR_TOO_SLOW)) {
            return Optional.of("sensor-too-slow");
        }
        if (rate.isAliased()) {
            return Optional.of("aliased");
        }
        return rate.fastestHertz().isPresent() && rate.hertz().isPresent() ? Optional.of("kept") : Optional.empty();
    }

    private static void bus(ChannelOnBus on, JsonObjectWriter entry) {
        entry.put("bus", on.bus().id().value());
        entry.put("check", SegmentsJson.word(on.check()));
        entry.put("message", on.message().map(each -> each.message().id()));
        entry.put(
                "worstResponseSeconds",
                on.timing().map(MessageTiming::responseSeconds).orElse(OptionalDouble.empty()));
        entry.put(
                "deadlineSeconds",
                on.message().stream()
                        .mapToDouble(each -> each.message().deadlineSeconds())
                        .findFirst());
    }

    /** The channels of a plan. */
    static void write(
            Harness harness, Map<ComponentId, List<Channel>> byUnit, SignalTables tables, JsonObjectWriter root) {
        root.array(
                "channels",
                array -> byUnit.forEach((id, channels) -> channels.forEach(channel -> array.object(item -> {
                    ControlUnit unit =
                            (ControlUnit) harness.components().get(id).device();
                    boolean reads =
                            harness.components().get(channel.component()).device() instanceof Sensor;
                    head(id, channel, reads ? "input" : "output", item);
                    if (harness.components().get(channel.component()).device() instanceof Sensor sensor) {
                        rate(UpdateRate.of(sensor, unit.pin(channel.pin()).orElseThrow(), tables), item);
                    }
                    channel.returnPin().ifPresent(pin -> item.put("returnPin", pin));
                }))));
    }

    private static void head(ComponentId unit, Channel channel, String direction, JsonObjectWriter item) {
        item.put("id", channel.name());
        item.put("unit", unit.value());
        item.put("pin", channel.pin());
        item.put("sensor", channel.component().value());
        item.put("direction", direction);
        channel.supplyPin().ifPresent(pin -> item.put("supplyPin", pin));
    }
}
