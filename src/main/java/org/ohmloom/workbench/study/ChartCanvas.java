package org.ohmloom.workbench.study;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Scrollable;
import javax.swing.ToolTipManager;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.workbench.canvas.SceneCanvas;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** Shows a chart as large as its pane; the pointer reads lines and bars out, a click selects what they belong to. */
public final class ChartCanvas extends SceneCanvas implements Scrollable {
    private static final Words WORDS = Words.of("studies");

    private static final long serialVersionUID = 1L;

    /** A screen of 96 dots to the inch; the letters of a chart then have the size of those of lists. */
    private static final double PIXELS_FOR_A_MM = 96 / 25.4 * 1.06;

    private static final double LEAST_WIDTH_MM = 60;
    private static final double LEAST_HEIGHT_MM = 45;
    private static final double REACH_MM = 1.2;
    private static final double MARK_MM = 0.5;

    private final transient ScenePainter painter;
    private transient Optional<Picture> picture = Optional.empty();
    private transient @Nullable Scene scene;
    private transient Selection marked = Selection.NONE;
    private transient Dimension laidOutFor = new Dimension();

    public ChartCanvas(String accessibleName, ScenePainter painter, Consumer<List<String>> picked) {
        super(accessibleName);
        this.painter = painter;
        setName("chart");
        setFocusable(true);
        setOpaque(true);
        ToolTipManager.sharedInstance().registerComponent(this);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                hit(event).flatMap(Item::element).ifPresent(id -> picked.accept(List.of(id)));
            }
        });
    }

    /** Shows another chart, or none. */
    public void show(Optional<Picture> changed) {
        picture = changed;
        scene = null;
        getAccessibleContext()
                .setAccessibleDescription(changed.map(Picture::description).orElse(WORDS.get("chart-canvas.no-chart")));
        revalidate();
        repaint();
    }

    /** Marks what is selected in the chart. */
    void mark(Selection changed) {
        marked = changed;
        repaint();
    }

    /** The chart as it is laid out now. */
    @Override
    public Optional<Scene> scene() {
        Dimension room = room();
        if (scene == null || !room.equals(laidOutFor)) {
            double pixels = pixels();
            scene = picture.map(shown -> shown.drawing()
                            .scene(
                                    painter.fonts(),
                                    Math.max(LEAST_WIDTH_MM, room.width / pixels),
                                    Math.max(LEAST_HEIGHT_MM, room.height / pixels)))
                    .orElse(null);
            laidOutFor = room;
        }
        return Optional.ofNullable(scene);
    }

    private static double pixels() {
        return UIScale.scale((float) PIXELS_FOR_A_MM);
    }

    /** What the pane around it shows of it. */
    private Dimension room() {
        return getParent() == null || getParent().getWidth() == 0
                ? getSize()
                : getParent().getSize();
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Samples.style().colour(Ink.GROUND));
        g.fillRect(0, 0, getWidth(), getHeight());
        scene().ifPresent(shown -> {
            Graphics2D own = (Graphics2D) g.create();
            try {
                own.scale(pixels(), pixels());
                painter.paint(own, shown, Samples.style());
            } finally {
                own.dispose();
            }
            paintMarks((Graphics2D) g, shown);
        });
        if (isFocusOwner()) {
            g.setColor(Tone.colour("Component.focusColor"));
            g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        }
    }

    /** Draws a frame around everything that stands for what is selected. */
    private void paintMarks(Graphics2D g, Scene shown) {
        Graphics2D own = (Graphics2D) g.create();
        try {
            own.scale(pixels(), pixels());
            own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            own.setColor(Tone.colour("Ohmloom.selection"));
            own.setStroke(new BasicStroke((float) MARK_MM));
            for (String id : marked.ids()) {
                shown.bounds(id)
                        .map(bounds -> bounds.grown(MARK_MM))
                        .ifPresent(frame -> own.draw(new RoundRectangle2D.Double(
                                frame.leftMm(), frame.topMm(), frame.widthMm(), frame.heightMm(), 2, 2)));
            }
        } finally {
            own.dispose();
        }
    }

    private Optional<Item> hit(MouseEvent event) {
        Point point = new Point(event.getX() / pixels(), event.getY() / pixels());
        return scene().flatMap(shown -> {
            List<Item> items = shown.items();
            for (int k = items.size() - 1; k >= 0; k--) {
                Item item = items.get(k);
                if (item.description().isPresent() && item.mark().hits(point, REACH_MM)) {
                    return Optional.of(item);
                }
            }
            return Optional.empty();
        });
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        return hit(event).flatMap(Item::description).orElse(null);
    }

    @Override
    public Dimension getPreferredSize() {
        return scene().map(
                        shown -> new Dimension((int) (shown.widthMm() * pixels()), (int) (shown.heightMm() * pixels())))
                .orElse(new Dimension());
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(UIScale.scale(320), UIScale.scale(200));
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UIScale.scale(24);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getPreferredSize().height <= getParent().getHeight() + 2;
    }
}
