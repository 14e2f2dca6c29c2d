package org.ohmloom.workbench.drafting;

import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import org.ohmloom.draw.BoardPlaces;
import org.ohmloom.draw.Point;
import org.ohmloom.edit.board.Drafting;
import org.ohmloom.edit.board.Drawn;
import org.ohmloom.edit.board.Where;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Position;
import org.ohmloom.model.SegmentId;
import org.ohmloom.units.Formats;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.Words;

/**
 * Draws bundle segments from breakout to breakout, each click one farther; an end in the open gets a breakout of its own. The length
 * is the one typed, otherwise that of the line drawn, to a scale.
 */
final class SegmentTool extends BoardTool {

    private static final List<Integer> SCALES = List.of(1, 2, 5, 10, 20, 50);
    private static final int USUAL_SCALE = 10;

    private final JTextField length;
    private final JComboBox<String> scale = new JComboBox<>();
    private final JComponent options;
    private Optional<Aim> from = Optional.empty();

    SegmentTool(Easel easel) {
        super(easel);
        length = ToolOptions.field("tool-length", easel.words().get("segment.length.about"), 7, () -> easel.canvas()
                .requestFocusInWindow());
        SCALES.forEach(each -> scale.addItem("1:" + each));
        scale.setSelectedIndex(SCALES.indexOf(USUAL_SCALE));
        scale.setName("tool-scale");
        scale.getAccessibleContext().setAccessibleName(easel.words().get("segment.scale.about"));
        scale.setToolTipText(easel.words().get("segment.scale.about"));
        options = ToolOptions.row(
                easel.words().get("segment.length"), length, easel.words().get("segment.scale"), scale);
    }

    @Override
    public String key() {
        return "segment";
    }

    @Override
    public void hint() {
        easel().say(from.isPresent() ? "hint.segment.to" : "hint.segment");
    }

    @Override
    public Optional<JComponent> options() {
        return Optional.of(options);
    }

    @Override
    List<Point> targets() {
        return easel().breakouts();
    }

    @Override
    void put(Aim at) {
        if (from.isEmpty()) {
            from = Optional.of(on(at));
            hint();
        } else {
            draw(from.get(), at, true);
        }
    }

    @Override
    void drawn(Aim start, Aim to) {
        draw(on(start), to, false);
    }

    /** The breakout meant by a place, or the place itself. */
    private Aim on(Aim at) {
        return easel().breakoutAt(at, reachMm())
                .map(joint -> new Aim(joint.at(), easel().toScene(joint.at())))
                .orElse(at);
    }

    private void draw(Aim one, Aim other, boolean onwards) {
        Aim to = on(other);
        double lengthMetres;
        try {
            lengthMetres = lengthMetres(one.board(), to.board());
        } catch (IllegalArgumentException wrong) {
            easel().wrong(Words.said(wrong));
            length.requestFocusInWindow();
            return;
        }
        if (one.board().equals(to.board()) || !(lengthMetres > 0)) {
            easel().wrong(easel().words().get("segment.nowhere"));
            return;
        }
        easel().harness().ifPresent(harness -> {
            Drawn drawn = new Drafting(harness).segment(where(one), where(to), lengthMetres);
            easel().apply(drawn);
            String id = drawn.ids().get(0);
            from = onwards ? Optional.of(to) : Optional.empty();
            easel().say(
                            onwards ? "segment.onwards" : "placed.long",
                            id,
                            easel().harness()
                                    .flatMap(now -> now.segments().find(new SegmentId(id)))
                                    .map(each -> Formats.metres(each.lengthMetres()))
                                    .orElse(""));
        });
    }

    private Where where(Aim at) {
        return easel().breakoutAt(at, 0.2)
                .<Where>map(joint -> new Where.At(new BreakoutId(joint.id())))
                .orElse(new Where.InTheOpen(at.board()));
    }

    /** The typed length, otherwise that of the line to the scale, m. */
    private double lengthMetres(Position one, Position other) {
        String typed = length.getText().strip();
        if (!typed.isEmpty()) {
            double metres = QuantityParser.parse(typed, Unit.METRE).canonical();
            if (!(metres > 0)) {
                throw new IllegalArgumentException(easel().words().get("segment.positive", typed));
            }
            return metres;
        }
        double lineMm = Math.hypot(one.xMm() - other.xMm(), one.yMm() - other.yMm());
        return Math.round(lineMm * SCALES.get(Math.max(0, scale.getSelectedIndex()))) / 1000.0;
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
        Aim here = on(at);
        Optional<BoardPlaces.Joint> joint = easel().breakoutAt(at, reachMm());
        joint.ifPresent(each -> easel().mark(g, each));
        draggedFrom().map(this::on).or(() -> from).ifPresent(start -> {
            dash(g, start.scene(), here.scene());
            try {
                label(g, at.scene(), Formats.metres(lengthMetres(start.board(), here.board())));
            } catch (IllegalArgumentException wrong) {
                label(g, at.scene(), Words.said(wrong));
            }
        });
    }
}
