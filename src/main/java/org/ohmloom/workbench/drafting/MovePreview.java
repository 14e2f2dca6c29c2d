package org.ohmloom.workbench.drafting;

import com.formdev.flatlaf.util.UIScale;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.edit.board.Footprint;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.Tone;

/** What is being moved, shown where it would go: collected once when the drag begins, painted for every place. */
final class MovePreview {

    /** More marks than these are shown as outlines, so that dragging stays smooth. */
    private static final int MOST_MARKS = 1500;

    private static final int MOST_THINGS = 200;

    private final Easel easel;
    private final BoardPlaces places;
    private final List<Item> marks = new ArrayList<>();
    private final List<Extent> outlines = new ArrayList<>();
    private final List<Tie> ties = new ArrayList<>();

    /**
     * A line between two places of the board, and whether each of its ends moves.
     */
    private record Tie(Position from, boolean fromMoves, Position to, boolean toMoves) {}

    MovePreview(Easel easel, BoardPlaces places, Moves moves, Scene scene) {
        this.easel = easel;
        this.places = places;
        Set<String> ids = moves.ids();
        for (Footprint each : moves.things()) {
            Point middle = places.toScene(each.centre());
            outlines.add(Extent.at(
                    middle.xMm() - each.widthMm() / 2,
                    middle.yMm() - each.heightMm() / 2,
                    each.widthMm(),
                    each.heightMm()));
        }
        boolean few = outlines.size() <= MOST_THINGS;
        for (Item item : few ? scene.items() : List.<Item>of()) {
            if (item.layer() == Layer.CONNECTORS
                    && item.element().filter(ids::contains).isPresent()) {
                Point middle = item.mark().bounds().centre();
                if (outlines.stream().anyMatch(room -> room.grown(1).contains(middle))) {
                    marks.add(item);
                }
            }
        }
        easel.harness().ifPresent(harness -> tie(harness, ids));
    }

    /** What is bound to what moves: the bundles of breakouts, and cards to the breakout they hang at. */
    private void tie(Harness harness, Set<String> ids) {
        for (BundleSegment segment : harness.segments().all()) {
            String from = segment.from().value();
            String to = segment.to().value();
            if (ids.contains(from) || ids.contains(to)) {
                tie(
                        places.joint(from).map(BoardPlaces.Joint::at),
                        ids.contains(from),
                        places.joint(to).map(BoardPlaces.Joint::at),
                        ids.contains(to));
            }
        }
        for (BoardPlaces.CardPlace card : places.cards()) {
            boolean moves = card.footprint().ids().stream().anyMatch(ids::contains);
            if (moves && card.breakout().isPresent()) {
                String breakout = card.breakout().get();
                tie(
                        places.joint(breakout).map(BoardPlaces.Joint::at),
                        ids.contains(breakout),
                        Optional.of(card.footprint().centre()),
                        true);
            }
        }
    }

    private void tie(Optional<Position> from, boolean fromMoves, Optional<Position> to, boolean toMoves) {
        if (from.isPresent() && to.isPresent()) {
            ties.add(new Tie(from.get(), fromMoves, to.get(), toMoves));
        }
    }

    /** Paints it moved by some mm. */
    void paint(Graphics2D g, double dxMm, double dyMm) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Color colour = Tone.colour("Ohmloom.selection");
        g.setColor(colour);
        g.setStroke(dashes());
        for (Tie tie : ties) {
            g.draw(new Line2D.Double(
                    screen(tie.from(), tie.fromMoves(), dxMm, dyMm), screen(tie.to(), tie.toMoves(), dxMm, dyMm)));
        }
        if (marks.size() <= MOST_MARKS) {
            Graphics2D inMm = (Graphics2D) g.create();
            inMm.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, 0.8f));
            inMm.transform(easel.canvas().transform().affine());
            Placement moved = Placement.moved(dxMm, dyMm);
            marks.forEach(item -> easel.painter().paintMark(inMm, item.mark().placed(moved), Samples.style()));
            inMm.dispose();
        }
        g.setStroke(new BasicStroke(UIScale.scale(1.5f)));
        double gap = UIScale.scale(3f);
        for (Extent room : outlines) {
            Point2D corner = easel.canvas().transform().toScreen(new Point(room.leftMm() + dxMm, room.topMm() + dyMm));
            double scale = easel.canvas().transform().scale();
            g.draw(new Rectangle2D.Double(
                    corner.getX() - gap,
                    corner.getY() - gap,
                    room.widthMm() * scale + 2 * gap,
                    room.heightMm() * scale + 2 * gap));
        }
    }

    private Point2D screen(Position at, boolean moves, double dxMm, double dyMm) {
        Point point = places.toScene(at);
        return easel.canvas().transform().toScreen(moves ? point.plus(dxMm, dyMm) : point);
    }

    private static BasicStroke dashes() {
        float dash = UIScale.scale(5f);
        return new BasicStroke(
                UIScale.scale(1.2f), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, dash}, 0);
    }
}
