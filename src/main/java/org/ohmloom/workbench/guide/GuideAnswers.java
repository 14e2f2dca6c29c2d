package org.ohmloom.workbench.guide;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.ohmloom.analysis.start.StartCraft;
import org.ohmloom.analysis.start.StartLoad;
import org.ohmloom.analysis.start.StartPlace;
import org.ohmloom.analysis.start.StartPlan;
import org.ohmloom.analysis.start.StartSensor;
import org.ohmloom.analysis.start.StartSupply;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.Words;

/**
 * What was typed and chosen in the guide, as text; turned into a plan or refused with a sentence that says which entry.
 *
 * @param title       title
 * @param craft       what it is for, as shown
 * @param volts       nominal voltage
 * @param ampHours    capacity of the battery
 * @param supplyPlace where battery and alternator sit
 * @param alternator  most current of the alternator; blank without one
 * @param switchPlace where hand switches sit
 * @param unitPlace   where the control unit sits; blank or the word for none without one
 * @param places      name, ambient, length from the fuse box
 * @param loads       name, kind, current, place, what switches it
 * @param sensors     name, kind, place
 * @param units       the units in which a bare number is typed
 */
record GuideAnswers(
        String title,
        String craft,
        String volts,
        String ampHours,
        String supplyPlace,
        String alternator,
        String switchPlace,
        String unitPlace,
        List<List<String>> places,
        List<List<String>> loads,
        List<List<String>> sensors,
        ShownUnits units) {

    /** In the usual units. */
    GuideAnswers(
            String title,
            String craft,
            String volts,
            String ampHours,
            String supplyPlace,
            String alternator,
            String switchPlace,
            String unitPlace,
            List<List<String>> places,
            List<List<String>> loads,
            List<List<String>> sensors) {
        this(
                title,
                craft,
                volts,
                ampHours,
                supplyPlace,
                alternator,
                switchPlace,
                unitPlace,
                places,
                loads,
                sensors,
                ShownUnits.USUAL);
    }

    private static Words words() {
        return Words.of("guide");
    }

    /** What a person reads for a value to choose. */
    static String shown(Enum<?> value) {
        return words().get("choice." + value.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /** The word for no control unit. */
    static String none() {
        return words().get("no-unit");
    }

    /**
     * The plan.
     *
     * @throws IllegalArgumentException with a sentence that names the entry and what would be right
     */
    StartPlan plan() {
        return new StartPlan(
                title,
                chosen(StartCraft.values(), craft),
                new StartSupply(
                        number(volts, Unit.VOLT, words().get("volts")),
                        number(ampHours, Unit.AMP_HOUR, words().get("amp-hours")),
                        supplyPlace,
                        alternator.isBlank()
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(number(alternator, Unit.AMP, words().get("alternator")))),
                rows(
                        places,
                        row -> new StartPlace(
                                row.get(0),
                                number(row.get(1), Unit.DEGREE_CELSIUS, row.get(0) + ", " + words().get("ambient")),
                                number(row.get(2), Unit.METRE, row.get(0) + ", " + words().get("metres")))),
                switchPlace,
                unitPlace.isBlank() || unitPlace.equals(none()) ? Optional.empty() : Optional.of(unitPlace),
                rows(
                        loads,
                        row -> new StartLoad(
                                row.get(0),
                                chosen(StartLoad.Kind.values(), row.get(1)),
                                number(row.get(2), Unit.AMP, row.get(0) + ", " + words().get("current")),
                                row.get(3),
                                chosen(StartLoad.Control.values(), row.get(4)))),
                rows(
                        sensors,
                        row -> new StartSensor(row.get(0), chosen(StartSensor.Kind.values(), row.get(1)), row.get(2))));
    }

    private static <T> List<T> rows(List<List<String>> rows, Function<List<String>, T> reading) {
        return rows.stream().filter(row -> !row.get(0).isBlank()).map(reading).toList();
    }

    private double number(String text, Unit unit, String what) {
        try {
            return QuantityParser.parse(units.typed(text, unit), unit.dimension(), unit)
                    .canonical();
        } catch (IllegalArgumentException unreadable) {
            throw new IllegalArgumentException(what + ": " + Words.said(unreadable), unreadable);
        }
    }

    private static <E extends Enum<E>> E chosen(E[] values, String text) {
        for (E value : values) {
            if (shown(value).equals(text)) {
                return value;
            }
        }
        return values[0];
    }
}
