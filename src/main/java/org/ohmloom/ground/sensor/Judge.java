package org.ohmloom.ground.sensor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Harness;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.ResistanceCurve;
import org.ohmloom.model.StateId;
import org.ohmloom.model.VoltageCurve;
import org.ohmloom.solve.LinearNetwork;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Works out the budgets of one link.
 *
 * @param harness     the harness
 * @param link        the sensor and the input that reads it
 * @param measurement what is measured
 * @param channel     what the unit takes it for
 */
record Judge(Harness harness, SensorLink link, Measurement measurement, Channel channel) {

    /** Parts smaller than this share of the largest reading are rounding. */
    private static final double ROUNDING = 1e-12;

    /** A disturbance for finding a slope, V: small beside any signal, large beside rounding. */
    private static final double PROBE_VOLTS = 1e-6;

    /** The budget of a state at the value with the largest worst error; empty when the unit is off in it. */
    Optional<SensorBudget> budget(StateId state, Solution solution, LinearNetwork conductors) {
        Optional<SolvedLink> solved = SolvedLink.of(harness, link, solution, conductors);
        if (solved.isEmpty()) {
            return Optional.empty();
        }
        SensorBudget worst = null;
        for (double value : channel.values()) {
            SensorBudget here = at(state, value, solved.get(), solution);
            if (worst == null || isWorse(here, worst)) {
                worst = here;
            }
        }
        return Optional.ofNullable(worst);
    }

    private static boolean isWorse(SensorBudget one, SensorBudget other) {
        if (one.unusable().isPresent() != other.unusable().isPresent()) {
            return one.unusable().isPresent();
        }
        return one.worstError() * other.allowed() > other.worstError() * one.allowed();
    }

    private SensorBudget at(StateId state, double value, SolvedLink solved, Solution solution) {
        Channel.Limit limit = channel.limit(value, solved.ideal()).orElseGet(this::limit);
        boolean level = channel instanceof LevelChannel;
        return new SensorBudget(
                link.component().id(),
                link.unitComponent().id(),
                link.pin().name(),
                state,
                channel.unit(),
                level ? channel.reading(value, solved.ideal()) : value,
                known(value, solved),
                level ? List.of() : tolerances(),
                ripple(value, solved.actual(), solution),
                limit.error(),
                limit.from(),
                level ? 0 : measurement.span(),
                unusable(value, solved.actual()));
    }

    private Channel.Limit limit() {
        if (measurement.allowedError().isPresent()) {
            return new Channel.Limit(measurement.allowedError().getAsDouble(), ReadingTexts.text("limit.entered"));
        }
        double share = harness.rules().returnRules().sensorErrorShare();
        return new Channel.Limit(
                share * measurement.span(),
                ReadingTexts.text(
                        harness.rules().returnRules().sensorErrorFraction().isPresent()
                                ? "limit.in-rules"
                                : "limit.usual",
                        Formats.percent(share),
                        Figures.of(measurement.span(), measurement.unit())));
    }

    private Optional<Text> unusable(double value, Conditions actual) {
        Optional<Text> own = channel.unusable(value, actual);
        double error = Math.abs(channel.reading(value, actual) - value);
        return own.isPresent() || channel instanceof LevelChannel || error <= measurement.span() / 2
                ? own
                : Optional.of(ReadingTexts.text("unusable.half-span"));
    }

    private List<SensorBudget.ErrorPart> known(double value, SolvedLink solved) {
        List<SensorBudget.ErrorPart> parts = new ArrayList<>();
        Conditions before = solved.ideal();
        double scale = Math.max(Math.abs(measurement.lowest()), Math.abs(measurement.highest()));
        for (Disturbance disturbance : Disturbance.inOrder()) {
            Conditions after = disturbance.bring(before, solved.actual(), solved.referenceVolts());
            double error = channel.reading(value, after) - channel.reading(value, before);
            if (Math.abs(error) > ROUNDING * scale) {
                parts.add(new SensorBudget.ErrorPart(
                        disturbance.words(),
                        error,
                        Text.joined(
                                " = ",
                                List.of(
                                        channel.formula(disturbance, value, before, after),
                                        Text.of(Figures.of(error, channel.unit())))),
                        disturbance.source()));
            }
            before = after;
        }
        return parts;
    }

    private List<SensorBudget.ErrorPart> tolerances() {
        return measurement.tolerances().stream()
                .map(each -> new SensorBudget.ErrorPart(
                        Text.of(each.name()),
                        each.error(),
                        Text.of("±" + Figures.of(each.error(), measurement.unit())),
                        "entered for the sensor"))
                .toList();
    }

    private OptionalDouble ripple(double value, Conditions actual, Solution solution) {
        double perReturnVolt =
                slope(value, actual, actual.withOtherReturnVolts(actual.otherReturnVolts() + PROBE_VOLTS));
        double perSupplyVolt = Double.isFinite(actual.supplyVolts())
                ? slope(
                        value,
                        actual,
                        actual.withReference(actual.referenceVolts(), actual.supplyVolts() + PROBE_VOLTS))
                : 0;
        Ripples ripples = Ripples.of(link, solution, perReturnVolt, perSupplyVolt);
        OptionalDouble corner = link.pin().input().map(InputStage::filterHertz).orElse(OptionalDouble.empty());
        return corner.isPresent() ? OptionalDouble.of(ripples.behind(corner.getAsDouble())) : ripples.none();
    }

    private double slope(double value, Conditions from, Conditions to) {
        return (channel.reading(value, to) - channel.reading(value, from)) / PROBE_VOLTS;
    }

    /** How much a voltage at the pin matters. */
    SignalSensitivity sensitivity() {
        double most = 0;
        double ohms = 0;
        double allowed = Double.POSITIVE_INFINITY;
        Conditions ideal = SolvedLink.undisturbed(harness, link);
        for (double value : channel.values()) {
            most = Math.max(most, channel.perVoltAtPin(value, ideal));
            ohms = Math.max(ohms, channel.circuit(value, ideal).ohmsAtPin());
            allowed = Math.min(
                    allowed, channel.limit(value, ideal).orElseGet(this::limit).error());
        }
        return new SignalSensitivity(
                link.component().id(),
                link.unitComponent().id(),
                link.pin().name(),
                channel.unit(),
                most,
                allowed,
                ohms,
                link.pin().input().map(InputStage::filterHertz).orElse(OptionalDouble.empty()));
    }

    /** Adds what keeps the budget from being whole. */
    void gaps(Gaps gaps) {
        InputStage input = link.pin().input().orElse(InputStage.UNKNOWN);
        Calibration calibration = measurement.calibration();
        if (input.inputOhms().isEmpty()) {
            gaps.add(ReadingTexts.text("gap.input-ohms"), link.component().id());
        } else if (outputUnknown(calibration)) {
            gaps.add(ReadingTexts.text("gap.output-ohms"), link.component().id());
        }
        if (calibration instanceof ResistanceCurve
                && measurement.unit().endsWith("C")
                && measurement.dissipationWattsPerKelvin().isEmpty()) {
            gaps.add(ReadingTexts.text("gap.dissipation"), link.component().id());
        }
        if (calibration instanceof Calibration.Thermocouple couple
                && couple.extension().isEmpty()) {
            gaps.add(ReadingTexts.text("gap.extension"), link.component().id());
        }
        if (calibration instanceof Calibration.CurrentLine line
                && line.minimumVolts().isEmpty()) {
            gaps.add(ReadingTexts.text("gap.minimum-volts"), link.component().id());
        }
        if (input.filterHertz().isEmpty()) {
            gaps.add(ReadingTexts.text("gap.filter"), link.component().id());
        }
    }

    private static boolean outputUnknown(Calibration calibration) {
        return calibration instanceof Calibration.RatiometricLine ratio
                        && ratio.outputOhms().isEmpty()
                || calibration instanceof Calibration.VoltageLine line
                        && line.outputOhms().isEmpty()
                || calibration instanceof VoltageCurve curve
                        && curve.outputOhms().isEmpty();
    }
}
