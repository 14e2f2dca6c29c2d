package org.ohmloom.analysis;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.ohmloom.ground.LostReturns;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetLimits;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.GroundLimit;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;

/** Writes how offsets come about into the calculation log. */
final class OffsetLog {

    private OffsetLog() {}

    /** Adds lines as depth and text. */
    static void write(Harness harness, WireTables tables, ReturnStudy study, BiConsumer<Integer, String> log) {
        Map<ReferencePoint, Offset> worst = new LinkedHashMap<>();
        study.offsets()
                .forEach(offset -> worst.merge(
                        offset.point(), offset, (one, other) -> other.worstVolts() > one.worstVolts() ? other : one));
        if (worst.isEmpty()) {
            return;
        }
        log.accept(0, "Offsets of reference points");
        log.accept(
                1,
                "Share of a current = transfer resistance x mean current, all other currents held, the reference source taking"
                        + " up the difference; one transposed solution per point, the shares sum to the offset");
        log.accept(
                1,
                "Ripple = largest departure from the mean in any moment; of a cause, sum of transfer resistance x (current in a"
                        + " stretch of its clock less its mean), the largest stretch");
        limit(tables, GroundLimit.UNIT, "Control-unit ground", log);
        limit(tables, GroundLimit.OTHER, "Other grounds", log);
        limit(tables, GroundLimit.SURVIVAL, "What units are made to stand", log);
        worst.forEach((point, offset) -> {
            log.accept(
                    1,
                    "The " + point.words() + " against " + point.against() + " in '"
                            + harness.states().get(offset.state()).name() + "': "
                            + Formats.volts(offset.volts())
                            + (offset.rippleVolts() > 0 ? ", ripple " + Formats.volts(offset.rippleVolts()) : "")
                            + limit(harness, point));
            for (OffsetShare share : offset.shares()) {
                log.accept(2, words(share));
            }
        });
        log.accept(
                1,
                "Lost returns: each ground point, ground wire, strap and protective device that carries 50 mA or more is opened in"
                        + " turn and the network solved anew, sources at their voltages, relays following their coils, with"
                        + " every output with a duty on: where the current goes, which loads stop or are fed backwards; a joint of 0 ohm is opened as one of "
                        + Formats.ohms(OpenableGrounds.JOINT_OHMS));
        log.accept(
                2,
                "What that overloads is judged by RMS currents where outputs switch: the state solved once more at its duties"
                        + " with the conductor open, for up to " + LostReturns.MOST_AT_DUTIES
                        + " openings of a state; further ones are judged with every output on");
    }

    private static String limit(Harness harness, ReferencePoint point) {
        return switch (point.kind()) {
            case UNIT_GROUND, GROUND_POINT -> "; limit " + Formats.volts(OffsetLimits.volts(harness, point));
            case SENSOR_RETURN, BUS_NODE_GROUND -> "";
        };
    }

    private static void limit(WireTables tables, String item, String words, BiConsumer<Integer, String> log) {
        Optional<CitedValue> limit = tables.groundLimitVolts(item);
        limit.ifPresent(value -> log.accept(
                2,
                words + ": " + Formats.volts(value.value()) + ", "
                        + value.citation().text()));
    }

    private static String words(OffsetShare share) {
        String words = share.cause() + ": " + Formats.ohms(share.transferOhms()) + " x " + Formats.amps(share.amps())
                + ", " + Formats.volts(share.volts()) + " in all";
        return share.switchedOffVolts().isPresent()
                ? words + "; offset with it switched off, solved anew: "
                        + Formats.volts(share.switchedOffVolts().getAsDouble())
                : words;
    }
}
