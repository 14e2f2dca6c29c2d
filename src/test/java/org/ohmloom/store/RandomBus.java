package org.ohmloom.store;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.ohmloom.model.BusId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.PartId;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.WireEnd;

/** A data bus of random values on the control unit {@code D12} of a harness made at random. */
final class RandomBus {

    private RandomBus() {}

    static DataBus of(Random random) {
        ComponentId unit = new ComponentId("D12");
        return new DataBus(
                new BusId("CAN1"),
                "Bus \u00b5",
                125_000 * (1 + random.nextInt(8)),
                random.nextBoolean() ? 11 : 29,
                maybe(random, "sae-j1939-11"),
                List.of(new DataBus.Node(unit, "A1", "A.2", maybe(random, random.nextInt(254)))),
                List.of(new DataBus.Termination(
                        120.5,
                        new WireEnd.AtTerminal(unit, "A1"),
                        new WireEnd.AtSplice(new SpliceId("S1")),
                        maybe(random, new PartId("P1")))),
                maybe(
                        random,
                        new DataBus.Packing(
                                maybe(random, 1 + random.nextInt(32)),
                                maybe(random, 4),
                                maybe(random, 0x100),
                                number(random))),
                List.of(new DataBus.Sent(
                        "Status",
                        unit,
                        random.nextInt(2048),
                        11,
                        8,
                        0.01,
                        number(random),
                        number(random),
                        random.nextBoolean() ? List.of("Oil", "Rail 2") : List.of())));
    }

    private static OptionalDouble number(Random random) {
        return random.nextBoolean() ? OptionalDouble.of(0.001 + random.nextDouble()) : OptionalDouble.empty();
    }

    private static <T> Optional<T> maybe(Random random, T value) {
        return random.nextBoolean() ? Optional.of(value) : Optional.empty();
    }
}
