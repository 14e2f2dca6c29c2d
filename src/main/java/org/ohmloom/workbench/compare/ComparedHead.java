package org.ohmloom.workbench.compare;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandButton;
import org.ohmloom.workbench.widget.WrapLayout;
import org.ohmloom.workbench.widget.WrappedLabel;

/** What stands above the lists of a comparison: buttons, and in a sentence what differs. */
public final class ComparedHead extends JPanel {

    private static final long serialVersionUID = 1L;

    private final WrappedLabel summary = new WrappedLabel(" ");

    /**
     * A head.
     *
     * @param name     begins the names of its parts
     * @param commands the first buttons
     * @param more     buttons behind them
     */
    public ComparedHead(String name, List<Command> commands, JButton... more) {
        super(new MigLayout("insets 2 4 4 8, fillx, wrap 1, gap 0"));
        JPanel buttons = new JPanel();
        WrapLayout.on(buttons, 6);
        for (Command command : commands) {
            JButton button = CommandButton.of(command);
            button.setName(name + "-" + command.id());
            buttons.add(button);
        }
        for (JButton button : more) {
            buttons.add(button);
        }
        summary.setName(name + "-summary");
        summary.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        add(buttons, "growx, wmin 0");
        add(summary, "growx, wmin 0, gapleft 6");
    }

    /** Says something else. */
    public void say(String text) {
        summary.say(text);
        summary.setToolTipText(text);
    }

    /** What it says. */
    public String said() {
        return summary.said();
    }
}
