package org.ohmloom.size.protection;

import java.util.OptionalDouble;
import org.ohmloom.graph.FeedSource;
import org.ohmloom.graph.Guard;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.AlternatorModel;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.RegulatedSupply;
import org.ohmloom.tables.FaultCondition;

/**
 * The highest system voltage at a point: of what can feed it, a battery's open-circuit voltage, an alternator's set point in
 * the cold, a supply's output; but no less than the nominal voltage where a battery feeds it. On a return that of the whole
 * harness, for an open switch there sees it all.
 */
final class SystemVolts {
    /** Temperature a set point holds at where none is entered, C. */
    private static final double USUAL_SET_POINT_CELSIUS = 25;

    private final ProtectionInput input;
    private final double coldCelsius;

    SystemVolts(ProtectionInput input) {
        this.input = input;
        coldCelsius = input.tables().faultCondition(FaultCondition.MINIMUM).batteryCelsius();
    }

    /** The highest voltage at a point, V; empty when nothing feeds the harness. */
    OptionalDouble at(PointId point) {
        OptionalDouble own = input.upstream().guards(point).stream()
                .map(Guard::source)
                .mapToDouble(this::volts)
                .max();
        return own.isPresent()
                ? own
                : input.upstream().sources().stream().mapToDouble(this::volts).max();
    }

    private double volts(FeedSource source) {
        Device device = input.harness().components().get(source.component()).device();
        if (device instanceof Battery battery) {
            return Math.max(battery.emfVolts(), input.harness().rules().nominalVolts());
        }
        if (device instanceof Alternator alternator) {
            return alternator.setPointVolts()
                    + alternator.model().map(this::coldRise).orElse(0.0);
        }
        if (device instanceof RegulatedSupply supply) {
            return supply.outputVolts();
        }
        return device instanceof Converter converter ? converter.outputVolts() : 0;
    }

    private double coldRise(AlternatorModel model) {
        return Math.max(
                0,
                model.setPointVoltsPerKelvin().orElse(0)
                        * (coldCelsius - model.setPointCelsius().orElse(USUAL_SET_POINT_CELSIUS)));
    }
}
