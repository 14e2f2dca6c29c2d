package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.tables.FuseTimeLimit;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;

/**
 * How fast a device opens, as published: a row holds at its own current and says nothing about the currents between.
 *
 * <p>For protection the longest time counts: at a current the device has opened by the longest time of the last row at or
 * below it, and below the first row with a longest time it may carry the current for ever. For riding through a start the
 * shortest time counts: at a current it holds at least the shortest time of the first row at or above it.
 *
 * @param label      the device in words, as in "ISO 8820-3 type C 10 A"
 * @param ratingAmps rated current, A, more than 0
 * @param steps      its rows by rising current; at least one has a longest time
 */
public record TimeCurrentBand(String label, double ratingAmps, List<BandStep> steps) {

    /** Rounding of a computation, as a share: a current this close to a row's reaches it. */
    private static final double SAME = 1e-9;

    public TimeCurrentBand {
        steps = List.copyOf(steps);
    }

    /** The band of a device; empty when the tables hold no longest time for its type and rating. */
    public static Optional<TimeCurrentBand> of(WireTables tables, ProtectiveDevice device) {
        return of(tables, device.series(), device.ratingAmps());
    }

    /** The band of a rating, A, of a type; empty when the tables hold no longest time for it. */
    public static Optional<TimeCurrentBand> of(WireTables tables, String type, double ratingAmps) {
        List<FuseTimeLimit> rows = tables.fuseSeries(type)
                .map(series -> series.timeCurrentBand(ratingAmps))
                .orElse(List.of());
        if (rows.stream().noneMatch(row -> row.maximumSeconds().isPresent())) {
            return Optional.empty();
        }
        List<BandStep> steps = rows.stream()
                .map(row -> new BandStep(
                        row.multipleRatio(),
                        row.multipleRatio() * ratingAmps,
                        row.minimumSeconds(),
                        row.maximumSeconds(),
                        row.citation()))
                .toList();
        return Optional.of(new TimeCurrentBand(type + " " + Formats.amps(ratingAmps), ratingAmps, steps));
    }

    /**
     * Several devices that feed one conductor together, as one: ratings add, and as one opens after the other their longest
     * times add. A row stands where every device has opened; it holds nothing longer than the quickest of them.
     *
     * @param bands at least one
     */
    public static TimeCurrentBand together(List<TimeCurrentBand> bands) {
        if (bands.size() == 1) {
            return bands.get(0);
        }
        double ratingAmps =
                bands.stream().mapToDouble(TimeCurrentBand::ratingAmps).sum();
        SortedSet<Double> multiples = new TreeSet<>();
        bands.forEach(band -> band.steps.forEach(step -> multiples.add(step.multipleRatio())));
        List<BandStep> steps = new ArrayList<>();
        for (double multiple : multiples) {
            OptionalDouble maximum = OptionalDouble.of(0);
            OptionalDouble minimum = OptionalDouble.of(Double.POSITIVE_INFINITY);
            BandStep first = bands.get(0).steps.get(0);
            for (TimeCurrentBand band : bands) {
                double amps = multiple * band.ratingAmps;
                OptionalDouble opens = band.opensWithinSeconds(amps);
                maximum = maximum.isPresent() && opens.isPresent()
                        ? OptionalDouble.of(maximum.getAsDouble() + opens.getAsDouble())
                        : OptionalDouble.empty();
                OptionalDouble holds = band.holdsSeconds(amps, 1);
                minimum = minimum.isPresent() && holds.isPresent()
                        ? OptionalDouble.of(Math.min(minimum.getAsDouble(), holds.getAsDouble()))
                        : OptionalDouble.empty();
                first = band.stepAt(amps).orElse(first);
            }
            steps.add(new BandStep(multiple, multiple * ratingAmps, minimum, maximum, first.citation()));
        }
        String label = bands.stream()
                .map(TimeCurrentBand::label)
                .reduce((one, other) -> one + " and " + other)
                .orElseThrow();
        return new TimeCurrentBand(label, ratingAmps, steps);
    }

    /** The largest current it may carry for ever, A: up to the first row with a longest time. */
    public double foreverAmps() {
        return firstOpening().amps();
    }

    /** The first row with a longest time. */
    public BandStep firstOpening() {
        return steps.stream()
                .filter(step -> step.maximumSeconds().isPresent())
                .findFirst()
                .orElseThrow();
    }

    /** By when it has opened at a current, A, in s; empty where it may carry the current for ever. */
    public OptionalDouble opensWithinSeconds(double amps) {
        return stepAt(amps).map(BandStep::maximumSeconds).orElse(OptionalDouble.empty());
    }

    /** The last row with a longest time at or below a current, A. */
    public Optional<BandStep> stepAt(double amps) {
        return steps.stream()
                .filter(step -> step.maximumSeconds().isPresent() && step.amps() <= amps * (1 + SAME))
                .reduce((lower, higher) -> higher);
    }

    /**
     * How long it holds a current for certain, s; empty beyond the last row that says so.
     *
     * @param amps         current, A
     * @param ambientRatio share of its rating it carries at its air temperature
     */
    public OptionalDouble holdsSeconds(double amps, double ambientRatio) {
        return steps.stream()
                .filter(step -> step.minimumSeconds().isPresent() && step.amps() * ambientRatio >= amps * (1 - SAME))
                .findFirst()
                .map(BandStep::minimumSeconds)
                .orElse(OptionalDouble.empty());
    }

    /** The smallest current at which it has opened within a time, s; empty when no row is that fast. */
    public OptionalDouble ampsToOpenWithin(double seconds) {
        return steps.stream()
                .filter(step -> step.maximumSeconds().isPresent()
                        && step.maximumSeconds().getAsDouble() <= seconds * (1 + SAME))
                .mapToDouble(BandStep::amps)
                .min();
    }
}
