package org.ohmloom.workbench.drafting;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;
import org.ohmloom.model.Position;
import org.ohmloom.workbench.canvas.Pointed;
import org.ohmloom.workbench.widget.Tone;

/**
 * A tool that is pointed at a place of the board and used there: by a click, or by the arrow keys and Enter; Page Down and Page Up
 * point it at the next and the previous thing it is meant for. Some are dragged from one place to another.
 */
abstract class BoardTool implements DrawingTool {

    private static final double REACH_PX = 6;

    private final Easel easel;
    private Optional<Grid.Snap> snap = Optional.empty();
    private @Nullable Pointed pressedAt;
    private Optional<Aim> draggedFrom = Optional.empty();

    BoardTool(Easel easel) {
        this.easel = easel;
    }

    Easel easel() {
        return easel;
    }

    /** Uses it at a place. */
    abstract void put(Aim at);

    /** Uses it from one place to another. */
    void drawn(Aim from, Aim to) {
        put(to);
    }

    /** Places Page Down goes to. */
    List<Point> targets() {
        return List.of();
    }

    /** Paints what would come of it at a place. */
    void preview(Graphics2D g, Aim at) {}

    /** Where it is pointed at. */
    Optional<Aim> aim() {
        return snap.map(each -> new Aim(each.at(), easel.toScene(each.at())));
    }

    /** Where a drag began. */
    Optional<Aim> draggedFrom() {
        return draggedFrom;
    }

    /** How near something must be on the board to be meant, mm. */
    double reachMm() {
        return easel.reachMm(REACH_PX);
    }

    private Aim aim(Pointed at) {
        Position raw = easel.toBoard(at.scene());
        List<Position> others = easel.places().stream()
                .flatMap(places -> places.joints().stream())
                .map(each -> each.at())
                .toList();
        snap = Optional.of(easel.grid().snap(raw, others, easel.reachMm(Grid.LEVEL_PX), at.free()));
        easel.canvas().repaint();
        return new Aim(snap.get().at(), at.scene());
    }

    @Override
    public void moved(Pointed at) {
        aim(at);
    }

    @Override
    public void left() {
        snap = Optional.empty();
        easel.canvas().repaint();
    }

    @Override
    public void pressed(Pointed at) {
        pressedAt = at;
        aim(at);
    }

    @Override
    public void dragged(Pointed at) {
        if (pressedAt != null) {
            if (draggedFrom.isEmpty() && at.isDragFrom(pressedAt)) {
                draggedFrom = Optional.of(aim(pressedAt));
            }
            aim(at);
        }
    }

    @Override
    public void released(Pointed at) {
        if (pressedAt == null) {
            return;
        }
        Optional<Aim> from = draggedFrom;
        pressedAt = null;
        draggedFrom = Optional.empty();
        Aim to = aim(at);
        from.ifPresentOrElse(start -> drawn(start, to), () -> put(to));
    }

    @Override
    public boolean arrow(int right, int down, boolean far) {
        Position from = snap.map(Grid.Snap::at).orElseGet(this::start);
        double step = easel.grid().stepMm(far);
        pointAt(new Position(from.xMm() + right * step, from.yMm() + down * step));
        return true;
    }

    /** Where the keyboard begins: at what is selected, otherwise in the middle of what is shown. */
    private Position start() {
        Point middle = easel.canvas()
                .transform()
                .toScene(easel.canvas().getWidth() / 2.0, easel.canvas().getHeight() / 2.0);
        return easel.toBoard(easel.canvas()
                .scene()
                .flatMap(scene -> easel.selected().stream()
                        .flatMap(id -> scene.bounds(id).stream())
                        .findFirst())
                .map(Extent::centre)
                .orElse(middle));
    }

    private void pointAt(Position at) {
        snap = Optional.of(Grid.Snap.at(easel.grid().crossing(at)));
        easel.canvas().reveal(easel.toScene(snap.get().at()));
        easel.canvas().repaint();
    }

    @Override
    public boolean enter() {
        if (snap.isEmpty()) {
            pointAt(start());
        } else {
            aim().ifPresent(this::put);
        }
        return true;
    }

    @Override
    public boolean step(int by) {
        List<Point> all = targets();
        if (all.isEmpty()) {
            return false;
        }
        Optional<Aim> now = aim();
        int at = -1;
        for (int k = 0; k < all.size(); k++) {
            if (now.isPresent() && all.get(k).distanceMm(now.get().scene()) < 0.2) {
                at = k;
            }
        }
        Point next = all.get(Math.floorMod(at < 0 && by < 0 ? by : at + by, all.size()));
        snap = Optional.of(Grid.Snap.at(easel.toBoard(next)));
        easel.canvas().reveal(next);
        easel.canvas().repaint();
        return true;
    }

    @Override
    public boolean cancel() {
        boolean under = pressedAt != null || draggedFrom.isPresent();
        pressedAt = null;
        draggedFrom = Optional.empty();
        easel.canvas().repaint();
        return under;
    }

    @Override
    public boolean escape() {
        if (!cancel()) {
            easel.done();
        }
        return true;
    }

    @Override
    public Cursor cursor(boolean over) {
        return Cursor.getPredefinedCursor(Cursor.CROSSHAIR_CURSOR);
    }

    @Override
    public final void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        easel.places().ifPresent(places -> {
            if (easel.grid().on()) {
                GridLines.paint(g, easel, places);
            }
            snap.ifPresent(each -> GridLines.paint(g, easel, places, each));
        });
        aim().ifPresent(at -> {
            preview(g, at);
            cross(g, at);
        });
    }

    private void cross(Graphics2D g, Aim at) {
        Point2D here = easel.canvas().transform().toScreen(at.scene());
        double arm = UIScale.scale(9f);
        g.setColor(Tone.colour("Ohmloom.selection"));
        g.setStroke(new BasicStroke(UIScale.scale(1.4f)));
        g.draw(new Line2D.Double(here.getX() - arm, here.getY(), here.getX() + arm, here.getY()));
        g.draw(new Line2D.Double(here.getX(), here.getY() - arm, here.getX(), here.getY() + arm));
    }

    /** A dashed line between two points of the scene. */
    void dash(Graphics2D g, Point from, Point to) {
        float dash = UIScale.scale(5f);
        g.setColor(Tone.colour("Ohmloom.selection"));
        g.setStroke(new BasicStroke(
                UIScale.scale(1.6f), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, dash}, 0));
        g.draw(new Line2D.Double(
                easel.canvas().transform().toScreen(from),
                easel.canvas().transform().toScreen(to)));
    }

    /** A text beside a point of the scene. */
    void label(Graphics2D g, Point at, String text) {
        Point2D here = easel.canvas().transform().toScreen(at);
        g.setFont(easel.canvas().getFont());
        int wide = g.getFontMetrics().stringWidth(text);
        int high = g.getFontMetrics().getHeight();
        int pad = UIScale.scale(4);
        int left = (int) Math.min(here.getX() + 3 * pad, easel.canvas().getWidth() - wide - 2.0 * pad);
        int top = (int) Math.max(0, here.getY() - high - 3 * pad);
        g.setColor(Tone.colour("Ohmloom.pane"));
        g.fillRoundRect(left - pad, top, wide + 2 * pad, high + pad, pad, pad);
        g.setColor(Tone.colour("Ohmloom.selection"));
        g.drawRoundRect(left - pad, top, wide + 2 * pad, high + pad, pad, pad);
        g.setColor(Tone.PLAIN.colour());
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.drawString(text, left, top + g.getFontMetrics().getAscent() + pad / 2);
    }
}
