package org.ohmloom.draw.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Paper;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.units.GaugeSystem;

/** The form boards of the examples: every segment there, at its true length, bent no further than it may be, none across another. */
@BesideOthers
class FormBoardsTest {

    private static final double ROUNDING_MM = 1e-6;

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat", "faults", "rescue-pickup"})
    void everySegmentIsDrawnAtItsTrueLength(String example) {
        Harness harness = AnalysedExamples.harness(example);
        TreeSet<SegmentId> drawn = new TreeSet<>();
        for (FormBoard board : Boards.of(example, Paper.A3)) {
            for (LaidSegment laid : board.segments()) {
                BundleSegment segment = harness.segments().get(laid.segment());
                assertEquals(1000 * segment.lengthMetres(), laid.drawnMm(), ROUNDING_MM, segment.id() + " drawn");
                assertFalse(laid.tiles().isEmpty(), segment.id() + " is on no tile");
                assertTrue(board.tileNames().containsAll(laid.tiles()), segment.id() + " on " + laid.tiles());
                assertTrue(drawn.add(segment.id()), segment.id() + " twice");
            }
        }
        assertEquals(new TreeSet<>(harness.segments().ids()), drawn);
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat", "faults", "rescue-pickup"})
    void noSegmentCrossesAnother(String example) {
        for (FormBoard board : Boards.of(example, Paper.A3)) {
            List<String> names = board.segments().stream()
                    .map(each -> each.segment().value())
                    .toList();
            assertEquals(
                    List.of(),
                    Boards.crossings(
                            names,
                            board.segments().stream()
                                    .map(LaidSegment::centreLine)
                                    .toList()));
        }
    }

    /** NASA-STD-8739.4 7.3.21 by way of the bundle study: inside radius 6 finished diameters while fitting, and half of one to the centre line. */
    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat", "faults", "rescue-pickup"})
    void noSegmentIsBentFurtherThanItMayBe(String example) {
        Analysis analysis = AnalysedExamples.of(example);
        for (FormBoard board : Boards.of(example, Paper.A3)) {
            for (LaidSegment laid : board.segments()) {
                double finished = analysis.evidence()
                        .bundles()
                        .of(laid.segment())
                        .orElseThrow()
                        .finishedMm();
                double least = 6.5 * finished;
                double radius = Boards.leastRadiusMm(laid.centreLine());
                assertTrue(radius >= least * (1 - 1e-3), laid.segment() + " bent to " + radius + ", least " + least);
                assertEquals(laid.folds() == 0, Double.isInfinite(radius), laid.segment() + " folds");
            }
        }
    }

    @Test
    void allButTheWorkboatLieOnASheetOfPlywoodAndThatOneSaysWhatItNeeds() {
        for (String example : List.of("teaching", "star-ground", "faults", "rescue-pickup")) {
            for (FormBoard board : Boards.of(example, Paper.A3)) {
                assertTrue(board.widthMm() <= 2440 && board.heightMm() <= 1220, example + " " + board.widthMm());
                assertEquals(List.of(), board.remarks());
            }
        }
        FormBoard workboat = Boards.of("workboat", Paper.A3).get(0);
        assertTrue(workboat.widthMm() > 2440);
        assertTrue(
                workboat.remarks().get(0).startsWith("Needs a board of "),
                workboat.remarks().toString());
    }

    @Test
    void eachAssemblyHasABoardOfItsOwnAndItsPiecesLieSideBySide() {
        List<FormBoard> boards = Boards.of("rescue-pickup", Paper.A3);
        assertEquals(2, boards.size());
        assertTrue(boards.get(0).name().contains("Front harness"), boards.get(0).name());
        assertTrue(
                boards.get(1).name().contains("Cab and load bed harness"),
                boards.get(1).name());
    }

    @Test
    void aRingIsOpenedAtItsThinnestSegmentAndThatIsSaid() {
        Harness teaching = AnalysedExamples.harness("teaching");
        BundleSegment closing = new BundleSegment(
                new SegmentId("SG7"),
                new BreakoutId("B1"),
                new BreakoutId("B3"),
                1.3,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        FormBoard board =
                Boards.of(Boards.analysed(teaching.with(closing)), Paper.A3).get(0);
        List<LaidSegment> opened =
                board.segments().stream().filter(LaidSegment::opened).toList();
        assertEquals(1, opened.size());
        BundleSegment segment = opened.get(0).segment().equals(closing.id())
                ? closing
                : teaching.segments().get(opened.get(0).segment());
        assertEquals(1000 * segment.lengthMetres(), opened.get(0).drawnMm(), ROUNDING_MM);
        assertEquals(
                List.of("Segment " + segment.id() + " closes a ring: it is laid open from breakout " + segment.from()
                        + " at its full length; its free end joins breakout " + segment.to() + "."),
                board.remarks());
        assertEquals(7, board.segments().size());
    }

    @Test
    void oneSegmentAloneIsABoardAndNoSegmentIsNone() {
        DesignRules rules = new DesignRules(
                "road-vehicle", 12, 0.03, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30);
        Harness empty = Harness.empty(TitleBlock.of("Nothing yet", "EX-D-1"), rules);
        assertEquals(List.of(), Boards.of(Boards.analysed(empty), Paper.A4));
        List<Element> parts = new ArrayList<>();
        for (String id : List.of("B1", "B2")) {
            parts.add(new Breakout(new BreakoutId(id), id, Optional.empty()));
        }
        parts.add(new BundleSegment(
                new SegmentId("SG1"),
                new BreakoutId("B1"),
                new BreakoutId("B2"),
                0.4,
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        FormBoard board =
                Boards.of(Boards.analysed(empty.withAll(parts)), Paper.A4).get(0);
        assertEquals(1, board.segments().size());
        assertEquals(400, board.segments().get(0).drawnMm(), ROUNDING_MM);
        assertEquals(2, board.tileNames().size(), "400 mm need two sheets of 260 mm");
    }

    @Test
    void onALargeBoardASegmentKeepsThePersonsOwnDirection() {
        Analysis teaching = AnalysedExamples.of("teaching");
        FormBoard board = FormBoards.of(teaching, Boards.FONTS, new BoardSize(9000, 5000), Optional.of(Paper.A0))
                .get(0);
        for (LaidSegment laid : board.segments()) {
            BundleSegment segment = teaching.harness().segments().get(laid.segment());
            Position from = teaching.harness().layout().get(segment.from().value());
            Position to = teaching.harness().layout().get(segment.to().value());
            double wish = Math.toDegrees(Math.atan2(to.yMm() - from.yMm(), to.xMm() - from.xMm()));
            double drawn =
                    Headings.to(laid.centreLine().get(0), laid.centreLine().get(1));
            assertEquals(0, laid.folds());
            assertEquals(0, Headings.between(wish, drawn), 1e-6, segment.id().value());
        }
    }
}
