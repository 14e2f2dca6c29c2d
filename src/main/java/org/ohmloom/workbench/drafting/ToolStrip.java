package org.ohmloom.workbench.drafting;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandButton;
import org.ohmloom.workbench.widget.Keys;

/** The tools one below the other at the side of the layout; in a low window they stand in several columns. */
public final class ToolStrip extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int MARGIN = 4;

    /** A strip of commands that switch something on. */
    public ToolStrip(List<Command> commands) {
        super(null);
        setLayout(new Columns());
        setName("tools");
        commands.forEach(command -> add(button(command)));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                if (getPreferredSize().width != getWidth()) {
                    revalidate();
                }
            }
        });
    }

    private static AbstractButton button(Command command) {
        JToggleButton button = CommandButton.toggle(command);
        button.setHideActionText(true);
        button.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
        button.setName("strip-" + command.id());
        tell(button, command);
        command.addPropertyChangeListener(event -> tell(button, command));
        return button;
    }

    private static void tell(AbstractButton button, Command command) {
        String keys = command.keys().map(stroke -> "  " + Keys.text(stroke)).orElse("");
        button.getAccessibleContext().setAccessibleName(command.name());
        button.setToolTipText(command.name() + ": " + command.getValue(Action.SHORT_DESCRIPTION) + keys);
    }

    /** Stands its components in columns as high as there is room. */
    private static final class Columns implements LayoutManager {

        @Override
        public void addLayoutComponent(String name, Component component) {}

        @Override
        public void removeLayoutComponent(Component component) {}

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            Dimension cell = cell(parent);
            int high = parent.getHeight() > 0 ? parent.getHeight() : Integer.MAX_VALUE;
            int rows = rows(parent, cell, high);
            int columns = (parent.getComponentCount() + rows - 1) / rows;
            int margin = UIScale.scale(MARGIN);
            return new Dimension(columns * cell.width + 2 * margin, rows * cell.height + 2 * margin);
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            Dimension cell = cell(parent);
            int margin = UIScale.scale(MARGIN);
            return new Dimension(cell.width + 2 * margin, cell.height + 2 * margin);
        }

        @Override
        public void layoutContainer(Container parent) {
            Dimension cell = cell(parent);
            int rows = rows(parent, cell, parent.getHeight());
            int margin = UIScale.scale(MARGIN);
            for (int k = 0; k < parent.getComponentCount(); k++) {
                parent.getComponent(k)
                        .setBounds(
                                margin + k / rows * cell.width,
                                margin + k % rows * cell.height,
                                cell.width,
                                cell.height);
            }
        }

        private static int rows(Container parent, Dimension cell, int highPx) {
            int room = (highPx - 2 * UIScale.scale(MARGIN)) / Math.max(1, cell.height);
            return Math.max(1, Math.min(parent.getComponentCount(), room));
        }

        private static Dimension cell(Container parent) {
            Dimension cell = new Dimension(1, 1);
            for (Component each : parent.getComponents()) {
                Dimension size = each.getPreferredSize();
                cell = new Dimension(Math.max(cell.width, size.width), Math.max(cell.height, size.height));
            }
            return cell;
        }
    }
}
