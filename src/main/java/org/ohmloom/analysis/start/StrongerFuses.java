package org.ohmloom.analysis.start;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.edit.SetDeviceType;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.tables.FuseRating;
import org.ohmloom.tables.FuseSeries;
import org.ohmloom.tables.WireTables;

/** Puts fuses of a type that can interrupt more in the place of those behind which a short circuit is too much. */
final class StrongerFuses {

    /** Steps up the list of types. */
    static final int MOST_ROUNDS = StartFuses.TYPES.size() - 1;

    private static final String RULE = "breaking-capacity-exceeded";

    private StrongerFuses() {}

    /** The harness with such fuses; the same instance when none is needed or there is none. */
    static Harness of(Analysis analysis) {
        Harness harness = analysis.harness();
        for (Finding finding : analysis.findings()) {
            if (finding.rule().equals(RULE) && finding.severity() == Severity.ERROR) {
                for (String subject : finding.subjects()) {
                    harness = replaced(harness, subject, analysis.evidence().tables());
                }
            }
        }
        return harness;
    }

    private static Harness replaced(Harness harness, String subject, WireTables tables) {
        Optional<Component> component = harness.components().find(new ComponentId(subject));
        if (component.isEmpty() || !(component.get().device() instanceof ProtectiveDevice now)) {
            return harness;
        }
        double ratedVolts = now.ratedVolts().orElse(harness.rules().nominalVolts());
        double breaksAmps = breakingAmps(tables, now.series(), ratedVolts);
        return StartFuses.TYPES.stream()
                .filter(type -> breakingAmps(tables, type, ratedVolts) > breaksAmps)
                .findFirst()
                .flatMap(type -> device(tables.fuseSeries(type).orElseThrow(), now))
                .map(device -> new SetDeviceType(component.get().id(), device).apply(harness))
                .orElse(harness);
    }

    private static double breakingAmps(WireTables tables, String type, double ratedVolts) {
        return tables.fuseSeries(type)
                .flatMap(series -> series.breakingAmps(ratedVolts))
                .map(cited -> cited.value())
                .orElse(0.0);
    }

    private static Optional<ProtectiveDevice> device(FuseSeries series, ProtectiveDevice now) {
        List<FuseRating> ratings = series.ratings();
        return series.ratingFrom(Math.min(
                        now.ratingAmps(), ratings.get(ratings.size() - 1).ratingAmps()))
                .map(rating -> new ProtectiveDevice(
                        now.kind(),
                        series.type(),
                        rating.ratingAmps(),
                        OptionalDouble.empty(),
                        now.ratedVolts(),
                        OptionalDouble.empty()));
    }
}
