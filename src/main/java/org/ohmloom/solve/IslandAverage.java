package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;

/**
 * Turns what the moments of one island add up to into what is published: mean, root mean square and on-state values.
 *
 * <p>With the weights w1, w2, ... of the moments: mean = sum of w x value, RMS = sqrt(sum of w x value^2), on-state = the
 * largest value of all moments. The mean current of a resistance is found from the difference of two mean voltages, so that
 * the published mean voltages and currents satisfy Ohm's and Kirchhoff's laws as well as those of each moment do.
 */
final class IslandAverage {

    private final Network network;
    private final String island;
    private final Tally tally;
    private final Circuit circuit;

    /**
     * What to publish of an island.
     *
     * @param network the network, for the branches as they are published
     * @param island  id of the island
     * @param tally   what its moments add up to
     */
    IslandAverage(Network network, String island, Tally tally) {
        this.network = network;
        this.island = island;
        this.tally = tally;
        this.circuit = tally.circuit();
    }

    /** Mean voltage of each point but the datum, V. */
    double[] meanVolts() {
        return tally.meanVolts().values();
    }

    /** Currents and voltages of each branch of the circuit. */
    List<BranchFlow> flows() {
        List<BranchFlow> flows = new ArrayList<>();
        for (int branch = 0; branch < circuit.branches().size(); branch++) {
            flows.add(flow(branch));
        }
        return flows;
    }

    private BranchFlow flow(int number) {
        Branch present = circuit.branches().get(number);
        Branch branch = network.branches().get(present.id());
        OptionalDouble ohms = ohms(present);
        Precise meanDrop = circuit.along(number, tally.meanVolts());
        double amps = present.law() instanceof Law.Resistance resistance
                ? meanDrop.dividedBy(resistance.ohms()).value()
                : tally.meanAmps(number).value();
        double rmsAmps = rmsAmps(number, amps);
        double onAmps = tally.isSteady() ? amps : tally.mostAmps(number);
        if (ohms.isEmpty()) {
            double onDrop = tally.isSteady() ? meanDrop.value() : tally.mostVolts(number);
            return new BranchFlow(
                    branch, island, ohms, amps, rmsAmps, onAmps, meanDrop.value(), onDrop, tally.watts(number));
        }
        double known = ohms.getAsDouble();
        return new BranchFlow(
                branch, island, ohms, amps, rmsAmps, onAmps, amps * known, onAmps * known, rmsAmps * rmsAmps * known);
    }

    /** Between the mean and the largest current, which rounding could otherwise leave. */
    private double rmsAmps(int number, double meanAmps) {
        double rms = Math.min(Math.sqrt(tally.meanSquareAmps(number)), Math.abs(tally.mostAmps(number)));
        return tally.isSteady() ? Math.abs(meanAmps) : Math.max(Math.abs(meanAmps), rms);
    }

    /** The resistance to publish: that of conductors, contacts and closed devices, not of sources and loads. */
    private static OptionalDouble ohms(Branch branch) {
        BranchKind.Part part = branch.kind().part();
        boolean passage = part != BranchKind.Part.LOAD && part != BranchKind.Part.SOURCE;
        return passage && branch.law() instanceof Law.Resistance resistance
                ? OptionalDouble.of(resistance.ohms())
                : OptionalDouble.empty();
    }
}
