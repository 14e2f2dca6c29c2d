package org.ohmloom.workbench.print;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executor;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import org.ohmloom.pack.PrintedDocument;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.widget.Tone;

/** One sheet as paper, at a size a person chooses; painted off the event thread, the latest wish alone. */
final class SheetPreview extends JComponent implements Scrollable {

    private static final long serialVersionUID = 1L;
    private static final int AROUND_PIXELS = 14;
    private static final double STEP = 1.25;
    private static final double LEAST_PIXELS_FOR_A_MM = 0.3;
    private static final double MOST_PIXELS_FOR_A_MM = 24;

    /** Larger pictures are painted coarser and stretched. */
    private static final double MOST_PICTURE_PIXELS = 24e6;

    private final transient LatestWins<Wish, BufferedImage> painter;
    private transient Optional<PrintedDocument> document = Optional.empty();
    private transient Optional<BufferedImage> picture = Optional.empty();
    private int sheet;
    private boolean fit = true;
    private double pixelsForAMm = 1;

    /**
     * What is to be painted.
     *
     * @param scale pixels for a millimetre
     */
    private record Wish(PrintedDocument document, int sheet, double scale) {}

    SheetPreview(Executor eventThread) {
        this.painter = new LatestWins<>(
                "print preview",
                (wish, cancel, soFar) -> painted(wish),
                Duration.ofMillis(20),
                eventThread,
                outcome -> {
                    picture = outcome.answer();
                    repaint();
                });
        setName("print-sheet");
        setFocusable(true);
    }

    private static BufferedImage painted(Wish wish) {
        double width = wish.document().widthMm(wish.sheet()) * wish.scale();
        double height = wish.document().heightMm(wish.sheet()) * wish.scale();
        double coarser = Math.min(1, Math.sqrt(MOST_PICTURE_PIXELS / (width * height)));
        BufferedImage picture = new BufferedImage(
                Math.max(1, (int) Math.round(width * coarser)),
                Math.max(1, (int) Math.round(height * coarser)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = picture.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, picture.getWidth(), picture.getHeight());
        graphics.scale(wish.scale() * coarser, wish.scale() * coarser);
        wish.document().paint(graphics, wish.sheet());
        graphics.dispose();
        return picture;
    }

    /** Shows a sheet. */
    void show(PrintedDocument shown, int number) {
        document = Optional.of(shown);
        sheet = number;
        picture = Optional.empty();
        wish();
    }

    /** Shows nothing. */
    void clear() {
        painter.stop();
        document = Optional.empty();
        picture = Optional.empty();
        repaint();
    }

    /** Whether the sheet is still being painted. */
    boolean isBusy() {
        return painter.isBusy();
    }

    /** Shows the sheet larger or smaller by steps. */
    void zoom(int steps) {
        double wanted = scale() * Math.pow(STEP, steps);
        pixelsForAMm = Math.min(MOST_PIXELS_FOR_A_MM, Math.max(LEAST_PIXELS_FOR_A_MM, wanted));
        fit = false;
        wish();
    }

    /** Shows the whole sheet. */
    void fit() {
        fit = true;
        wish();
    }

    /** Pixels for a millimetre. */
    double scale() {
        if (!fit || document.isEmpty() || !(getParent() instanceof JViewport viewport)) {
            return pixelsForAMm;
        }
        double width = viewport.getWidth() - 2.0 * AROUND_PIXELS;
        double height = viewport.getHeight() - 2.0 * AROUND_PIXELS;
        double whole = Math.min(
                width / document.get().widthMm(sheet), height / document.get().heightMm(sheet));
        return Math.max(LEAST_PIXELS_FOR_A_MM, whole);
    }

    /** Paints anew at the size there is now. */
    void wish() {
        document.ifPresent(shown -> painter.ask(new Wish(shown, sheet, scale() * deviceScale())));
        revalidate();
        repaint();
    }

    private double deviceScale() {
        return getGraphicsConfiguration() == null
                ? 1
                : getGraphicsConfiguration().getDefaultTransform().getScaleX();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
        }
        return accessibleContext;
    }

    @Override
    public Dimension getPreferredSize() {
        if (document.isEmpty()) {
            return new Dimension(1, 1);
        }
        return new Dimension(
                (int) Math.ceil(document.get().widthMm(sheet) * scale()) + 2 * AROUND_PIXELS,
                (int) Math.ceil(document.get().heightMm(sheet) * scale()) + 2 * AROUND_PIXELS);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setColor(Tone.colour("Panel.background"));
        own.fillRect(0, 0, getWidth(), getHeight());
        document.ifPresent(shown -> {
            int width = (int) Math.round(shown.widthMm(sheet) * scale());
            int height = (int) Math.round(shown.heightMm(sheet) * scale());
            int x = Math.max(AROUND_PIXELS, (getWidth() - width) / 2);
            int y = Math.max(AROUND_PIXELS, (getHeight() - height) / 2);
            own.setColor(Color.WHITE);
            own.fillRect(x, y, width, height);
            picture.ifPresent(painted -> {
                own.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
                AffineTransform place = AffineTransform.getTranslateInstance(x, y);
                place.scale((double) width / painted.getWidth(), (double) height / painted.getHeight());
                own.drawImage(painted, place, null);
            });
            own.setColor(Tone.colour("Ohmloom.line"));
            own.drawRect(x - 1, y - 1, width + 1, height + 1);
        });
        own.dispose();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(640, 480);
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 24;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent().getWidth() > getPreferredSize().width;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent().getHeight() > getPreferredSize().height;
    }
}
