package org.ohmloom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.ohmloom.model.Reading;
import org.ohmloom.tables.BenchLimit;

/**
 * One measurement of the continuity matrix: from the first end of a net to another end.
 * <p>Limit = listed maximum of the wires x (234.5 + T)/254.5 + contacts and joints + instrument. Lower
 * limit, where a typical share of the listed resistance is entered = that share of the wires x (234.5 + T)/254.5 - instrument.
 *
 * @param net        the net
 * @param to         the other end
 * @param path       what lies between
 * @param errorOhms  what the instrument adds, ohm
 * @param method     how it is measured: with four wires where less than the table's limit is expected
 * @param typicalFraction least share of their listed resistance that the wires typically measure; empty for no lower limit
 */
public record ContinuityTest(
        BenchNet net,
        BenchEnd to,
        BenchNet.Path path,
        double errorOhms,
        Reading.Method method,
        OptionalDouble typicalFraction) {

    /** All of a harness, net by net. */
    public static List<ContinuityTest> of(BenchInput input, List<BenchNet> nets) {
        List<ContinuityTest> tests = new ArrayList<>();
        OptionalDouble typical = input.harness().rules().fabricationRules().typicalFraction();
        for (BenchNet net : nets) {
            for (Map.Entry<BenchEnd, BenchNet.Path> path : net.paths().entrySet()) {
                Reading.Method method = method(input, path.getValue().ohms(1));
                tests.add(new ContinuityTest(
                        net, path.getKey(), path.getValue(), errorOhms(input, method), method, typical));
            }
        }
        return tests;
    }

    /** With four wires where less is expected than what the leads of two would hide. */
    static Reading.Method method(BenchInput input, OptionalDouble expectedOhms) {
        boolean four =
                expectedOhms.isPresent() && expectedOhms.getAsDouble() < input.limit(BenchLimit.FOUR_WIRE_BELOW_OHMS);
        return four ? Reading.Method.FOUR_WIRE : Reading.Method.TWO_WIRE;
    }

    /** What an instrument adds by the table of tests, ohm. */
    static double errorOhms(BenchInput input, Reading.Method method) {
        return input.limit(method == Reading.Method.FOUR_WIRE ? BenchLimit.FOUR_WIRE_OHMS : BenchLimit.TWO_WIRE_OHMS);
    }

    /** The end it is measured from. */
    public BenchEnd from() {
        return net.ends().get(0);
    }

    /** What must be measured at least with the conductors at 20 C, ohm, 0 or more; empty without a typical share or a length. */
    public OptionalDouble leastOhms() {
        OptionalDouble wires = path.wireOhms();
        return typicalFraction.isPresent() && wires.isPresent()
                ? OptionalDouble.of(leastOhms(typicalFraction.getAsDouble(), wires.getAsDouble(), errorOhms))
                : OptionalDouble.empty();
    }

    /** The least that wires of so much resistance measure, ohm. */
    static double leastOhms(double typicalFraction, double wireOhms, double errorOhms) {
        return Math.max(0, typicalFraction * wireOhms - errorOhms);
    }

    /** What may be measured at most with the conductors at 20 C, ohm; empty where a length is unknown. */
    public OptionalDouble limitOhms() {
        OptionalDouble expected = path.ohms(1);
        return expected.isPresent() ? OptionalDouble.of(expected.getAsDouble() + errorOhms) : expected;
    }
}
