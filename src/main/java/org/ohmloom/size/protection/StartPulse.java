package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.DeratingRule;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * The start of one load as its protective device sees it: followed over time where the study of starts did, otherwise a peak
 * that decays exponentially as entered.
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
 * @param told          the calculation
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
        Text told,
        Text source,
        StartShape shape) {

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
     * @param shape   the current over time
     */
    public static StartPulse of(
            WireTables tables,
            String type,
            TimeCurrentBand band,
            ContinuousRating rating,
            String load,
            StartShape shape) {
        double ratio = rating.ambientRatio();
        Optional<BandStep> opening = band.steps().stream()
                .filter(step -> step.minimumSeconds().isPresent())
                .filter(step -> shape.secondsAbove(step.amps() * ratio)
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
        double pulse = shape.squareAbove(rating.carriesAmps());
        double above = shape.secondsAbove(rating.carriesAmps());
        boolean brief = above <= LONGEST_PULSE_SECONDS;
        int starts = brief ? starts(tables, pulse, melting) : UNLIMITED;
        boolean melts = brief && pulse > melting;
        Text begins = CheckTexts.text("start", load, Formats.amps(shape.peakAmps()), shape.text());
        Text opens = opening.map(step -> CheckTexts.text(
                        "start.may-open",
                        begins,
                        Formats.amps(step.amps() * ratio),
                        Formats.seconds(shape.secondsAbove(step.amps() * ratio)),
                        Formats.seconds(step.minimumSeconds().getAsDouble())))
                .orElse(begins);
        Text told = brief
                ? CheckTexts.text(
                        listed.isEmpty() ? "start.ages-row" : "start.ages",
                        opens,
                        Formats.number(pulse),
                        Formats.percent(melting > 0 ? pulse / melting : 0),
                        Formats.number(melting),
                        starts > 0
                                ? CheckTexts.text("start.count", String.valueOf(starts))
                                : CheckTexts.text("start.too-few"))
                : CheckTexts.text(
                        opening.isEmpty() ? "start.long-holds" : "start.long",
                        opens,
                        Double.isInfinite(above) ? CheckTexts.text("start.good") : Formats.seconds(above));
        List<Text> sources = new ArrayList<>();
        listed.ifPresent(value -> sources.add(Text.of(value.citation().text())));
        opening.or(() -> last)
                .ifPresent(step -> sources.add(Text.of(step.citation().text())));
        if (brief) {
            sources.add(CheckTexts.text("source.pulses"));
        }
        return new StartPulse(
                load,
                shape.peakAmps(),
                shape.runningAmps(),
                shape.decaySeconds(),
                Double.isFinite(pulse) ? pulse : 0,
                melting,
                opening.isPresent() || melts,
                starts,
                told,
                Text.joined("; ", sources),
                shape);
    }

    /** The calculation, in English. */
    public String sentence() {
        return told.english();
    }

    /** Whether this tries the device harder than another start does. */
    public boolean isWorseThan(StartPulse other) {
        if (mayOpen != other.mayOpen) {
            return mayOpen;
        }
        return startsCount != other.startsCount
                ? startsCount < other.startsCount
                : pulseAmpSquaredSeconds >= other.pulseAmpSquaredSeconds;
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
