package org.ohmloom.solve.run;

import java.util.List;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.solve.WarmNetwork;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A load whose current falls exponentially from a peak to its running current.
 *
 * <p>With f = exp(-t / tau) it is f of the resistance rated volts / peak, which a cold filament or a motor at standstill is,
 * and 1 - f of what it is when it runs: at the rated voltage running + (peak - running) x f, at the first instant a
 * resistance whatever the voltage. The resistance is a branch of its own beside the load's.
 */
final class Fading implements Moving {

    /** Share below which a part counts as none. */
    private static final double NOTHING = 1e-9;

    private final BranchId running;
    private final BranchId cold;
    private final Law law;
    private final double coldOhms;
    private final double decaySeconds;
    private final Text method;

    /**
     * A load with a peak.
     *
     * @param running      its branch
     * @param cold         the branch beside it
     * @param law          its law when it runs
     * @param ratedVolts   voltage the peak is given at, V
     * @param peakAmps     peak, A
     * @param decaySeconds time constant of the decay, s
     */
    Fading(BranchId running, BranchId cold, Law law, double ratedVolts, double peakAmps, double decaySeconds) {
        this.running = running;
        this.cold = cold;
        this.law = law;
        this.coldOhms = ratedVolts / peakAmps;
        this.decaySeconds = decaySeconds;
        this.method = SolveTexts.text(
                "start.fading",
                Formats.seconds(decaySeconds),
                Formats.volts(ratedVolts),
                Formats.amps(peakAmps),
                Formats.ohms(coldOhms));
    }

    @Override
    public List<BranchId> branches() {
        return List.of(running, cold);
    }

    @Override
    public double timeConstantSeconds() {
        return decaySeconds;
    }

    @Override
    public Manner manner() {
        return Manner.DECAYS;
    }

    @Override
    public Text method() {
        return method;
    }

    @Override
    public boolean hasState() {
        return false;
    }

    @Override
    public void apply(WarmNetwork network, double seconds, double state) {
        double fading = Math.exp(-seconds / decaySeconds);
        network.set(cold, fading > NOTHING ? new Law.Resistance(coldOhms / fading) : new Law.Open());
        network.set(running, share(law, -Math.expm1(-seconds / decaySeconds)));
    }

    /** That share of a load. */
    private static Law share(Law law, double share) {
        if (share < NOTHING) {
            return new Law.Open();
        }
        if (law instanceof Law.Resistance resistance) {
            return new Law.Resistance(resistance.ohms() / share);
        }
        if (law instanceof Law.ConstantCurrent current) {
            return new Law.ConstantCurrent(current.amps() * share);
        }
        if (law instanceof Law.ConstantPower power) {
            return new Law.ConstantPower(power.watts() * share);
        }
        if (law instanceof Law.PowerLaw lamp) {
            return new Law.PowerLaw(lamp.ratedAmps() * share, lamp.ratedVolts(), lamp.exponent());
        }
        if (law instanceof Law.BackEmf motor) {
            return new Law.BackEmf(motor.ohms() / share, motor.counterVolts());
        }
        return law;
    }

    @Override
    public void switchOff(WarmNetwork network) {
        network.set(cold, new Law.Open());
        network.set(running, new Law.Open());
    }

    @Override
    public double rate(WarmNetwork network, double state) {
        return 0;
    }

    @Override
    public double unrest(WarmNetwork network, double seconds, double state) {
        return Math.exp(-seconds / decaySeconds);
    }
}
