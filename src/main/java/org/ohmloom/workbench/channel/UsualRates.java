package org.ohmloom.workbench.channel;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Sensor;
import org.ohmloom.signal.channel.UpdateRate;
import org.ohmloom.tables.SignalTables;
import org.ohmloom.units.Formats;

/** How often values are sent: the rate entered, else the one that is suggested. */
final class UsualRates {

    private final SignalTables tables;

    UsualRates(SignalTables tables) {
        this.tables = tables;
    }

    /** "50 Hz", in brackets where it is only suggested; empty where neither is known. */
    String text(Sensor sensor) {
        Optional<Measurement.Use> use = sensor.measurement().flatMap(Measurement::use);
        OptionalDouble entered = use.map(Measurement.Use::updateHertz).orElse(OptionalDouble.empty());
        if (entered.isPresent()) {
            return Formats.hertz(entered.getAsDouble());
        }
        OptionalDouble tau = use.map(Measurement.Use::timeConstantSeconds).orElse(OptionalDouble.empty());
        Optional<Double> changes = tau.isPresent()
                ? Optional.of(tau.getAsDouble())
                : tables.changeTime(
                                sensor.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                        .map(each -> each.timeConstantSeconds().value());
        return changes.map(seconds -> "(" + Formats.hertz(UpdateRate.suggested(seconds)) + ")")
                .orElse("");
    }
}
