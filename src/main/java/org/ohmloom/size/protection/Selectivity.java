package org.ohmloom.size.protection;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Whether a device opens before the one upstream of it.
 *
 * <p>Shown by the bands up to a current where its longest time stays below the shortest time of the upstream device; beyond,
 * and where there are no bands, a rating half as large counts as common practice.
 *
 * @param upstream    the device upstream
 * @param ratingRatio rating upstream over its own
 * @param shownAmps   current up to which the bands show it, A; empty when they show nothing
 * @param selective   whether the bands show it up to the largest fault, or the ratings are 1 to 2
 * @param told        the reasons
 */
public record Selectivity(
        ComponentId upstream, double ratingRatio, OptionalDouble shownAmps, boolean selective, Text told) {

    /** Ratings in this ratio open one after the other. Common practice, from memory of fuse application notes. */
    public static final double USUAL_RATIO = 2;

    /** Where that comes from. */
    static final Text SOURCE = CheckTexts.text("source.ratio");

    private static final double SAME = 1e-9;

    static Selectivity of(
            ComponentId upstream,
            double ownAmps,
            double upstreamAmps,
            Optional<TimeCurrentBand> own,
            Optional<TimeCurrentBand> above,
            OptionalDouble largestAmps) {
        OptionalDouble shown =
                own.isPresent() && above.isPresent() ? shown(own.get(), above.get()) : OptionalDouble.empty();
        double ratio = upstreamAmps / ownAmps;
        boolean byBands = shown.isPresent() && shown.getAsDouble() >= largestAmps.orElse(Double.POSITIVE_INFINITY);
        boolean byRatio = ratio >= USUAL_RATIO * (1 - SAME);
        Text bands = own.isEmpty() || above.isEmpty()
                ? CheckTexts.text("selective.no-times")
                : shown.isPresent()
                        ? CheckTexts.text("selective.shown", Formats.amps(shown.getAsDouble()))
                        : CheckTexts.text("selective.overlap");
        Text told = CheckTexts.text("selective", upstream, Formats.amps(upstreamAmps), Formats.number(ratio), bands);
        if (!byBands) {
            told = CheckTexts.text(byRatio ? "selective.counts" : "selective.less", told);
        }
        return new Selectivity(upstream, ratio, shown, byBands || byRatio, told);
    }

    /** The reasons, in English. */
    public String sentence() {
        return told.english();
    }

    /** The current up to which every row of the own band is faster than the upstream band holds, A. */
    private static OptionalDouble shown(TimeCurrentBand own, TimeCurrentBand above) {
        OptionalDouble shown = OptionalDouble.empty();
        for (int k = 0; k < own.steps().size(); k++) {
            BandStep step = own.steps().get(k);
            if (step.maximumSeconds().isEmpty()) {
                continue;
            }
            double next = k + 1 < own.steps().size() ? own.steps().get(k + 1).amps() : Double.POSITIVE_INFINITY;
            double holds = above.steps().stream()
                    .filter(row -> row.minimumSeconds().isPresent()
                            && row.minimumSeconds().getAsDouble()
                                    >= step.maximumSeconds().getAsDouble())
                    .mapToDouble(BandStep::amps)
                    .max()
                    .orElse(0);
            if (holds < step.amps()) {
                return shown;
            }
            shown = OptionalDouble.of(Math.min(holds, next));
            if (holds < next) {
                return shown;
            }
        }
        return shown;
    }
}
