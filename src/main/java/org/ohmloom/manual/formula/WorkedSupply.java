package org.ohmloom.manual.formula;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.graph.SourceConditions;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.AlternatorModel;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryModel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Device;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.solve.DcSolver;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.run.StartUpStudy;
import org.ohmloom.solve.run.StarterTrace;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.GaugeSystem;

/** The smallest harnesses in which a battery, an alternator and the input of a control unit can be worked out. */
final class WorkedSupply {

    private static final ComponentId SOURCE = new ComponentId("G1");
    private static final ComponentId UNIT = new ComponentId("U1");

    /** A wire that takes nothing off. */
    private static final double NO_OHMS = 1e-9;

    private WorkedSupply() {}

    /** Open-circuit voltage of a battery of a type at a charge level. */
    static double emfVolts(double fullVolts, String type, double chargeFraction) {
        Battery battery = new Battery(fullVolts, 0.006, 95, Optional.of(BatteryModel.of(type)));
        OperatingState state = state().withSource(SOURCE, SourceSetting.ON.withChargeFraction(chargeFraction));
        return SourceConditions.of(harness(battery), WireTables.bundled())
                .battery(source(battery), battery, state)
                .emfVolts();
    }

    /** Voltage an alternator holds at a temperature, its own set point holding at 25 °C. */
    static double setPointVolts(double ownVolts, double voltsPerKelvin, double celsius) {
        AlternatorModel model = new AlternatorModel(
                Optional.empty(),
                OptionalDouble.of(voltsPerKelvin),
                OptionalDouble.of(AlternatorModel.USUAL_CELSIUS),
                List.of(),
                new TreeMap<>(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Alternator alternator = new Alternator(ownVolts, 0.01, 100, Optional.of(model));
        OperatingState state = state().withSource(SOURCE, SourceSetting.ON.withCelsius(celsius));
        return SourceConditions.of(harness(alternator), WireTables.bundled())
                .alternator(source(alternator), alternator, state)
                .setPointVolts();
    }

    /** First current into the empty input capacitor of a control unit. */
    static double firstAmps(double volts, double feedOhms, double inputOhms, double farads) {
        ControlUnit unit = new ControlUnit(
                List.of(Pin.of("+", PinRole.SUPPLY), Pin.of("-", PinRole.GROUND)),
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(farads),
                OptionalDouble.of(inputOhms));
        OperatingState state = state();
        Harness harness = harness(new Battery(volts, feedOhms, 95))
                .with(Component.of(UNIT.value(), UNIT.value(), unit))
                .with(wire("W1", "+", SignalClass.FEED))
                .with(wire("W2", "-", SignalClass.RETURN))
                .with(state);
        WireTables tables = WireTables.bundled();
        Solution solution =
                DcSolver.solve(NetworkBuilder.build(harness, state, any -> NO_OHMS, tables), harness, () -> false);
        return StartUpStudy.of(harness, Map.of(state.id(), solution), tables, () -> false)
                .run(state.id(), UNIT)
                .flatMap(run -> run.starters().stream().findFirst())
                .map(StarterTrace::peakAmps)
                .orElseThrow();
    }

    private static Wire wire(String id, String terminal, SignalClass signalClass) {
        return Wire.of(
                id, new WireEnd.AtTerminal(SOURCE, terminal), new WireEnd.AtTerminal(UNIT, terminal), signalClass);
    }

    private static OperatingState state() {
        return OperatingState.of("on", "On", EngineMode.OFF);
    }

    private static Component source(Device device) {
        return Component.of(SOURCE.value(), SOURCE.value(), device);
    }

    private static Harness harness(Device device) {
        DesignRules rules =
                new DesignRules("road-vehicle", 12, 0.03, GaugeSystem.METRIC, "none named", Optional.empty(), 25);
        return Harness.empty(TitleBlock.of("Worked example", "1"), rules).with(source(device));
    }
}
