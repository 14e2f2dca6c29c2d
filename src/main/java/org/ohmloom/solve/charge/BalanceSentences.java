package org.ohmloom.solve.charge;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.charge.AlternatorBalance.Mode;
import org.ohmloom.units.Formats;

/** The charge balance of a state in sentences. */
final class BalanceSentences {

    /** A charging current this close to what is accepted, as a share, is all of it. */
    private static final double ACCEPTED_RATIO = 1e-6;

    private BalanceSentences() {}

    static List<String> of(OperatingState state, List<AlternatorBalance> alternators, List<BatteryBalance> batteries) {
        List<String> sentences = new ArrayList<>();
        alternators.forEach(alternator -> sentences.add(alternator(alternator)));
        boolean ranOut = alternators.stream().anyMatch(each -> each.mode() == Mode.AT_LIMIT);
        batteries.forEach(battery -> sentences.add(battery(state, battery, ranOut)));
        return sentences;
    }

    private static String alternator(AlternatorBalance each) {
        return switch (each.mode()) {
            case REGULATES -> each.alternator() + " holds " + Formats.volts(each.senseVolts()) + " at " + each.sense()
                    + " and gives " + Formats.amps(each.amps()) + " of " + Formats.amps(each.limitAmps()) + ".";
            case AT_LIMIT -> each.alternator() + " gives all of its " + Formats.amps(each.limitAmps()) + " and reaches "
                    + Formats.volts(each.senseVolts()) + " of " + Formats.volts(each.setPointVolts()) + " at "
                    + each.sense() + ".";
            case IDLE -> each.alternator() + " gives nothing: " + each.sense() + " stands at "
                    + Formats.volts(each.senseVolts()) + ", above its " + Formats.volts(each.setPointVolts()) + ".";
            case AT_REST -> each.alternator() + " can give nothing in this state.";
        };
    }

    private static String battery(OperatingState state, BatteryBalance each, boolean ranOut) {
        if (each.charges()) {
            return each.battery() + " is charged with " + Formats.amps(-each.amps())
                    + (-each.amps() >= each.acceptanceAmps() * (1 - ACCEPTED_RATIO) ? ", all it accepts." : ".");
        }
        if (!each.discharges()) {
            return each.battery() + " neither gives nor takes current.";
        }
        String rest = ranOut ? " supplies the remaining " : " supplies ";
        String start = each.battery() + rest + Formats.amps(each.amps()) + " at " + Formats.volts(each.volts());
        if (state.durationSeconds().isPresent()) {
            double seconds = state.durationSeconds().getAsDouble();
            return start + " for " + Formats.seconds(seconds) + ": " + Formats.number(each.amps() * seconds / 3600)
                    + " Ah.";
        }
        double hours = each.enduranceHours().orElse(each.plainHours().orElse(0));
        return start + ": " + Formats.number(each.amps()) + " Ah in every hour, empty after " + hours(hours) + ".";
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
