package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryModel;
import org.ohmloom.model.Component;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.tables.BatteryType;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Works out what a battery is at a charge level, a temperature and a pulse length.
 *
 * <ul>
 *   <li>EMF = its open-circuit voltage when full x table(charge) / table(full)
 *   <li>discharge resistance = its own x factor(temperature) x factor(charge) x factor(pulse length)
 *   <li>charge resistance = its own, or the usual factor x the discharge resistance of a long pulse
 *   <li>most charge current = its own or capacity x table(charge), x factor(temperature)
 * </ul>
 */
final class BatteryLevels {

    /** Temperature of a battery while cranking when the state does not say it, deg C: that of the cold cranking test. */
    static final double COLD_CELSIUS = -18;

    /** Length of cranking when the state does not say it, s: that of the cold cranking test. */
    static final double CRANKING_SECONDS = 30;

    private static final String COLD_CRANKING = "SAE J537, cold cranking test: 30 s at -18 C";

    private final List<Text> steps = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();

    private BatteryLevels() {}

    /** A battery that is the same at every charge level and temperature. */
    static BatteryCondition plain(Battery battery, OperatingState state, double ambientCelsius) {
        return new BatteryCondition(
                1,
                ambientCelsius,
                state.durationSeconds().orElse(Double.POSITIVE_INFINITY),
                battery.emfVolts(),
                battery.internalOhms(),
                battery.internalOhms(),
                Double.POSITIVE_INFINITY,
                List.of(NetworkTexts.text(
                        "battery.plain", Formats.volts(battery.emfVolts()), Formats.ohms(battery.internalOhms()))),
                List.of());
    }

    static BatteryCondition of(
            Component component, Battery battery, BatteryType type, OperatingState state, double ambientCelsius) {
        return new BatteryLevels().condition(component, battery, type, state, ambientCelsius);
    }

    private BatteryCondition condition(
            Component component, Battery battery, BatteryType type, OperatingState state, double ambientCelsius) {
        SourceSetting setting = state.sourceSetting(component.id(), battery);
        boolean cranking = state.mode() == EngineMode.CRANKING;
        double charge = charge(component, setting, state);
        double celsius = setting.celsius().orElse(cranking ? COLD_CELSIUS : ambientCelsius);
        double seconds = state.durationSeconds().orElse(cranking ? CRANKING_SECONDS : Double.POSITIVE_INFINITY);
        if (cranking && setting.celsius().isEmpty()) {
            assumptions.add(new Assumption(
                    component.id(),
                    NetworkTexts.text("assumed.cold", component.id(), Formats.celsius(COLD_CELSIUS)),
                    COLD_CRANKING));
        }
        if (cranking && state.durationSeconds().isEmpty()) {
            assumptions.add(new Assumption(
                    component.id(),
                    NetworkTexts.text("assumed.cranking", Formats.number(CRANKING_SECONDS)),
                    COLD_CRANKING));
        }
        double emf = emfVolts(battery, type, charge);
        double ohms = ohms(battery, type, charge, celsius, seconds);
        double longOhms = ohms
                * type.pulseFactor(Double.POSITIVE_INFINITY).value()
                / type.pulseFactor(seconds).value();
        double chargeOhms = chargeOhms(battery.model().orElseThrow(), type, longOhms);
        double acceptance = acceptanceAmps(battery, type, charge, celsius);
        return new BatteryCondition(charge, celsius, seconds, emf, ohms, chargeOhms, acceptance, steps, assumptions);
    }

    private double charge(Component component, SourceSetting setting, OperatingState state) {
        if (setting.chargeFraction().isEmpty()
                && state.mode() != EngineMode.RUNNING
                && state.mode() != EngineMode.IDLING) {
            assumptions.add(new Assumption(
                    component.id(), NetworkTexts.text("assumed.full", component.id()), Assumption.COMMON_PRACTICE));
        }
        return setting.chargeFraction().orElse(1);
    }

    private double emfVolts(Battery battery, BatteryType type, double charge) {
        CitedValue ratio = type.openCircuitRatio(charge);
        double emf = battery.emfVolts() * ratio.value();
        step(
                "battery.emf",
                Formats.volts(emf),
                Formats.volts(battery.emfVolts()),
                String.format(Locale.ROOT, "%.4f", ratio.value()),
                Formats.percent(charge));
        cite(ratio);
        return emf;
    }

    private double ohms(Battery battery, BatteryType type, double charge, double celsius, double seconds) {
        CitedValue byCelsius = type.temperatureFactor(celsius);
        CitedValue byCharge = type.chargeFactor(charge);
        CitedValue byPulse = type.pulseFactor(seconds);
        double ohms = battery.internalOhms() * byCelsius.value() * byCharge.value() * byPulse.value();
        step(
                "battery.ohms",
                Formats.ohms(ohms),
                Formats.ohms(battery.internalOhms()),
                digits(byCelsius.value()),
                Formats.celsius(celsius),
                digits(byCharge.value()),
                Formats.percent(charge),
                digits(byPulse.value()),
                Double.isInfinite(seconds) ? NetworkTexts.text("battery.lasting") : Formats.number(seconds) + " s");
        cite(byCelsius);
        cite(byCharge);
        cite(byPulse);
        return ohms;
    }

    private double chargeOhms(BatteryModel model, BatteryType type, double longOhms) {
        double ohms =
                model.chargeOhms().orElse(longOhms * type.chargeResistance().value());
        if (model.chargeOhms().isPresent()) {
            step("battery.charge-ohms-entered", Formats.ohms(ohms));
        } else {
            step(
                    "battery.charge-ohms",
                    Formats.ohms(ohms),
                    digits(type.chargeResistance().value()),
                    Formats.ohms(longOhms));
            cite(type.chargeResistance());
        }
        return ohms;
    }

    private double acceptanceAmps(Battery battery, BatteryType type, double charge, double celsius) {
        CitedValue byCelsius = type.acceptanceFactor(celsius);
        CitedValue byCharge = type.acceptanceAmpsPerAmpHour(charge);
        double usual = byCharge.value() * battery.capacityAmpHours();
        OptionalDouble own = battery.model().orElseThrow().acceptanceAmps();
        double warm = own.isPresent() ? Math.min(own.getAsDouble(), usual) : usual;
        double amps = warm * byCelsius.value();
        Text accepts = NetworkTexts.text(
                "battery.accepts",
                Formats.amps(amps),
                Formats.amps(warm),
                digits(byCelsius.value()),
                Formats.celsius(celsius),
                digits(byCharge.value()),
                Formats.number(battery.capacityAmpHours()),
                Formats.percent(charge));
        steps.add(
                own.isPresent()
                        ? NetworkTexts.text("battery.accepts-entered", accepts, Formats.amps(own.getAsDouble()))
                        : accepts);
        cite(byCharge);
        cite(byCelsius);
        return amps;
    }

    private void step(String key, Object... numbers) {
        steps.add(NetworkTexts.text(key, numbers));
    }

    private static String digits(double value) {
        return String.format(Locale.ROOT, "%.3g", value);
    }

    private void cite(CitedValue value) {
        steps.add(Text.of("  " + value.citation().text()));
    }
}
