package org.ohmloom.graph;

import java.util.Optional;
import java.util.function.Function;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryModel;
import org.ohmloom.model.Component;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Zone;
import org.ohmloom.tables.BatteryType;
import org.ohmloom.tables.WireTables;

/** What the batteries and alternators of a harness are in each operating state, by their own data and the tables. */
public final class SourceConditions {

    private final Harness harness;
    private final Function<String, Optional<BatteryType>> types;

    /**
     * Conditions of the sources of a harness.
     *
     * @param harness the harness
     * @param types   finds a battery type of the tables; a battery of a type it does not find is taken as one without
     *                a model
     */
    SourceConditions(Harness harness, Function<String, Optional<BatteryType>> types) {
        this.harness = harness;
        this.types = types;
    }

    /** Conditions of the sources of a harness by the tables. */
    public static SourceConditions of(Harness harness, WireTables tables) {
        return new SourceConditions(harness, tables::findBatteryType);
    }

    /** A battery in a state. */
    public BatteryCondition battery(Component component, Battery battery, OperatingState state) {
        Optional<BatteryType> type = type(battery);
        return type.isPresent()
                ? BatteryLevels.of(component, battery, type.get(), state, ambientCelsius(component))
                : BatteryLevels.plain(battery, state, ambientCelsius(component));
    }

    /** An alternator in a state. */
    public AlternatorCondition alternator(Component component, Alternator alternator, OperatingState state) {
        return AlternatorOutput.of(component, alternator, state, ambientCelsius(component));
    }

    /** The type of a battery, if it has a model and the tables know it. */
    public Optional<BatteryType> type(Battery battery) {
        return battery.model().map(BatteryModel::type).flatMap(types);
    }

    private double ambientCelsius(Component component) {
        return component
                .zone()
                .flatMap(harness.zones()::find)
                .map(Zone::ambientCelsius)
                .orElse(harness.rules().ambientCelsius());
    }
}
