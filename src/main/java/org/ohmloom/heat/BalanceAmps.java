package org.ohmloom.heat;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.ohmloom.heat.balance.BundleFactor;
import org.ohmloom.heat.balance.HeatBalance;
import org.ohmloom.heat.balance.OpenAir;
import org.ohmloom.heat.balance.RoundWire;

/**
 * Currents by heat balance, each worked out once per wire, air and limit. Safe for any number of threads.
 */
final class BalanceAmps {

    private record Key(RoundWire wire, OpenAir air, double limitCelsius, int count) {}

    private final Map<Key, Double> alone = new ConcurrentHashMap<>();
    private final Map<Key, Double> factors = new ConcurrentHashMap<>();

    /** What a wire alone in free air may carry, A. */
    double alone(RoundWire wire, OpenAir air, double limitCelsius) {
        return alone.computeIfAbsent(new Key(wire, air, limitCelsius, 1), key -> HeatBalance.bare(wire, air)
                .ampacityAmps(limitCelsius));
    }

    /** The factor for so many equal wires together, all fully loaded. */
    double together(RoundWire wire, OpenAir air, double limitCelsius, int count) {
        return factors.computeIfAbsent(
                new Key(wire, air, limitCelsius, count), key -> BundleFactor.of(wire, air, limitCelsius, count, 1));
    }
}
