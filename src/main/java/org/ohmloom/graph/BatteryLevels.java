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

    private final List<String> steps = new ArrayList<>();
    private final List<String> assumptions = new ArrayList<>();

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
                List.of("no model entered: " + Formats.volts(battery.emfVolts()) + " behind "
                        + Formats.ohms(battery.internalOhms()) + " at any charge level and temperature"),
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
            assumptions.add("Battery " + component.id() + " is taken as cold, " + Formats.celsius(COLD_CELSIUS)
                    + ", while cranking.");
        }
        if (cranking && state.durationSeconds().isEmpty()) {
            assumptions.add("Cranking is taken to last " + Formats.number(CRANKING_SECONDS) + " s.");
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
            assumptions.add("Battery " + component.id() + " is taken as full where a state says no charge level.");
        }
        return setting.chargeFraction().orElse(1);
    }

    private double emfVolts(Battery battery, BatteryType type, double charge) {
        CitedValue ratio = type.openCircuitRatio(charge);
        double emf = battery.emfVolts() * ratio.value();
        step(
                "EMF %s = %s full x %.4f at %s charge",
                Formats.volts(emf), Formats.volts(battery.emfVolts()), ratio.value(), Formats.percent(charge));
        cite(ratio);
        return emf;
    }

    private double ohms(Battery battery, BatteryType type, double charge, double celsius, double seconds) {
        CitedValue byCelsius = type.temperatureFactor(celsius);
        CitedValue byCharge = type.chargeFactor(charge);
        CitedValue byPulse = type.pulseFactor(seconds);
        double ohms = battery.internalOhms() * byCelsius.value() * byCharge.value() * byPulse.value();
        step(
                "discharge resistance %s = %s x %.3g at %s x %.3g at %s charge x %.3g for %s",
                Formats.ohms(ohms),
                Formats.ohms(battery.internalOhms()),
                byCelsius.value(),
                Formats.celsius(celsius),
                byCharge.value(),
                Formats.percent(charge),
                byPulse.value(),
                Double.isInfinite(seconds) ? "a lasting state" : Formats.number(seconds) + " s");
        cite(byCelsius);
        cite(byCharge);
        cite(byPulse);
        return ohms;
    }

    private double chargeOhms(BatteryModel model, BatteryType type, double longOhms) {
        double ohms =
                model.chargeOhms().orElse(longOhms * type.chargeResistance().value());
        if (model.chargeOhms().isPresent()) {
            step("charge resistance %s as entered", Formats.ohms(ohms));
        } else {
            step(
                    "charge resistance %s = %.3g x %s of a long pulse",
                    Formats.ohms(ohms), type.chargeResistance().value(), Formats.ohms(longOhms));
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
        step(
                "accepts up to %s = %s x %.3g at %s; by table %.3g A for each of %s Ah at %s charge%s",
                Formats.amps(amps),
                Formats.amps(warm),
                byCelsius.value(),
                Formats.celsius(celsius),
                byCharge.value(),
                Formats.number(battery.capacityAmpHours()),
                Formats.percent(charge),
                own.isPresent() ? ", " + Formats.amps(own.getAsDouble()) + " entered" : "");
        cite(byCharge);
        cite(byCelsius);
        return amps;
    }

    private void step(String format, Object... numbers) {
        steps.add(String.format(Locale.ROOT, format, numbers));
    }

    private void cite(CitedValue value) {
        steps.add("  " + value.citation().text());
    }

    /** The source of what is taken for granted about cranking. */
    static String source(String assumption) {
        return assumption.contains("ranking") ? COLD_CRANKING : Assumption.COMMON_PRACTICE;
    }
}
