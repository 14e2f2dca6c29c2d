package org.ohmloom.graph;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Driver;
import org.ohmloom.model.Setting;
import org.ohmloom.units.Formats;

/**
 * The branches of one output beside the switch itself: its freewheel diode or clamp, and the capacitor on its supply; and
 * when it is on.
 *
 * <p>A diode to the driver's supply leads from the output to the supply, one to its ground from the ground to the output,
 * whichever side it switches. The clamp lies across the switch. The capacitor lies between supply and ground and carries
 * whatever repeats at least half as often as the output switches.
 *
 * @param draft  the component
 * @param name   the output as people know it
 * @param part   part of the component its branches are named after; empty for the component itself
 * @param driver how it switches, if known
 * @param clock  the clock it is on unless it says another
 */
record DriverBranches(DeviceDraft draft, String name, Optional<String> part, Optional<Driver> driver, String clock) {

    /** Frequency of an output that states none, Hz. */
    static final double FALLBACK_HERTZ = 100;

    /** Forward drop of a freewheel diode that states none, V. */
    static final double FALLBACK_DIODE_VOLTS = 0.7;

    /** Slope resistance of freewheel diodes and clamps, ohm. */
    static final double DIODE_OHMS = 0.01;

    private static final double RIPPLE_HERTZ_RATIO = 0.5;

    /**
     * The law of the switch.
     *
     * @param setting how the operating state sets it
     * @param onOhms  resistance while on, ohm
     */
    Law law(Optional<Setting> setting, double onOhms) {
        if (!setting.map(Setting::on).orElse(false)) {
            return new Law.Open();
        }
        double dutyFraction = setting.get().dutyFraction();
        if (dutyFraction >= 1) {
            return new Law.Resistance(onOhms);
        }
        if (driver.isEmpty()) {
            draft.assume(
                    NetworkTexts.text("assumed.no-frequency", name, Formats.hertz(FALLBACK_HERTZ), clock),
                    Assumption.COMMON_PRACTICE);
        }
        Pulse pulse = new Pulse(
                driver.flatMap(Driver::clock).orElse(clock),
                driver.map(Driver::frequencyHertz).orElse(FALLBACK_HERTZ),
                driver.map(Driver::phaseFraction).orElse(OptionalDouble.empty()).orElse(0),
                dutyFraction);
        return new Law.SwitchedResistance(onOhms, pulse);
    }

    /**
     * Adds what lies beside the switch.
     *
     * @param in     where current enters the switch
     * @param out    where it leaves it
     * @param supply the driver's supply, if it has one
     * @param ground the driver's ground, if it has one
     * @param output the end of the switch that is the output
     */
    void add(PointName in, PointName out, Optional<PointName> supply, Optional<PointName> ground, PointName output) {
        if (driver.isEmpty()) {
            return;
        }
        Driver.Freewheel where = driver.get().freewheel();
        if (where == Driver.Freewheel.ACTIVE_CLAMP) {
            double volts = driver.get().clamp().orElseThrow().clampVolts();
            branch("clamp", BranchKind.CLAMP, in, out, new Law.Threshold(volts, DIODE_OHMS));
        } else if (where == Driver.Freewheel.DRIVER_SUPPLY) {
            diode(Optional.of(output), supply, "assumed.no-diode-at-supply");
        } else if (where == Driver.Freewheel.DRIVER_GROUND) {
            diode(ground, Optional.of(output), "assumed.no-diode-at-ground");
        }
    }

    /**
     * Adds the capacitor of several outputs on one supply, once.
     *
     * @param draft   the component
     * @param part    name of the branch's part
     * @param drivers how the outputs switch
     * @param supply  their supply, if there is one
     * @param ground  their ground, if there is one
     */
    static void capacitor(
            DeviceDraft draft,
            String part,
            List<Driver> drivers,
            Optional<PointName> supply,
            Optional<PointName> ground) {
        OptionalDouble leastHertz = drivers.stream()
                .filter(Driver::supplyCapacitor)
                .mapToDouble(Driver::frequencyHertz)
                .min();
        if (leastHertz.isEmpty()) {
            return;
        }
        if (supply.isPresent() && ground.isPresent()) {
            draft.branch(
                    part,
                    BranchKind.SUPPLY_CAPACITOR,
                    supply.get(),
                    ground.get(),
                    new Law.SupplyCapacitor(RIPPLE_HERTZ_RATIO * leastHertz.getAsDouble()));
        } else {
            draft.assume(
                    NetworkTexts.text(
                            "assumed.no-capacitor-ends", draft.component().id()),
                    "the harness");
        }
    }

    private void diode(Optional<PointName> anode, Optional<PointName> cathode, String lacking) {
        if (anode.isEmpty() || cathode.isEmpty()) {
            draft.assume(NetworkTexts.text(lacking, name), "the harness");
            return;
        }
        double volts =
                driver.map(Driver::diodeVolts).orElse(OptionalDouble.empty()).orElse(FALLBACK_DIODE_VOLTS);
        branch("freewheel", BranchKind.FREEWHEEL_DIODE, anode.get(), cathode.get(), diodeLaw(volts));
    }

    /** A freewheel diode of that forward drop, V. */
    static Law diodeLaw(double volts) {
        return new Law.Threshold(volts, DIODE_OHMS);
    }

    private void branch(String what, BranchKind kind, PointName from, PointName to, Law law) {
        draft.branch(part.map(own -> own + "~" + what).orElse(what), kind, from, to, law);
    }
}
