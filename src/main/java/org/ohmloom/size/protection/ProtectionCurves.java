package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;

/**
 * What a log-log picture of time over current shows for a device and a conductor behind it.
 *
 * <p>The band is a set of points: nothing is known between two of them, so a picture joins them with steps, not with lines.
 *
 * @param device         the device
 * @param wire           the conductor; empty for a device with none
 * @param bandShortest   points of the band's shortest times
 * @param bandLongest    points of the band's longest times
 * @param foreverAmps    largest current the device may carry for ever, A; empty without a band
 * @param conductorLimit how long the conductor stands a current
 * @param starts         start currents over time, one list for each load
 * @param startLoads     the loads of those lists, in the same order
 * @param runningAmps    largest lasting current through the device, A
 * @param minimumFaultAmps smallest fault through the wire, else the device, A
 * @param maximumFaultAmps largest fault through the wire, else the device, A
 * @param askedSeconds   time in which the smallest fault must open the device, s
 */
public record ProtectionCurves(
        ComponentId device,
        Optional<WireId> wire,
        List<CurvePoint> bandShortest,
        List<CurvePoint> bandLongest,
        OptionalDouble foreverAmps,
        List<CurvePoint> conductorLimit,
        List<List<CurvePoint>> starts,
        List<String> startLoads,
        double runningAmps,
        OptionalDouble minimumFaultAmps,
        OptionalDouble maximumFaultAmps,
        double askedSeconds) {

    private static final int COUNT = 80;
    private static final double FIRST_SECONDS = 1e-3;
    private static final double LEAST_SPAN_RATIO = 10;
    private static final double LEAST_FAULT_AMPS = 1e-3;

    public ProtectionCurves {
        bandShortest = List.copyOf(bandShortest);
        bandLongest = List.copyOf(bandLongest);
        conductorLimit = List.copyOf(conductorLimit);
        starts = List.copyOf(starts);
        startLoads = List.copyOf(startLoads);
    }

    static ProtectionCurves of(DeviceProtection device, Optional<ConductorProtection> conductor) {
        List<BandStep> steps = device.band().map(TimeCurrentBand::steps).orElse(List.of());
        OptionalDouble smallest = conductor
                .map(each -> each.faults().minimumAmps())
                .filter(ProtectionCurves::flows)
                .orElseGet(() -> amps(device.minimumFault()));
        OptionalDouble largest = conductor
                .map(each -> each.faults().maximumAmps())
                .filter(OptionalDouble::isPresent)
                .orElseGet(() -> amps(device.maximumFault()));
        double top = Math.max(largest.orElse(0), device.ratingAmps() * LEAST_SPAN_RATIO);
        List<List<CurvePoint>> starts =
                device.starts().stream().map(ProtectionCurves::start).toList();
        return new ProtectionCurves(
                device.device(),
                conductor.map(ConductorProtection::wire),
                points(steps, true),
                points(steps, false),
                device.band().map(band -> OptionalDouble.of(band.foreverAmps())).orElse(OptionalDouble.empty()),
                conductor
                        .map(each -> each.limit()
                                .curve(
                                        Math.min(
                                                device.ratingAmps(),
                                                Math.max(each.limit().ampacityAmps(), 0.1)),
                                        top,
                                        COUNT))
                        .orElse(List.of()),
                starts,
                device.starts().stream().map(StartPulse::load).toList(),
                device.loadAmps(),
                smallest,
                largest,
                device.askedSeconds());
    }

    /** Whether a fault current is one: through a wire that ends blind or lies beside the fault nothing flows but rounding. */
    private static boolean flows(OptionalDouble amps) {
        return amps.isPresent() && amps.getAsDouble() >= LEAST_FAULT_AMPS;
    }

    private static OptionalDouble amps(Optional<Fault> fault) {
        return fault.map(each -> OptionalDouble.of(each.deviceAmps())).orElse(OptionalDouble.empty());
    }

    private static List<CurvePoint> points(List<BandStep> steps, boolean shortest) {
        List<CurvePoint> points = new ArrayList<>();
        for (BandStep step : steps) {
            OptionalDouble seconds = shortest ? step.minimumSeconds() : step.maximumSeconds();
            seconds.ifPresent(value -> points.add(new CurvePoint(step.amps(), value)));
        }
        return points;
    }

    /** The current of a start over the time since it began. */
    private static List<CurvePoint> start(StartPulse start) {
        List<CurvePoint> points = new ArrayList<>();
        double last = Math.max(LEAST_SPAN_RATIO * FIRST_SECONDS, start.shape().lastSeconds());
        for (int k = 0; k < COUNT; k++) {
            double seconds = FIRST_SECONDS * Math.pow(last / FIRST_SECONDS, k / (COUNT - 1.0));
            points.add(new CurvePoint(start.shape().ampsAt(seconds), seconds));
        }
        return points;
    }
}
