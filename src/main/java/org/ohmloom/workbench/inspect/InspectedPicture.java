package org.ohmloom.workbench.inspect;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.ToolTipManager;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.workbench.canvas.SceneCanvas;
import org.ohmloom.workbench.study.Picture;
import org.ohmloom.workbench.widget.Samples;

/** A picture among the sections of the inspector, as wide as the pane; the pointer reads out what things are. */
final class InspectedPicture extends SceneCanvas {

    private static final long serialVersionUID = 1L;

    private static final double PIXELS_FOR_A_MM = 96 / 25.4 * 1.06;
    private static final double HEIGHT_MM = 72;
    private static final double LEAST_WIDTH_MM = 30;
    private static final double REACH_MM = 0.3;

    private final transient Picture picture;
    private final transient ScenePainter painter;

    InspectedPicture(Inspection.Drawing drawing, ScenePainter painter) {
        super(drawing.title());
        this.picture = drawing.picture();
        this.painter = painter;
        getAccessibleContext().setAccessibleDescription(picture.description());
        setName("inspected picture");
        setOpaque(true);
        ToolTipManager.sharedInstance().registerComponent(this);
    }

    @Override
    public Optional<Scene> scene() {
        return Optional.of(drawn());
    }

    private Scene drawn() {
        return picture.drawing().scene(painter.fonts(), Math.max(LEAST_WIDTH_MM, getWidth() / pixels()), HEIGHT_MM);
    }

    private static double pixels() {
        return UIScale.scale((float) PIXELS_FOR_A_MM);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension((int) (LEAST_WIDTH_MM * pixels()), (int) (HEIGHT_MM * pixels()));
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Samples.style().colour(Ink.GROUND));
        g.fillRect(0, 0, getWidth(), getHeight());
        Graphics2D own = (Graphics2D) g.create();
        try {
            own.scale(pixels(), pixels());
            painter.paint(own, drawn(), Samples.style());
        } finally {
            own.dispose();
        }
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        Point point = new Point(event.getX() / pixels(), event.getY() / pixels());
        List<Item> items = drawn().items();
        Optional<Item> found = Optional.empty();
        for (Item item : items) {
            if (item.description().isPresent() && item.mark().hits(point, REACH_MM)) {
                found = Optional.of(item);
            }
        }
        return found.flatMap(Item::description).orElse(null);
    }
}
