package org.ohmloom.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The fuses or breakers of one type: their ratings and colours, how fast they open, what they resist. */
public final class FuseSeries {
    private final String type;
    private final List<FuseRating> ratings;
    private final List<FuseTimeLimit> times;
    private final List<FuseResistance> resistances;
    private final List<BreakingCapacity> breaking;
    private final List<AmbientShare> ambient;

    /**
     * @param type        the standard's own name of the type
     * @param ratings     its ratings
     * @param times       its time-current limits
     * @param resistances its typical values, those for any rating last
     * @param breaking    what it can interrupt at its rated voltages
     * @param ambient     shares of its rating at air temperatures
     */
    FuseSeries(
            String type,
            List<FuseRating> ratings,
            List<FuseTimeLimit> times,
            List<FuseResistance> resistances,
            List<BreakingCapacity> breaking,
            List<AmbientShare> ambient) {
        this.type = type;
        this.ratings = ratings.stream()
                .sorted(Comparator.comparingDouble(FuseRating::ratingAmps))
                .toList();
        this.times = times.stream()
                .sorted(Comparator.comparingDouble(FuseTimeLimit::multipleRatio))
                .toList();
        this.resistances = List.copyOf(resistances);
        this.breaking = breaking.stream()
                .sorted(Comparator.comparingDouble(BreakingCapacity::ratedVolts))
                .toList();
        this.ambient = List.copyOf(ambient);
    }

    /** The standard's own name of the type, as in "ISO 8820-3 type C". */
    public String type() {
        return type;
    }

    /** Its ratings, smallest first. */
    public List<FuseRating> ratings() {
        return ratings;
    }

    /** The rated voltages it is made for, V, smallest first: of its ratings, and of versions whose breaking capacity is listed. */
    public List<Double> voltages() {
        return Stream.concat(
                        ratings.stream().map(FuseRating::ratedVolts),
                        breaking.stream().map(BreakingCapacity::ratedVolts))
                .distinct()
                .sorted()
                .toList();
    }

    /** The rating of exactly that current, A. */
    public Optional<FuseRating> rating(double ratingAmps) {
        return ratings.stream().filter(each -> each.ratingAmps() == ratingAmps).findFirst();
    }

    /** The smallest rating of at least that current, A. */
    public Optional<FuseRating> ratingFrom(double amps) {
        return ratings.stream().filter(each -> each.ratingAmps() >= amps).findFirst();
    }

    /**
     * The time-current band of a rating, A, by rising current; empty when the table has none for it.
     *
     * <p>Nothing is known between two steps: a longer or shorter time must not be read off between them.
     */
    public List<FuseTimeLimit> timeCurrentBand(double ratingAmps) {
        return times.stream().filter(each -> each.holdsFor(ratingAmps)).toList();
    }

    /**
     * The typical cold resistance of a rating, ohm: the listed one, else listed drop / rated current / 1.4, else the
     * same from the type's usual drop; the citation says which. Empty when the tables name no drop at all.
     */
    public Optional<CitedValue> coldResistanceOhms(double ratingAmps) {
        return first(ratingAmps, each -> each.coldOhms(ratingAmps));
    }

    /** The typical voltage drop at rated current, V: of that rating, else the type's usual one. */
    public Optional<CitedValue> dropAtRatingVolts(double ratingAmps) {
        return first(ratingAmps, FuseResistance::dropVolts);
    }

    /** The typical I2 t that melts that rating, A2s. */
    public Optional<CitedValue> meltingAmpSquaredSeconds(double ratingAmps) {
        return first(ratingAmps, FuseResistance::meltingI2t);
    }

    /** What it can interrupt, A, at the smallest listed voltage of at least that rated voltage, V; empty when none is. */
    public Optional<CitedValue> breakingAmps(double ratedVolts) {
        return breaking.stream()
                .filter(each -> each.ratedVolts() >= ratedVolts)
                .findFirst()
                .map(BreakingCapacity::amps);
    }

    /**
     * The share of its rating it carries at an air temperature, C: straight between the listed points, never above the
     * coolest point's; empty when no table says.
     */
    public Optional<CitedValue> ambientShare(double celsius) {
        return AmbientShare.at(ambient, celsius);
    }

    private Optional<CitedValue> first(double ratingAmps, Function<FuseResistance, Optional<CitedValue>> reader) {
        return resistances.stream()
                .filter(each -> each.ratingAmps().isEmpty() || each.ratingAmps().getAsDouble() == ratingAmps)
                .sorted(Comparator.comparing(each -> each.ratingAmps().isEmpty()))
                .flatMap(each -> reader.apply(each).stream())
                .findFirst();
    }
}
