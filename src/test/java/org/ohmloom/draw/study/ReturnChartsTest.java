package org.ohmloom.draw.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.chart.ChartPicturesTest;
import org.ohmloom.draw.chart.SignedBars;
import org.ohmloom.draw.chart.SignedRow;
import org.ohmloom.graph.PointId;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.sensor.SensorBudget;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.words.Text;

/** Pictures of the return paths of every example: its own results, and made ones that show every part. */
@BesideOthers
class ReturnChartsTest {

    private static final SceneFonts FONTS = SceneFonts.load();
    private static final double EXACT = 1e-9;
    private static final StateId CRUISE = new StateId("CRUISE");

    /** Panes of windows of 1600 by 1000 and 1280 by 800 px, and a sheet of the pack, mm. */
    private static final List<double[]> SIZES =
            List.of(new double[] {240, 130}, new double[] {95, 80}, new double[] {260, 150});

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void nothingWrittenLiesOnAnythingElseInAnyPictureOfAnExample(String name) {
        Analysis own = analysis(name);
        Analysis made = MadeReturns.in(own, 1);
        Optional<StateId> first = own.states().stream().map(state -> state.id()).findFirst();
        look(name + ", own results, ", scenes(own, Optional.empty()));
        look(name + ", made, ", scenes(made, Optional.empty()));
        look(name + ", made, ", scenes(made, first));
    }

    private static void look(String about, Map<String, Scene> scenes) {
        scenes.forEach((title, scene) -> {
            assertEquals(List.of(), ChartPicturesTest.overlaps(scene), about + title);
            assertEquals(List.of(), ChartPicturesTest.outside(scene), about + title);
        });
    }

    private static Map<String, Scene> scenes(Analysis analysis, Optional<StateId> state) {
        Harness harness = analysis.harness();
        ReturnStudy study = analysis.evidence().returns();
        Map<String, Scene> scenes = new LinkedHashMap<>();
        for (double[] size : SIZES) {
            String at = " at " + size[0] + " mm in " + state;
            ReturnPictures.of(harness, study, analysis.evidence().drawn(), state)
                    .ifPresent(picture -> scenes.put("picture" + at, picture.scene(FONTS, size[0], size[1])));
            ReturnReadings.offsets(study, state).stream()
                    .limit(4)
                    .forEach(offset -> scenes.put(
                            "offset " + offset.point() + at,
                            OffsetCharts.of(harness, offset).scene(FONTS, size[0])));
            ReturnReadings.sensors(study, state).stream()
                    .limit(2)
                    .forEach(budget -> scenes.put(
                            "sensor " + budget.sensor() + at,
                            SensorCharts.of(harness, budget).scene(FONTS, size[0])));
            study.loops().stream()
                    .limit(3)
                    .flatMap(loop -> LoopCharts.of(harness, analysis.evidence().drawn(), loop, state).stream())
                    .forEach(chart -> scenes.put(chart.title() + at, chart.scene(FONTS, size[0])));
            CouplingCharts.of(ReturnReadings.couplings(study, state))
                    .ifPresent(chart -> scenes.put("couplings" + at, chart.scene(FONTS, size[0])));
            ReturnReadings.losses(study, state).stream()
                    .limit(2)
                    .flatMap(loss -> LossCharts.of(harness, loss).stream())
                    .forEach(chart -> scenes.put(chart.title() + at, chart.scene(FONTS, size[0])));
        }
        return scenes;
    }

    @Test
    void everyGroundPointAndEveryReferencePointIsInThePicture() {
        Analysis analysis = MadeReturns.in(analysis("rescue-pickup"), 1);
        Scene scene = ReturnPictures.of(
                        analysis.harness(),
                        analysis.evidence().returns(),
                        analysis.evidence().drawn(),
                        Optional.empty())
                .orElseThrow()
                .scene(FONTS, 240, 130);
        Set<String> wanted = new TreeSet<>();
        analysis.harness().grounds().ids().forEach(id -> wanted.add(id.value()));
        analysis.evidence()
                .returns()
                .offsets()
                .forEach(offset -> wanted.add(offset.point().owner().value()));
        wanted.removeAll(scene.elements());
        assertEquals(Set.of(), wanted);
    }

    @Test
    void theWorstOfAllStatesIsTheOneFarthestFromTheReferenceWithItsRipple() {
        // |-30| + 25 = 55 mV beats 50 + 0 mV.
        Offset calm = offset("CRUISE", 0.050, 0, List.of());
        Offset swinging = offset("WORK", -0.030, 0.025, List.of());
        List<Offset> worst = ReturnReadings.offsets(study(List.of(calm, swinging), List.of()), Optional.empty());
        assertEquals(List.of(swinging), worst);
        assertEquals(
                List.of(calm), ReturnReadings.offsets(study(List.of(calm, swinging), List.of()), Optional.of(CRUISE)));
    }

    @Test
    void manySharesAreCutToTheLargestAndTheRestIsSummedSoThatTheSumStands() {
        // 20 loads of 1, 2 ... 20 mV: 210 mV; the 11 largest, 20 down to 10, make 165 mV, the other nine 45 mV.
        List<OffsetShare> shares = new ArrayList<>();
        for (int k = 20; k >= 1; k--) {
            shares.add(new OffsetShare(new ComponentId("M" + k), 1, k / 1000.0, 0, OptionalDouble.empty()));
        }
        SignedBars chart = OffsetCharts.of(empty(), offset("CRUISE", 0.210, 0, shares));
        assertEquals(13, chart.rows().size());
        SignedRow rest = chart.rows().get(11);
        assertEquals("9 others together", rest.label().english());
        assertEquals(45, rest.value(), EXACT);
        SignedRow sum = chart.rows().get(12);
        assertEquals(SignedRow.Kind.SUM, sum.kind());
        assertEquals(
                sum.value(),
                chart.rows().subList(0, 12).stream()
                        .mapToDouble(SignedRow::value)
                        .sum(),
                EXACT);
    }

    @Test
    void ifSwitchedOffIsASecondMarkAndColumnOfItsOwnName() {
        OffsetShare fan = new OffsetShare(new ComponentId("M1"), 10, 0.040, 0, OptionalDouble.of(0.012));
        SignedBars chart = OffsetCharts.of(empty(), offset("CRUISE", 0.050, 0, List.of(fan)));
        assertEquals("offset if switched off", chart.second().english());
        assertEquals(12, chart.rows().get(0).second().orElseThrow(), EXACT);
        assertTrue(chart.scene(FONTS, 120).items().stream()
                .flatMap(item -> item.description().stream())
                .anyMatch("M1: 40 mV; offset if switched off: 12 mV"::equals));
        OffsetShare untried = new OffsetShare(new ComponentId("M1"), 10, 0.040, 0, OptionalDouble.empty());
        assertEquals(
                "",
                OffsetCharts.of(empty(), offset("CRUISE", 0.050, 0, List.of(untried)))
                        .second()
                        .english());
    }

    @Test
    void aSensorBudgetAddsKnownErrorsWithTheirSignsAndTolerancesAsSquares() {
        // 0.05 - 0.02 = 0.03 known; sqrt(0.03^2 + 0.04^2) = 0.05; ripple 0.01: 0.09 in all.
        SensorBudget budget = new SensorBudget(
                new ComponentId("S1"),
                new ComponentId("U1"),
                "A1",
                CRUISE,
                "bar",
                5,
                List.of(
                        new SensorBudget.ErrorPart(Text.of("return offset"), 0.05, Text.NONE, ""),
                        new SensorBudget.ErrorPart(Text.of("lead resistance"), -0.02, Text.NONE, "")),
                List.of(
                        new SensorBudget.ErrorPart(Text.of("sensor"), 0.03, Text.NONE, ""),
                        new SensorBudget.ErrorPart(Text.of("converter"), -0.04, Text.NONE, "")),
                OptionalDouble.of(0.01),
                0.1,
                Text.of("1 % of span"));
        Map<String, Double> rows = new TreeMap<>();
        SensorCharts.of(empty(), budget)
                .rows()
                .forEach(row -> rows.put(row.label().english(), row.value()));
        assertEquals(0.03, rows.get("known errors together"), EXACT);
        assertEquals(0.05, rows.get("tolerances, root of squares"), EXACT);
        assertEquals(0.09, rows.get("largest error"), EXACT);
        assertEquals(0.04, rows.get("converter"), EXACT, "a tolerance lies to both sides");
    }

    @Test
    void theMembersOfALoopStandInTheirOrderAndItsElementsLightUp() {
        Analysis analysis = MadeReturns.in(analysis("faults"), 1);
        assertFalse(analysis.evidence().returns().loops().isEmpty());
        analysis.evidence().returns().loops().forEach(loop -> {
            SignedBars chart = LoopCharts.of(
                            analysis.harness(), analysis.evidence().drawn(), loop, Optional.empty())
                    .orElseThrow();
            assertEquals(
                    loop.loop().members().stream().map(member -> member.value()).toList(),
                    chart.rows().stream()
                            .map(row -> row.label().english().split(" ")[0])
                            .toList());
            for (ElementId id : LoopCharts.elements(analysis.evidence().drawn(), loop)) {
                assertTrue(analysis.harness().element(id.value()).isPresent(), id.value());
            }
        });
    }

    private static ReturnStudy study(List<Offset> offsets, List<SensorBudget> sensors) {
        return new ReturnStudy(List.of(), List.of(), offsets, sensors, List.of(), List.of(), List.of());
    }

    private static Offset offset(String state, double volts, double rippleVolts, List<OffsetShare> shares) {
        return new Offset(point(ReferencePoint.Kind.UNIT_GROUND, "U1"), new StateId(state), volts, rippleVolts, shares);
    }

    private static ReferencePoint point(ReferencePoint.Kind kind, String owner) {
        return new ReferencePoint(
                kind,
                new ComponentId(owner),
                new PointId(owner + ".GND"),
                new PointId("BAT1.-"),
                new ComponentId("BAT1"));
    }

    private static Harness empty() {
        DesignRules rules =
                new DesignRules("road-vehicle", 12, 0.05, GaugeSystem.METRIC, "none named", Optional.empty(), 25);
        return Harness.empty(TitleBlock.of("Empty", "T-1"), rules);
    }

    private static Analysis analysis(String name) {
        return AnalysedExamples.of(name);
    }
}
