package org.ohmloom.workbench.window;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.bench.NumberChooser;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.command.CommandButton;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.study.StateChooser;
import org.ohmloom.workbench.widget.Icons;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** The row of tools above the views: file, undo, operating state, numbers on the layout, zoom, build pack, look. */
final class ToolBar extends JPanel {
    private static final Words WORDS = Words.of("window");

    private static final long serialVersionUID = 1L;

    ToolBar(CommandBook book, Desk desk) {
        super(new MigLayout("insets 5 10 5 10, fillx, gapx 2, hidemode 3", "", "[center]"));
        List.of("open-file", "save").forEach(id -> add(icon(book.get(id))));
        line();
        List.of("undo", "redo").forEach(id -> add(icon(book.get(id))));
        line();
        StateChooser states = new StateChooser(desk);
        add(label(WORDS.get("tool-bar.state"), states), "gapright 6");
        add(states, "w 190::240, gapright 6");
        line();
        NumberChooser numbers = new NumberChooser(desk);
        add(label(WORDS.get("tool-bar.numbers"), numbers), "gapright 6");
        add(numbers, "gapright 4");
        add(toggle(book.get("show-heat")));
        line();
        add(toggle(book.get("show-wires")));
        line();
        List.of("zoom-out", "zoom-in", "fit-layout", "show-selection").forEach(id -> add(icon(book.get(id))));
        add(new JLabel(), "growx, pushx");
        add(icon(book.get("look")));
        JButton pack = CommandButton.of(book.get("export-pack"));
        pack.setHideActionText(false);
        pack.setIcon(Icons.onAccent("pack"));
        pack.putClientProperty(
                FlatClientProperties.STYLE,
                "background: $Button.default.background; foreground: $Button.default.foreground; hoverBackground: $Button.default.hoverBackground; pressedBackground: $Button.default.pressedBackground");
        name(pack, book.get("export-pack"));
        add(pack, "gapleft 6");
    }

    private void line() {
        add(new JSeparator(SwingConstants.VERTICAL), "h 20!, gapleft 6, gapright 6");
    }

    private static JLabel label(String text, JComponent field) {
        JLabel label = soft(text);
        label.setLabelFor(field);
        return label;
    }

    private static JLabel soft(String text) {
        JLabel label = new JLabel(text);
        label.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        return label;
    }

    private static AbstractButton icon(Command command) {
        JButton button = CommandButton.of(command);
        button.setHideActionText(true);
        button.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
        return name(button, command);
    }

    private static AbstractButton toggle(Command command) {
        JToggleButton button = CommandButton.toggle(command);
        button.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
        return name(button, command);
    }

    private static AbstractButton name(AbstractButton button, Command command) {
        button.setName("tool-" + command.id());
        tell(button, command);
        command.addPropertyChangeListener(event -> tell(button, command));
        return button;
    }

    private static void tell(AbstractButton button, Command command) {
        String keys = command.keys().map(stroke -> "  " + Keys.text(stroke)).orElse("");
        String about = String.valueOf(command.getValue(javax.swing.Action.SHORT_DESCRIPTION));
        String name = command.name().replace("…", "");
        button.getAccessibleContext().setAccessibleName(name);
        button.setToolTipText(about.startsWith(name) ? about + keys : name + ": " + about + keys);
    }
}
