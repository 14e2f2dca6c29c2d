package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Row;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/** The splice table and the ground table against harnesses small enough to lay out by hand. */
@BesideOthers
class JointTablesTest {
    private static final double EXACT = 1e-9;

    private static final DesignRules RULES =
            new DesignRules("road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30);

    private static Analysis analysis(Harness harness) {
        return Analyst.analyse(harness.withRules(RULES), WireTables.bundled(), Cancel.NEVER);
    }

    private static Harness sized(Harness harness, String wire, double areaMm2) {
        Wire before = harness.wires().get(new WireId(wire));
        return harness.with(before.withGauge(Optional.of(Gauge.metric(areaMm2))));
    }

    private static String text(Row row, int column) {
        return row.cells().get(column).text();
    }

    /** A feed from B1 to a splice 0.4 m along T1, one lamp on at B2, one back at B1. */
    private static Harness fork() {
        Harness harness = new HarnessSketch()
                .segment("T1", "B1", "B2", 1)
                .segment("T2", "B2", "B3", 2)
                .battery("BAT1", 12, 0.01)
                .load("L1", 1, 12)
                .load("L2", 1, 12)
                .splice("S1", 0)
                .at("BAT1", "B1")
                .at("L1", "B3")
                .at("L2", "B1")
                .along("S1", "T1", 0.4)
                .wire("W1", "BAT1.+", "S1", 0.1)
                .wire("W2", "S1", "L1.+", 0.1)
                .wire("W3", "S1", "L2.+", 0.1)
                .harness();
        return sized(sized(sized(harness, "W1", 2.5), "W2", 1.5), "W3", 0.75);
    }

    @Test
    void aSpliceNamesTheWiresOfEachSideItsDatumAndTheBarrelForTheSumOfItsAreas() {
        Row row = new JointTables(analysis(fork())).splices().get(0);
        assertEquals("S1", text(row, 1));
        // W1 2.5 mm2 and W3 0.75 mm2 come from B1: 3.25 mm2, more than the 1.5 mm2 of W2 from B2
        assertEquals("in-line", text(row, 3));
        assertEquals("B1, along T1", text(row, 5));
        assertEquals(400, row.cells().get(6).number().orElseThrow(), EXACT);
        assertEquals("W1 2.5 mm², W3 0.75 mm² (B1)", text(row, 7));
        assertEquals("W2 1.5 mm² (B2)", text(row, 8));
        // 2.5 + 1.5 + 0.75 = 4.75 mm2; next size up of ISO 6722-1 is 5 mm2
        assertEquals(4.75, row.cells().get(9).number().orElseThrow(), EXACT);
        assertEquals("5 mm²", text(row, 10));
    }

    @Test
    void wiresThatAllComeFromOneSideMakeAnEndSpliceUnlessSomebodySaysOtherwise() {
        Harness harness = fork().withoutAll(List.of(new WireId("W2")));
        JointTables tables = new JointTables(analysis(harness));
        assertEquals("end", text(tables.splices().get(0), 3));
        Splice before = harness.splices().all().iterator().next();
        Splice said = new Splice(
                before.id(),
                before.name(),
                before.jointOhms(),
                before.place(),
                before.part(),
                before.existing(),
                before.assembly(),
                Optional.of(Splice.Form.IN_LINE),
                Optional.of(true),
                Optional.of("sleeve with adhesive"));
        Row row = new JointTables(analysis(harness.with(said))).splices().get(0);
        assertEquals("in-line", text(row, 3));
        assertEquals("sealed", text(row, 4));
        assertEquals("sleeve with adhesive", text(row, 12));
    }

    /** Five wires of 4, 1, 2.5, 1 and 6 mm2 on one ground point of so many studs. */
    private static List<Row> grounded(int studs) {
        HarnessSketch sketch = new HarnessSketch().body("FRAME").battery("BAT1", 12, 0.01);
        sketch.with(new GroundPoint(
                new GroundPointId("G1"),
                "frame stud",
                new ChassisBodyId("FRAME"),
                0.001,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.of(studs),
                OptionalDouble.of(8),
                Optional.of("20 Nm, data sheet of the stud")));
        for (int k = 1; k <= 5; k++) {
            sketch.load("L" + k, 1, 12).run("W" + k, "L" + k + ".-", "G1", 1);
        }
        Harness harness = sketch.harness();
        double[] areas = {4, 1, 2.5, 1, 6};
        for (int k = 0; k < areas.length; k++) {
            harness = sized(harness, "W" + (k + 1), areas[k]);
        }
        return new JointTables(analysis(harness)).grounds();
    }

    @Test
    void fiveTerminalsOnTwoStudsLieThreeAndTwoTheLargestConductorFirst() {
        // by area: W5 6, W1 4, W3 2.5 on the first stud; W2 1, W4 1 on the second: (5 + 1) / 2 = 3 to a stud
        List<Row> rows = grounded(2);
        assertEquals(
                List.of("1 1 W5", "1 2 W1", "1 3 W3", "2 1 W2", "2 2 W4"),
                rows.stream()
                        .map(row -> Math.round(row.cells().get(4).number().orElseThrow()) + " "
                                + Math.round(row.cells().get(6).number().orElseThrow()) + " " + text(row, 7))
                        .toList());
        assertEquals("3 of at most 4", text(rows.get(0), 11));
        assertEquals("2 of at most 4", text(rows.get(4), 11));
        assertEquals("M8", text(rows.get(0), 5));
        assertEquals("ring for 6 mm², M8", text(rows.get(0), 10));
        assertEquals("20 Nm, data sheet of the stud", text(rows.get(0), 12));
    }

    @Test
    void aFifthTerminalOnOneStudIsToldAsOneTooManyByTheAdvisoryCircularAndAbyc() {
        // FAA AC 43.13-1B, 11-174 b, and ABYC E-11, 11.14.6.9: at most four
        Row row = grounded(1).get(0);
        assertEquals("5 of at most 4", text(row, 11));
        assertEquals(Cell.Tone.ALERT, row.cells().get(11).tone());
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "workboat", "star-ground"})
    void everySpliceWireEndOnASpliceAndTerminalOnAGroundIsInTheTables(String example) {
        Analysis analysis = Packs.analysis(example);
        Harness harness = analysis.harness();
        JointTables tables = new JointTables(analysis);
        List<Row> splices = tables.splices();
        List<Splice> made = harness.splices().all().stream()
                .filter(splice -> !splice.existing())
                .toList();
        assertEquals(made.size(), splices.size());
        for (int k = 0; k < made.size(); k++) {
            String listed = text(splices.get(k), 7) + " " + text(splices.get(k), 8);
            for (Wire wire : harness.wires().all()) {
                boolean here =
                        wire.ends().contains(new WireEnd.AtSplice(made.get(k).id()));
                assertEquals(
                        here,
                        listed.matches("(?s)(.*[ ,\n])?" + wire.id() + " .*"),
                        made.get(k).id() + " " + wire.id() + " in " + listed);
            }
        }
        long ends = harness.wires().all().stream()
                .flatMap(wire -> wire.ends().stream())
                .filter(WireEnd.AtGround.class::isInstance)
                .count();
        assertEquals(ends, tables.grounds().size());
        assertTrue(tables.grounds().stream().allMatch(row -> row.cells().size() == 14), "every row has all its cells");
    }
}
