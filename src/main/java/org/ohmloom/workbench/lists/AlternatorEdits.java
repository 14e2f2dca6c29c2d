package org.ohmloom.workbench.lists;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ohmloom.edit.ChangeDevice;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.AlternatorModel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.SpeedLimit;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What is typed about alternators, as edits, and the same as text. */
final class AlternatorEdits {
    private static final Words WORDS = Words.of("lists");

    private static final Pattern SPEED = Pattern.compile("([0-9][0-9.,]*)\\s*(?:rpm|1/min|/min)?[\\s:]+([0-9].*)");

    private AlternatorEdits() {}

    /** "1500 rpm 35 A, 6000 rpm 105 A". */
    static String curve(AlternatorModel model) {
        return model.speedLimits().stream()
                .map(each ->
                        TypedNumbers.exact(each.speedRpm()) + " rpm " + TypedNumbers.exact(each.limitAmps()) + " A")
                .collect(Collectors.joining(", "));
    }

    /** Sets the most current by speed, in any order; nothing leaves the one limit for every speed. */
    static Edit curve(List<ComponentId> alternators, String typed) {
        List<SpeedLimit> limits = new ArrayList<>();
        for (String each : parts(typed)) {
            Matcher point = SPEED.matcher(each);
            if (!point.matches()) {
                throw new IllegalArgumentException(WORDS.get("alternator.is-no-point-a", each));
            }
            limits.add(new SpeedLimit(
                    TypedNumbers.needed(point.group(1), Unit.FRACTION, WORDS.get("alternator.the-speed")),
                    TypedNumbers.needed(point.group(2), Unit.AMP, WORDS.get("alternator.the-current"))));
        }
        limits.sort(Comparator.comparingDouble(SpeedLimit::speedRpm));
        return model(
                alternators,
                WORDS.get("alternator.output-curve"),
                was -> with(was, limits, was.modeLimitAmps(), was.setPointVoltsPerKelvin(), was.deratingPerKelvin()));
    }

    /** "idling 60 A, running 105 A". */
    static String modes(AlternatorModel model) {
        return model.modeLimitAmps().entrySet().stream()
                .map(each -> TradeWords.engine(each.getKey()) + " " + TypedNumbers.exact(each.getValue()) + " A")
                .collect(Collectors.joining(", "));
    }

    /** Sets the most current by what the engine does. */
    static Edit modes(List<ComponentId> alternators, String typed) {
        SortedMap<EngineMode, Double> limits = new TreeMap<>();
        for (String each : parts(typed)) {
            String[] words = each.split("\\s+", 2);
            Optional<EngineMode> mode = List.of(EngineMode.values()).stream()
                    .filter(known -> TradeWords.engine(known).equalsIgnoreCase(words[0])
                            || TradeWords.lower(known).equalsIgnoreCase(words[0]))
                    .findFirst();
            if (mode.isEmpty() || words.length < 2) {
                throw new IllegalArgumentException(WORDS.get(
                        "alternator.is-no-limit-what",
                        each,
                        List.of(EngineMode.values()).stream()
                                .map(TradeWords::engine)
                                .collect(Collectors.joining(", "))));
            }
            limits.put(mode.get(), TypedNumbers.needed(words[1], Unit.AMP, WORDS.get("alternator.the-current")));
        }
        return model(
                alternators,
                WORDS.get("alternator.limits-by-engine"),
                was -> with(was, was.speedLimits(), limits, was.setPointVoltsPerKelvin(), was.deratingPerKelvin()));
    }

    /** Sets how the set point changes with temperature, mV for each kelvin. */
    static Edit setPointSlope(List<ComponentId> alternators, String typed) {
        OptionalDouble volts = TypedNumbers.optional(typed.replace("/K", ""), Unit.MILLIVOLT);
        return model(
                alternators,
                WORDS.get("alternator.set-point-by-temperature"),
                was -> with(was, was.speedLimits(), was.modeLimitAmps(), volts, was.deratingPerKelvin()));
    }

    /** Sets the share of its limit lost for each kelvin, percent. */
    static Edit derating(List<ComponentId> alternators, String typed) {
        OptionalDouble share = TypedNumbers.optional(typed.replace("/K", ""), Unit.PERCENT);
        return model(
                alternators,
                WORDS.get("alternator.derating-2"),
                was -> with(was, was.speedLimits(), was.modeLimitAmps(), was.setPointVoltsPerKelvin(), share));
    }

    static Edit setPoint(List<ComponentId> alternators, String typed) {
        double volts = TypedNumbers.needed(typed, Unit.VOLT, WORDS.get("alternator.the-set-point"));
        return all(
                alternators,
                WORDS.get("alternator.set-point"),
                was -> new Alternator(volts, was.internalOhms(), was.limitAmps(), was.model()));
    }

    static Edit limit(List<ComponentId> alternators, String typed) {
        double amps = TypedNumbers.needed(typed, Unit.AMP, WORDS.get("alternator.the-current-limit"));
        return all(
                alternators,
                WORDS.get("alternator.current-limit"),
                was -> new Alternator(was.setPointVolts(), was.internalOhms(), amps, was.model()));
    }

    private static List<String> parts(String typed) {
        return List.of(typed.strip().split("\\s*(;|,\\s)\\s*")).stream()
                .filter(each -> !each.isBlank())
                .toList();
    }

    private static AlternatorModel with(
            AlternatorModel was,
            List<SpeedLimit> speeds,
            SortedMap<EngineMode, Double> modes,
            OptionalDouble setPointVoltsPerKelvin,
            OptionalDouble deratingPerKelvin) {
        return new AlternatorModel(
                was.sense(),
                setPointVoltsPerKelvin,
                was.setPointCelsius(),
                speeds,
                modes,
                deratingPerKelvin,
                was.deratingFromCelsius());
    }

    private static Edit model(List<ComponentId> alternators, String what, UnaryOperator<AlternatorModel> change) {
        return all(alternators, what, was -> {
            AlternatorModel changed = change.apply(was.model().orElse(AlternatorModel.NONE));
            return new Alternator(
                    was.setPointVolts(),
                    was.internalOhms(),
                    was.limitAmps(),
                    Optional.of(changed).filter(each -> !each.equals(AlternatorModel.NONE)));
        });
    }

    private static Edit all(List<ComponentId> alternators, String what, UnaryOperator<Alternator> change) {
        List<Edit> edits = alternators.stream()
                .map(id -> (Edit) new ChangeDevice(
                        WORDS.text("alternator.set-of", what, id),
                        id,
                        device -> device instanceof Alternator alternator ? change.apply(alternator) : device))
                .toList();
        return TypedNumbers.together(WORDS.text("alternator.set-of-alternators", what, alternators.size()), edits);
    }
}
