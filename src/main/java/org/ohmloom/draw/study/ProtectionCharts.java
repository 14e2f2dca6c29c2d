package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.chart.CurrentLimit;
import org.ohmloom.draw.chart.OpeningBand;
import org.ohmloom.draw.chart.TimeCurrentChart;
import org.ohmloom.draw.chart.TimeCurrentCurve;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.size.protection.ConductorProtection;
import org.ohmloom.size.protection.CurvePoint;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.ProtectionCurves;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.size.protection.TimeCurrentBand;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** Opening times of protective devices against what conductors, starts and faults are. */
public final class ProtectionCharts {

    /** Starts shown: the largest peaks. */
    private static final int MOST_STARTS = 2;

    private ProtectionCharts() {}

    /** The chart of a device with its weakest conductor; empty when there is nothing to draw. */
    public static Optional<TimeCurrentChart> ofDevice(Harness harness, ProtectionResults results, ComponentId device) {
        return results.of(device).flatMap(found -> results.curves(device)
                .flatMap(curves -> chart(harness, found, curves, found.weakest())));
    }

    /** The charts of a wire, one for each device it relies on. */
    public static List<TimeCurrentChart> ofWire(Harness harness, ProtectionResults results, WireId wire) {
        List<TimeCurrentChart> charts = new ArrayList<>();
        for (ProtectionCurves curves : results.curves(wire)) {
            results.of(curves.device())
                    .flatMap(device -> chart(
                            harness,
                            device,
                            curves,
                            device.conductors().stream()
                                    .filter(each -> each.wire().equals(wire))
                                    .findFirst()))
                    .ifPresent(charts::add);
        }
        return charts;
    }

    private static Optional<TimeCurrentChart> chart(
            Harness harness,
            DeviceProtection device,
            ProtectionCurves curves,
            Optional<ConductorProtection> conductor) {
        List<OpeningBand> bands =
                device.band().map(band -> List.of(band(device, band))).orElse(List.of());
        List<TimeCurrentCurve> lines = new ArrayList<>();
        conductor.ifPresent(each -> lines.add(new TimeCurrentCurve(
                StudyTexts.text(
                        "protection.limit", each.wire(), each.limit().size().replace("mm2", "mm²")),
                points(curves.conductorLimit()),
                Optional.of(each.wire().value()))));
        for (int k = 0; k < Math.min(MOST_STARTS, curves.starts().size()); k++) {
            String load = curves.startLoads().get(k);
            lines.add(new TimeCurrentCurve(
                    StudyTexts.text("protection.start", load),
                    points(curves.starts().get(k)),
                    Optional.of(load)));
        }
        List<CurrentLimit> currents = currents(device, curves);
        if (bands.isEmpty() && lines.isEmpty() && currents.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new TimeCurrentChart(
                title(harness, device, conductor),
                bands.isEmpty() ? StudyTexts.text("protection.no-times", device.type()) : Text.of(device.type()),
                bands,
                lines,
                currents));
    }

    private static Text title(Harness harness, DeviceProtection device, Optional<ConductorProtection> conductor) {
        String name = harness.components()
                .find(device.device())
                .map(found -> " " + found.name())
                .orElse("");
        String called = device.device() + name + ", " + Formats.amps(device.ratingAmps());
        return conductor
                .map(each -> StudyTexts.text("protection.and-wire", called, each.wire()))
                .orElse(Text.of(called));
    }

    private static OpeningBand band(DeviceProtection device, TimeCurrentBand band) {
        return new OpeningBand(
                StudyTexts.text("protection.opens", device.device()),
                band.steps().stream()
                        .map(step -> new OpeningBand.Row(step.amps(), step.minimumSeconds(), step.maximumSeconds()))
                        .toList(),
                Optional.of(device.device().value()));
    }

    private static List<CurrentLimit> currents(DeviceProtection device, ProtectionCurves curves) {
        List<CurrentLimit> currents = new ArrayList<>();
        if (curves.runningAmps() > 0) {
            currents.add(new CurrentLimit(
                    StudyTexts.text("protection.runs-at", Formats.amps(curves.runningAmps())),
                    curves.runningAmps(),
                    CurrentLimit.Kind.USE));
        }
        double may = device.rating().continuousAmps();
        currents.add(new CurrentLimit(
                StudyTexts.text("protection.may-carry", Formats.amps(may)), may, CurrentLimit.Kind.CONTINUOUS));
        curves.minimumFaultAmps()
                .ifPresent(amps -> currents.add(new CurrentLimit(
                        StudyTexts.text("protection.smallest", Formats.amps(amps)), amps, CurrentLimit.Kind.FAULT)));
        curves.maximumFaultAmps()
                .ifPresent(amps -> currents.add(new CurrentLimit(
                        StudyTexts.text("protection.largest", Formats.amps(amps)), amps, CurrentLimit.Kind.FAULT)));
        return currents;
    }

    private static List<TimeCurrentCurve.At> points(List<CurvePoint> points) {
        return points.stream()
                .map(point -> new TimeCurrentCurve.At(point.amps(), point.seconds()))
                .toList();
    }
}
