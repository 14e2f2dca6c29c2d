package org.ohmloom.workbench.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.workbench.canvas.LayoutCanvas;
import org.ohmloom.workbench.canvas.LayoutPane;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.widget.Reveal;

/** The tools for drawing on the layout, one of them in hand. */
public final class Toolbox {

    private final Easel easel;
    private final Map<String, DrawingTool> tools = new java.util.LinkedHashMap<>();
    private final List<Runnable> listeners = new ArrayList<>();
    private DrawingTool current;

    /** The tools for the layout of a desk; puts their strip and their line into its pane. */
    public Toolbox(Desk desk, LayoutPane pane, ScenePainter painter) {
        this.easel = new Easel(desk, pane, painter);
        for (DrawingTool tool : List.of(new SelectTool(easel, false), new SelectTool(easel, true))) {
            tools.put(tool.key(), tool);
        }
        this.current = tools.values().iterator().next();
        easel.onGrid(this::tell);
        canvas().use(current);
        desk.listen(topic -> {
            if (topic == Topic.DOCUMENT || topic == Topic.HARNESS) {
                current.hint();
            }
        });
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

    /** Selects everything on the layout. */
    void selectAll() {
        canvas().scene().ifPresent(scene -> easel.desk()
                .select(Selection.of(scene.elements().stream()
                        .filter(id -> easel.harness()
                                .flatMap(harness -> harness.element(id))
                                .isPresent())
                        .filter(id -> !zones().contains(id))
                        .toList())));
    }

    private Set<String> zones() {
        return easel.harness().stream()
                .flatMap(harness -> harness.zones().ids().stream())
                .map(Object::toString)
                .collect(java.util.stream.Collectors.toSet());
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
