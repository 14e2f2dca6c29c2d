package org.ohmloom.bench;

import java.util.List;

/**
 * All tests a finished harness has to pass.
 *
 * @param continuity the continuity matrix, net by net
 * @param isolation  every net against all others
 * @param cables     cables, twisted pairs and shields
 * @param crimps     crimps to be pulled, by set-up
 * @param powered    loads under power, in one state
 * @param nets       the nets
 */
public record TestPlan(
        List<BenchNet> nets,
        List<ContinuityTest> continuity,
        List<IsolationTest> isolation,
        List<CableTest> cables,
        List<CrimpFamily> crimps,
        List<PoweredTest> powered) {

    public TestPlan {
        nets = List.copyOf(nets);
        continuity = List.copyOf(continuity);
        isolation = List.copyOf(isolation);
        cables = List.copyOf(cables);
        crimps = List.copyOf(crimps);
        powered = List.copyOf(powered);
    }

    /** The tests of a harness. */
    public static TestPlan of(BenchInput input) {
        List<BenchNet> nets = BenchNets.of(input);
        return new TestPlan(
                nets,
                ContinuityTest.of(input, nets),
                IsolationTest.of(input, nets),
                CableTest.of(input),
                CrimpFamily.of(input),
                PoweredTest.of(input));
    }
}
