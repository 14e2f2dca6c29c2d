package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.ohmloom.edit.ChangeDevice;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.Driver;
import org.ohmloom.model.ElectronicLimit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What is typed about how outputs switch, as edits. */
final class DriverEdits {
    private static final Words WORDS = Words.of("lists");

    private DriverEdits() {}

    /** Frequency; nothing takes away what is known about how the output switches. */
    static Edit frequency(List<OutputSheet.Row> rows, String typed) {
        OptionalDouble hertz = TypedNumbers.optional(typed, Unit.HERTZ);
        return all(
                rows,
                WORDS.get("driver.frequency"),
                driver -> hertz.isEmpty()
                        ? Optional.empty()
                        : Optional.of(driver.map(
                                        known -> with(known, hertz.getAsDouble(), known.clock(), known.phaseFraction()))
                                .orElseGet(() -> Driver.of(hertz.getAsDouble()))));
    }

    /** Name of the clock outputs share; nothing takes that of the control unit. */
    static Edit clock(List<OutputSheet.Row> rows, String typed) {
        Optional<String> clock = Optional.of(typed.strip()).filter(name -> !name.isEmpty());
        return known(
                rows,
                WORDS.get("driver.clock"),
                driver -> with(driver, driver.frequencyHertz(), clock, driver.phaseFraction()));
    }

    /** Begin of the on-time in the period, in percent. */
    static Edit phase(List<OutputSheet.Row> rows, String typed) {
        OptionalDouble phase = TypedNumbers.optional(typed, Unit.PERCENT);
        return known(
                rows,
                WORDS.get("driver.phase"),
                driver -> with(driver, driver.frequencyHertz(), driver.clock(), phase));
    }

    /** Where the freewheel current goes: "none", "supply", "ground" or "clamp 45 V". */
    static Edit freewheel(List<OutputSheet.Row> rows, String typed) {
        String words = WORDS.meant(typed, "output.way.none", "output.way.supply", "output.way.ground")
                .strip()
                .toLowerCase(Locale.ROOT);
        Optional<String> volts = words.startsWith("clamp")
                ? Optional.of(words.substring("clamp".length()))
                : WORDS.filling("output.clamp", typed.strip());
        Optional<Driver.Clamp> clamp = volts.map(text -> new Driver.Clamp(
                TypedNumbers.needed(text, Unit.VOLT, WORDS.get("driver.clamp-voltage")),
                OptionalDouble.empty(),
                OptionalDouble.empty()));
        Driver.Freewheel way = clamp.isPresent() ? Driver.Freewheel.ACTIVE_CLAMP : way(words);
        return known(
                rows,
                WORDS.get("driver.freewheel"),
                driver -> new Driver(
                        driver.frequencyHertz(),
                        driver.clock(),
                        driver.phaseFraction(),
                        way,
                        driver.diodeVolts(),
                        clamp,
                        driver.supplyCapacitor(),
                        driver.limit(),
                        driver.edgeSeconds()));
    }

    private static Driver.Freewheel way(String words) {
        return switch (words) {
            case "", "none", "load", "at the load" -> Driver.Freewheel.NONE;
            case "supply", "to supply" -> Driver.Freewheel.DRIVER_SUPPLY;
            case "ground", "to ground" -> Driver.Freewheel.DRIVER_GROUND;
            default -> throw new IllegalArgumentException(WORDS.get("driver.is-no-way-of", words));
        };
    }

    /** Electronic current limit; nothing takes it away. */
    static Edit limit(List<OutputSheet.Row> rows, String typed) {
        OptionalDouble amps = TypedNumbers.optional(typed, Unit.AMP);
        return known(
                rows,
                WORDS.get("driver.current-limit"),
                driver -> new Driver(
                        driver.frequencyHertz(),
                        driver.clock(),
                        driver.phaseFraction(),
                        driver.freewheel(),
                        driver.diodeVolts(),
                        driver.clamp(),
                        driver.supplyCapacitor(),
                        amps.isEmpty()
                                ? Optional.empty()
                                : Optional.of(new ElectronicLimit(
                                        amps.getAsDouble(),
                                        driver.limit()
                                                .map(ElectronicLimit::tripSeconds)
                                                .orElse(OptionalDouble.empty()),
                                        driver.limit()
                                                .map(ElectronicLimit::retrySeconds)
                                                .orElse(OptionalDouble.empty()))),
                        driver.edgeSeconds()));
    }

    /** Time an edge takes; nothing when it is not known. */
    static Edit edge(List<OutputSheet.Row> rows, String typed) {
        OptionalDouble seconds = TypedNumbers.optional(typed, Unit.SECOND);
        return known(rows, WORDS.get("driver.edge-time"), driver -> driver.withEdgeSeconds(seconds));
    }

    /** Whether a capacitor at the supply carries the ripple. */
    static Edit capacitor(List<OutputSheet.Row> rows, String typed) {
        boolean there = TypedNumbers.yes(typed);
        return known(
                rows,
                WORDS.get("driver.supply-capacitor"),
                driver -> new Driver(
                        driver.frequencyHertz(),
                        driver.clock(),
                        driver.phaseFraction(),
                        driver.freewheel(),
                        driver.diodeVolts(),
                        driver.clamp(),
                        there,
                        driver.limit(),
                        driver.edgeSeconds()));
    }

    private static Driver with(Driver driver, double hertz, Optional<String> clock, OptionalDouble phaseFraction) {
        return new Driver(
                hertz,
                clock,
                phaseFraction,
                driver.freewheel(),
                driver.diodeVolts(),
                driver.clamp(),
                driver.supplyCapacitor(),
                driver.limit(),
                driver.edgeSeconds());
    }

    private static Edit known(List<OutputSheet.Row> rows, String what, Function<Driver, Driver> change) {
        rows.stream().filter(row -> row.driver().isEmpty()).findFirst().ifPresent(row -> {
            throw new IllegalArgumentException(WORDS.get("driver.enter-the-frequency-of", row.name()));
        });
        return all(rows, what, driver -> driver.map(change));
    }

    private static Edit all(
            List<OutputSheet.Row> rows, String what, Function<Optional<Driver>, Optional<Driver>> change) {
        // refuses here what an output cannot be, before any of the edits is made
        rows.forEach(row -> Objects.requireNonNull(change.apply(row.driver())));
        List<Edit> edits = rows.stream()
                .map(row -> (Edit) new ChangeDevice(
                        WORDS.text("driver.set-of", what, row.name()),
                        row.component().id(),
                        device -> changed(device, row.pin(), change)))
                .toList();
        return TypedNumbers.together(WORDS.text("driver.set-of-outputs", what, rows.size()), edits);
    }

    private static Device changed(
            Device device, Optional<String> pin, Function<Optional<Driver>, Optional<Driver>> change) {
        if (device instanceof SolidStateOutput output) {
            return new SolidStateOutput(
                    output.onOhms(), output.limitAmps(), change.apply(output.driver()), output.ratedVolts());
        }
        if (device instanceof ControlUnit unit) {
            List<Pin> pins = unit.pins().stream()
                    .map(each -> pin.filter(each.name()::equals).isPresent() ? changed(each, change) : each)
                    .toList();
            return unit.withPins(pins);
        }
        return device;
    }

    private static Pin changed(Pin pin, Function<Optional<Driver>, Optional<Driver>> change) {
        return pin.switching(change.apply(pin.driver()));
    }
}
