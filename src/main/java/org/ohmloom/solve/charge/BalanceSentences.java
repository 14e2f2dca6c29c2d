package org.ohmloom.solve.charge;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.solve.charge.AlternatorBalance.Mode;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** The charge balance of a state in sentences. */
final class BalanceSentences {

    /** A charging current this close to what is accepted, as a share, is all of it. */
    private static final double ACCEPTED_RATIO = 1e-6;

    private BalanceSentences() {}

    static List<Text> of(OperatingState state, List<AlternatorBalance> alternators, List<BatteryBalance> batteries) {
        List<Text> sentences = new ArrayList<>();
        alternators.forEach(alternator -> sentences.add(alternator(alternator)));
        boolean ranOut = alternators.stream().anyMatch(each -> each.mode() == Mode.AT_LIMIT);
        batteries.forEach(battery -> sentences.add(battery(state, battery, ranOut)));
        return sentences;
    }

    private static Text alternator(AlternatorBalance each) {
        return switch (each.mode()) {
            case REGULATES -> SolveTexts.text(
                    "charge.regulates",
                    each.alternator(),
                    Formats.volts(each.senseVolts()),
                    each.sense(),
                    Formats.amps(each.amps()),
                    Formats.amps(each.limitAmps()));
            case AT_LIMIT -> SolveTexts.text(
                    "charge.at-limit",
                    each.alternator(),
                    Formats.amps(each.limitAmps()),
                    Formats.volts(each.senseVolts()),
                    Formats.volts(each.setPointVolts()),
                    each.sense());
            case IDLE -> SolveTexts.text(
                    "charge.idle",
                    each.alternator(),
                    each.sense(),
                    Formats.volts(each.senseVolts()),
                    Formats.volts(each.setPointVolts()));
            case AT_REST -> SolveTexts.text("charge.at-rest", each.alternator());
        };
    }

    private static Text battery(OperatingState state, BatteryBalance each, boolean ranOut) {
        if (each.charges()) {
            boolean all = -each.amps() >= each.acceptanceAmps() * (1 - ACCEPTED_RATIO);
            return SolveTexts.text(
                    all ? "charge.charged-all" : "charge.charged", each.battery(), Formats.amps(-each.amps()));
        }
        if (!each.discharges()) {
            return SolveTexts.text("charge.neither", each.battery());
        }
        Text start = SolveTexts.text(
                ranOut ? "charge.supplies-rest" : "charge.supplies",
                each.battery(),
                Formats.amps(each.amps()),
                Formats.volts(each.volts()));
        if (state.durationSeconds().isPresent()) {
            double seconds = state.durationSeconds().getAsDouble();
            return SolveTexts.text(
                    "charge.for", start, Formats.seconds(seconds), Formats.number(each.amps() * seconds / 3600));
        }
        double hours = each.enduranceHours().orElse(each.plainHours().orElse(0));
        return SolveTexts.text("charge.every-hour", start, Formats.number(each.amps()), hours(hours));
    }

    /** Hours and minutes as people say them. */
    static String hours(double hours) {
        long minutes = Math.round(hours * 60);
        if (minutes < 60) {
            return minutes + " min";
        }
        return minutes / 60 + " h" + (minutes % 60 == 0 || hours >= 48 ? "" : " " + minutes % 60 + " min");
    }
}
