package org.ohmloom.solve.run;

import java.util.List;
import java.util.stream.Stream;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.solve.WarmNetwork;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * The capacitor at the supply of a control unit, empty at first, behind its series resistance; its state is its voltage Vc.
 *
 * <p>dVc/dt = I / C, I = (V - Vc) / R, V what the feed leaves: behind a feed of Rf it fills exponentially with (R + Rf) C.
 * Once it is full to {@link #FULL_SHARE} it rests: what it then takes and gives as the supply moves is left out, which is
 * on the safe side for the lowest voltage. Beside it the unit draws its own current from the start.
 */
final class Charging implements Moving {

    /** Current that is left when it counts as full, as a share of the first current. */
    private static final double FULL_SHARE = 0.002;

    private final List<BranchId> branches;
    private final BranchId capacitor;
    private final Law ownDraw;
    private final double farads;
    private final double ohms;
    private double firstAmps;
    private boolean full;

    /**
     * A unit with a capacitor.
     *
     * @param ownBranches branches of the unit's own draw, none or one
     * @param ownDraw     their law
     * @param capacitor   the branch of the capacitor
     * @param farads      capacitance, F
     * @param ohms        resistance in series with it, ohm
     */
    Charging(List<BranchId> ownBranches, Law ownDraw, BranchId capacitor, double farads, double ohms) {
        this.branches =
                Stream.concat(ownBranches.stream(), Stream.of(capacitor)).toList();
        this.ownDraw = ownDraw;
        this.capacitor = capacitor;
        this.farads = farads;
        this.ohms = ohms;
    }

    @Override
    public List<BranchId> branches() {
        return branches;
    }

    @Override
    public double timeConstantSeconds() {
        return ohms * farads;
    }

    @Override
    public Manner manner() {
        return Manner.CHARGES;
    }

    @Override
    public Text method() {
        return SolveTexts.text("start.charging", Formats.quantity(farads, Dimension.CAPACITANCE), Formats.ohms(ohms));
    }

    @Override
    public void apply(WarmNetwork network, double seconds, double state) {
        network.set(capacitor, full ? new Law.Open() : new Law.BackEmf(ohms, Math.max(0, state)));
        branches.stream().filter(branch -> !branch.equals(capacitor)).forEach(branch -> network.set(branch, ownDraw));
    }

    @Override
    public void switchOff(WarmNetwork network) {
        full = false;
        firstAmps = 0;
        branches.forEach(branch -> network.set(branch, new Law.Open()));
    }

    @Override
    public double rate(WarmNetwork network, double state) {
        return full ? 0 : network.amps(capacitor) / farads;
    }

    @Override
    public double unrest(WarmNetwork network, double seconds, double state) {
        if (full) {
            return 0;
        }
        double amps = network.amps(capacitor);
        firstAmps = Math.max(firstAmps, amps);
        return firstAmps > 0 ? amps / firstAmps : 0;
    }

    @Override
    public double stateSize(WarmNetwork network) {
        return Math.max(1, network.volts(capacitor));
    }

    @Override
    public boolean isFrozen() {
        return full;
    }

    @Override
    public void reached(double unrest) {
        full |= unrest < FULL_SHARE;
    }
}
