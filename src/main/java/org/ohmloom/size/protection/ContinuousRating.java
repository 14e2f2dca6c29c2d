package org.ohmloom.size.protection;

import java.util.Optional;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * How far a protective device may be loaded where it sits.
 *
 * @param ratingAmps     rated current, A
 * @param ambientCelsius air around it, deg C
 * @param ambientRatio   share of its rating it carries in that air
 * @param carriesAmps    rated current times that share, A
 * @param continuousAmps what it may carry for good: that times the continuous share, A
 * @param source         rows of the two shares
 */
public record ContinuousRating(
        double ratingAmps,
        double ambientCelsius,
        double ambientRatio,
        double carriesAmps,
        double continuousAmps,
        String source) {

    private static final String CONTINUOUS_LOAD = "continuous-load-blade";
    private static final double PERCENT = 100;

    /** The rating of a device of a type in some air, deg C. */
    public static ContinuousRating of(WireTables tables, String type, double ratingAmps, double ambientCelsius) {
        CitedValue continuous = tables.fuseDerating(CONTINUOUS_LOAD).value();
        Optional<CitedValue> ambient = tables.fuseSeries(type).flatMap(series -> series.ambientShare(ambientCelsius));
        double ratio = ambient.map(CitedValue::value).orElse(1.0);
        return new ContinuousRating(
                ratingAmps,
                ambientCelsius,
                ratio,
                ratingAmps * ratio,
                ratingAmps * ratio * continuous.value() / PERCENT,
                continuous.citation().text()
                        + ambient.map(each -> "; " + each.citation().text()).orElse(""));
    }

    /**
     * The least rating for a lasting current: current / (continuous share x ambient share), A; infinite where nothing may flow.
     *
     * @param amps            current, A
     * @param continuousRatio share of its rating a device may carry for good
     * @param ambientRatio    share of its rating it carries in its air
     */
    public static double leastAmps(double amps, double continuousRatio, double ambientRatio) {
        double share = continuousRatio * ambientRatio;
        return share > 0 ? amps / share : amps > 0 ? Double.POSITIVE_INFINITY : 0;
    }

    /** The calculation: "10 A x 0.9 at 75 °C x 0.8 continuous = 7.2 A". */
    public Text text() {
        return CheckTexts.text(
                "may-carry",
                Formats.amps(ratingAmps),
                Formats.number(ambientRatio),
                Formats.celsius(ambientCelsius),
                Formats.number(carriesAmps > 0 ? continuousAmps / carriesAmps : 0),
                Formats.amps(continuousAmps));
    }

    /** The same in English. */
    public String words() {
        return text().english();
    }
}
