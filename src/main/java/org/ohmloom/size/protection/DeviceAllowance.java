package org.ohmloom.size.protection;

import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.DeviceRatingRule;
import org.ohmloom.tables.FuseSeries;
import org.ohmloom.tables.ProtectorChart;
import org.ohmloom.tables.Status;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.MessageBundle;
import org.ohmloom.words.Text;

/**
 * How large a protective device may be for a conductor: no more than the basis's share of its derated ampacity (33 CFR
 * 183.455 below 50 V: 150 %), or the next rating its series has above the ampacity, where the basis allows that. A basis
 * with a chart of devices by conductor size (AC 43.13-1B Table 11-3) must agree as well, as far as the chart goes.
 */
public final class DeviceAllowance {

    private static final MessageBundle TEXTS = MessageBundle.beside(DeviceAllowance.class, "allowances");

    private static final double SAME = 1e-9;

    private static final Citation RATING_UP_TO_AMPACITY =
            new Citation("IEC 60364-4-43", "2008", "clause 433.1", "rating not above the ampacity", Status.FROM_MEMORY);

    private final WireTables tables;
    private final DeviceRatingRule rule;
    private final Optional<ProtectorChart> chart;

    private DeviceAllowance(WireTables tables, DeviceRatingRule rule, Optional<ProtectorChart> chart) {
        this.tables = tables;
        this.rule = rule;
        this.chart = chart;
    }

    /** The allowance of a design basis at a nominal supply voltage, V. */
    public static DeviceAllowance of(WireTables tables, DesignBasis basis, double nominalVolts) {
        DeviceRatingRule rule = tables.deviceRatingRule(basis.id(), nominalVolts)
                .orElse(new DeviceRatingRule(basis.id(), 0, 1, 1, RATING_UP_TO_AMPACITY));
        return new DeviceAllowance(tables, rule, basis.protectorTable().map(tables::protectorChart));
    }

    /** Whether a device of a rating, A, suits a conductor of that size and derated ampacity, A. */
    public boolean allows(ProtectiveDevice device, double ratingAmps, Gauge gauge, double ampacityAmps) {
        return byAmpacity(device, ratingAmps, ampacityAmps) && byChart(device, ratingAmps, gauge);
    }

    /** The rule on the rating against the ampacity. */
    public Citation citation() {
        return rule.citation();
    }

    /** What decides about a device on a size: the chart when it alone says no, otherwise the rule on the ampacity. */
    public Citation citation(ProtectiveDevice device, double ratingAmps, Gauge gauge, double ampacityAmps) {
        return byAmpacity(device, ratingAmps, ampacityAmps) && !byChart(device, ratingAmps, gauge)
                ? chartLimit(device, gauge).map(CitedValue::citation).orElse(rule.citation())
                : rule.citation();
    }

    /** The rule in words: "a rating up to 150 % of the ampacity". */
    public Text text() {
        String share = Formats.percent(rule.ampacityRatio());
        return rule.nextSizeRatio() > rule.ampacityRatio()
                ? TEXTS.text("allowance-or-next", share, Formats.percent(rule.nextSizeRatio()))
                : TEXTS.text("allowance", share);
    }

    /** The same in English. */
    public String words() {
        return text().english();
    }

    private boolean byAmpacity(ProtectiveDevice device, double ratingAmps, double ampacityAmps) {
        if (ratingAmps <= ampacityAmps * rule.ampacityRatio() * (1 + SAME)) {
            return true;
        }
        return ratingAmps <= ampacityAmps * rule.nextSizeRatio() * (1 + SAME)
                && tables.fuseSeries(device.series())
                        .flatMap(series -> nextFrom(series, ampacityAmps))
                        .filter(next -> next >= ratingAmps)
                        .isPresent();
    }

    private static Optional<Double> nextFrom(FuseSeries series, double ampacityAmps) {
        return series.ratingFrom(ampacityAmps).map(rating -> rating.ratingAmps());
    }

    private boolean byChart(ProtectiveDevice device, double ratingAmps, Gauge gauge) {
        double largest = chartValues(device, Double.POSITIVE_INFINITY)
                .mapToDouble(CitedValue::value)
                .max()
                .orElse(0);
        return ratingAmps > largest
                || chartLimit(device, gauge)
                        .filter(limit -> ratingAmps <= limit.value())
                        .isPresent();
    }

    /** The chart's value for the thickest row that is not above a size. */
    private Optional<CitedValue> chartLimit(ProtectiveDevice device, Gauge gauge) {
        return chartValues(device, gauge.nominalAreaMm2() * (1 + SAME)).reduce((thinner, thicker) -> thicker);
    }

    private Stream<CitedValue> chartValues(ProtectiveDevice device, double upToMm2) {
        boolean fuse = device.kind() == ProtectiveDevice.Kind.FUSE;
        return chart.stream()
                .flatMap(each -> each.rows().stream())
                .filter(row -> row.gauge().nominalAreaMm2() <= upToMm2)
                .flatMap(row -> (fuse ? row.fuseAmps() : row.breakerAmps()).stream());
    }
}
