package org.ohmloom.workbench.canvas;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/**
 * Shows a scene and lets a tool work on it: the wheel zooms about the pointer, a click selects, another click at the same
 * place selects what lies below. Knows nothing of harnesses.
 */
public final class LayoutCanvas extends SceneCanvas {
    private static final Words WORDS = Words.of("layout");

    private static final long serialVersionUID = 1L;
    private static final int MARGIN = 14;
    private static final double READABLE = 4.2;
    private static final double STEP = 1.25;
    private static final double TOLERANCE = 4;

    private final transient CanvasPainting painting;
    private transient Optional<Scene> scene = Optional.empty();
    private transient Optional<SceneLookup> lookup = Optional.empty();
    private transient ViewTransform transform = new ViewTransform(1, 0, 0);
    private transient Selection selection = Selection.NONE;
    private transient Optional<String> hovered = Optional.empty();
    private boolean fitted = true;
    private String emptyText = "";
    private final String shows;
    private transient Function<String, List<Item>> trails = id -> List.of();
    private transient Optional<String> trailOf = Optional.empty();
    private transient List<Item> trail = List.of();
    private transient CanvasTool tool;
    private transient MenuShower menu = (xPx, yPx) -> {};

    /** Shows a menu. */
    @FunctionalInterface
    public interface MenuShower {
        /** Shows the menu of what is selected or lies under a pixel. */
        void show(int xPx, int yPx);
    }

    /** Takes what a person picks on the canvas. */
    @FunctionalInterface
    public interface Picking {
        /**
         * Called when a person clicks.
         *
         * @param ids    what is selected now
         */
        void picked(List<String> ids);
    }

    /**
     * A canvas.
     *
     * @param key     its name for the program: "layout"
     * @param name    what it is called: "Layout"
     * @param shows   what it shows, for people who cannot see it: "The harness on its board"
     * @param picking takes what a person picks
     */
    public LayoutCanvas(String key, String name, String shows, ScenePainter painter, Picking picking) {
        super(name);
        this.shows = shows;
        this.painting = new CanvasPainting(painter);
        this.tool = new LookTool(this, picking);
        setName(key);
        setFocusable(true);
        setOpaque(true);
        CanvasMouse mouse = new CanvasMouse(this);
        mouse.install();
        CanvasKeys.install(this, mouse, picking);
        ToolTipManager.sharedInstance().registerComponent(this);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                if (fitted) {
                    fit();
                }
            }
        });
    }

    /** Works with another tool from now on; what the one before had under way is given up. */
    public void use(CanvasTool changed) {
        tool.cancel();
        tool = changed;
        setCursor(tool.cursor(hovered.isPresent()));
        repaint();
    }

    public CanvasTool tool() {
        return tool;
    }

    /** Shows this menu when one is asked for. */
    public void offer(MenuShower shower) {
        menu = shower;
    }

    void showMenu(int xPx, int yPx) {
        menu.show(xPx, yPx);
    }

    /** The menu at what is selected, or in the middle. */
    void showMenu() {
        Point middle = transform.toScene(getWidth() / 2.0, getHeight() / 2.0);
        Point2D at = transform.toScreen(selection
                .lead()
                .flatMap(id -> scene.flatMap(shown -> shown.bounds(id)))
                .map(Extent::centre)
                .orElse(middle));
        int xPx = (int) Math.max(0, Math.min(getWidth() - 1, at.getX()));
        int yPx = (int) Math.max(0, Math.min(getHeight() - 1, at.getY()));
        menu.show(xPx, yPx);
    }

    /** Shows the scene at the scale it has now, whatever becomes of its size: somebody draws on it. */
    public void hold() {
        fitted = false;
    }

    /** Shows all of the scene that was moved within it, by some mm, where it was before. */
    void follow(double dxMm, double dyMm) {
        if (!fitted) {
            transform = transform.moved(-dxMm * transform.scale(), -dyMm * transform.scale());
        }
    }

    /** Shows a scene, or a text where there is none; another document's scene is fitted. */
    public void show(Optional<Scene> changed, String whenEmpty, boolean anew) {
        scene = changed;
        lookup = changed.map(shown -> new SceneLookup(shown, ForkJoinPool.commonPool()));
        emptyText = whenEmpty;
        if (anew || changed.isEmpty()) {
            painting.forget();
        }
        hovered = Optional.empty();
        trailOf = Optional.empty();
        trail = List.of();
        getAccessibleContext()
                .setAccessibleDescription(changed.map(shown -> WORDS.get(
                                "layout-canvas.things-the-lists-hold",
                                shows,
                                shown.elements().size()))
                        .orElse(whenEmpty));
        if (anew || fitted) {
            fit();
        }
        tool.sceneChanged();
        repaint();
    }

    @Override
    public Optional<Scene> scene() {
        return scene;
    }

    /** What stands there while nothing is drawn. */
    String emptyText() {
        return emptyText;
    }

    /** What lies where in the scene; fails without one. */
    SceneLookup lookup() {
        return lookup.orElseThrow();
    }

    /** Shows more about what is pointed at, or else selected, on top of the scene. */
    public void showTrails(Function<String, List<Item>> found) {
        trails = found;
    }

    /** What is shown on top of the scene now. */
    public List<Item> trail() {
        Optional<String> wanted = hovered.or(selection::lead);
        if (!wanted.equals(trailOf)) {
            trailOf = wanted;
            trail = wanted.map(trails).orElse(List.of());
        }
        return trail;
    }

    public ViewTransform transform() {
        return transform;
    }

    /** Whether the scene was painted as sharp as it will be; a large one is moved and scaled as a picture before. */
    public boolean isSharp() {
        return painting.isSharp();
    }

    /** Whether the whole scene is shown and stays so when the canvas changes its size. */
    boolean isFitted() {
        return fitted;
    }

    public void select(Selection changed) {
        selection = changed;
        trailOf = Optional.empty();
        trail = List.of();
        if (changed.centre()) {
            centreSelection();
        }
        repaint();
    }

    public Selection selection() {
        return selection;
    }

    /** Shows the whole scene. */
    public void fit() {
        fitted = true;
        scene.ifPresent(shown ->
                move(ViewTransform.fitting(shown.extent(), getWidth(), getHeight(), UIScale.scale(MARGIN)), true));
    }

    /** Larger or smaller about the middle. */
    public void zoom(int steps) {
        zoom(Math.pow(STEP, steps), getWidth() / 2.0, getHeight() / 2.0);
    }

    /** Larger or smaller by a factor about a pixel. */
    public void zoom(double factor, double xPx, double yPx) {
        if (scene.isPresent()) {
            move(transform.zoomed(factor, xPx, yPx), false);
        }
    }

    void pan(double dxPx, double dyPx) {
        if (scene.isPresent()) {
            move(transform.moved(dxPx, dyPx), false);
        }
    }

    /** Brings the selection into view, as large as is useful. */
    public void centreSelection() {
        Optional<Extent> around = lookup.flatMap(shown -> Extent.union(selection.ids().stream()
                .flatMap(id -> shown.bounds(id).stream())
                .toList()));
        around.ifPresent(part -> {
            double margin = Math.min(getWidth(), getHeight()) * 0.15;
            ViewTransform close = ViewTransform.fitting(part, getWidth(), getHeight(), margin);
            boolean inView = transform.seen(getWidth(), getHeight()).contains(part);
            double readable = Math.min(close.scale(), UIScale.scale((float) READABLE));
            if (!inView || transform.scale() < readable) {
                double scale = Math.min(close.scale(), Math.max(readable, transform.scale()));
                move(new ViewTransform(scale, 0, 0).centredOn(part.centre(), getWidth(), getHeight()), false);
            }
        });
    }

    /** Brings a point of the scene into view, if it is not there. */
    public void reveal(Point at) {
        Point2D here = transform.toScreen(at);
        double margin = UIScale.scale(24);
        double dx = Math.max(0, margin - here.getX()) - Math.max(0, here.getX() - (getWidth() - margin));
        double dy = Math.max(0, margin - here.getY()) - Math.max(0, here.getY() - (getHeight() - margin));
        if (dx != 0 || dy != 0) {
            pan(dx, dy);
        }
    }

    /** What lies under a pixel, topmost first. */
    public List<String> under(int xPx, int yPx) {
        Point point = transform.toScene(xPx, yPx);
        double tolerance = UIScale.scale((float) TOLERANCE) / transform.scale();
        return lookup.map(shown -> shown.hit(point, tolerance)).orElse(List.of());
    }

    void hover(Optional<String> id) {
        if (!id.equals(hovered)) {
            hovered = id;
            setCursor(tool.cursor(id.isPresent()));
            repaint();
        }
    }

    private void move(ViewTransform changed, boolean whole) {
        fitted = whole;
        transform = changed;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D own = (Graphics2D) g.create();
        try {
            if (scene.isPresent()) {
                painting.paint(own, this, scene.get(), hovered);
                Graphics2D over = (Graphics2D) own.create();
                tool.paint(over);
                over.dispose();
            } else {
                paintEmpty(own);
            }
            if (isFocusOwner()) {
                own.setColor(Tone.colour("Ohmloom.selection"));
                own.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
            }
        } finally {
            own.dispose();
        }
    }

    private void paintEmpty(Graphics2D g) {
        Color ground = Samples.style().colour(Ink.GROUND);
        g.setColor(ground);
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(Tone.SOFT.colour());
        g.setFont(getFont() == null ? g.getFont() : getFont());
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        int width = g.getFontMetrics().stringWidth(emptyText);
        g.drawString(emptyText, (getWidth() - width) / 2, getHeight() / 2);
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        return under(event.getX(), event.getY()).stream()
                .findFirst()
                .flatMap(id -> lookup.flatMap(shown -> shown.description(id)))
                .orElse(null);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(760), UIScale.scale(460));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(UIManager.getFont("Label.font"));
        if (painting != null) {
            painting.forget();
        }
    }
}
