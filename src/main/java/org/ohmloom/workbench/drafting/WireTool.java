package org.ohmloom.workbench.drafting;

import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JTextField;
import org.ohmloom.draw.Point;
import org.ohmloom.edit.EndText;
import org.ohmloom.edit.board.Drafting;
import org.ohmloom.edit.board.Drawn;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;
import org.ohmloom.model.WireEnd;
import org.ohmloom.workbench.words.Words;

/** Draws a wire from one cavity, terminal, splice or ground point to another: picked on the layout, or typed as X1.3. */
final class WireTool extends BoardTool {

    private final JTextField fromText;
    private final JTextField toText;
    private final JComponent options;
    private Optional<End> from = Optional.empty();

    /**
     * A picked end.
     *
     * @param end the end
     * @param at  where it was picked in the scene
     */
    private record End(WireEnd end, Point at) {}

    WireTool(Easel easel) {
        super(easel);
        toText = ToolOptions.field("tool-to", easel.words().get("wire.to.about"), 6, this::drawTyped);
        fromText =
                ToolOptions.field("tool-from", easel.words().get("wire.from.about"), 6, toText::requestFocusInWindow);
        options = ToolOptions.row(
                easel.words().get("wire.from"), fromText, easel.words().get("wire.to"), toText);
    }

    @Override
    public String key() {
        return "wire";
    }

    @Override
    public void hint() {
        from.ifPresentOrElse(start -> easel().say("hint.wire.to", start.end().text()), () -> easel().say("hint.wire"));
    }

    @Override
    public Optional<JComponent> options() {
        return Optional.of(options);
    }

    @Override
    List<Point> targets() {
        return easel().centres(WireTool::takesWires);
    }

    static boolean takesWires(Element element) {
        return element instanceof Connector
                || element instanceof Splice
                || element instanceof GroundPoint
                || element instanceof Component;
    }

    @Override
    void put(Aim at) {
        choose(at, from.isEmpty(), end -> {
            if (from.isEmpty()) {
                from = Optional.of(end);
                hint();
            } else {
                draw(from.get().end(), end.end());
            }
        });
    }

    @Override
    void drawn(Aim start, Aim to) {
        choose(start, true, one -> choose(to, false, other -> draw(one.end(), other.end())));
    }

    /** Lets an end be chosen of what lies at a place. */
    private void choose(Aim at, boolean first, Consumer<End> chosen) {
        List<WireEndChoice> choices = easel().under(at.scene(), WireTool::takesWires).stream()
                .findFirst()
                .map(id -> WireEndChoice.of(easel().harness().orElseThrow(), id, easel().words()))
                .orElse(List.of());
        if (choices.isEmpty()) {
            easel().wrong(easel().words().get("wire.nothing"));
            return;
        }
        Consumer<WireEndChoice> take = choice -> chosen.accept(new End(choice.end(), at.scene()));
        if (choices.size() == 1) {
            take.accept(choices.get(0));
            return;
        }
        int free = 0;
        while (free < choices.size() - 1 && !choices.get(free).free()) {
            free++;
        }
        easel().choose(
                        at.scene(),
                        easel().words().get(first ? "wire.choose-from" : "wire.choose-to"),
                        choices,
                        choices.get(free).free() ? free : 0,
                        take);
    }

    private void draw(WireEnd one, WireEnd other) {
        if (one.equals(other)) {
            easel().wrong(easel().words().get("wire.same"));
            return;
        }
        easel().harness().ifPresent(harness -> {
            Drawn drawn = new Drafting(harness).wire(one, other);
            from = Optional.empty();
            easel().apply(drawn);
            easel().say("wire.drawn", drawn.ids().get(0), one.text(), other.text());
        });
    }

    private void drawTyped() {
        easel().harness().ifPresent(harness -> {
            try {
                draw(typed(harness, fromText), typed(harness, toText));
                toText.setText("");
                fromText.requestFocusInWindow();
                fromText.selectAll();
            } catch (IllegalArgumentException wrong) {
                easel().wrong(Words.said(wrong));
            }
        });
    }

    private WireEnd typed(Harness harness, JTextField field) {
        if (field.getText().isBlank()) {
            throw new IllegalArgumentException(easel().words().get("wire.type-both"));
        }
        return EndText.end(harness, field.getText());
    }

    @Override
    public boolean cancel() {
        boolean under = super.cancel() || from.isPresent();
        from = Optional.empty();
        if (under) {
            hint();
        }
        return under;
    }

    @Override
    void preview(Graphics2D g, Aim at) {
        Optional<Point> start = draggedFrom().map(Aim::scene).or(() -> from.map(End::at));
        start.ifPresent(point -> dash(g, point, at.scene()));
        easel().under(at.scene(), WireTool::takesWires).stream()
                .findFirst()
                .ifPresent(id ->
                        label(g, at.scene(), easel().words().get(start.isEmpty() ? "wire.at" : "wire.on-to", id)));
    }
}
