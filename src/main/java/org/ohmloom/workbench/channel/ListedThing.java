package org.ohmloom.workbench.channel;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.NearestText;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.CalibrationText;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.TypedRange;
import org.ohmloom.workbench.words.Words;

/** One row of the list of sensors and actuators, read into a component. */
final class ListedThing {

    /** The columns of the list. */
    enum Column {
        NAME,
        TYPE,
        WHERE,
        MEASURES,
        RANGE,
        GIVES,
        AMPS,
        RATE
    }

    private final Harness harness;
    private final Words words;
    private final Map<Column, String> cells;

    /**
     * A row.
     *
     * @param cells what is typed in it; what is missing is empty
     */
    ListedThing(Harness harness, Words words, Map<Column, String> cells) {
        this.harness = harness;
        this.words = words;
        this.cells = cells;
    }

    private String cell(Column column) {
        return cells.getOrDefault(column, "").strip();
    }

    boolean isEmpty() {
        return cells.values().stream().allMatch(String::isBlank);
    }

    /**
     * The component.
     *
     * @param fresh hands out its identity
     * @throws IllegalArgumentException when something does not fit; one sentence says what would be right
     */
    Component component(FreshIds fresh) {
        if (cell(Column.TYPE).isEmpty()) {
            throw new IllegalArgumentException(words.get("list.type-missing"));
        }
        ListedType type = ListedType.named(cell(Column.TYPE));
        if (cell(Column.NAME).isEmpty()) {
            throw new IllegalArgumentException(words.get("list.name-missing"));
        }
        Optional<BreakoutId> place = place();
        OptionalDouble amps = TypedNumbers.optional(cell(Column.AMPS), Unit.AMP);
        Component made = Component.of(
                fresh.next(type.letters()),
                cell(Column.NAME),
                type.device(harness.rules().nominalVolts(), amps, type.usual().map(this::measured)));
        return new Component(
                new ComponentId(made.id().value()),
                made.name(),
                made.device(),
                Optional.empty(),
                Optional.empty(),
                place,
                Optional.empty(),
                false,
                Optional.empty());
    }

    private Measurement measured(Measurement usual) {
        Calibration calibration = cell(Column.GIVES).isEmpty()
                ? usual.calibration()
                : CalibrationText.parse(cell(Column.GIVES), Optional.of(usual.calibration()));
        Optional<TypedRange> range =
                cell(Column.RANGE).isEmpty() ? Optional.empty() : Optional.of(TypedRange.parse(cell(Column.RANGE)));
        OptionalDouble hertz = TypedNumbers.optional(cell(Column.RATE), Unit.HERTZ);
        Measurement plain = Measurement.of(
                cell(Column.MEASURES).isEmpty() ? cell(Column.NAME) : cell(Column.MEASURES),
                range.flatMap(TypedRange::unit).orElse(usual.unit()),
                range.map(TypedRange::lowest).orElse(usual.lowest()),
                range.map(TypedRange::highest).orElse(usual.highest()),
                calibration);
        return hertz.isEmpty()
                ? plain
                : plain.used(Optional.of(new Measurement.Use(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        hertz)));
    }

    /** The breakout of that identity or name; empty where nothing is typed. */
    private Optional<BreakoutId> place() {
        String typed = cell(Column.WHERE);
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(harness.breakouts().all().stream()
                .filter(each -> each.id().value().equals(typed) || each.name().equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(words.get(
                        "list.no-place",
                        typed,
                        NearestText.question(
                                typed,
                                harness.breakouts().ids().stream()
                                        .map(BreakoutId::value)
                                        .toList()))))
                .id());
    }
}
