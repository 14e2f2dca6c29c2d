package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import org.ohmloom.words.Text;

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
                    Text.of(Named.label(harness, share.cause())),
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
                    SignedRow.Kind.REST,
                    StudyTexts.text("offset.rest", shares.size() - single),
                    milli(rest),
                    Optional.empty()));
        }
        rows.add(SignedRow.of(
                SignedRow.Kind.SUM,
                StudyTexts.text("offset.sum", offset.point().owner()),
                milli(offset.volts()),
                Optional.of(offset.point().owner().value())));
        boolean tried = rows.stream().anyMatch(row -> row.second().isPresent());
        return new SignedBars(
                title(harness, offset),
                subtitle(harness, offset),
                StudyTexts.text("offset.axis"),
                Unit.MILLIVOLT.symbol(),
                tried ? StudyTexts.text("offset.off") : Text.NONE,
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

    private static Text title(Harness harness, Offset offset) {
        return StudyTexts.text(
                "offset",
                Named.label(harness, offset.point().owner()),
                word(offset.point().kind()),
                Formats.volts(offset.volts()),
                offset.point().against());
    }

    private static Text subtitle(Harness harness, Offset offset) {
        String state = Named.state(harness, offset.state());
        return offset.rippleVolts() > 0
                ? StudyTexts.text("offset.swinging", state, Formats.volts(offset.rippleVolts()))
                : Text.of(state);
    }

    /** A kind of reference point in words. */
    public static Text word(ReferencePoint.Kind kind) {
        return StudyTexts.text("point." + kind.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
