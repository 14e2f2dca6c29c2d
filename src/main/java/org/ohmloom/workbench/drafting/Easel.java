package org.ohmloom.workbench.drafting;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.board.Drawn;
import org.ohmloom.edit.board.Pinned;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.canvas.LayoutPane;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** What the tools work at: the harness on its board, the grid, and the line that says what to do next. */
final class Easel {

    private final Desk desk;
    private final LayoutPane pane;
    private final ScenePainter painter;
    private final Words words = Words.of("drafting");
    private final List<Runnable> listeners = new ArrayList<>();
    private Grid grid = Grid.USUAL;
    private Runnable done = () -> {};
    private BiConsumer<String, Boolean> hint = (text, wrong) -> {};

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

    /** The ids of what is selected of the harness. */
    List<ElementId> chosen() {
        return harness().stream()
                .flatMap(harness -> selected().stream().flatMap(id -> harness.element(id).stream()))
                .<ElementId>map(Element::id)
                .toList();
    }

    /** Whether an id is that of something of a kind. */
    boolean is(String id, Predicate<Element> kind) {
        return harness().flatMap(harness -> harness.element(id)).filter(kind).isPresent();
    }

    /** One thing by its id, several by their count. */
    String called(List<String> ids) {
        return ids.size() == 1 ? ids.get(0) : words.get("things", String.valueOf(ids.size()));
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

    /** Lets hints be shown, and what was wrong. */
    void hints(BiConsumer<String, Boolean> shower) {
        hint = shower;
    }

    /** Does something once the person has done with a tool. */
    void onDone(Runnable task) {
        done = task;
    }

    void done() {
        done.run();
    }

    /** Says what to do next. */
    void say(String key, Object... values) {
        hint.accept(words.get(key, values), false);
    }

    /** Says why nothing came of it. */
    void wrong(@Nullable String text) {
        hint.accept(text == null ? "" : text, true);
    }

    /** The place on the board of a point of the scene; in a circuit, that point. */
    Position toBoard(Point scene) {
        return places().map(board -> board.toBoard(scene)).orElse(new Position(scene.xMm(), scene.yMm()));
    }

    /** The point of the scene of a place on the board; in a circuit, that place. */
    Point toScene(Position at) {
        return places().map(board -> board.toScene(at)).orElse(new Point(at.xMm(), at.yMm()));
    }

    /** The breakout a tool is pointed at within a reach, mm. */
    Optional<BoardPlaces.Joint> breakoutAt(Aim at, double reachMm) {
        return places().flatMap(board -> board.breakoutAt(at.board(), reachMm));
    }

    /** Where the breakouts are in the scene. */
    List<Point> breakouts() {
        return places().stream()
                .flatMap(board -> board.joints().stream().map(each -> board.toScene(each.at())))
                .toList();
    }

    /** The middles of things of some kind in the scene. */
    List<Point> centres(Predicate<Element> kind) {
        return firstMarks(kind).stream().map(mark -> mark.bounds().centre()).toList();
    }

    /** The first mark of every thing of some kind in the scene, in the order they are painted. */
    List<Mark> firstMarks(Predicate<Element> kind) {
        Map<String, Mark> first = new LinkedHashMap<>();
        canvas().scene().ifPresent(scene -> scene.items()
                .forEach(item -> item.element().ifPresent(id -> first.putIfAbsent(id, item.mark()))));
        return first.entrySet().stream()
                .filter(each -> is(each.getKey(), kind))
                .map(Map.Entry::getValue)
                .toList();
    }

    /** What lies at a point of the scene, topmost first. */
    List<String> under(Point at) {
        Point2D pixel = canvas().transform().toScreen(at);
        return canvas().under((int) Math.round(pixel.getX()), (int) Math.round(pixel.getY()));
    }

    /** What of some kind lies at a point of the scene, topmost first. */
    List<String> under(Point at, Predicate<Element> kind) {
        return under(at).stream().filter(id -> is(id, kind)).toList();
    }

    /** Lets one of several choices be taken beside a point of the scene. */
    <T> void choose(Point at, String title, List<T> choices, int first, Consumer<T> chosen) {
        Point2D pixel = canvas().transform().toScreen(at);
        PickList.show(canvas(), (int) pixel.getX(), (int) pixel.getY(), title, choices, first, chosen);
    }

    /** Marks a breakout that is meant. */
    void mark(Graphics2D g, BoardPlaces.Joint joint) {
        Position top = new Position(
                joint.at().xMm(), Math.min(joint.topMm(), joint.at().yMm()));
        Position bottom = new Position(
                joint.at().xMm(), Math.max(joint.bottomMm(), joint.at().yMm()));
        Color colour = Tone.colour("Ohmloom.selection");
        g.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 120));
        g.setStroke(new BasicStroke(UIScale.scale(8f), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new Line2D.Double(
                canvas().transform().toScreen(toScene(top)),
                canvas().transform().toScreen(toScene(bottom))));
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
        return UIScale.scale((float) px) / canvas().transform().scale();
    }
}
