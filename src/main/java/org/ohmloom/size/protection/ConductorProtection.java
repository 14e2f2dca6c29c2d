package org.ohmloom.size.protection;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;

/**
 * One conductor behind a protective device.
 *
 * @param wire    the wire
 * @param limit   what it stands
 * @param faults  the fault currents it may see
 * @param against its limit against the band of what it relies on; empty when that has no published times
 * @param larger  the smallest larger size that is protected; empty for a protected one, or when none is
 */
public record ConductorProtection(
        WireId wire,
        ConductorLimit limit,
        WireFaults faults,
        Optional<BandAgainstConductor> against,
        Optional<Gauge> larger) {

    /** The time for which the melting current is told, s. */
    public static final double MELTING_SECONDS = 5;

    /** The weakest conductor first: the one that gets hottest at what may flow for ever. */
    public static final Comparator<ConductorProtection> WEAKEST_FIRST =
            Comparator.comparingDouble(ConductorProtection::marginKelvin).thenComparing(ConductorProtection::wire);

    /** Reserve at what may flow for ever, K; where nothing is published its ampacity orders. */
    private double marginKelvin() {
        return against.map(each -> limit.continuousCelsius() - each.steadyCelsius())
                .orElse(limit.ampacityAmps());
    }

    /** Whether it is protected; empty when there is nothing to judge by. */
    public Optional<Boolean> isProtected() {
        return against.map(BandAgainstConductor::isProtected);
    }

    /** The comparison in words. */
    public String words() {
        if (against.isEmpty()) {
            return wire + " (" + limit.size() + ", " + Formats.amps(limit.ampacityAmps()) + ")";
        }
        BandAgainstConductor found = against.get();
        String text = wire + " (" + limit.size() + ", " + Formats.amps(limit.ampacityAmps()) + "): "
                + Formats.amps(found.foreverAmps()) + " for ever bring it to " + celsius(found.steadyCelsius())
                + " of " + Formats.celsius(limit.continuousCelsius());
        return text
                + found.weakest()
                        .map(stretch -> "; " + Formats.amps(stretch.amps()) + " for "
                                + Formats.seconds(stretch.openSeconds()) + " at worst, it stands "
                                + seconds(stretch.damageSeconds()))
                        .orElse("");
    }

    private static String celsius(double celsius) {
        return Double.isInfinite(celsius) ? "no end" : Formats.celsius(celsius);
    }

    private static String seconds(OptionalDouble seconds) {
        return seconds.isPresent() ? Formats.seconds(seconds.getAsDouble()) : "that for good";
    }

    /** When its copper melts, in words: far beyond what its insulation stands. */
    public String meltingWords() {
        return "at " + Formats.amps(limit.meltingAmps(MELTING_SECONDS)) + " within " + Formats.seconds(MELTING_SECONDS)
                + " (Onderdonk), at " + Formats.amps(limit.meltingAmpsForGood()) + " for good in free air (Preece)";
    }
}
