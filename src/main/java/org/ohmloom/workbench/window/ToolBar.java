package org.ohmloom.workbench.window;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.Action;
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
import org.ohmloom.workbench.widget.MainButton;
import org.ohmloom.workbench.widget.WrapLayout;
import org.ohmloom.workbench.words.Words;

/** The row of tools above the views: file, undo, operating state, numbers on the layout, zoom, build pack, look. */
final class ToolBar extends JPanel {
    private static final Words WORDS = Words.of("window");

    private static final long serialVersionUID = 1L;

    ToolBar(CommandBook book, Desk desk) {
        super(new MigLayout("insets 1 6 1 8, fillx, gapx 2, hidemode 3", "[grow,fill][]", "[center]"));
        JPanel groups = new JPanel();
        WrapLayout.on(groups, 2);
        groups.add(group(icon(book.get("open-file")), icon(book.get("save"))));
        groups.add(further(icon(book.get("undo")), icon(book.get("redo"))));
        StateChooser states = new StateChooser(desk);
        JPanel state = further(label(WORDS.get("tool-bar.state"), states));
        state.add(states, "w 190::240, gapright 6");
        groups.add(state);
        NumberChooser numbers = new NumberChooser(desk);
        JPanel shown = further(label(WORDS.get("tool-bar.numbers"), numbers));
        shown.add(numbers, "gapright 4");
        shown.add(toggle(book.get("show-heat")));
        groups.add(shown);
        groups.add(further(toggle(book.get("show-wires"))));
        groups.add(further(
                icon(book.get("zoom-out")),
                icon(book.get("zoom-in")),
                icon(book.get("fit-layout")),
                icon(book.get("show-selection"))));
        add(groups, "wmin 0");
        JPanel last = group(icon(book.get("look")));
        JButton pack = CommandButton.of(book.get("export-pack"));
        pack.setHideActionText(false);
        pack.setIcon(Icons.onAccent("pack"));
        MainButton.style(pack);
        name(pack, book.get("export-pack"));
        last.add(pack, "gapleft 6");
        add(last, "aligny top, gaptop 2");
    }

    /** Tools that stay beside one another when the row is too narrow for all and goes on below. */
    private static JPanel group(JComponent... tools) {
        JPanel group = new JPanel(new MigLayout("insets 2, gapx 2, hidemode 3", "", "[center]"));
        List.of(tools).forEach(group::add);
        return group;
    }

    /** A group with a line before it. */
    private static JPanel further(JComponent... tools) {
        JPanel group = group();
        group.add(new JSeparator(SwingConstants.VERTICAL), "h 20!, gapleft 6, gapright 6");
        List.of(tools).forEach(tool -> group.add(tool, tool instanceof JLabel ? "gapright 6" : ""));
        return group;
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
        String about = String.valueOf(command.getValue(Action.SHORT_DESCRIPTION));
        String name = command.name().replace("…", "");
        button.getAccessibleContext().setAccessibleName(name);
        button.setToolTipText(about.startsWith(name) ? about + keys : name + ": " + about + keys);
    }
}
