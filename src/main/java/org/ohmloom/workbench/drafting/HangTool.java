package org.ohmloom.workbench.drafting;

import java.awt.Graphics2D;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Point;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.board.Drafting;
import org.ohmloom.edit.board.Drawn;
import org.ohmloom.edit.board.HangAt;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;

/** Hangs what is selected at the breakout that is pointed at, or at a new one in the open. */
final class HangTool extends BoardTool {

    HangTool(Easel easel) {
        super(easel);
    }

    @Override
    public String key() {
        return "hang";
    }

    @Override
    public void hint() {
        easel().say("hint.hang");
    }

    @Override
    List<Point> targets() {
        return easel().breakouts();
    }

    /** Whether a thing hangs at breakouts. */
    static boolean hangs(Element element) {
        return element instanceof Component
                || element instanceof Connector
                || element instanceof GroundPoint
                || element instanceof Splice;
    }

    @Override
    void put(Aim at) {
        easel().harness().ifPresent(harness -> {
            Set<String> ids = new LinkedHashSet<>(easel().selected());
            ids.removeIf(id -> !easel().is(id, HangTool::hangs));
            if (ids.isEmpty()) {
                easel().wrong(easel().words().get("hang.nothing"));
                return;
            }
            Edit edit = edit(harness, ids, easel().breakoutAt(at, reachMm()), at);
            easel().apply(edit);
            easel().done();
            easel().say("done", edit.label());
        });
    }

    /** The edit that hangs things at a breakout, or at a new one. */
    static Edit edit(Harness harness, Set<String> ids, Optional<BoardPlaces.Joint> joint, Aim at) {
        if (joint.isPresent()) {
            return new HangAt(ids, new BreakoutId(joint.get().id()));
        }
        Drawn made = new Drafting(harness).breakout(at.board());
        HangAt hang = new HangAt(ids, new BreakoutId(made.ids().get(0)));
        return new Compound(hang.label(), List.of(made.edit(), hang));
    }

    @Override
    void preview(Graphics2D g, Aim at) {
        Optional<BoardPlaces.Joint> joint = easel().breakoutAt(at, reachMm());
        joint.ifPresent(each -> easel().mark(g, each));
        label(
                g,
                at.scene(),
                joint.map(each -> easel().words().get("hang.at", each.id()))
                        .orElse(easel().words().get("hang.new")));
    }
}
