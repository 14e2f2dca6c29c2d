package org.ohmloom.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.ohmloom.model.Element;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Reading;
import org.ohmloom.model.ReadingId;
import org.ohmloom.units.Gauge;

/** Random as-built record of a {@link RandomHarness}; one reading of every kind. */
final class RandomReadings {
    private RandomReadings() {}

    static List<Element> of(Random random) {
        List<Measured> measured = List.of(
                new Measured.Path("X1.1", "G2, terminal of W7", random.nextDouble()),
                new Measured.Isolation("X1.1", 1e9 * random.nextDouble(), number(random), random.nextBoolean()),
                new Measured.CableCheck(
                        "C1",
                        "shield W5",
                        random.nextBoolean() ? Measured.CableCheck.Outcome.PASSED : Measured.CableCheck.Outcome.FAILED),
                new Measured.Pull(
                        "T28",
                        Gauge.parse("2.5 mm2"),
                        200 * random.nextDouble(),
                        random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(5)),
                new Measured.Powered("D10", "run", OptionalDouble.of(11.9), number(random), number(random)),
                new Measured.OfWire("W1", random.nextDouble()),
                new Measured.OfJoint("G1", random.nextDouble()));
        List<Element> readings = new ArrayList<>();
        for (int k = 0; k < measured.size(); k++) {
            readings.add(new Reading(
                    new ReadingId("BR" + (k + 1)),
                    measured.get(k),
                    text(random, "0007"),
                    text(random, "B"),
                    random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(18.5),
                    random.nextBoolean() ? Optional.empty() : Optional.of(Reading.Method.values()[random.nextInt(2)]),
                    text(random, "Milliohmmeter 2"),
                    number(random),
                    text(random, "Example"),
                    text(random, random.nextBoolean() ? "2026-02-03" : "2026-02-03T14:05+01:00"),
                    text(random, "warm from the oven"),
                    measured.get(k).ohms().isPresent() && random.nextBoolean()));
        }
        return readings;
    }

    private static Optional<String> text(Random random, String text) {
        return random.nextBoolean() ? Optional.of(text) : Optional.empty();
    }

    private static OptionalDouble number(Random random) {
        return random.nextBoolean() ? OptionalDouble.of(1 + random.nextDouble()) : OptionalDouble.empty();
    }
}
