package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;

/**
 * Joins the moments of one island to what is published: mean, root mean square and on-state values.
 *
 * <p>With shares s1, s2, ... of the period: mean = sum of s x value, RMS = sqrt(sum of s x value^2), on-state = the value of
 * the first stretch, in which everything is on. Voltages are averaged in {@link Precise} numbers. The mean current of a
 * resistance is then found from the difference of two mean voltages, so that the published mean voltages and currents
 * satisfy Ohm's and Kirchhoff's laws as well as those of each moment do.
 */
final class IslandAverage {

    private final Network network;
    private final String island;
    private final Circuit circuit;
    private final List<Period> periods;
    private final List<IslandMoment> moments;
    private final Precise[] meanVolts;

    /**
     * Averages the voltages.
     *
     * @param network the network, for the branches as they are published
     * @param island  id of the island
     * @param circuit its circuit
     * @param periods the stretches of the period
     * @param moments the solution in each of them
     */
    IslandAverage(Network network, String island, Circuit circuit, List<Period> periods, List<IslandMoment> moments) {
        this.network = network;
        this.island = island;
        this.circuit = circuit;
        this.periods = periods;
        this.moments = moments;
        meanVolts = circuit.flat();
        for (int point = 0; point < meanVolts.length; point++) {
            int each = point;
            meanVolts[point] = mean(moment -> moment.volts()[each]);
        }
    }

    private interface Reading {
        Precise of(IslandMoment moment);
    }

    private Precise mean(Reading reading) {
        if (periods.size() == 1) {
            return reading.of(moments.get(0));
        }
        Precise mean = Precise.ZERO;
        for (int period = 0; period < periods.size(); period++) {
            mean = mean.plus(
                    reading.of(moments.get(period)).times(periods.get(period).shareFraction()));
        }
        return mean;
    }

    /** Mean voltage of each point but the datum, V. */
    double[] meanVolts() {
        return Arrays.stream(meanVolts).mapToDouble(Precise::value).toArray();
    }

    /** Voltage of each point but the datum while everything is on, V. */
    double[] onVolts() {
        return Arrays.stream(moments.get(0).volts()).mapToDouble(Precise::value).toArray();
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
        double amps = present.law() instanceof Law.Resistance resistance
                ? circuit.along(number, meanVolts).dividedBy(resistance.ohms()).value()
                : mean(moment -> moment.amps()[number]).value();
        double onAmps = moments.get(0).amps()[number].value();
        double rmsAmps = rmsAmps(number, amps);
        double drop = circuit.along(number, meanVolts).value();
        double onDrop = circuit.along(number, moments.get(0).volts()).value();
        if (ohms.isEmpty()) {
            double watts = 0;
            for (int period = 0; period < periods.size(); period++) {
                IslandMoment moment = moments.get(period);
                watts += periods.get(period).shareFraction()
                        * circuit.along(number, moment.volts()).value()
                        * moment.amps()[number].value();
            }
            return new BranchFlow(branch, island, ohms, amps, rmsAmps, onAmps, drop, onDrop, watts);
        }
        double known = ohms.getAsDouble();
        return new BranchFlow(
                branch, island, ohms, amps, rmsAmps, onAmps, amps * known, onAmps * known, rmsAmps * rmsAmps * known);
    }

    /** Never less than the mean, which rounding could otherwise bring about. */
    private double rmsAmps(int number, double meanAmps) {
        if (periods.size() == 1) {
            return Math.abs(meanAmps);
        }
        double squares = 0;
        for (int period = 0; period < periods.size(); period++) {
            double amps = moments.get(period).amps()[number].value();
            squares += periods.get(period).shareFraction() * amps * amps;
        }
        return Math.max(Math.abs(meanAmps), Math.sqrt(squares));
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
