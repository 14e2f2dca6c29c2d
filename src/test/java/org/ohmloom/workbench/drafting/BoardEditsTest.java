package org.ohmloom.workbench.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import org.junit.jupiter.api.Test;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Point;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Selection;

/** Copying, arranging and hanging on the board of a workbench without a window. */
class BoardEditsTest {

    private static final double TENTH_MM = 0.11;

    @Test
    void whatIsCopiedInOneWorkbenchIsPastedInAnotherWithTheWireBetween() throws Exception {
        Clipboard shared = new Clipboard("shared");
        Stage one = laidOut("teaching");
        Stage other = laidOut("star-ground");
        Harness before = harness(other);
        OnEventThread.run(() -> {
            one.view.toolbox().copyOver(shared);
            other.view.toolbox().copyOver(shared);
            one.desk().select(Selection.of(List.of("BT1", "F1")));
            one.view.toolbox().copying().copy();
        });
        OnEventThread.await("the copy", () -> shared.isDataFlavorAvailable(DataFlavor.stringFlavor));
        assertTrue(String.valueOf(shared.getData(DataFlavor.stringFlavor)).startsWith("{"));
        OnEventThread.run(() -> other.view.toolbox().copying().paste());
        OnEventThread.await("the paste", () -> other.desk().harness().orElseThrow() != before);
        Harness after = harness(other);
        // The wire W1 runs from the battery to the fuse and comes along.
        assertEquals(before.wires().all().size() + 1, after.wires().all().size());
        assertEquals(
                before.components().all().size() + 2, after.components().all().size());
        assertEquals(
                before.withLayout(after.layout()).components().ids(),
                after.components().ids().stream()
                        .filter(before.components()::has)
                        .collect(Collectors.toCollection(TreeSet::new)));
        assertTrue(undo(other).startsWith("Paste "), undo(other));
    }

    @Test
    void whatIsCutIsGoneInOneStepAndComesBackByPasting() throws Exception {
        Stage stage = laidOut("teaching");
        Clipboard own = new Clipboard("own");
        OnEventThread.run(() -> {
            stage.view.toolbox().copyOver(own);
            stage.desk().select(Selection.of(List.of("P1")));
            stage.view.toolbox().copying().cut();
        });
        assertEquals("Cut P1", undo(stage));
        assertTrue(harness(stage).element("P1").isEmpty());
        OnEventThread.await("the copy", () -> own.isDataFlavorAvailable(DataFlavor.stringFlavor));
        OnEventThread.run(() -> stage.view.toolbox().copying().paste());
        OnEventThread.await(
                "the paste",
                () -> stage.desk().harness().orElseThrow().element("P1").isPresent());
    }

    @Test
    void textThatIsNoHarnessIsRefusedInALine() throws Exception {
        Stage stage = laidOut("teaching");
        Clipboard own = new Clipboard("own");
        own.setContents(new StringSelection("W1\t2.5 mm2"), null);
        Harness before = harness(stage);
        String[] said = {""};
        OnEventThread.run(() -> {
            stage.view.toolbox().copyOver(own);
            stage.view.toolbox().easel().hints((text, wrong) -> said[0] = wrong ? text : said[0]);
            stage.view.toolbox().copying().paste();
        });
        OnEventThread.await("the refusal", () -> said[0].contains("no part of a harness"));
        assertEquals(before, harness(stage));
    }

    @Test
    void twoThingsAreAlignedAndABreakoutTakesItsCardsAlong() {
        Stage stage = laidOut("teaching");
        Map<String, Position> before = places(stage).positions();
        OnEventThread.run(() -> {
            stage.desk().select(Selection.of(List.of("H1", "BT1")));
            stage.view.toolbox().arrange(Arranging.ALIGN_MIDDLE);
        });
        settle(stage);
        // Cards of one height: the middle of both is half way between their middles.
        double middle = places(stage).positions().get("H1").yMm();
        assertEquals(middle, places(stage).positions().get("BT1").yMm(), TENTH_MM);
        assertEquals("Align middles: 2 things", undo(stage));

        String breakout = places(stage).cards().stream()
                .filter(card -> card.footprint().ids().contains("P1"))
                .findFirst()
                .flatMap(BoardPlaces.CardPlace::breakout)
                .orElseThrow();
        Position joint = places(stage).positions().get(breakout);
        Position card = places(stage).positions().get("P1");
        OnEventThread.run(() -> {
            stage.desk().select(Selection.of(List.of(breakout, "BT1")));
            stage.view.toolbox().arrange(Arranging.MIRROR_ACROSS);
        });
        settle(stage);
        double moved = places(stage).positions().get(breakout).xMm() - joint.xMm();
        assertTrue(Math.abs(moved) > 1);
        assertEquals(card.xMm() + moved, places(stage).positions().get("P1").xMm(), TENTH_MM);
        assertFalse(before.isEmpty());
    }

    @Test
    void whatHangsNowhereIsHungAtABreakoutOrAtANewOne() {
        Stage stage = laidOut("teaching");
        OnEventThread.run(() -> stage.desk().select(Selection.of(List.of("H1"))));
        BoardPlaces.Joint joint = places(stage).joints().get(0);
        OnEventThread.run(() -> {
            Easel easel = stage.view.toolbox().easel();
            HangTool tool = new HangTool(easel);
            tool.put(new Aim(joint.at(), easel.toScene(joint.at())));
        });
        assertEquals(Optional.of(joint.id()), hungAt(stage, "X1"));
        settle(stage);
        int breakouts = harness(stage).breakouts().all().size();
        OnEventThread.run(() -> {
            Easel easel = stage.view.toolbox().easel();
            Position open = new Position(-400, -400);
            new HangTool(easel).put(new Aim(open, easel.toScene(open)));
        });
        assertEquals(breakouts + 1, harness(stage).breakouts().all().size());
        String made = hungAt(stage, "X1").orElseThrow();
        assertEquals(new Position(-400, -400), harness(stage).layout().get(made));
    }

    @Test
    void aHarnessDrawnAsACircuitBecomesABoardOnceABreakoutIsPlaced() {
        Stage stage = laidOut("teaching");
        Harness loose = harness(stage);
        Harness circuit = new TakeOut(loose.breakouts().all().stream()
                        .map(each -> (ElementId) each.id())
                        .toList())
                .apply(loose)
                .withLayout(new TreeMap<>());
        assertTrue(circuit.segments().isEmpty() && !circuit.wires().isEmpty());
        OnEventThread.run(() -> stage.desk().open(Document.unsaved(circuit, "circuit")));
        settle(stage);
        OnEventThread.run(() -> {
            assertTrue(stage.view.layoutPane().board().isEmpty());
            stage.view.toolbox().take("breakout");
            ((BoardTool) stage.view.toolbox().current()).put(new Aim(new Position(50, 50), new Point(50, 50)));
        });
        settle(stage);
        assertEquals(1, places(stage).joints().size());
        assertEquals(new Position(50, 50), places(stage).joints().get(0).at());
    }

    @Test
    void theMenuHoldsWhatFitsWhatIsSelected() {
        Stage stage = laidOut("teaching");
        assertEquals(
                Set.of("Draw wire from X1", "Hang at breakout", "Pin view"),
                own(stage, "X1", "Draw wire from X1", "Hang at breakout", "Pin view", "Draw segment from X1"));
        assertEquals(Set.of("Insert splice on W4"), own(stage, "W4", "Insert splice on W4", "Draw wire from W4"));
        assertEquals(Set.of("Draw segment from B1"), own(stage, "B1", "Draw segment from B1", "Hang at breakout"));
        assertEquals(Set.of("Place component"), own(stage, "", "Place component", "Cut from layout"));
    }

    /** Which of some entries the menu has while one thing is selected. */
    private static Set<String> own(Stage stage, String id, String... asked) {
        return OnEventThread.get(() -> {
            stage.desk().select(id.isEmpty() ? Selection.NONE : Selection.of(List.of(id)));
            JPopupMenu menu = new BoardMenu(stage.view.toolbox(), stage.view.book()::get)
                    .menu(new Aim(new Position(0, 0), new Point(0, 0)));
            Set<String> there = new TreeSet<>();
            for (Component each : menu.getComponents()) {
                if (each instanceof JMenuItem item && Arrays.asList(asked).contains(item.getText())) {
                    there.add(item.getText());
                }
            }
            return Set.copyOf(there);
        });
    }

    private static Optional<String> hungAt(Stage stage, String connector) {
        return harness(stage).connectors().get(new ConnectorId(connector)).at().map(Object::toString);
    }

    private static Stage laidOut(String example) {
        Stage stage = new Stage();
        OnEventThread.run(() -> stage.view.layoutPane().canvas().setSize(900, 500));
        OnEventThread.run(() -> stage.view.filing().openExample(example));
        OnEventThread.await("the file", () -> stage.desk().document().isPresent());
        settle(stage);
        return stage;
    }

    private static void settle(Stage stage) {
        OnEventThread.await("the layout", () -> !stage.view.layoutPane().isBusy());
    }

    private static Harness harness(Stage stage) {
        return OnEventThread.get(() -> stage.desk().harness().orElseThrow());
    }

    private static BoardPlaces places(Stage stage) {
        return OnEventThread.get(() -> stage.view.layoutPane().board().orElseThrow());
    }

    private static String undo(Stage stage) {
        return OnEventThread.get(() -> stage.desk()
                .document()
                .orElseThrow()
                .session()
                .undoLabel()
                .map(Text::english)
                .orElse(""));
    }
}
