package org.ohmloom.signal.calibration;

import java.util.Map;
import java.util.OptionalDouble;
import org.ohmloom.model.Calibration.PulseLevels;
import org.ohmloom.model.Calibration.Turns;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Pulses in a second for one unit of what is measured.
 *
 * <p>A wheel of p pulses a turn that makes r turns for one of what is measured gives f = p r n at n turns in a second; with a tyre of
 * diameter d on it n = v / (pi d) at a speed v (textbook). So f = p N / 60 for N turns in a minute.
 */
public final class PulseRate {

    /** Turns in a second for one unit of a speed of turning; m/s for one unit of a speed of travel. */
    private static final Map<String, Double>
            TURNING = Map.of("rpm", 1 / 60.0, "1/min", 1 / 60.0, "Hz", 1.0, "1/s", 1.0),
            TRAVEL = Map.of("km/h", 1 / 3.6, "m/s", 1.0, "mph", 0.44704);

    private PulseRate() {}

    /** Hertz for one unit; empty where neither they nor a wheel with a unit of speed are entered. */
    public static OptionalDouble hertzPerUnit(PulseLevels pulses, String unit) {
        if (pulses.turns().isEmpty()) {
            return pulses.hertzPerUnit();
        }
        Turns turns = pulses.turns().get();
        boolean travels = turns.tyreMetres().isPresent();
        Double speed = (travels ? TRAVEL : TURNING).get(unit);
        if (speed == null) {
            return OptionalDouble.empty();
        }
        double turnsPerSecond = travels ? speed / (Math.PI * turns.tyreMetres().getAsDouble()) : speed;
        return OptionalDouble.of(
                turns.pulsesPerRevolution() * turns.turnsRatio().orElse(1) * turnsPerSecond);
    }

    /** How it is worked out, in one line. */
    public static Text formula(PulseLevels pulses, String unit) {
        if (pulses.turns().isEmpty()) {
            return SignalTexts.text(
                    "curve.pulses", Formats.number(pulses.hertzPerUnit().orElse(Double.NaN)), unit);
        }
        Turns turns = pulses.turns().get();
        String perTurn = Formats.number(turns.pulsesPerRevolution());
        String ratio = Formats.number(turns.turnsRatio().orElse(1));
        return turns.tyreMetres().isPresent()
                ? SignalTexts.text(
                        "curve.tyre",
                        perTurn,
                        ratio,
                        Formats.metres(turns.tyreMetres().getAsDouble()))
                : SignalTexts.text("curve.turns", perTurn, ratio);
    }
}
