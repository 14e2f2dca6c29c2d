package org.ohmloom.heat;

import java.util.Optional;
import org.ohmloom.heat.balance.HeatBalance;
import org.ohmloom.heat.balance.OpenAir;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;

/**
 * What a wire may carry by the chart procedure of AC 43.13-1B paragraph 11-69 and MIL-W-5088L: free-air current for the rise,
 * times the bundle curve for count and percent of total capacity, times the altitude factor. The free-air curve itself is not
 * held; the heat balance stands in for it, within 3 % of the points of the chart we have.
 *
 * @param amps  the result, A
 * @param words the calculation in words, with sources
 */
public record ChartAmps(double amps, String words) {

    /**
     * By the tables of a basis; empty when it has no such charts.
     *
     * @param tables         published tables
     * @param basis          the design basis
     * @param wire           dimensions of the wire
     * @param ambientCelsius air, deg C
     * @param limitCelsius   conductor rating, deg C
     * @param loading        the fullest bundle
     * @param altitudeMetres altitude, m
     */
    public static Optional<ChartAmps> of(
            WireTables tables,
            DesignBasis basis,
            RoundWire wire,
            double ambientCelsius,
            double limitCelsius,
            BundleLoading loading,
            double altitudeMetres) {
        if (basis.curveTable().isEmpty() || basis.altitudeTable().isEmpty()) {
            return Optional.empty();
        }
        double free = HeatBalance.bare(wire, OpenAir.seaLevel(ambientCelsius)).ampacityAmps(limitCelsius);
        CitedValue bundle = tables.bundleFactors(basis.curveTable().get())
                .factor(loading.wireCount(), wire.copperAreaMm2(), loading.capacityFraction());
        CitedValue altitude =
                tables.altitudeFactors(basis.altitudeTable().get()).factor(Math.max(0, altitudeMetres));
        double amps = free * bundle.value() * altitude.value();
        String words = Formats.amps(free) + " in free air, " + Formats.number(limitCelsius - ambientCelsius)
                + " K rise (heat balance) x " + Formats.number(bundle.value()) + " ("
                + bundle.citation().text() + ") x " + Formats.number(altitude.value()) + " ("
                + altitude.citation().text() + ") = " + Formats.amps(amps);
        return Optional.of(new ChartAmps(amps, words));
    }
}
