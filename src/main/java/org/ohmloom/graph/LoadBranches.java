package org.ohmloom.graph;

import java.util.Optional;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Load;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Setting;

/**
 * Branches of loads and sensors.
 *
 * <p>A load under {@link Load.Control#FEED} draws whenever it is fed, whatever the state says. One under
 * {@link Load.Control#COMMAND} is open unless the state asks it on; a duty then is the commanded share of its draw, taken
 * continuously: nothing switches its feed. A duty on a resistive load under FEED is its own thermostat or regulator: it
 * is switched. Other loads under FEED that name a duty are taken at that share of their draw, as if commanded. The duty
 * of an output that switches a load belongs to the output, not to the load. A motor told to start stands still at its
 * full start current, whatever its duty.
 */
final class LoadBranches {

    private LoadBranches() {}

    static void load(DeviceDraft draft, Load load) {
        draft.branch(BranchKind.LOAD, Device.POSITIVE, Device.NEGATIVE, law(draft, load, draft.setting()));
    }

    private static Law law(DeviceDraft draft, Load load, Optional<Setting> setting) {
        boolean on = setting.map(Setting::on).orElse(false);
        if (load.control() == Load.Control.COMMAND && !on) {
            return new Law.Open();
        }
        double share = on ? setting.get().dutyFraction() : 1;
        boolean starting = on && setting.get().starting();
        if (load.control() == Load.Control.FEED && share < 1 && load.draw() instanceof Draw.Resistive resistive) {
            return new Law.Cycled(new Law.Resistance(resistive.resistanceOhms()), draft.ownClock(DeviceDraft.FALLBACK_CYCLE_HERTZ, share));
        }
        return law(load.draw(), share, starting);
    }

    private static Law law(Draw draw, double share, boolean starting) {
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

    /** What the sensor takes from its supply, and the resistance it shows between signal and return. */
    static void sensor(DeviceDraft draft, Sensor sensor) {
        if (sensor.drawAmps() > 0) {
            draft.branch(
                    Sensor.SUPPLY,
                    BranchKind.SENSOR,
                    Sensor.SUPPLY,
                    Sensor.RETURN,
                    new Law.ConstantCurrent(sensor.drawAmps()));
        }
        sensor.signalOhms()
                .ifPresent(ohms -> draft.branch(
                        Sensor.SIGNAL, BranchKind.SENSOR, Sensor.SIGNAL, Sensor.RETURN, new Law.Resistance(ohms)));
    }
}
