package org.ohmloom.workbench.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.DutyStep;
import org.ohmloom.analysis.DutySweep;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.chart.ChartPicturesTest;
import org.ohmloom.draw.study.DutyClocks;
import org.ohmloom.draw.study.MadeReturns;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.solve.Clock;
import org.ohmloom.solve.Stretch;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.study.DutyRangeStudy;
import org.ohmloom.workbench.study.DutyStudy;
import org.ohmloom.workbench.study.Picture;
import org.ohmloom.workbench.study.ProtectionStudy;
import org.ohmloom.workbench.study.Study;

/** Every study of the refit example has rows, a readable chart and reasons; an empty harness gets told what to enter. */
class StudiesTest {

    private static final SceneFonts FONTS = SceneFonts.load();

    /** Rows of each study whose chart is laid out: the first ones, which are the worst. */
    private static final int LOOKED_AT = 6;

    /** The pane of a window of 1600 by 1000 px and that of one of 1280 by 800 px, mm. */
    private static final List<double[]> PANES = List.of(new double[] {120, 115}, new double[] {95, 80});

    @Test
    void everyStudyOfTheRefitHasRowsReasonsAndAReadableChart() throws HarnessFileException {
        Analysis analysis = AnalysedExamples.of("rescue-pickup");
        Harness harness = analysis.harness();
        Readout readout = new Readout(harness, Optional.of(analysis), Optional.empty());
        for (Study<?> study : Studies.ALL) {
            if (!(study instanceof DutyRangeStudy)) {
                look(study, readout);
            }
        }
    }

    @Test
    void theDutyRangeHasARowForEachWireAtEachDutyWhenTheSweepIsThere() throws HarnessFileException {
        Analysis analysis = AnalysedExamples.of("star-ground");
        Harness harness = analysis.harness();
        List<DutyStep> sweep = DutySweep.of(analysis, Cancel.NEVER);
        DutyRangeStudy study = new DutyRangeStudy();
        Readout waiting = new Readout(harness, Optional.of(analysis), Optional.empty());
        assertEquals(List.of(), study.rows(waiting));
        assertTrue(study.nothing(waiting).contains("at 25, 50, 75 and 100 %"));
        Readout readout = new Readout(harness, Optional.of(analysis), Optional.empty(), Optional.of(sweep));
        look(study, readout);
        assertEquals(
                sweep.stream().mapToInt(step -> step.wires().size()).sum(),
                study.rows(readout).size());
    }

    @Test
    void theDutyViewTellsWhichOutputsShareAClockAndWhenTheyAreOn() throws HarnessFileException {
        Analysis analysis = AnalysedExamples.of("star-ground");
        Harness harness = analysis.harness();
        Readout readout = new Readout(harness, Optional.of(analysis), Optional.empty());
        DutyStudy study = new DutyStudy();
        for (DutyStudy.Row row : study.rows(readout)) {
            Clock clock =
                    DutyClocks.of(row.solution().duty(), row.output().output()).orElseThrow();
            double onFraction = clock.stretches().stream()
                    .filter(stretch -> stretch.on().contains(row.output().output()))
                    .mapToDouble(Stretch::shareFraction)
                    .sum();
            assertEquals(row.output().pulse().dutyFraction(), onFraction, 1e-9);
            assertTrue(
                    study.steps(readout, row).stream().anyMatch(step -> step.startsWith("Stretches of its period: ")));
        }
    }

    private static <R> void look(Study<R> study, Readout readout) {
        List<R> rows = study.rows(readout);
        assertFalse(rows.isEmpty(), study.title());
        for (R row : rows.subList(0, Math.min(LOOKED_AT, rows.size()))) {
            String about = study.title() + ", " + study.id(row);
            assertFalse(study.steps(readout, row).isEmpty(), about);
            study.columns().forEach(column -> assertNotNull(column.cell().apply(row), about));
            Picture picture =
                    study.picture(readout, row, Optional.empty()).orElseThrow(() -> new AssertionError(about));
            assertFalse(picture.description().isBlank(), about);
            for (double[] pane : PANES) {
                Scene scene = picture.drawing().scene(FONTS, pane[0], pane[1]);
                assertEquals(List.of(), ChartPicturesTest.overlaps(scene), about);
                assertEquals(List.of(), ChartPicturesTest.outside(scene), about);
            }
        }
    }

    @Test
    void everyStudyOfReturnPathsHasRowsReasonsAndAReadableChartWhereThereIsSomethingToSay()
            throws HarnessFileException {
        Analysis analysis = MadeReturns.in(AnalysedExamples.of("faults"), 3);
        Harness harness = analysis.harness();
        for (Study<?> study : Studies.RETURNS) {
            look(study, new Readout(harness, Optional.of(analysis), Optional.empty()));
        }
    }

    @Test
    void anEmptyHarnessIsToldWhatToEnter() {
        DesignRules rules =
                new DesignRules("road-vehicle", 12, 0.05, GaugeSystem.METRIC, "none named", Optional.empty(), 25);
        Harness empty = Harness.empty(TitleBlock.of("Empty", "T-1"), rules);
        Readout readout = new Readout(empty, Optional.empty(), Optional.empty());
        for (Study<?> study : all()) {
            assertEquals(List.of(), study.rows(readout), study.title());
            assertTrue(study.nothing(readout).length() > 40, study.title());
        }
    }

    @Test
    void keysAndTitlesOfStudiesDiffer() {
        TreeSet<String> keys = new TreeSet<>();
        TreeSet<String> titles = new TreeSet<>();
        all().forEach(study -> {
            keys.add(study.key());
            titles.add(study.title());
        });
        assertEquals(all().size(), keys.size());
        assertEquals(all().size(), titles.size());
    }

    private static List<Study<?>> all() {
        return Stream.concat(Studies.ALL.stream(), Studies.RETURNS.stream()).toList();
    }

    @Test
    void aWireLeadsToTheDeviceItReliesOn() throws HarnessFileException {
        Analysis analysis = AnalysedExamples.of("teaching");
        Harness harness = analysis.harness();
        Readout readout = new Readout(harness, Optional.of(analysis), Optional.empty());
        analysis.evidence()
                .protection()
                .relying()
                .forEach((wire, devices) -> assertEquals(
                        devices.get(0).value(),
                        new ProtectionStudy()
                                .lead(readout, wire.value())
                                .orElseThrow()
                                .value()));
        assertFalse(analysis.evidence().protection().relying().isEmpty());
    }
}
