package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.heat.balance.HeatBalance;
import org.ohmloom.heat.balance.OpenAir;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.TableRow;
import org.ohmloom.tables.TableSheet;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

class ConductorTemperatureTest {
    private static final double EXACT = 1e-9;
    /** The advisory circular prints whole amperes, whole degrees and tenths of a foot. */
    private static final double PRINTED_AMP = 0.5, PRINTED_DEGREE = 0.5, PRINTED_FOOT = 0.05;

    private final WireTables tables = WireTables.bundled();

    @Test
    void halfTheAmpacityIsAQuarterOfTheRise() {
        // 60 C air, 100 C at full load: 60 + 40 x 0.25 = 70 C
        assertEquals(70, ConductorTemperature.celsius(60, 100, 10, 20), EXACT);
        assertEquals(100, ConductorTemperature.celsius(60, 100, -20, 20), EXACT);
    }

    @Test
    void exampleTwoOfTheAdvisoryCircularComesOutAsPrinted() {
        // FAA AC 43.13-1B CHG 1, Example No. 2: 14 AWG, 200 C wire in 50 C air (150 K), 20,000 ft, 8 wires at 60 %.
        // Free air 47 A x 0.91 x 0.6 = 25.66 A, printed Imax = 26 A
        double maximumAmps = chart("14 AWG; 150 K rise") * chart("20000 ft") * chart("8 wires 60 % loaded");
        assertEquals(26, maximumAmps, PRINTED_AMP);
        // Step 2 (answers from memory): T2 = 50 + 150 x sqrt(20/26) = 181.6 C, printed 182 C
        double celsius = ConductorTemperature.conservativeCelsius(50, 200, 20, 26);
        assertEquals(182, celsius, PRINTED_DEGREE);
        // L2 = 254.5 L1/(234.5 + T2) with L1 = 15.5 ft from the chart: 9.48 ft, printed 9.5 ft
        double feet = chart("14 AWG 20 A 1 V") / tables.copper().resistanceRatio(celsius);
        assertEquals(9.5, feet, PRINTED_FOOT);
    }

    @Test
    void theConservativeEstimateIsNeverBelowTheTableMethodUpToFullLoad() {
        for (double amps = 0; amps <= 26; amps += 0.5) {
            double table = ConductorTemperature.celsius(50, 200, amps, 26);
            assertEquals(0, Math.max(0, table - ConductorTemperature.conservativeCelsius(50, 200, amps, 26)), EXACT);
        }
    }

    @Test
    void airHotterThanTheInsulationStillGivesATemperature() {
        // 1.5 mm2, 105 C insulation in 120 C air: the heat balance of the wire alone, hotter than the air
        LaidHarness laid =
                LaidHarness.of("road-vehicle", 12, "SAE J1128 TWP", 120).wire("W1");
        Wire wire = laid.harness().wires().get(new WireId("W1"));
        Ampacities ampacities = new Ampacities(laid.harness(), tables, tables.basis("road-vehicle"), laid.routes());
        Gauge gauge = Gauge.metric(1.5);
        Optional<Ampacity> ampacity = ampacities.of(wire, gauge, 1);
        assertEquals(0, ampacity.orElseThrow().limitAmps(), EXACT);
        double expected = HeatBalance.bare(ampacities.shape(wire, gauge).wire(), OpenAir.seaLevel(120))
                .at(15.55)
                .celsius();
        assertEquals(expected, ampacities.celsius(wire, gauge, ampacity, 15.55), EXACT);
        assertEquals(135, expected, 10);
        // no copper conductor is hotter than its melting point, 1083 C
        assertEquals(1083, ampacities.celsius(wire, gauge, ampacity, 1000), EXACT);
    }

    /** A single point of the aircraft charts as the example reads it. */
    private double chart(String point) {
        TableSheet sheet = tables.findSheet("ac-43-13-1b-chart-points").orElseThrow();
        int caseColumn = sheet.columnIndex("case");
        int value = sheet.columnIndex("value");
        List<TableRow> rows = sheet.rows().stream()
                .filter(row -> row.cells().get(caseColumn).equals(point))
                .toList();
        assertEquals(1, rows.size(), point);
        return Double.parseDouble(rows.get(0).cells().get(value));
    }
}
