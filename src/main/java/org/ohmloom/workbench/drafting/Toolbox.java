package org.ohmloom.workbench.drafting;

import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JSpinner;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.edit.MoveOnBoard;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.edit.board.Drafting;
import org.ohmloom.edit.board.StartDevice;
import org.ohmloom.edit.board.Where;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Zone;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.canvas.LayoutPane;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.widget.Reveal;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The tools for drawing on the layout, one of them in hand. */
public final class Toolbox {

    private final Easel easel;
    private final Map<String, DrawingTool> tools = new LinkedHashMap<>();
    private final List<Runnable> listeners = new ArrayList<>();
    private final Copying copying;
    private Supplier<Clipboard> clipboard = () -> Toolkit.getDefaultToolkit().getSystemClipboard();
    private DrawingTool current;

    /**
     * The tools for the layout of a desk; what they show lies in its pane.
     *
     * @param worker      runs what is too slow for the event thread
     * @param eventThread runs a task on the event thread
     */
    public Toolbox(Desk desk, LayoutPane pane, ScenePainter painter, Executor worker, Executor eventThread) {
        this.easel = new Easel(desk, pane, painter);
        this.copying = new Copying(easel, () -> clipboard.get(), worker, eventThread);
        all().forEach(tool -> tools.put(tool.key(), tool));
        this.current = tools.values().iterator().next();
        easel.onGrid(this::tell);
        easel.onDone(() -> take(keys().get(0)));
        canvas().use(current);
        desk.listen(topic -> {
            if (topic == Topic.DOCUMENT || topic == Topic.HARNESS) {
                current.hint();
            }
        });
    }

    private List<DrawingTool> all() {
        Words words = easel.words();
        JComboBox<StartDevice> kinds = ToolOptions.kinds(words.get("component.kind"));
        JCheckBox plugged = ToolOptions.plugged(words, kinds);
        JSpinner ways = ToolOptions.ways(words.get("connector.ways.about"));
        return List.of(
                new SelectTool(easel, false),
                new SelectTool(easel, true),
                new PlaceTool(
                        easel,
                        "component",
                        true,
                        Optional.of(ToolOptions.row(kinds, plugged)),
                        () -> TradeWords.named(kind(kinds)),
                        (drafting, where) -> drafting.component(kind(kinds), plugged.isSelected(), where)),
                new PlaceTool(
                        easel,
                        "connector",
                        true,
                        Optional.of(ToolOptions.row(words.get("connector.ways"), ways)),
                        () -> words.get("connector", ways.getValue().toString()),
                        (drafting, where) -> drafting.connector((Integer) ways.getValue(), where)),
                new PlaceTool(easel, "ground", true, Optional.empty(), () -> words.get("ground"), Drafting::ground),
                new PlaceTool(
                        easel,
                        "breakout",
                        false,
                        Optional.empty(),
                        () -> words.get("breakout"),
                        (drafting, where) -> drafting.breakout(((Where.InTheOpen) where).position())),
                new SegmentTool(easel),
                new WireTool(easel),
                new SpliceTool(easel),
                new ZoneTool(easel),
                new HangTool(easel));
    }

    private static StartDevice kind(JComboBox<StartDevice> kinds) {
        return ToolOptions.kind(kinds);
    }

    Easel easel() {
        return easel;
    }

    LayoutCanvas canvas() {
        return easel.canvas();
    }

    /** Keys of the tools in the order of their strip. */
    List<String> keys() {
        return List.copyOf(tools.keySet());
    }

    /** The tool in hand. */
    DrawingTool current() {
        return current;
    }

    /** Does something after another tool was taken in hand, or the grid changed. */
    void listen(Runnable task) {
        listeners.add(task);
    }

    /** Takes a tool in hand; the layout comes to the front and gets the keyboard. */
    void take(String key) {
        current = tools.get(key);
        canvas().use(current);
        tell();
        current.hint();
        Reveal.inFront(canvas()).requestFocusInWindow();
    }

    Copying copying() {
        return copying;
    }

    /** Copies over another clipboard than the system's. */
    void copyOver(Clipboard other) {
        clipboard = () -> other;
    }

    /** Offers the menu of the right button. */
    public void offerMenu(Function<String, Command> book) {
        canvas().offer(new BoardMenu(this, book)::show);
    }

    /** Arranges what is selected in one step. */
    void arrange(Arranging how) {
        Words words = easel.words();
        List<String> ids = easel.selected();
        easel.places()
                .flatMap(places -> how.of(places, ids, easel.grid().pitchMm()))
                .ifPresentOrElse(
                        placed -> easel.apply(new MoveOnBoard(
                                words.text("arranged", words.get(how.id()), easel.called(ids)), placed)),
                        () -> easel.wrong(words.get("select-placed", String.valueOf(how.least()))));
    }

    /** Takes what is selected out of the harness. */
    void takeOut() {
        List<ElementId> ids = easel.chosen();
        if (!ids.isEmpty()) {
            easel.apply(new TakeOut(ids));
        }
    }

    /** Selects everything on the layout. */
    void selectAll() {
        canvas().scene().ifPresent(scene -> easel.desk()
                .select(Selection.of(scene.elements().stream()
                        .filter(id -> easel.is(id, element -> !(element instanceof Zone)))
                        .toList())));
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
