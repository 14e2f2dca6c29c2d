package org.ohmloom.workbench.command;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import javax.swing.Action;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.TextChanges;
import org.ohmloom.workbench.words.Words;

/** Finds a command by a few letters and runs it. */
public final class CommandSearch {
    private static final Words WORDS = Words.of("commands");

    private final List<Command> all;
    private final DefaultListModel<Command> found = new DefaultListModel<>();
    private final JList<Command> list = new JList<>(found);
    private final JTextField field = new JTextField(36);
    private final JDialog dialog;

    private CommandSearch(Component parent, CommandBook book) {
        this.all = book.all();
        this.dialog = new JDialog(
                SwingUtilities.getWindowAncestor(parent) == null && parent instanceof Window window
                        ? window
                        : SwingUtilities.getWindowAncestor(parent),
                WORDS.get("command-search.find-a-command"),
                Dialog.ModalityType.APPLICATION_MODAL);
        build();
    }

    public static void show(Component parent, CommandBook book) {
        CommandSearch search = new CommandSearch(parent, book);
        search.dialog.pack();
        search.dialog.setLocationRelativeTo(parent);
        search.dialog.setVisible(true);
    }

    /** The commands whose name or explanation holds all the words, those ready now first. */
    public static List<Command> matches(List<Command> all, String words) {
        List<String> wanted = List.of(words.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        return all.stream()
                .filter(command -> {
                    String text = (command.listed() + " " + command.getValue(Action.SHORT_DESCRIPTION))
                            .toLowerCase(Locale.ROOT);
                    return wanted.stream().allMatch(text::contains);
                })
                .sorted((one, other) -> Boolean.compare(other.isEnabled(), one.isEnabled()))
                .toList();
    }

    private void build() {
        HelpPage.name(dialog.getRootPane(), "dialogs/find-command");
        field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, WORDS.get("command-search.what-to-do"));
        field.getAccessibleContext().setAccessibleName(WORDS.get("command-search.words-of-the-command"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setVisibleRowCount(12);
        list.getAccessibleContext().setAccessibleName(WORDS.get("command-search.commands-found"));
        list.setCellRenderer(new CommandRenderer());
        TextChanges.listen(field, this::fill);
        field.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                int by = event.getKeyCode() == KeyEvent.VK_DOWN ? 1 : event.getKeyCode() == KeyEvent.VK_UP ? -1 : 0;
                if (by != 0 && !found.isEmpty()) {
                    int next = Math.floorMod(list.getSelectedIndex() + by, found.size());
                    list.setSelectedIndex(next);
                    list.ensureIndexIsVisible(next);
                    event.consume();
                }
            }
        });
        field.addActionListener(event -> run());
        Keys.bind(list, JComponent.WHEN_FOCUSED, Keys.plain(KeyEvent.VK_ENTER), "run", this::run);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                run();
            }
        });
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> dialog.dispose(), Keys.plain(KeyEvent.VK_ESCAPE), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.setLayout(new MigLayout("insets 10, fill, wrap 1"));
        dialog.add(field, "growx");
        JScrollPane scroll = new JScrollPane(list);
        FocusFrame.around(scroll, list);
        dialog.add(scroll, "grow, push, w 560!");
        fill();
    }

    private void fill() {
        found.clear();
        found.addAll(matches(all, field.getText()));
        list.setSelectedIndex(found.isEmpty() ? -1 : 0);
    }

    private void run() {
        Command chosen = list.getSelectedValue();
        if (chosen != null && chosen.isEnabled()) {
            dialog.dispose();
            SwingUtilities.invokeLater(() -> chosen.actionPerformed(new ActionEvent(dialog, 0, chosen.id())));
        }
    }
}
