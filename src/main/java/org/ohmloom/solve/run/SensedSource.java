package org.ohmloom.solve.run;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Sensing;
import org.ohmloom.solve.WarmNetwork;

/**
 * An alternator that holds its set point at another place. Its electromotive force is sought for the state before a start and
 * then kept: the field of an alternator is slow against a start, and a voltage too low for a while is the safe side. For the
 * same reason it is never above the one found for the means of the whole state.
 */
final class SensedSource {

    /** Distance from the set point that counts as none, V. */
    static final double SAME_VOLTS = 1e-3;

    /** Share of the current limit at which it counts as reached. */
    private static final double LIMIT_SHARE = 1 - 1e-9;

    private static final double LEAST_SLOPE = 0.02;

    private final BranchId branch;
    private final PointId negative;
    private final PointId sense;
    private final double setPointVolts;
    private final Law.VoltageSource law;
    private double emfVolts;
    private double lastEmfVolts = Double.NaN;
    private double lastSenseVolts;

    private SensedSource(Branch branch, Law.VoltageSource law, Sensing sensing) {
        this.branch = branch.id();
        this.negative = branch.from();
        this.sense = sensing.sense();
        this.setPointVolts = sensing.setPointVolts();
        this.law = law;
        this.emfVolts = law.emfVolts();
    }

    /** The alternators of a network that are on and sense elsewhere. */
    static List<SensedSource> of(Network network) {
        List<SensedSource> sources = new ArrayList<>();
        for (Sensing sensing : network.sensings()) {
            network.branch(sensing.source())
                    .filter(branch -> branch.law() instanceof Law.VoltageSource
                            && !branch.to().equals(sensing.sense()))
                    .ifPresent(
                            branch -> sources.add(new SensedSource(branch, (Law.VoltageSource) branch.law(), sensing)));
        }
        return sources;
    }

    /**
     * Moves the electromotive force towards the set point after a solution, by the secant through the last two.
     *
     * @return how far the sense point was off in a way it can change, V
     */
    double regulate(WarmNetwork network) {
        double amps = network.amps(branch);
        double volts = network.volts(sense, negative);
        double missing = setPointVolts - volts;
        boolean idle = missing < 0 && amps <= 0;
        boolean full = missing > 0 && amps >= LIMIT_SHARE * law.maximumAmps();
        if (idle || full || volts == 0) {
            return 0;
        }
        double slope = emfVolts == lastEmfVolts || Double.isNaN(lastEmfVolts)
                ? 1
                : (volts - lastSenseVolts) / (emfVolts - lastEmfVolts);
        lastEmfVolts = emfVolts;
        lastSenseVolts = volts;
        double wanted = emfVolts + missing / Math.min(1, Math.max(LEAST_SLOPE, slope));
        emfVolts = Math.min(law.emfVolts(), Math.max(SAME_VOLTS, wanted));
        network.set(branch, law.withEmfVolts(emfVolts));
        return emfVolts == lastEmfVolts ? 0 : Math.abs(missing);
    }
}
