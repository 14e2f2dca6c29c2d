package org.ohmloom.workbench.record;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.ohmloom.bench.Task;
import org.ohmloom.bench.record.FilledSheet;
import org.ohmloom.edit.ChangeElements;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.PutElements;
import org.ohmloom.edit.RemoveElements;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Reading;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What is typed about readings of built harnesses, as edits. */
final class RecordEdits {
    private static final Words WORDS = Words.of("as-built");
    private static final Words OUTCOMES = Words.of("trade");

    private RecordEdits() {}

    /** A value typed for something to be measured: a new reading, another value of the one there, or none any more. */
    static Edit value(Harness harness, Task task, Optional<Reading> reading, String typed, RecordSettings settings) {
        if (typed.isBlank()) {
            return reading.<Edit>map(each ->
                            new RemoveElements(WORDS.text("record.remove-reading", each.id()), List.of(each.id())))
                    .orElseThrow(() -> new IllegalArgumentException(WORDS.get("record.nothing-was-measured-here")));
        }
        Measured measured = measured(task.blank(), typed.strip());
        if (reading.isPresent()) {
            return PutElements.one(
                    WORDS.text("record.set-reading", reading.get().id()),
                    reading.get().with(measured));
        }
        Reading made = new Reading(
                FilledSheet.nextId(harness),
                measured,
                settings.serialNumber(),
                Optional.of(harness.titleBlock().currentRevision()).filter(text -> !text.isBlank()),
                settings.celsius(),
                Optional.empty(),
                settings.instrument(),
                OptionalDouble.empty(),
                settings.by(),
                settings.date(),
                Optional.empty(),
                false);
        return PutElements.one(WORDS.text("record.enter-reading", made.id()), made);
    }

    /** What was measured, read from a text; a bare number is in the unit of its test sheet. */
    static Measured measured(Measured blank, String typed) {
        if (blank instanceof Measured.Path path) {
            return new Measured.Path(path.from(), path.to(), ohms(typed, Unit.MILLIOHM));
        } else if (blank instanceof Measured.OfWire wire) {
            return new Measured.OfWire(wire.wire(), ohms(typed, Unit.MILLIOHM));
        } else if (blank instanceof Measured.OfJoint joint) {
            return new Measured.OfJoint(joint.joint(), ohms(typed, Unit.MILLIOHM));
        } else if (blank instanceof Measured.Isolation isolation) {
            boolean beyond = typed.startsWith(">");
            return new Measured.Isolation(
                    isolation.isolated(),
                    ohms(beyond ? typed.substring(1).strip() : typed, Unit.MEGAOHM),
                    isolation.testVolts(),
                    beyond);
        } else if (blank instanceof Measured.CableCheck check) {
            return new Measured.CableCheck(check.cable(), check.check(), outcome(typed));
        } else if (blank instanceof Measured.Pull pull) {
            return new Measured.Pull(
                    pull.terminal(),
                    pull.conductor(),
                    TypedNumbers.needed(typed, Unit.NEWTON, WORDS.get("record.the-lowest-force")),
                    pull.pulledCount());
        }
        return powered((Measured.Powered) blank, typed);
    }

    private static double ohms(String typed, Unit unit) {
        return TypedNumbers.needed(typed, unit, WORDS.get("record.the-resistance"));
    }

    private static Measured.CableCheck.Outcome outcome(String typed) {
        return switch (OUTCOMES.meant(
                        typed,
                        "constant.measured-cable-check-outcome.passed",
                        "constant.measured-cable-check-outcome.failed")
                .toLowerCase(Locale.ROOT)) {
            case "passed", "pass", "ok", "yes" -> Measured.CableCheck.Outcome.PASSED;
            case "failed", "fail", "no" -> Measured.CableCheck.Outcome.FAILED;
            default -> throw new IllegalArgumentException(WORDS.get("record.is-neither-passed-nor", typed));
        };
    }

    /** A drop, or the voltage at the load and the drop with a slash between: {@code 11.8 / 0.42}. */
    private static Measured powered(Measured.Powered blank, String typed) {
        String[] parts = typed.split("/", 2);
        OptionalDouble first = TypedNumbers.optional(parts[0], Unit.VOLT);
        return parts.length == 1
                ? new Measured.Powered(
                        blank.load(), blank.state(), OptionalDouble.empty(), first, OptionalDouble.empty())
                : new Measured.Powered(
                        blank.load(),
                        blank.state(),
                        first,
                        TypedNumbers.optional(parts[1], Unit.VOLT),
                        OptionalDouble.empty());
    }

    /** The text a value is edited from. */
    static String start(Measured measured) {
        if (measured.ohms().isPresent()) {
            return TypedNumbers.exact(
                            Unit.MILLIOHM.fromCanonical(measured.ohms().getAsDouble())) + " mΩ";
        } else if (measured instanceof Measured.Isolation isolation) {
            return (isolation.beyondRange() ? "> " : "")
                    + TypedNumbers.exact(Unit.MEGAOHM.fromCanonical(isolation.isolationOhms())) + " MΩ";
        } else if (measured instanceof Measured.Pull pull) {
            return TypedNumbers.exact(pull.lowestNewtons()) + " N";
        } else if (measured instanceof Measured.CableCheck check) {
            return TradeWords.named(check.outcome());
        }
        Measured.Powered powered = (Measured.Powered) measured;
        String drop = powered.dropVolts().isPresent()
                ? TypedNumbers.exact(powered.dropVolts().getAsDouble())
                : "";
        return powered.loadVolts().isPresent()
                ? TypedNumbers.exact(powered.loadVolts().getAsDouble()) + " / " + drop
                : drop;
    }

    /** Changes something of readings as one step. */
    static Edit all(List<Reading> readings, String what, UnaryOperator<Reading> change) {
        List<Edit> edits = readings.stream()
                .map(each -> (Edit) ChangeElements.tried(WORDS.text("record.set-of", what, each.id()), each, change))
                .toList();
        return TypedNumbers.together(WORDS.text("record.set-of-readings", what, readings.size()), edits);
    }

    static Edit celsius(List<Reading> readings, String typed) {
        OptionalDouble celsius = TypedNumbers.optional(typed, Unit.DEGREE_CELSIUS);
        return all(readings, WORDS.get("record.temperature"), was -> new Parts(was)
                .celsius(celsius)
                .reading());
    }

    static Edit method(List<Reading> readings, String typed) {
        Optional<Reading.Method> method =
                switch (WORDS.meant(typed, "record.two-wires", "record.four-wires")
                        .strip()
                        .toLowerCase(Locale.ROOT)) {
                    case "" -> Optional.empty();
                    case "two wires", "two", "2" -> Optional.of(Reading.Method.TWO_WIRE);
                    case "four wires", "four", "4" -> Optional.of(Reading.Method.FOUR_WIRE);
                    default -> throw new IllegalArgumentException(WORDS.get("record.is-no-method-two", typed.strip()));
                };
        return all(readings, WORDS.get("record.method-2"), was -> new Parts(was)
                .method(method)
                .reading());
    }

    static Edit error(List<Reading> readings, String typed) {
        OptionalDouble ohms = TypedNumbers.optional(typed, Unit.MILLIOHM);
        return all(readings, WORDS.get("record.instrument-error"), was -> new Parts(was)
                .error(ohms)
                .reading());
    }

    static Edit instrument(List<Reading> readings, String typed) {
        return all(readings, WORDS.get("record.instrument-2"), was -> new Parts(was)
                .instrument(words(typed))
                .reading());
    }

    static Edit by(List<Reading> readings, String typed) {
        return all(readings, WORDS.get("record.name"), was -> new Parts(was)
                .by(words(typed))
                .reading());
    }

    static Edit date(List<Reading> readings, String typed) {
        return all(readings, WORDS.get("record.date"), was -> new Parts(was)
                .date(words(typed))
                .reading());
    }

    static Edit remark(List<Reading> readings, String typed) {
        return all(readings, WORDS.get("record.remark-2"), was -> new Parts(was)
                .remark(words(typed))
                .reading());
    }

    static Edit replaces(List<Reading> readings, String typed) {
        boolean yes = TypedNumbers.yes(typed);
        return all(readings, WORDS.get("record.use"), was -> was.replacing(yes));
    }

    private static Optional<String> words(String typed) {
        return Optional.of(typed.strip()).filter(text -> !text.isEmpty());
    }

    /** A reading taken apart, to be put together again with one part changed. */
    private static final class Parts {
        private final Reading was;
        private OptionalDouble celsius;
        private Optional<Reading.Method> method;
        private Optional<String> instrument;
        private OptionalDouble error;
        private Optional<String> by;
        private Optional<String> date;
        private Optional<String> remark;

        Parts(Reading was) {
            this.was = was;
            celsius = was.conductorCelsius();
            method = was.method();
            instrument = was.instrument();
            error = was.instrumentErrorOhms();
            by = was.by();
            date = was.measuredAt();
            remark = was.remark();
        }

        Parts celsius(OptionalDouble changed) {
            celsius = changed;
            return this;
        }

        Parts method(Optional<Reading.Method> changed) {
            method = changed;
            return this;
        }

        Parts instrument(Optional<String> changed) {
            instrument = changed;
            return this;
        }

        Parts error(OptionalDouble changed) {
            error = changed;
            return this;
        }

        Parts by(Optional<String> changed) {
            by = changed;
            return this;
        }

        Parts date(Optional<String> changed) {
            date = changed;
            return this;
        }

        Parts remark(Optional<String> changed) {
            remark = changed;
            return this;
        }

        Reading reading() {
            return new Reading(
                    was.id(),
                    was.measured(),
                    was.serialNumber(),
                    was.revision(),
                    celsius,
                    method,
                    instrument,
                    error,
                    by,
                    date,
                    remark,
                    was.replaces());
        }
    }
}
