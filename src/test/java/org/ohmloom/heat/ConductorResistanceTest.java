package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

class ConductorResistanceTest {
    private static final double EXACT = 1e-12;
    private static final double METRES_PER_FOOT = 0.3048;

    private final WireTables tables = WireTables.bundled();
    private final Wire wire = Wire.of("W1", new WireEnd.Loose(), new WireEnd.Loose(), SignalClass.FEED);

    private ConductorResistance on(String basis) {
        return new ConductorResistance(tables, tables.basis(basis));
    }

    @Test
    void twoAndAHalfSquareMillimetresAtSixtyDegreesByHand() {
        // ISO 6722-1:2011: 2.5 mm2 is 7.60 mohm/m at 20 C. 3 m at 60 C:
        // 3 x 0.0076 x (234.5 + 60)/254.5 = 0.0228 x 1.157171 = 0.0263835 ohm
        double ohms = on("road-vehicle").ohms(wire, Gauge.metric(2.5), OptionalDouble.of(3), 60);
        assertEquals(0.0228 * 294.5 / 254.5, ohms, EXACT);
        assertEquals(0.0263835, ohms, 5e-8);
    }

    @Test
    void fourteenGaugeIsTableElevenNineOhmsPerThousandFeet() {
        // FAA AC 43.13-1B CHG 1 Table 11-9: 14 AWG is 3.06 ohm per 1000 ft at 20 C
        double ohms = on("ac-43.13-1b").ohms(wire, Gauge.awg(14), OptionalDouble.of(1000 * METRES_PER_FOOT), 20);
        assertEquals(3.06, ohms, 1e-9);
        String row =
                on("ac-43.13-1b").citation(wire, Gauge.awg(14)).orElseThrow().text();
        assertTrue(row.contains("Table 11-9") && row.contains("14 AWG"), row);
    }

    @Test
    void theWiresOwnFamilyComesBeforeTheBasis() {
        // IEC 60228:2004 class 5 tinned is not the road vehicle family; ASTM B258 solid 14 AWG is 8.286 mohm/m
        Wire solid = new Wire(
                wire.id(),
                wire.from(),
                wire.to(),
                Optional.empty(),
                Optional.of("awg-solid"),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                SignalClass.FEED,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                Optional.empty());
        assertEquals(0.008286, on("ac-43.13-1b").ohmsPerMetre(solid, Gauge.awg(14), 20), EXACT);
        // a metric size is not in that family: the basis's metric family serves
        assertEquals(0.0076, on("road-vehicle").ohmsPerMetre(solid, Gauge.metric(2.5), 20), EXACT);
    }

    @Test
    void anOddSizeTakesTheNextThinnerListedOne() {
        // Table 11-9 has no 5 AWG; 6 AWG is 0.44 ohm per 1000 ft
        ConductorResistance resistance = on("ac-43.13-1b");
        assertEquals(0.44 / 304.8, resistance.ohmsPerMetre(wire, Gauge.awg(5), 20), EXACT);
        assertTrue(resistance.row(wire, Gauge.awg(5)).citation().text().contains("standing in for 5 AWG"));
    }

    @Test
    void aSizeThinnerThanAllIsScaledByArea() {
        // Table 11-9 begins at 24 AWG with 28.4 ohm per 1000 ft; by ASTM B258 two numbers are 92^(2/39) in diameter,
        // so 26 AWG has 92^(4/39) times its resistance
        double ohmsPerMetre = on("ac-43.13-1b").ohmsPerMetre(wire, Gauge.awg(26), 20);
        assertEquals(28.4 / 304.8 * Math.pow(92, 4.0 / 39), ohmsPerMetre, 1e-9);
    }

    @Test
    void aMeasuredResistanceIsTakenAsItIsAtEveryTemperature() {
        Wire measured = new Wire(
                wire.id(),
                wire.from(),
                wire.to(),
                Optional.of(Gauge.awg(8)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(3),
                SignalClass.FEED,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(0.0123),
                OptionalDouble.empty(),
                true,
                Optional.empty());
        ConductorResistance resistance = on("ac-43.13-1b");
        assertEquals(0.0123, resistance.ohms(measured, Gauge.awg(8), OptionalDouble.of(3), 90), EXACT);
        assertTrue(resistance.citation(measured, Gauge.awg(8)).isEmpty());
    }
}
