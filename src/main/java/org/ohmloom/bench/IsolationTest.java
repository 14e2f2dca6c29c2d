package org.ohmloom.bench;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.tables.BenchLimit;
import org.ohmloom.words.Text;

/**
 * One isolation test: a net against all others joined together.
 *
 * @param net       the net, which has an end
 * @param testVolts voltage to test at, V, never above the lowest rating of a contact in the net; empty where a rating is not
 *                  entered, so that an ohmmeter is all that may be used
 * @param because   why that voltage
 * @param leastOhms resistance it must have, ohm
 */
public record IsolationTest(BenchNet net, OptionalDouble testVolts, Text because, double leastOhms) {

    /** All of a harness; none where one net alone has nothing to be isolated from. */
    public static List<IsolationTest> of(BenchInput input, List<BenchNet> nets) {
        return nets.size() < 2
                ? List.of()
                : nets.stream()
                        .filter(net -> !net.ends().isEmpty())
                        .map(net -> of(input, net))
                        .toList();
    }

    private static IsolationTest of(BenchInput input, BenchNet net) {
        double standing = input.limit(BenchLimit.ISOLATION_VOLTS);
        double least = input.limit(BenchLimit.ISOLATION_OHMS);
        boolean allRated = net.ends().stream()
                .flatMap(end -> end.contact().stream())
                .allMatch(contact -> contact.ratedVolts().isPresent());
        if (!allRated) {
            return new IsolationTest(net, OptionalDouble.empty(), TestTexts.text("isolation.not-rated"), least);
        }
        OptionalDouble rated = net.ends().stream()
                .flatMap(end -> end.contact().stream())
                .flatMapToDouble(contact -> contact.ratedVolts().stream())
                .min();
        boolean lower = rated.isPresent() && rated.getAsDouble() < standing;
        return new IsolationTest(
                net,
                OptionalDouble.of(lower ? rated.getAsDouble() : standing),
                TestTexts.text(lower ? "isolation.lowest-rating" : "isolation.none-lower"),
                least);
    }

    /** The end to probe. */
    public BenchEnd probe() {
        return net.ends().get(0);
    }
}
