package org.ohmloom.graph;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Cycle;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.Setting;
import org.ohmloom.units.Formats;

/**
 * The law of a load in an operating state, and what its duty means.
 *
 * <ul>
 *   <li>Behind an output that switches, the duty is the output's: the load has its whole law.
 *   <li>Under {@link Load.Control#COMMAND} it is open unless the state asks it on, and a duty is the commanded operating point,
 *       fed continuously: of a {@link Draw.MagnetMotor} the speed, held by its electronics at the power that takes; of any
 *       other the share of its draw.
 *   <li>With a {@link Cycle} it switches itself, on a clock of its own: for its on-time in every period, or, when it states
 *       none, for the duty of the state.
 *   <li>Under {@link Load.Control#FEED} without a cycle a duty on a resistance is its own thermostat, once a minute; on any
 *       other it is a share of its draw.
 * </ul>
 *
 * <p>A motor told to start stands still at its full start current, whatever its duty.
 */
record LoadLaws(DeviceDraft draft, Load load) {

    /** Period of a thermostat that states none, s. */
    static final double FALLBACK_PERIOD_SECONDS = 60;

    Law law() {
        Optional<Setting> setting = draft.setting();
        boolean on = setting.map(Setting::on).orElse(false);
        if (load.control() == Load.Control.COMMAND && !on) {
            return new Law.Open();
        }
        double duty = on ? setting.get().dutyFraction() : 1;
        boolean starting = on && setting.get().starting();
        if (load.cycle().isPresent()) {
            return cycled(load.cycle().get(), duty, starting);
        }
        if (load.control() == Load.Control.FEED && duty < 1 && load.draw() instanceof Draw.Resistive) {
            draft.assume(
                    NetworkTexts.text(
                            "assumed.no-period", draft.component().id(), Formats.seconds(FALLBACK_PERIOD_SECONDS)),
                    Assumption.COMMON_PRACTICE);
            return new Law.Cycled(whole(starting), pulse(FALLBACK_PERIOD_SECONDS, duty));
        }
        if (load.control() == Load.Control.COMMAND
                && duty < 1
                && !starting
                && load.draw() instanceof Draw.MagnetMotor motor) {
            return new Law.ConstantPower(commandedWatts(motor, duty));
        }
        return duty < 1 ? part(duty, starting) : whole(starting);
    }

    private Law cycled(Cycle cycle, double duty, boolean starting) {
        OptionalDouble onSeconds = cycle.onSeconds();
        double share = onSeconds.isPresent() ? onSeconds.getAsDouble() / cycle.periodSeconds() : duty;
        Law whole = whole(starting);
        return share < 1 ? new Law.Cycled(whole, pulse(cycle.periodSeconds(), share)) : whole;
    }

    private Pulse pulse(double periodSeconds, double share) {
        return new Pulse(draft.component().id().value(), 1 / periodSeconds, 0, share);
    }

    /** The power a motor takes at a speed its electronics hold: that of the winding and of the shaft. */
    static double commandedWatts(Draw.MagnetMotor motor, double speedFraction) {
        double square = speedFraction * speedFraction;
        double amps = motor.torque() == Draw.MagnetMotor.Torque.SPEED_SQUARED
                ? motor.freeAmps() + (motor.ratedAmps() - motor.freeAmps()) * square
                : motor.ratedAmps();
        return amps * (motor.windingOhms() * amps + motor.backVolts() * speedFraction);
    }

    private Law whole(boolean starting) {
        Draw draw = load.draw();
        if (draw instanceof Draw.Resistive resistive) {
            return new Law.Resistance(resistive.resistanceOhms());
        }
        if (draw instanceof Draw.Inductive inductive) {
            return new Law.Inductive(inductive.resistanceOhms(), inductive.inductanceHenries());
        }
        if (draw instanceof Draw.MagnetMotor motor) {
            return starting ? new Law.Inductive(motor.windingOhms(), motor.inductanceHenries()) : running(motor);
        }
        return part(1, starting);
    }

    private static Law running(Draw.MagnetMotor motor) {
        return new Law.MagnetMotor(
                motor.windingOhms(),
                motor.inductanceHenries(),
                motor.backVolts(),
                motor.ratedAmps(),
                motor.freeAmps(),
                motor.torque() == Draw.MagnetMotor.Torque.SPEED_SQUARED,
                motor.startSeconds());
    }

    private Law part(double share, boolean starting) {
        Draw draw = load.draw();
        if (draw instanceof Draw.Resistive resistive) {
            return new Law.Resistance(resistive.resistanceOhms() / share);
        }
        if (draw instanceof Draw.Inductive inductive) {
            return new Law.Resistance(inductive.resistanceOhms() / share);
        }
        if (draw instanceof Draw.ConstantPower power) {
            return new Law.ConstantPower(power.ratedWatts() * share);
        }
        if (draw instanceof Draw.Lamp lamp) {
            return new Law.PowerLaw(lamp.ratedAmps() * share, lamp.ratedVolts(), Draw.Lamp.CURRENT_EXPONENT);
        }
        if (starting && draw instanceof Draw.Motor motor) {
            return new Law.Resistance(motor.standstillOhms());
        }
        if (starting && draw instanceof Draw.MagnetMotor motor) {
            return new Law.Resistance(motor.windingOhms());
        }
        return new Law.ConstantCurrent(draw.ratedAmps() * share);
    }
}
