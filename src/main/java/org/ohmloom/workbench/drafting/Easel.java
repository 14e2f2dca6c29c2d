package org.ohmloom.workbench.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.board.Drawn;
import org.ohmloom.edit.board.Pinned;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.canvas.LayoutPane;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.words.Words;

/** What the tools work at: the harness on its board, the grid, and the line that says what to do next. */
final class Easel {

    private final Desk desk;
    private final LayoutPane pane;
    private final ScenePainter painter;
    private final Words words = Words.of("drafting");
    private final List<Runnable> listeners = new ArrayList<>();
    private Grid grid = Grid.USUAL;
    private Consumer<String> hint = text -> {};

    Easel(Desk desk, LayoutPane pane, ScenePainter painter) {
        this.desk = desk;
        this.pane = pane;
        this.painter = painter;
    }

    Desk desk() {
        return desk;
    }

    LayoutPane pane() {
        return pane;
    }

    LayoutCanvas canvas() {
        return pane.canvas();
    }

    ScenePainter painter() {
        return painter;
    }

    Words words() {
        return words;
    }

    Optional<Harness> harness() {
        return desk.harness();
    }

    /** Where things stand on the board; empty while the harness is drawn as a circuit or not at all. */
    Optional<BoardPlaces> places() {
        return pane.board();
    }

    List<String> selected() {
        return desk.selection().ids();
    }

    Grid grid() {
        return grid;
    }

    void grid(Grid changed) {
        grid = changed;
        listeners.forEach(Runnable::run);
        canvas().repaint();
    }

    /** Does something after the grid was changed. */
    void onGrid(Runnable task) {
        listeners.add(task);
    }

    /** Lets hints be shown. */
    void hints(Consumer<String> shower) {
        hint = shower;
    }

    /** Says what to do next. */
    void say(String key, Object... values) {
        hint.accept(words.get(key, values));
    }

    /** Applies an edit; everything else stays where it is, and so does the view. */
    void apply(Edit edit) {
        canvas().hold();
        desk.apply(places().<Edit>map(places -> new Pinned(places.positions(), edit))
                .orElse(edit));
    }

    /** Applies what was drawn and selects it. */
    void apply(Drawn drawn) {
        apply(drawn.edit());
        pane.pick(drawn.ids().subList(0, 1));
    }

    /** A distance on the screen as one on the board, mm. */
    double reachMm(double px) {
        return com.formdev.flatlaf.util.UIScale.scale((float) px)
                / canvas().transform().scale();
    }
}
