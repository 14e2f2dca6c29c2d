package org.ohmloom.store;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Driver;
import org.ohmloom.model.InputRange;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinGroup;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.PinUse;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WiringRules;
import org.ohmloom.units.Gauge;

/**
 * A control unit with pins and channels of any kind, for harnesses made at random.
 *
 * @param random decides
 * @param value  makes numbers of more than 0
 * @param number makes such numbers, or none
 * @param driver makes ways to switch
 * @param input  makes ways to read
 */
record RandomUnit(
        Random random,
        DoubleSupplier value,
        Supplier<OptionalDouble> number,
        Supplier<Driver> driver,
        Supplier<InputStage> input) {

    ControlUnit unit() {
        return new ControlUnit(
                List.of(pin("A1"), pin("A.2"), pin("a/3")),
                random.nextInt(3),
                number.get(),
                number.get(),
                number.get(),
                number.get(),
                number.get(),
                maybe(16),
                few(new PinGroup("bank", List.of("A1", "a/3"), value.getAsDouble())),
                few(
                        new Channel(
                                "P\u00e4d\u00e4l",
                                "A1",
                                new ComponentId("D1"),
                                maybe("A.2"),
                                maybe("a/3"),
                                random.nextBoolean()),
                        new Channel("2", "A1", new ComponentId("D0"), Optional.empty(), Optional.empty(), true)));
    }

    WiringRules wiring(Gauge gauge) {
        return new WiringRules(
                few(new WiringRules.Colours(
                        pick(SignalClass.values()), List.of(WireColour.parse("RD"), WireColour.parse("BUWH")))),
                maybe(gauge),
                few(new WiringRules.SparePins(pick(PinRole.values()), 1 + random.nextInt(4))));
    }

    private Pin pin(String name) {
        PinRole role = pick(PinRole.values());
        Set<PinRole> can = random.nextBoolean() ? Set.of() : EnumSet.of(pick(PinRole.values()), PinRole.SPARE);
        Pin pin = new Pin(
                name,
                role,
                can,
                number.get(),
                number.get(),
                number.get(),
                number.get(),
                number.get(),
                maybe(driver.get()),
                maybe(input.get()),
                maybe(range()),
                List.of());
        PinUse other = new PinUse(
                role == PinRole.CASE ? PinRole.GROUND : PinRole.CASE,
                number.get(),
                number.get(),
                number.get(),
                number.get(),
                number.get(),
                maybe(driver.get()),
                maybe(input.get()),
                maybe(range()));
        return random.nextBoolean() ? pin : pin.withUses(List.of(other));
    }

    private InputRange range() {
        double low = value.getAsDouble();
        return new InputRange(
                OptionalDouble.of(-low), OptionalDouble.of(2 * low), OptionalDouble.empty(), number.get());
    }

    @SafeVarargs
    private <T> T pick(T... all) {
        return all[random.nextInt(all.length)];
    }

    private <T> Optional<T> maybe(T some) {
        return random.nextBoolean() ? Optional.of(some) : Optional.empty();
    }

    @SafeVarargs
    private <T> List<T> few(T... all) {
        return List.of(all).subList(0, random.nextInt(all.length + 1));
    }
}
