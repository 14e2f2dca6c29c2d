package org.ohmloom.store;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.ConnectorAllowance;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Covering;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.model.Place;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.WireId;
import org.ohmloom.model.ZoneId;

/** Random rules of how a {@link RandomHarness} is made. */
final class RandomFabrication {
    private RandomFabrication() {}

    static FabricationRules of(Random random) {
        Optional<String> why = random.nextBoolean() ? Optional.of("why") : Optional.empty();
        List<WireId> wires = List.of();
        List<RoutingRule> routing = List.of(
                new RoutingRule.AvoidZone(new ZoneId("Z1"), wires, List.of(SignalClass.DATA_BUS), why),
                new RoutingRule.Apart(
                        List.of(SignalClass.FEED, SignalClass.SWITCHED_OUTPUT),
                        wires,
                        List.of(SignalClass.DATA_BUS),
                        why),
                new RoutingRule.Through(new BreakoutId("B10"), wires, List.of(SignalClass.FEED), why));
        return new FabricationRules(
                number(random),
                number(random),
                random.nextBoolean() ? OptionalDouble.of(2) : OptionalDouble.empty(),
                number(random),
                number(random),
                random.nextBoolean()
                        ? List.of()
                        : List.of(new ConnectorAllowance(
                                new ConnectorId("X1"),
                                number(random),
                                number(random),
                                random.nextBoolean(),
                                number(random))),
                OptionalDouble.of(1.1),
                OptionalDouble.of(1.05),
                number(random),
                number(random),
                random.nextBoolean() ? List.of() : List.of(new SpliceId("S1")),
                OptionalDouble.of(0.45),
                OptionalDouble.of(0.38),
                routing.subList(0, random.nextInt(4)),
                random.nextBoolean() ? Optional.of(1 + random.nextInt(3)) : Optional.empty(),
                random.nextBoolean() ? OptionalDouble.of(random.nextDouble()) : OptionalDouble.empty(),
                random.nextBoolean() ? Optional.of("EUR") : Optional.empty(),
                random.nextBoolean() ? OptionalDouble.of(1 - random.nextDouble()) : OptionalDouble.empty());
    }

    static Part part(Random random, String id, String alternate, Supplier<String> text) {
        List<String> alternates = List.of(alternate, "or any of the same size");
        return new Part(
                new PartId(id),
                text.get(),
                text.get(),
                positive(random),
                maybe(random, text.get()),
                maybe(random, text.get()),
                number(random),
                alternates.subList(0, random.nextInt(3)),
                random.nextBoolean());
    }

    static Splice splice(
            Random random,
            Optional<Place> place,
            Optional<PartId> part,
            Optional<AssemblyId> assembly,
            Supplier<String> text) {
        return new Splice(
                new SpliceId("S1"),
                text.get(),
                0.01 * random.nextDouble(),
                place,
                part,
                random.nextBoolean(),
                assembly,
                maybe(random, Splice.Form.values()[random.nextInt(2)]),
                maybe(random, random.nextBoolean()),
                maybe(random, text.get()));
    }

    static Covering covering(Random random, String text, Optional<PartId> part) {
        return new Covering(
                Covering.Kind.values()[random.nextInt(Covering.Kind.values().length)],
                text,
                part,
                random.nextBoolean() ? Optional.of("own-size") : Optional.empty(),
                random.nextBoolean() ? OptionalDouble.of(0.5) : OptionalDouble.empty(),
                random.nextBoolean() ? Optional.of(Covering.EndFinish.BOOT) : Optional.empty());
    }

    static ReturnRules returns(Random random) {
        return new ReturnRules(
                OptionalDouble.of(0.02),
                number(random),
                number(random),
                OptionalDouble.of(0.0001),
                number(random),
                number(random),
                OptionalDouble.of(0.5),
                List.of());
    }

    private static OptionalDouble number(Random random) {
        return random.nextBoolean() ? OptionalDouble.of(100 * random.nextDouble()) : OptionalDouble.empty();
    }

    private static OptionalDouble positive(Random random) {
        return random.nextBoolean() ? OptionalDouble.of(0.001 + random.nextDouble()) : OptionalDouble.empty();
    }

    private static <T> Optional<T> maybe(Random random, T some) {
        return random.nextBoolean() ? Optional.of(some) : Optional.empty();
    }
}
