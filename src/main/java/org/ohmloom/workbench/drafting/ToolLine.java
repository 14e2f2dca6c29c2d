package org.ohmloom.workbench.drafting;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Dimension;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.review.Severity;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.widget.SeverityIcon;
import org.ohmloom.workbench.widget.WrappedLabel;

/** The line above the layout: what to do next, what can be set for the tool in hand, and the grid's pitch. */
public final class ToolLine extends JPanel {

    private static final long serialVersionUID = 1L;

    private final WrappedLabel hint = new WrappedLabel("");
    private int highest;
    private int highestIn;
    private final JPanel options = new JPanel(new MigLayout("insets 0, gap 6", "", "[center]"));

    /** The line of a box of tools. */
    public ToolLine(Toolbox box) {
        super(new MigLayout("insets 3 10 3 8, fillx, hidemode 3", "[grow,fill][]10[][]", "[center]"));
        hint.setName("tool-hint");
        hint.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        add(hint, "growx, wmin 0");
        add(options);
        Easel easel = box.easel();
        JLabel title = new JLabel(easel.words().get("grid"));
        title.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        JComboBox<String> pitch = new JComboBox<>(
                Grid.PITCHES_MM.stream().map(Formats::millimetres).toArray(String[]::new));
        pitch.setName("grid-pitch");
        pitch.getAccessibleContext().setAccessibleName(easel.words().get("grid.name"));
        pitch.setToolTipText(easel.words().get("grid.name"));
        pitch.setSelectedIndex(index(easel.grid()));
        pitch.addActionListener(event ->
                easel.grid(new Grid(easel.grid().on(), Grid.PITCHES_MM.get(Math.max(0, pitch.getSelectedIndex())))));
        title.setLabelFor(pitch);
        add(title);
        add(pitch);
        easel.hints((text, wrong) -> {
            hint.setIcon(wrong ? new SeverityIcon(Severity.ERROR) : null);
            hint.say(text);
            hint.setToolTipText(text);
            hint.putClientProperty(
                    FlatClientProperties.STYLE, "foreground: $" + (wrong ? "Ohmloom.error" : "Ohmloom.soft"));
        });
        box.listen(() -> show(box));
        show(box);
        box.current().hint();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        highestIn = -1;
    }

    /** As high as it ever was in this width: where a hint takes a line less, the layout below does not jump under the pointer. */
    @Override
    public Dimension getPreferredSize() {
        Dimension size = super.getPreferredSize();
        highest = getWidth() == highestIn ? Math.max(highest, size.height) : size.height;
        highestIn = getWidth();
        return new Dimension(size.width, highest);
    }

    /** What it says. */
    String text() {
        return String.valueOf(hint.getToolTipText());
    }

    private void show(Toolbox box) {
        JComponent wanted = box.current().options().orElse(null);
        if (options.getComponentCount() != (wanted == null ? 0 : 1)
                || wanted != null && options.getComponent(0) != wanted) {
            options.removeAll();
            if (wanted != null) {
                // While it was away it may have missed a change of the look or the scale.
                SwingUtilities.updateComponentTreeUI(wanted);
                options.add(wanted);
            }
            options.setVisible(wanted != null);
            revalidate();
            repaint();
        }
    }

    private static int index(Grid grid) {
        return Math.max(0, Grid.PITCHES_MM.indexOf(grid.pitchMm()));
    }
}
