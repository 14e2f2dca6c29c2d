package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import javax.swing.Icon;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.draw.SignalLook;
import org.ohmloom.draw.Swatch;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireColour;

/** Small drawings for lists and the inspector, painted as the layout paints them. */
public final class Samples {

    private static final double WIDTH_MM = 6;
    private static final double HEIGHT_MM = 3;
    private static final double PIXELS_FOR_A_MM = 4;

    private final ScenePainter painter;

    public Samples(ScenePainter painter) {
        this.painter = painter;
    }

    /** A line as wires of that class are drawn. */
    public static Mark line(SignalClass signalClass) {
        SignalLook look = SignalLook.of(signalClass);
        List<Point> points = List.of(new Point(0.2, HEIGHT_MM / 2), new Point(WIDTH_MM - 0.2, HEIGHT_MM / 2));
        return new Line(points, 0.45, look.ink(), look.pattern());
    }

    /** An insulation colour with its tracers. */
    public static Mark swatch(WireColour colour) {
        return new Swatch(Extent.at(0.2, 0.5, WIDTH_MM - 1.4, HEIGHT_MM - 1), colour);
    }

    /** A drawing as an icon. */
    public Icon icon(Mark mark) {
        return new Icon() {
            @Override
            public void paintIcon(Component c, Graphics g, int x, int y) {
                Graphics2D own = (Graphics2D) g.create();
                try {
                    double scale = UIScale.scale((float) PIXELS_FOR_A_MM);
                    own.translate(x, y);
                    own.scale(scale, scale);
                    painter.paintMark(own, mark, style());
                } finally {
                    own.dispose();
                }
            }

            @Override
            public int getIconWidth() {
                return UIScale.scale((int) (WIDTH_MM * PIXELS_FOR_A_MM));
            }

            @Override
            public int getIconHeight() {
                return UIScale.scale((int) (HEIGHT_MM * PIXELS_FOR_A_MM));
            }
        };
    }

    /** The style of the look that is on now. */
    public static DrawStyle style() {
        return FlatLaf.isLafDark() ? DrawStyle.DARK : DrawStyle.LIGHT;
    }
}
