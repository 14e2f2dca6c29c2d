package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import javax.swing.Icon;
import org.ohmloom.review.Severity;

/** The sign of a severity: an octagon, a triangle or a ring, so that the shape alone tells them apart. */
public final class SeverityIcon implements Icon {

    private static final int SIZE = 14;

    private final Severity severity;

    public SeverityIcon(Severity severity) {
        this.severity = severity;
    }

    /** The tone that goes with a severity. */
    public static Tone tone(Severity severity) {
        return switch (severity) {
            case ERROR -> Tone.ERROR;
            case WARNING -> Tone.WARNING;
            case NOTE -> Tone.NOTE;
        };
    }

    @Override
    public void paintIcon(Component c, Graphics g, int x, int y) {
        Graphics2D own = (Graphics2D) g.create();
        try {
            own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            own.translate(x, y);
            own.scale(UIScale.getUserScaleFactor(), UIScale.getUserScaleFactor());
            own.setColor(tone(severity).colour());
            switch (severity) {
                case ERROR -> own.fill(octagon());
                case WARNING -> own.fill(triangle());
                case NOTE -> {
                    own.setStroke(new BasicStroke(1.5f));
                    own.draw(new Ellipse2D.Double(1.75, 1.75, 10.5, 10.5));
                }
            }
            own.setColor(severity == Severity.NOTE ? Tone.NOTE.colour() : Tone.colour("Ohmloom.pane"));
            own.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            own.draw(stroke(severity == Severity.WARNING ? 5.2 : 4, 7.8));
            own.draw(stroke(10.2, 10.2));
        } finally {
            own.dispose();
        }
    }

    private static Path2D octagon() {
        Path2D path = new Path2D.Double();
        for (int k = 0; k < 8; k++) {
            double angle = Math.PI / 8 + k * Math.PI / 4;
            double px = 7 + 6.6 * Math.cos(angle);
            double py = 7 + 6.6 * Math.sin(angle);
            if (k == 0) {
                path.moveTo(px, py);
            } else {
                path.lineTo(px, py);
            }
        }
        path.closePath();
        return path;
    }

    private static Path2D triangle() {
        Path2D path = new Path2D.Double();
        path.moveTo(7, 0.9);
        path.lineTo(13.7, 13);
        path.lineTo(0.3, 13);
        path.closePath();
        return path;
    }

    private static Path2D stroke(double fromY, double toY) {
        Path2D path = new Path2D.Double();
        path.moveTo(7, fromY);
        path.lineTo(7, toY);
        return path;
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(SIZE);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(SIZE);
    }
}
