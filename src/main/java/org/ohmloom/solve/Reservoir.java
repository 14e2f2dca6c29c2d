package org.ohmloom.solve;

import java.util.List;
import java.util.stream.IntStream;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;

/**
 * A supply capacitor: a voltage that stays the same through every period short enough, at the height at which its mean
 * current is 0. It follows the clocks slower than that, each by its own steps.
 */
final class Reservoir {

    /** First guess of how its voltage falls with the current taken from it, ohm; {@link Anderson} finds the right one. */
    private static final double GUESS_OHMS = 0.005;

    private final BranchId id;
    private final int[] slow;
    private final int size;
    private final int[] first;

    Reservoir(BranchId id, Law.SupplyCapacitor law, List<Clock> clocks) {
        this.id = id;
        slow = IntStream.range(0, clocks.size())
                .filter(clock -> clocks.get(clock).frequencyHertz() < law.leastHertz())
                .toArray();
        first = new int[slow.length];
        int next = 1;
        for (int each = 0; each < slow.length; each++) {
            first[each] = next;
            next += clocks.get(slow[each]).stretches().size();
        }
        size = next;
    }

    /** Its branch. */
    BranchId id() {
        return id;
    }

    /** How many voltages describe it: the mean, and the steps with the stretches of slow clocks. */
    int size() {
        return size;
    }

    /** Its voltages when it is not there: the mean and the steps of what stands at its terminals. */
    void start(ClockReading volts, double[] unknowns, int from) {
        unknowns[from] = volts.mean();
        for (int each = 0; each < slow.length; each++) {
            double[] steps = volts.deviations(slow[each]);
            System.arraycopy(steps, 0, unknowns, from + first[each], steps.length);
        }
    }

    /** Its voltages moved against the mean currents it takes. */
    void move(ClockReading amps, double[] unknowns, double[] moved, int from) {
        moved[from] = unknowns[from] - GUESS_OHMS * amps.mean();
        for (int each = 0; each < slow.length; each++) {
            double[] steps = amps.deviations(slow[each]);
            for (int step = 0; step < steps.length; step++) {
                int place = from + first[each] + step;
                moved[place] = unknowns[place] - GUESS_OHMS * steps[step];
            }
        }
    }

    /** What it is in a moment. */
    Characteristic characteristic(List<Part> at, double[] unknowns, int from) {
        double volts = unknowns[from];
        for (int each = 0; each < slow.length; each++) {
            volts += unknowns[from + first[each] + at.get(slow[each]).stretch()];
        }
        return new HeldVolts(volts);
    }
}
