package org.ohmloom.workbench.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireId;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.sheet.SheetTable;

/** Routing rules, allowances, figures, coverings and splices that stay, typed into the lists of the window. */
class FabricationPaneTest {
    private static final int ROUTING = 0;
    private static final int SEGMENTS = 1;
    private static final int CONNECTORS = 2;
    private static final int FIGURES = 3;
    private static final int SPLICES = 4;

    private final Stage stage = new Stage();

    @BeforeEach
    void open() {
        stage.openExample("star-ground");
        OnEventThread.run(() -> stage.view.viewTabs().showStudy(FabricationPane.KEY));
    }

    private FabricationPane pane() {
        return (FabricationPane) stage.view.viewTabs().study(FabricationPane.KEY);
    }

    private Harness harness() {
        return OnEventThread.get(() -> stage.desk().harness().orElseThrow());
    }

    private FabricationRules rules() {
        return harness().rules().fabricationRules();
    }

    private void type(int list, String row, String column, String text) {
        OnEventThread.run(() -> {
            SheetTable table = pane().table(list);
            table.setValueAt(text, row(table, row), column(table, column));
        });
    }

    private String shown(int list, String row, String column) {
        return OnEventThread.get(() -> {
            SheetTable table = pane().table(list);
            return table.getValueAt(row(table, row), column(table, column)).toString();
        });
    }

    private static int row(SheetTable table, String first) {
        for (int row = 0; row < table.getRowCount(); row++) {
            if (table.getValueAt(row, 0).toString().equals(first)) {
                return row;
            }
        }
        throw new AssertionError("no row " + first);
    }

    private static int column(SheetTable table, String head) {
        for (int column = 0; column < table.getColumnCount(); column++) {
            if (table.getColumnName(column).equals(head)) {
                return column;
            }
        }
        throw new AssertionError("no column " + head);
    }

    private void undo() {
        OnEventThread.run(() -> stage.desk().document().orElseThrow().session().undo());
    }

    @Test
    void aFigureIsAsTheTableSaysUntilOneIsEntered() {
        assertEquals("25", shown(FIGURES, "Service loop", "By table"));
        assertTrue(shown(FIGURES, "Service loop", "From").startsWith("cut allowances, row service-loop"));
        type(FIGURES, "Service loop", "Entered", "4 cm");
        assertEquals(OptionalDouble.of(40), rules().serviceLoopMm());
        assertEquals("design rules of the harness", shown(FIGURES, "Service loop", "From"));
        type(FIGURES, "Service loop", "Entered", "");
        assertEquals(OptionalDouble.empty(), rules().serviceLoopMm());
        undo();
        assertEquals(OptionalDouble.of(40), rules().serviceLoopMm());
        type(FIGURES, "Currency", "Entered", "EUR");
        assertEquals(Optional.of("EUR"), rules().currency());
        for (FabricationFigure figure : FabricationFigure.values()) {
            FabricationRules one = FabricationParts.with(FabricationRules.NONE, figure, OptionalDouble.of(1));
            assertEquals(OptionalDouble.of(1), figure.entered(one), figure.label());
            assertEquals(
                    FabricationRules.NONE, FabricationParts.with(one, figure, OptionalDouble.empty()), figure.label());
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> FabricationParts.with(FabricationRules.NONE, FabricationFigure.LAY_RATIO, OptionalDouble.of(3)));
    }

    @Test
    void anAllowanceOfAConnectorGoesBeforeTheFigureForAll() {
        assertEquals("20", shown(CONNECTORS, "X1", "Depth (mm)"));
        type(CONNECTORS, "X1", "Depth (mm)", "31");
        type(CONNECTORS, "X1", "Drip loop", "yes");
        var own = rules().connectors().get(0);
        assertEquals(OptionalDouble.of(31), own.depthMm());
        assertTrue(own.dripLoop());
        type(CONNECTORS, "X1", "Depth (mm)", "");
        type(CONNECTORS, "X1", "Drip loop", "no");
        assertEquals(List.of(), rules().connectors());
    }

    @Test
    void routingRulesAreTypedAsPeopleSayThem() {
        Harness harness = harness();
        RoutingRule first = new RoutingRule.Apart(
                List.of(SignalClass.FEED), List.of(new WireId("W10")), List.of(), Optional.empty());
        OnEventThread.run(() -> stage.desk().apply(RoutingEdits.add(harness, first)));
        assertEquals("apart from feed", shown(ROUTING, "1", "Wires lie"));
        type(ROUTING, "1", "Wires lie", "Out of BOOM");
        type(ROUTING, "1", "All wires of", "switched output; data bus");
        type(ROUTING, "1", "And wires", "w10 W12");
        type(ROUTING, "1", "Because", "splashed there");
        assertEquals(
                new RoutingRule.AvoidZone(
                        harness.zones().ids().stream()
                                .filter(id -> id.value().equals("boom"))
                                .findFirst()
                                .orElseThrow(),
                        List.of(new WireId("W10"), new WireId("W12")),
                        List.of(SignalClass.SWITCHED_OUTPUT, SignalClass.DATA_BUS),
                        Optional.of("splashed there")),
                rules().routing().get(0));
        type(ROUTING, "1", "Wires lie", "through b3");
        assertTrue(rules().routing().get(0) instanceof RoutingRule.Through);
        assertEquals(
                "'past B3' is no routing rule; write out of ZONE, apart from SIGNALS or through BREAKOUT, such as apart from"
                        + " feed, switched output",
                assertThrows(IllegalArgumentException.class, () -> RoutingEdits.rule(harness(), List.of(0), "past B3"))
                        .getMessage());
        type(ROUTING, "1", "Wires lie", "");
        assertEquals(List.of(), rules().routing());
    }

    @Test
    void aCoveringIsChosenSizedAndFinished() {
        type(SEGMENTS, "SG1", "Covering", "tape");
        type(SEGMENTS, "SG1", "Overlap", "40 %");
        type(SEGMENTS, "SG1", "Ends", "tied");
        type(SEGMENTS, "SG1", "Size", "tape-pvc-19");
        BundleSegment segment = harness().segments().all().stream()
                .filter(each -> each.id().value().equals("SG1"))
                .findFirst()
                .orElseThrow();
        Covering covering = segment.covering().orElseThrow();
        assertEquals(Covering.Kind.TAPE, covering.kind());
        assertEquals(0.4, covering.overlapFraction().orElseThrow(), 1e-12);
        assertEquals(Optional.of(Covering.EndFinish.TIED), covering.endFinish());
        assertEquals(Optional.of("tape-pvc-19"), covering.size());
        type(SEGMENTS, "SG1", "Covering", "");
        assertEquals("", shown(SEGMENTS, "SG1", "Ends"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> SegmentEdits.kind(List.of(segment), "rope"))
                .getMessage()
                .contains("braided sleeve"));
    }

    @Test
    void aSpliceStaysOnRequest() {
        String splice = harness().splices().ids().iterator().next().value();
        type(SPLICES, splice, "Stays", "yes");
        assertEquals(splice, rules().fixedSplices().get(0).value());
        type(SPLICES, splice, "Stays", "no");
        assertEquals(List.of(), rules().fixedSplices());
    }
}
