package org.ohmloom.size.protection;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

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
    public Text text() {
        String ampacity = Formats.amps(limit.ampacityAmps());
        Text conductor = CheckTexts.text("conductor", wire, limit.size(), ampacity);
        if (against.isEmpty()) {
            return conductor;
        }
        BandAgainstConductor found = against.get();
        Text settles = CheckTexts.text(
                "settles",
                conductor,
                Formats.amps(found.foreverAmps()),
                celsius(found.steadyCelsius()),
                Formats.celsius(limit.continuousCelsius()));
        return found.weakest()
                .map(stretch -> CheckTexts.text(
                        "worst",
                        settles,
                        Formats.amps(stretch.amps()),
                        Formats.seconds(stretch.openSeconds()),
                        seconds(stretch.damageSeconds())))
                .orElse(settles);
    }

    /** The same in English. */
    public String words() {
        return text().english();
    }

    private static Text celsius(double celsius) {
        return Double.isInfinite(celsius) ? CheckTexts.text("no-end") : Text.of(Formats.celsius(celsius));
    }

    private static Text seconds(OptionalDouble seconds) {
        return seconds.isPresent() ? Text.of(Formats.seconds(seconds.getAsDouble())) : CheckTexts.text("that-for-good");
    }

    /** When its copper melts, in words: far beyond what its insulation stands. */
    public Text melting() {
        return CheckTexts.text(
                "melting",
                Formats.amps(limit.meltingAmps(MELTING_SECONDS)),
                Formats.seconds(MELTING_SECONDS),
                Formats.amps(limit.meltingAmpsForGood()));
    }

    /** The same in English. */
    public String meltingWords() {
        return melting().english();
    }
}
