package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.AlternatorModel;
import org.ohmloom.model.Component;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.model.SpeedLimit;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/**
 * Works out the set point and the current limit of an alternator in a state.
 *
 * <ul>
 *   <li>set point = its own + change per kelvin x (temperature - temperature it holds at)
 *   <li>limit = that of the state; otherwise that of the speed by its output curve, that of the engine mode, or its rated
 *       one, x (1 - derating per kelvin x (temperature - temperature derating begins at)), never below 0
 * </ul>
 */
final class AlternatorOutput {

    private static final AlternatorModel NONE = AlternatorModel.NONE;

    private final Component component;
    private final Alternator alternator;
    private final AlternatorModel model;
    private final SourceSetting setting;
    private final OperatingState state;
    private final double celsius;
    private final List<Text> steps = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();

    private AlternatorOutput(Component component, Alternator alternator, OperatingState state, double ambientCelsius) {
        this.component = component;
        this.alternator = alternator;
        this.state = state;
        model = alternator.model().orElse(NONE);
        setting = state.sourceSetting(component.id(), alternator);
        celsius = setting.celsius().orElse(ambientCelsius);
    }

    static AlternatorCondition of(
            Component component, Alternator alternator, OperatingState state, double ambientCelsius) {
        AlternatorOutput output = new AlternatorOutput(component, alternator, state, ambientCelsius);
        double setPoint = output.setPointVolts();
        double limit = output.limitAmps();
        return new AlternatorCondition(
                output.celsius,
                setPoint,
                alternator.internalOhms(),
                limit,
                output.model.sense(),
                output.steps,
                output.assumptions);
    }

    private double setPointVolts() {
        if (model.setPointVoltsPerKelvin().isEmpty()) {
            step("alternator.set-point", Formats.volts(alternator.setPointVolts()));
            return alternator.setPointVolts();
        }
        double base = model.setPointCelsius().orElse(AlternatorModel.USUAL_CELSIUS);
        double slope = model.setPointVoltsPerKelvin().getAsDouble();
        double least = alternator.setPointVolts() / 2;
        double volts = Math.max(least, alternator.setPointVolts() + slope * (celsius - base));
        step(
                "alternator.set-point-at",
                Formats.volts(volts),
                Formats.volts(alternator.setPointVolts()),
                String.format(Locale.ROOT, "%+.4g", slope),
                Formats.celsius(celsius),
                Formats.celsius(base));
        return volts;
    }

    private double limitAmps() {
        if (setting.limitAmps().isPresent()) {
            step("alternator.limit-said", Formats.amps(setting.limitAmps().getAsDouble()));
            return setting.limitAmps().getAsDouble();
        }
        double cold = coldLimitAmps();
        double from = model.deratingFromCelsius().orElse(AlternatorModel.USUAL_CELSIUS);
        double perKelvin = model.deratingPerKelvin().orElse(0);
        double derating = Math.max(0, 1 - perKelvin * Math.max(0, celsius - from));
        if (derating < 1) {
            step(
                    "alternator.derated",
                    Formats.amps(cold * derating),
                    String.format(Locale.ROOT, "%.4g", perKelvin),
                    Formats.celsius(celsius),
                    Formats.celsius(from));
        }
        return cold * derating;
    }

    private double coldLimitAmps() {
        Optional<Double> byMode = Optional.ofNullable(model.modeLimitAmps().get(state.mode()));
        if (setting.speedRpm().isPresent() && !model.speedLimits().isEmpty()) {
            double amps = bySpeed(setting.speedRpm().getAsDouble());
            step(
                    "alternator.limit-at-speed",
                    Formats.amps(amps),
                    Formats.number(setting.speedRpm().getAsDouble()));
            return amps;
        }
        if (byMode.isPresent()) {
            step("alternator.limit-while", Formats.amps(byMode.get()), Constants.text(state.mode()));
            return byMode.get();
        }
        if (state.mode() == EngineMode.IDLING && alternator.model().isPresent()) {
            assumptions.add(new Assumption(
                    component.id(),
                    NetworkTexts.text("assumed.no-idle-limit", component.id(), Formats.amps(alternator.limitAmps())),
                    Assumption.COMMON_PRACTICE));
        }
        step("alternator.limit", Formats.amps(alternator.limitAmps()));
        return alternator.limitAmps();
    }

    /** Straight lines between the points of the curve; nothing below its first speed, the last current above its last. */
    private double bySpeed(double speedRpm) {
        List<SpeedLimit> curve = model.speedLimits();
        OptionalDouble amps = OptionalDouble.empty();
        for (int k = 0; k < curve.size(); k++) {
            SpeedLimit point = curve.get(k);
            if (speedRpm <= point.speedRpm()) {
                if (k == 0) {
                    return speedRpm == point.speedRpm() ? point.limitAmps() : 0;
                }
                SpeedLimit before = curve.get(k - 1);
                double share = (speedRpm - before.speedRpm()) / (point.speedRpm() - before.speedRpm());
                amps = OptionalDouble.of(before.limitAmps() + share * (point.limitAmps() - before.limitAmps()));
                break;
            }
        }
        return amps.orElse(curve.get(curve.size() - 1).limitAmps());
    }

    private void step(String key, Object... numbers) {
        steps.add(NetworkTexts.text(key, numbers));
    }
}
