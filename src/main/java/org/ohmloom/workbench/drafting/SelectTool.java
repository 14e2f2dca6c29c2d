package org.ohmloom.workbench.drafting;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Point;
import org.ohmloom.model.Position;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.canvas.Clicking;
import org.ohmloom.workbench.canvas.Pointed;
import org.ohmloom.workbench.widget.Tone;

/**
 * Selects and moves: a click selects, dragging a thing moves it and all that is selected with it, dragging over the empty board
 * selects what lies wholly within, and the arrow keys nudge.
 */
final class SelectTool implements DrawingTool {

    private static final double HANG_PX = 8;

    private final Easel easel;
    private final boolean lasso;
    private @Nullable Pointed pressedAt;
    private Optional<PickedArea> area = Optional.empty();
    private Optional<Drag> drag = Optional.empty();
    private Optional<Drag> dropped = Optional.empty();
    private Optional<Carried> carried = Optional.empty();

    /**
     * Things without a place that are carried to a breakout.
     *
     * @param ids their ids
     * @param at  where the pointer is in the scene
     */
    private record Carried(Set<String> ids, Point at) {}

    /** A move under way. */
    private static final class Drag {
        private final BoardPlaces places;
        private final Moves moves;
        private final MovePreview preview;
        private final List<Position> others;
        private final Position from;
        private Grid.Snap snap;

        Drag(Easel easel, BoardPlaces places, Moves moves) {
            this.places = places;
            this.moves = moves;
            this.preview =
                    new MovePreview(easel, places, moves, easel.canvas().scene().orElseThrow());
            this.others = moves.others(places);
            this.from = moves.at();
            this.snap = Grid.Snap.at(from);
        }

        double dxMm() {
            return snap.at().xMm() - from.xMm();
        }

        double dyMm() {
            return snap.at().yMm() - from.yMm();
        }
    }

    /**
     * A tool.
     *
     * @param lasso whether dragging over the empty board draws any line round things, not a rectangle
     */
    SelectTool(Easel easel, boolean lasso) {
        this.easel = easel;
        this.lasso = lasso;
    }

    @Override
    public String key() {
        return lasso ? "lasso" : "select";
    }

    @Override
    public void hint() {
        boolean placed = easel.places().isPresent();
        easel.say(!placed ? "hint.circuit" : lasso ? "hint.lasso" : "hint.select");
    }

    @Override
    public void pressed(Pointed at) {
        pressedAt = at;
        dropped = Optional.empty();
    }

    @Override
    public void dragged(Pointed at) {
        if (pressedAt == null) {
            return;
        }
        if (drag.isEmpty() && area.isEmpty() && carried.isEmpty()) {
            if (!at.isDragFrom(pressedAt)) {
                return;
            }
            begin(pressedAt);
        }
        area.ifPresent(each -> each.to(at.scene()));
        drag.ifPresent(each -> move(each, pressedAt, at));
        carried = carried.map(each -> new Carried(each.ids(), at.scene()));
        easel.canvas().repaint();
    }

    private void begin(Pointed start) {
        List<String> here = easel.canvas().under(start.xPx(), start.yPx());
        List<String> selected = easel.selected();
        Optional<BoardPlaces> places = easel.places();
        Optional<String> held = places.flatMap(known -> here.stream()
                .filter(known::has)
                .filter(id -> selected.contains(id))
                .findFirst()
                .or(() -> here.stream().limit(1).filter(known::has).findFirst()));
        if (held.isEmpty() && places.isPresent() && isUnplaced(here, selected, start)) {
            return;
        }
        if (held.isEmpty()) {
            area = Optional.of(new PickedArea(lasso, start.scene()));
            easel.say("hint.area");
            return;
        }
        Set<String> ids = new LinkedHashSet<>(List.of(held.get()));
        if (selected.contains(held.get())) {
            ids.addAll(selected);
        } else {
            easel.pane().pick(List.of(held.get()));
        }
        drag = Moves.of(places.orElseThrow(), List.copyOf(ids))
                .map(moves -> new Drag(easel, places.orElseThrow(), moves));
    }

    /** Whether something that hangs nowhere yet was taken hold of; it is carried from then on. */
    private boolean isUnplaced(List<String> here, List<String> selected, Pointed start) {
        Optional<String> held = here.stream().limit(1).filter(this::hangs).findFirst();
        held.ifPresent(id -> {
            Set<String> ids = new LinkedHashSet<>(List.of(id));
            if (selected.contains(id)) {
                selected.stream().filter(this::hangs).forEach(ids::add);
            } else {
                easel.pane().pick(List.of(id));
            }
            carried = Optional.of(new Carried(ids, start.scene()));
            easel.say("hint.carrying");
        });
        return held.isPresent();
    }

    private boolean hangs(String id) {
        return easel.is(id, HangTool::hangs);
    }

    private void hang(Carried things) {
        Aim aim = new Aim(easel.grid().crossing(easel.toBoard(things.at())), things.at());
        easel.harness()
                .ifPresent(harness -> easel.apply(
                        HangTool.edit(harness, things.ids(), easel.breakoutAt(aim, easel.reachMm(HANG_PX)), aim)));
    }

    private void move(Drag each, Pointed start, Pointed at) {
        Position from = each.from;
        Position raw = new Position(
                from.xMm() + at.scene().xMm() - start.scene().xMm(),
                from.yMm() + at.scene().yMm() - start.scene().yMm());
        each.snap = easel.grid().snap(raw, each.others, easel.reachMm(Grid.LEVEL_PX), at.free());
        easel.say(
                "hint.moving",
                each.moves.lead(),
                Formats.number(each.snap.at().xMm()),
                Formats.number(each.snap.at().yMm()));
    }

    @Override
    public void released(Pointed at) {
        if (pressedAt == null) {
            return;
        }
        Optional<Drag> moved = drag;
        Optional<PickedArea> drawn = area;
        Optional<Carried> hung = carried;
        boolean adding = at.adding();
        end();
        if (moved.isPresent()) {
            dropped = moved;
            Drag each = moved.get();
            easel.apply(each.moves.drag(easel.words(), each.dxMm(), each.dyMm()));
        } else if (hung.isPresent()) {
            hang(hung.get());
        } else if (drawn.isPresent()) {
            pick(drawn.get(), adding);
        } else {
            List<String> here = easel.canvas().under(at.xPx(), at.yPx());
            easel.pane().pick(Clicking.after(easel.selected(), here, adding));
        }
        hint();
    }

    private void pick(PickedArea drawn, boolean adding) {
        List<String> inside = easel.canvas().scene().map(drawn::picked).orElse(List.of());
        Set<String> all = new LinkedHashSet<>(adding ? easel.selected() : List.of());
        all.addAll(inside);
        easel.pane().pick(new ArrayList<>(all));
    }

    private void end() {
        pressedAt = null;
        drag = Optional.empty();
        area = Optional.empty();
        carried = Optional.empty();
        easel.canvas().repaint();
    }

    @Override
    public boolean arrow(int right, int down, boolean far) {
        Optional<Moves> moves = easel.places().flatMap(places -> Moves.of(places, easel.selected()));
        moves.ifPresent(each -> {
            double step = easel.grid().stepMm(far);
            easel.apply(each.nudge(easel.words(), right * step, down * step));
        });
        return moves.isPresent();
    }

    @Override
    public boolean cancel() {
        boolean under = drag.isPresent() || area.isPresent() || carried.isPresent();
        end();
        if (under) {
            hint();
        }
        return under;
    }

    @Override
    public void sceneChanged() {
        dropped = Optional.empty();
        if (drag.isEmpty() && area.isEmpty()) {
            hint();
        }
    }

    @Override
    public Cursor cursor(boolean over) {
        return Cursor.getPredefinedCursor(
                over ? Cursor.HAND_CURSOR : lasso ? Cursor.CROSSHAIR_CURSOR : Cursor.DEFAULT_CURSOR);
    }

    @Override
    public void paint(Graphics2D g) {
        if (easel.grid().on()) {
            easel.places().ifPresent(places -> GridLines.paint(g, easel, places));
        }
        drag.ifPresent(each -> {
            GridLines.paint(g, easel, each.places, each.snap);
            each.preview.paint(g, each.dxMm(), each.dyMm());
        });
        dropped.ifPresent(each -> each.preview.paint(g, each.dxMm(), each.dyMm()));
        carried.ifPresent(each -> {
            Aim aim = new Aim(easel.toBoard(each.at()), each.at());
            easel.breakoutAt(aim, easel.reachMm(HANG_PX)).ifPresent(joint -> easel.mark(g, joint));
        });
        area.ifPresent(each -> {
            Shape shape = easel.canvas().transform().affine().createTransformedShape(each.outline());
            Color colour = Tone.colour("Ohmloom.selection");
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 40));
            g.fill(shape);
            g.setColor(colour);
            g.setStroke(new BasicStroke(UIScale.scale(1.2f)));
            g.draw(shape);
        });
    }
}
