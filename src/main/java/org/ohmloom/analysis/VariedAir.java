package org.ohmloom.analysis;

import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Zone;

/** A harness in air that is warmer or cooler everywhere by as much. */
final class VariedAir {

    /** What the model takes as air, deg C. */
    private static final double COOLEST_CELSIUS = -60, HOTTEST_CELSIUS = 400;

    private VariedAir() {}

    /** The harness in that air; the same instance where it does not change. */
    static Harness of(Harness harness, double kelvin) {
        if (kelvin == 0) {
            return harness;
        }
        DesignRules rules = harness.rules();
        return harness.withAll(harness.zones().all().stream()
                        .map(zone -> new Zone(
                                zone.id(), zone.name(), celsius(zone.ambientCelsius(), kelvin), zone.engineSpace()))
                        .toList())
                .withRules(rules.withAmbientCelsius(celsius(rules.ambientCelsius(), kelvin)));
    }

    private static double celsius(double entered, double kelvin) {
        return Math.max(COOLEST_CELSIUS, Math.min(HOTTEST_CELSIUS, entered + kelvin));
    }
}
