package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ohmloom.HandbookRows;
import org.ohmloom.heat.balance.BundleFactor;
import org.ohmloom.heat.balance.HeatBalance;
import org.ohmloom.heat.balance.OpenAir;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.BundleFactors;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/** Worked examples of handbooks on what a wire may carry. */
class HandbookAmpacitiesTest {

    private static final double METRES_PER_FOOT = 0.3048;
    /** Printed with one decimal. */
    private static final double PRINTED_AMP = 0.051;
    /** How far our free-air current may be from the two points of the chart recalled from memory, as a share. */
    private static final double CHART = 0.10;

    /** Heat resistivity 6 K m/W, as the examples take it. */
    private static final double INSULATION = 1 / 6.0;

    private final WireTables tables = WireTables.bundled();

    /**
     * FAA AC 43.13-1B CHG 1 par. 11-69, harness example 1 (also MIL-W-5088L), from memory: 10 wires of 20 AWG and 25 of 22 AWG, 200 C
     * in 60 C air at 35,000 ft, 7 of 35 loaded: free air 21.5 and 16.2 A, x 0.52 for the bundle x 0.86 for the altitude = 9.6 and
     * 7.2 A, and (25 x 7.2 + 10 x 9.6) x 0.2 = 55.2 A for the harness.
     *
     * <p>The bundle curve we hold ends at 18 wires; beyond it we keep the total heat, 0.635 sqrt(18/35) = 0.455, and come to 8.4
     * and 6.4 A and 48.6 A for the harness: on the safe side of the printed numbers by an eighth.
     */
    @Test
    void acH1TheHarnessOfThirtyFiveWires() {
        assertEquals(55.2, (25 * 7.2 + 10 * 9.6) * 0.2, 1e-9);
        DesignBasis aircraft = tables.basis("ac-43.13-1b");
        BundleFactors curve = tables.bundleFactors(aircraft.curveTable().orElseThrow());
        double bundle = curve.factor(35, Gauge.awg(20).nominalAreaMm2(), 0.2).value();
        double altitude = tables.altitudeFactors(aircraft.altitudeTable().orElseThrow())
                .factor(35_000 * METRES_PER_FOOT)
                .value();
        assertEquals(0.86, altitude, 5e-3);
        assertEquals(9.6, 21.5 * 0.52 * altitude, PRINTED_AMP);
        assertEquals(7.2, 16.2 * 0.52 * altitude, PRINTED_AMP);
        assertEquals(0.635 * Math.sqrt(18.0 / 35), bundle, 1e-9);
        double twenty = 21.5 * bundle * altitude;
        double twentyTwo = 16.2 * bundle * altitude;
        assertEquals(48.6, (25 * twentyTwo + 10 * twenty) * 0.2, PRINTED_AMP);
        // the procedure of the program, with the heat balance in place of the free-air chart
        BundleLoading loading = new BundleLoading(35, 0.2);
        assertEquals(twenty, chart(aircraft, 9.88, 1216, 1.27, loading), CHART * twenty);
        assertEquals(twentyTwo, chart(aircraft, 16.2, 755, 1.09, loading), CHART * twentyTwo);
    }

    private double chart(
            DesignBasis basis,
            double ohmsPerThousandFeet,
            double circularMils,
            double outsideMm,
            BundleLoading loading) {
        double areaMm2 = circularMils * Math.PI / 4 * 0.0254 * 0.0254;
        // 19 strands lie in a circle 5 strands wide
        double overStrands = 5 * Math.sqrt(areaMm2 / 19 * 4 / Math.PI);
        RoundWire wire =
                new RoundWire(ohmsPerThousandFeet / 304.8, areaMm2, overStrands, outsideMm, RoundWire.USUAL_INSULATION);
        return ChartAmps.of(tables, basis, wire, 60, 200, loading, 35_000 * METRES_PER_FOOT)
                .orElseThrow()
                .amps();
    }

    /** NEC 310.15(B): 90 C insulation in 55 C air: 0.76 of the current for 30 C, sqrt(35/60); 0.84 for 40 C, sqrt(35/50). */
    @Test
    void amb55NinetyDegreeWireInFiftyFive() {
        assertEquals(
                0.76,
                tables.ambientFactors("ambient-30").factor(55, 90).orElseThrow().value());
        assertEquals(
                0.84,
                tables.ambientFactors("ambient-40").factor(55, 90).orElseThrow().value());
        assertEquals(Math.sqrt(35.0 / 60), ambient(55), 1e-12);
    }

    private double ambient(double celsius) {
        return AmbientFactor.of(tables, tables.basis("road-vehicle"))
                .factor(celsius, false, tables.insulation("90C"))
                .ratio();
    }

    /**
     * NEC: 8 AWG of 90 C carries 55 A; in 45 C air 0.87 of it, 47.85 A; 7 to 9 conductors together 0.70 of that, 33.5 A. The unrounded
     * ambient factor is sqrt(45/60) = 0.866: 33.34 A.
     */
    @Test
    void ambBunFiftyFiveAmperesInWarmAirAmongNine() {
        double air = ambient(45);
        double bundle = tables.bundleFactors("nec-310.15").factor(9).value();
        assertEquals(0.70, bundle);
        assertEquals(0.87, air, 5e-3);
        assertEquals(47.85, 55 * 0.87, 1e-9);
        assertEquals(33.5, 55 * 0.87 * bundle, PRINTED_AMP);
        assertEquals(33.34, 55 * air * bundle, PRINTED_AMP);
    }

    /**
     * NASA GSFC preferred parts list, quoted in NTRS 19990113164: 20 AWG with 200 C insulation, 15 wires or more together, 70 C,
     * vacuum: 3.7 A each. We have no vacuum: in the thinnest air of the standard atmosphere we reckon with, 20 km, it is some
     * 7 A in a bundle of 15 fully loaded, and the same paper proposes 6 A on 4 of 28 wires. The guideline lies on the safe side of both.
     */
    @Test
    void gsfcTheGuidelineForVacuumLiesBelowWhatThinAirAllows() {
        RoundWire wire = new RoundWire(9.88 / 304.8, 0.616, 1.02, 1.27, RoundWire.USUAL_INSULATION);
        OpenAir air = OpenAir.at(70, 20_000);
        double each = HeatBalance.bare(wire, air).ampacityAmps(200) * BundleFactor.of(wire, air, 200, 15, 1);
        assertTrue(each > 3.7 && each < 2 * 3.7, each + " A");
    }

    /**
     * UL 1426 boat cable of 105 C (ABYC E-11 Table VI): every printed current outside and inside engine spaces, alone and among others, is
     * 33 CFR 183.425 Table 5 x 0.85 inside x 0.7, 0.6 or 0.5 for 3, 4 to 6, 7 to 24 conductors.
     */
    @Test
    void everyCurrentOfTheBoatCableTable() throws IOException {
        int cells = 0;
        for (Map<String, String> row : HandbookRows.of("ul-1426-boat-cable-105-celsius.csv")) {
            Gauge gauge = Gauge.parse(row.get("awg") + " AWG");
            int[] counts = {2, 3, 6, 24};
            String[] heads = {"n<=2", "n3", "n4-6", "n7-24"};
            for (int k = 0; k < counts.length; k++) {
                for (boolean inside : new boolean[] {false, true}) {
                    double printed = Double.parseDouble(row.get(heads[k] + (inside ? "_in" : "_out")));
                    String where = gauge.text() + " " + heads[k] + (inside ? " inside" : " outside");
                    assertEquals(printed, boat(gauge, counts[k], inside), PRINTED_AMP, where);
                    cells++;
                }
            }
        }
        assertEquals(14 * 8, cells);
    }

    private double boat(Gauge gauge, int together, boolean inside) {
        LaidHarness laid = LaidHarness.of("abyc-e-11", 12, "105C", 30)
                .zone("engine", 50, true)
                .open("cabin")
                .wire("W1", inside ? "engine" : "cabin");
        Wire wire = laid.harness().wires().get(new WireId("W1"));
        return new Ampacities(laid.harness(), tables, tables.basis("abyc-e-11"), laid.routes())
                .of(wire, gauge, together)
                .orElseThrow()
                .limitAmps();
    }

    /**
     * IEC 60287-1-1, one insulated wire in free air (formula and constants from memory): I = sqrt(dT / (R(Tc) (T1 + T4))), T1 = rho/(2 pi)
     * ln(De/dc), T4 = 1/(pi De h dTs^0.25), h = 0.21/De^0.6 + 3.94. 14 AWG, 200 C in 50 C air: 49.1 A, where FAA AC 43.13-1B
     * figure 11-4a reads 47 A; 2.5 mm2, 100 C in 30 C air: 43.1 A. Our heat balance: 47 A within 4 %, and 39.7 A, 8 % less than the
     * standard's formula for cables, which was not made for wires this thin.
     */
    @Test
    void aSingleWireByTheStandardForCables() {
        assertEquals(49.1, iec60287(3.06 / 304.8, 1.75, 2.3, 50, 200), PRINTED_AMP);
        assertEquals(43.1, iec60287(7.60e-3, 2.2, 3.0, 30, 100), PRINTED_AMP);
        RoundWire fourteen = new RoundWire(3.06 / 304.8, 1.72, 1.75, 2.3, INSULATION);
        assertEquals(47, HeatBalance.bare(fourteen, OpenAir.seaLevel(50)).ampacityAmps(200), 0.04 * 47);
        RoundWire two = new RoundWire(7.60e-3, 2.27, 2.2, 3.0, INSULATION);
        assertEquals(39.7, HeatBalance.bare(two, OpenAir.seaLevel(30)).ampacityAmps(100), PRINTED_AMP);
    }

    private static double iec60287(double ohms, double dc, double de, double air, double limit) {
        double hot = ohms * (234.5 + limit) / 254.5;
        double inner = 6 / (2 * Math.PI) * Math.log(de / dc);
        double metres = de / 1e3;
        double film = 0.21 / Math.pow(metres, 0.6) + 3.94;
        double surface = limit - air;
        for (int round = 0; round < 200; round++) {
            double outer = 1 / (Math.PI * metres * film * Math.pow(surface, 0.25));
            surface = (limit - air) * outer / (inner + outer);
        }
        double outer = 1 / (Math.PI * metres * film * Math.pow(surface, 0.25));
        return Math.sqrt((limit - air) / (hot * (inner + outer)));
    }

    /**
     * A 70 C wire overloaded by 10 to 100 %: temperatures of another free-air balance (Churchill and Chu, not published), which for thin
     * wires sheds a little less heat than ours. Held against the multiples of our own I70: within 6 % of the rise.
     */
    @Test
    void overloadedWiresSettleWhereAnotherBalancePutsThem() throws IOException {
        Map<String, RoundWire> wires = Map.of(
                "1", new RoundWire(18.5e-3, 0.93, 1.5, 2.7, RoundWire.USUAL_INSULATION),
                "4", new RoundWire(4.71e-3, 3.66, 2.8, 4.4, RoundWire.USUAL_INSULATION),
                "10", new RoundWire(1.82e-3, 9.5, 4.5, 6.5, RoundWire.USUAL_INSULATION),
                "35", new RoundWire(0.527e-3, 32.7, 9, 11.6, RoundWire.USUAL_INSULATION));
        for (Map<String, String> row : HandbookRows.of("overloaded-wires.csv")) {
            HeatBalance balance = HeatBalance.bare(wires.get(row.get("area_mm2")), OpenAir.seaLevel(30));
            double seventy = balance.ampacityAmps(70);
            for (String times : new String[] {"1.10", "1.25", "1.35", "1.45", "1.60", "2.00"}) {
                double other = Double.parseDouble(row.get("T_at_" + times));
                double ours = balance.at(Double.parseDouble(times) * seventy).celsius();
                assertEquals(other, ours, 0.06 * (other - 30), row.get("area_mm2") + " mm2 at " + times);
            }
            assertEquals(Double.parseDouble(row.get("I105_over_I70")), balance.ampacityAmps(105) / seventy, 0.02);
            assertEquals(Double.parseDouble(row.get("I155_over_I70")), balance.ampacityAmps(155) / seventy, 0.04);
        }
    }
}
