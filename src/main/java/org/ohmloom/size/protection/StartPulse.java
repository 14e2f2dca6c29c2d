package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.DeratingRule;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;

/**
 * The start of one load as its protective device sees it: a peak that decays exponentially to the running current,
 * I(t) = Ir + (Ip - Ir) exp(-t/T).
 *
 * <p>It may open the device when it stays above a row of the band for longer than the row's shortest time. A short one ages
 * the device when its I2t, reckoned for the time it is above the rating, is a large share of what melts the device; how many
 * starts that allows is read from the shares for repeated pulses, never between two of them. Beyond {@link
 * #LONGEST_PULSE_SECONDS} the device loses heat while it starts, so the I2t that melts it says nothing and the shortest times
 * of the band alone decide.
 *
 * @param load          the load that starts
 * @param peakAmps      current through the device at the first moment, A
 * @param runningAmps   current it decays to, A
 * @param decaySeconds  time constant T, s, more than 0
 * @param pulseAmpSquaredSeconds I2t of the start above the rating, A2s
 * @param meltingAmpSquaredSeconds I2t that melts the device, A2s; 0 when no table tells
 * @param mayOpen       whether the band leaves it open that one start opens the device
 * @param startsCount   starts it stands by the shares for repeated pulses; 0 when fewer than the table lists, {@link
 *                      #UNLIMITED} for a long one
 * @param sentence      the calculation
 * @param source        rows it rests on
 */
public record StartPulse(
        String load,
        double peakAmps,
        double runningAmps,
        double decaySeconds,
        double pulseAmpSquaredSeconds,
        double meltingAmpSquaredSeconds,
        boolean mayOpen,
        int startsCount,
        String sentence,
        String source) {

    /** Fewer starts than this in a life are too few. Common practice, no source. */
    public static final int FEWEST_STARTS = 10_000;

    /** Stands for no limit on the starts. */
    public static final int UNLIMITED = Integer.MAX_VALUE;

    /** The longest pulse for which the melting I2t holds, s. Common practice, no source. */
    public static final double LONGEST_PULSE_SECONDS = 0.1;

    private static final String PULSE = "pulse-";
    private static final double PERCENT = 100;

    /** Whether it stands the start as often as it must. */
    public boolean ridesThrough() {
        return !mayOpen && startsCount >= FEWEST_STARTS;
    }

    /**
     * Judges a start.
     *
     * @param tables  the shares for repeated pulses
     * @param type    type of the device
     * @param band    its band
     * @param rating  what it carries in its air
     * @param load    the load that starts
     * @param peakAmps current at the first moment, A
     * @param runningAmps current it decays to, A, at most the peak
     * @param decaySeconds time constant, s
     */
    public static StartPulse of(
            WireTables tables,
            String type,
            TimeCurrentBand band,
            ContinuousRating rating,
            String load,
            double peakAmps,
            double runningAmps,
            double decaySeconds) {
        double ratio = rating.ambientRatio();
        Optional<BandStep> opening = band.steps().stream()
                .filter(step -> step.minimumSeconds().isPresent())
                .filter(step -> secondsAbove(step.amps() * ratio, peakAmps, runningAmps, decaySeconds)
                        > step.minimumSeconds().getAsDouble())
                .findFirst();
        Optional<CitedValue> listed =
                tables.fuseSeries(type).flatMap(series -> series.meltingAmpSquaredSeconds(band.ratingAmps()));
        Optional<BandStep> last = band.steps().stream()
                .filter(step -> step.minimumSeconds().isPresent())
                .reduce((slower, faster) -> faster);
        double melting = listed.map(CitedValue::value).orElseGet(() -> last.map(step ->
                        step.amps() * step.amps() * step.minimumSeconds().getAsDouble())
                .orElse(0.0));
        double pulse = pulse(rating.carriesAmps(), peakAmps, runningAmps, decaySeconds);
        double above = secondsAbove(rating.carriesAmps(), peakAmps, runningAmps, decaySeconds);
        boolean brief = above <= LONGEST_PULSE_SECONDS;
        int starts = brief ? starts(tables, pulse, melting) : UNLIMITED;
        boolean melts = brief && pulse > melting;
        String opens = opening.map(step -> "; above " + Formats.amps(step.amps() * ratio) + " for "
                        + Formats.seconds(secondsAbove(step.amps() * ratio, peakAmps, runningAmps, decaySeconds))
                        + ", where it holds for "
                        + Formats.seconds(step.minimumSeconds().getAsDouble())
                        + " only: it may open")
                .orElse("");
        String ages = brief
                ? "; I2t above the rating " + Formats.number(pulse) + " A2s, "
                        + Formats.percent(melting > 0 ? pulse / melting : 0) + " of the " + Formats.number(melting)
                        + " A2s that melt it" + (listed.isEmpty() ? " (from its fastest row)" : "") + ": "
                        + (starts > 0 ? starts + " starts" : "fewer starts than any table lists")
                : "; above its rating for "
                        + (Double.isInfinite(above) ? "good" : Formats.seconds(above))
                        + ", so its shortest times decide"
                        + (opening.isEmpty() ? ", and it holds" : "");
        String sentence =
                load + " starts with " + Formats.amps(peakAmps) + " and decays to " + Formats.amps(runningAmps)
                        + " with a time constant of " + Formats.seconds(decaySeconds) + opens + ages;
        List<String> sources = new ArrayList<>();
        listed.ifPresent(value -> sources.add(value.citation().text()));
        opening.or(() -> last).ifPresent(step -> sources.add(step.citation().text()));
        if (brief) {
            sources.add("repeated pulses: fuse application guides");
        }
        return new StartPulse(
                load,
                peakAmps,
                runningAmps,
                decaySeconds,
                Double.isFinite(pulse) ? pulse : 0,
                melting,
                opening.isPresent() || melts,
                starts,
                sentence,
                String.join("; ", sources));
    }

    /** Time the start stays above a current, s; infinite when it decays to no less. */
    static double secondsAbove(double amps, double peakAmps, double runningAmps, double decaySeconds) {
        if (peakAmps <= amps) {
            return 0;
        }
        return runningAmps >= amps
                ? Double.POSITIVE_INFINITY
                : decaySeconds * Math.log((peakAmps - runningAmps) / (amps - runningAmps));
    }

    /**
     * I2t while above a current: with t1 the time above it, Ir2 t1 + 2 Ir (Ip - Ir) T (1 - x) + (Ip - Ir)2 T/2 (1 - x2),
     * x = exp(-t1/T). From 0 to 0 this is the half of Ip2 T.
     */
    static double pulse(double aboveAmps, double peakAmps, double runningAmps, double decaySeconds) {
        double seconds = secondsAbove(aboveAmps, peakAmps, runningAmps, decaySeconds);
        if (seconds == 0 || Double.isInfinite(seconds)) {
            return seconds;
        }
        double rise = peakAmps - runningAmps;
        double left = Math.exp(-seconds / decaySeconds);
        return runningAmps * runningAmps * seconds
                + 2 * runningAmps * rise * decaySeconds * (1 - left)
                + rise * rise * decaySeconds / 2 * (1 - left * left);
    }

    /** The most starts whose share of the melting I2t the pulse keeps to. */
    private static int starts(WireTables tables, double pulse, double melting) {
        return tables.fuseDeratings().stream()
                .filter(rule -> rule.id().matches(PULSE + "\\d+"))
                .filter(rule -> pulse <= rule.value().value() / PERCENT * melting)
                .map(DeratingRule::id)
                .mapToInt(id -> Integer.parseInt(id.substring(PULSE.length())))
                .max()
                .orElse(0);
    }
}
