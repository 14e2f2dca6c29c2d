package org.ohmloom.workbench.drafting;

import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import javax.swing.JComponent;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Point;
import org.ohmloom.edit.board.Drafting;
import org.ohmloom.edit.board.Drawn;
import org.ohmloom.edit.board.Where;
import org.ohmloom.model.BreakoutId;

/** Places one new thing: at the breakout it is pointed at, otherwise in the open. */
final class PlaceTool extends BoardTool {

    private final String key;
    private final boolean hangs;
    private final Optional<JComponent> options;
    private final Supplier<String> what;
    private final BiFunction<Drafting, Where, Drawn> making;

    /**
     * A tool.
     *
     * @param hangs   whether what it places hangs at breakouts
     * @param options what can be set for it
     * @param what    what is placed, in words
     * @param making  makes it
     */
    PlaceTool(
            Easel easel,
            String key,
            boolean hangs,
            Optional<JComponent> options,
            Supplier<String> what,
            BiFunction<Drafting, Where, Drawn> making) {
        super(easel);
        this.key = key;
        this.hangs = hangs;
        this.options = options;
        this.what = what;
        this.making = making;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public void hint() {
        easel().say("hint." + key);
    }

    @Override
    public Optional<JComponent> options() {
        return options;
    }

    @Override
    List<Point> targets() {
        return hangs ? easel().breakouts() : List.of();
    }

    @Override
    void put(Aim at) {
        easel().harness().ifPresent(harness -> {
            Drawn drawn = making.apply(new Drafting(harness), where(at));
            easel().apply(drawn);
            easel().say("placed", drawn.ids().get(0));
        });
    }

    private Where where(Aim at) {
        if (hangs && easel().places().isEmpty()) {
            return new Where.Nowhere();
        }
        return breakout(at)
                .<Where>map(joint -> new Where.At(new BreakoutId(joint.id())))
                .orElse(new Where.InTheOpen(at.board()));
    }

    private Optional<BoardPlaces.Joint> breakout(Aim at) {
        return hangs ? easel().breakoutAt(at, reachMm()) : Optional.empty();
    }

    @Override
    void preview(Graphics2D g, Aim at) {
        Optional<BoardPlaces.Joint> joint = breakout(at);
        joint.ifPresent(each -> easel().mark(g, each));
        label(
                g,
                at.scene(),
                joint.map(each -> easel().words().get("at-breakout", what.get(), each.id()))
                        .orElse(what.get()));
    }
}
