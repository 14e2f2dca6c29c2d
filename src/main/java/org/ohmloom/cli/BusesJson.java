package org.ohmloom.cli;

import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.ElementId;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.bus.traffic.BusSignal;
import org.ohmloom.signal.bus.traffic.PackedMessage;
import org.ohmloom.signal.bus.wiring.BusProblem;
import org.ohmloom.signal.bus.wiring.BusWiring;
import org.ohmloom.signal.bus.wiring.NodePlace;
import org.ohmloom.signal.calibration.CurvePoint;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.study.BusReading;
import org.ohmloom.signal.study.ChannelReading;
import org.ohmloom.signal.study.SignalStudy;
import org.ohmloom.store.JsonObjectWriter;

/** Data buses as the array {@code buses}, calibrations and update rates of channels as the array {@code calibrations}. */
final class BusesJson {

    private BusesJson() {}

    static void write(Analysis analysis, JsonObjectWriter root) {
        SignalStudy study = analysis.evidence().signals();
        root.objects("calibrations", study.channels(), BusesJson::channel);
        root.objects("buses", study.buses(), BusesJson::bus);
    }

    private static void channel(ChannelReading reading, JsonObjectWriter item) {
        item.put("sensor", reading.channel().component().id().value());
        item.put("name", reading.channel().name());
        item.put("unit", reading.channel().unit().id().value());
        item.put("pin", reading.channel().pin().name());
        item.put("wired", reading.channel().wired());
        item.put("timeConstantSeconds", reading.rate().timeConstantSeconds());
        item.put("timeConstantSource", reading.rate().timeConstantSource());
        item.put("suggestedHertz", reading.rate().suggestedHertz());
        item.put("rateHertz", reading.rate().hertz());
        item.put("fastestHertz", reading.rate().fastestHertz());
        reading.calibration().ifPresent(each -> calibration(each, item));
    }

    private static void calibration(SensorCalibration calibration, JsonObjectWriter item) {
        item.put("lowest", calibration.lowest());
        item.put("highest", calibration.highest());
        calibration.curve().ifPresent(curve -> {
            item.put("gives", SegmentsJson.word(curve.kind()));
            item.put("formula", curve.formula().english());
            item.put("source", curve.source().english());
            item.objects("points", calibration.points(), (CurvePoint point, JsonObjectWriter entry) -> {
                entry.put("value", point.value());
                entry.put("signal", point.signal());
                entry.put("pinVolts", point.pinVolts());
            });
        });
        item.objects("byVoltage", calibration.byVoltage(), (CurvePoint point, JsonObjectWriter entry) -> {
            entry.put("pinVolts", point.pinVolts());
            entry.put("value", point.value());
        });
        calibration.resolution().ifPresent(step -> {
            item.put("coarsestStep", step.coarsest());
            item.put("coarsestStepAt", step.coarsestAt());
            item.put("stepAtLowest", step.atLowest());
            item.put("stepAtHighest", step.atHighest());
        });
        item.texts(
                "problems",
                calibration.problems().stream()
                        .map(each -> SegmentsJson.word(each.kind()))
                        .toList());
    }

    private static void bus(BusReading reading, JsonObjectWriter item) {
        BusWiring wiring = reading.wiring();
        item.put("id", reading.bus().id().value());
        item.put("name", reading.bus().name());
        item.put("bitsPerSecond", reading.bus().bitsPerSecond());
        item.put("trunkMetres", wiring.trunkMetres());
        item.put("stubsMetres", wiring.stubsMetres());
        item.put("loopOhms", wiring.loopOhms());
        item.put("allowedOhms", wiring.allowedOhms());
        item.texts("wires", ids(wiring.wires()));
        item.texts("untwisted", ids(wiring.untwisted()));
        item.objects("nodes", wiring.nodes(), (NodePlace node, JsonObjectWriter entry) -> {
            entry.put("unit", node.unit().value());
            entry.put("joined", node.joined());
            entry.put("alongMetres", node.alongMetres());
            entry.put("stubMetres", node.stubMetres());
            entry.put("restOhms", node.restOhms());
        });
        item.objects("problems", wiring.problems(), (BusProblem problem, JsonObjectWriter entry) -> {
            entry.put("kind", SegmentsJson.word(problem.kind()));
            entry.put("sentence", problem.words().english());
            entry.put("value", problem.value());
            entry.put("limit", problem.limit());
            entry.put("source", problem.source());
        });
        item.put("utilisation", reading.traffic().loadFraction());
        item.objects(
                "messages",
                reading.traffic().messages(),
                (PackedMessage message, JsonObjectWriter entry) -> message(reading, message, entry));
        item.texts("unsent", reading.traffic().unsent());
        item.texts("clashing", reading.traffic().clashing());
    }

    private static void message(BusReading reading, PackedMessage message, JsonObjectWriter entry) {
        entry.put("id", message.message().id());
        entry.put("identifier", message.identifierText());
        entry.put("sender", message.sender().value());
        entry.put("dataBytes", message.message().dataBytes());
        entry.put("periodSeconds", message.message().periodSeconds());
        entry.put("deadlineSeconds", message.message().deadlineSeconds());
        entry.put(
                "mostBits",
                message.message().format().mostBits(message.message().dataBytes()));
        reading.traffic().timingOf(message).ifPresent((MessageTiming timing) -> {
            entry.put("frameSeconds", timing.frameSeconds());
            entry.put("blockingSeconds", timing.blockingSeconds());
            entry.put("worstResponseSeconds", timing.responseSeconds());
        });
        entry.texts("signals", message.signals().stream().map(BusSignal::name).toList());
    }

    private static List<String> ids(List<? extends ElementId> ids) {
        return ids.stream().map(ElementId::value).toList();
    }
}
