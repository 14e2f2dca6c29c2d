package org.ohmloom.size.protection;

import java.util.Optional;
import org.ohmloom.graph.Law;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Device;
import org.ohmloom.model.RegulatedSupply;
import org.ohmloom.tables.BatteryType;
import org.ohmloom.tables.FaultCondition;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * What sources give into a fault: batteries as cold and discharged, or as full and warm, as the table of fault conditions
 * says; alternators and supplies up to their limit.
 */
final class FaultSources {
    private final WireTables tables;
    private final FaultCondition condition;
    private final double pulseSeconds;

    FaultSources(WireTables tables, FaultCondition condition, double pulseSeconds) {
        this.tables = tables;
        this.condition = condition;
        this.pulseSeconds = pulseSeconds;
    }

    Law law(Device device) {
        if (device instanceof Battery battery) {
            return Law.VoltageSource.battery(emfVolts(battery), ohms(battery));
        }
        if (device instanceof Alternator alternator) {
            return Law.VoltageSource.regulated(
                    alternator.setPointVolts(), alternator.internalOhms(), alternator.limitAmps());
        }
        if (device instanceof RegulatedSupply supply) {
            return Law.VoltageSource.regulated(supply.outputVolts(), supply.internalOhms(), supply.limitAmps());
        }
        return new Law.Open();
    }

    private Optional<BatteryType> type(Battery battery) {
        return battery.model().flatMap(model -> tables.findBatteryType(model.type()));
    }

    private double emfVolts(Battery battery) {
        return type(battery)
                .map(type -> battery.emfVolts()
                        * type.openCircuitRatio(condition.chargeFraction()).value())
                .orElse(battery.emfVolts() * condition.emfRatio());
    }

    private double ohms(Battery battery) {
        return type(battery)
                .map(type -> battery.internalOhms()
                        * type.temperatureFactor(condition.batteryCelsius()).value()
                        * type.chargeFactor(condition.chargeFraction()).value()
                        * type.pulseFactor(pulseSeconds).value())
                .orElse(battery.internalOhms() * condition.ohmsRatio());
    }

    /** A battery in words: "BT1 as 11.8 V behind 20 mohm". */
    Text text(String id, Device device) {
        if (device instanceof Battery battery) {
            return FaultTexts.text("source.battery", id, Formats.volts(emfVolts(battery)), Formats.ohms(ohms(battery)));
        }
        if (law(device) instanceof Law.VoltageSource source) {
            return FaultTexts.text("source.limited", id, Formats.amps(source.maximumAmps()));
        }
        return Text.of(id);
    }
}
