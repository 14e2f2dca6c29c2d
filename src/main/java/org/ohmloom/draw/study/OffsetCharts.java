package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.SignedBars;
import org.ohmloom.draw.chart.SignedRow;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetLimits;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** Who disturbs a reference point, millivolt by millivolt. */
public final class OffsetCharts {

    private static final int MOST_ROWS = 12;

    private OffsetCharts() {}

    /** The shares of an offset, largest first, the smallest ones summed, and beside each what the offset would be without that load. */
    public static SignedBars of(Harness harness, Offset offset) {
        List<OffsetShare> shares = offset.shares();
        int single = shares.size() <= MOST_ROWS ? shares.size() : MOST_ROWS - 1;
        List<SignedRow> rows = new ArrayList<>();
        for (OffsetShare share : shares.subList(0, single)) {
            rows.add(new SignedRow(
                    Named.label(harness, share.cause()),
                    SignedRow.Kind.PART,
                    milli(share.volts()),
                    share.switchedOffVolts().isPresent()
                            ? OptionalDouble.of(milli(share.switchedOffVolts().getAsDouble()))
                            : OptionalDouble.empty(),
                    Optional.of(share.cause().value())));
        }
        if (single < shares.size()) {
            double rest = shares.subList(single, shares.size()).stream()
                    .mapToDouble(OffsetShare::volts)
                    .sum();
            rows.add(SignedRow.of(
                    SignedRow.Kind.REST, (shares.size() - single) + " others together", milli(rest), Optional.empty()));
        }
        rows.add(SignedRow.of(
                SignedRow.Kind.SUM,
                "offset of " + offset.point().owner(),
                milli(offset.volts()),
                Optional.of(offset.point().owner().value())));
        boolean tried = rows.stream().anyMatch(row -> row.second().isPresent());
        return new SignedBars(
                title(harness, offset),
                subtitle(harness, offset),
                "Share of the offset",
                Unit.MILLIVOLT.symbol(),
                tried ? "offset if switched off" : "",
                limit(harness, offset),
                false,
                rows);
    }

    private static OptionalDouble limit(Harness harness, Offset offset) {
        OptionalDouble limit = OffsetLimits.judged(harness, offset);
        return limit.isPresent() ? OptionalDouble.of(milli(limit.getAsDouble())) : limit;
    }

    private static double milli(double volts) {
        return Unit.MILLIVOLT.fromCanonical(volts);
    }

    private static String title(Harness harness, Offset offset) {
        return Named.label(harness, offset.point().owner()) + ", "
                + word(offset.point().kind()) + ": " + Formats.volts(offset.volts()) + " from "
                + offset.point().against();
    }

    private static String subtitle(Harness harness, Offset offset) {
        return Named.state(harness, offset.state())
                + (offset.rippleVolts() > 0 ? ", swinging by " + Formats.volts(offset.rippleVolts()) : "");
    }

    /** A kind of reference point in words. */
    public static String word(ReferencePoint.Kind kind) {
        return switch (kind) {
            case UNIT_GROUND -> "control-unit ground";
            case SENSOR_RETURN -> "sensor return";
            case BUS_NODE_GROUND -> "ground of a bus node";
            case GROUND_POINT -> "ground point";
        };
    }
}
