package org.ohmloom.workbench.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.table.DefaultTableModel;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.review.Cautions;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.ReadRows;
import org.ohmloom.workbench.words.CitedPages;

/** Dialogs that show a text or a table to read. */
final class TextDialogs {

    private static final String TITLE = "Ohmloom";

    private TextDialogs() {}

    static void cautions(Component parent) {
        String text = Cautions.everything().stream().collect(Collectors.joining("\n\n"));
        JOptionPane.showMessageDialog(
                parent,
                HelpPage.name(DialogText.of("Before you rely on it", text, 70), "dialogs/cautions"),
                TITLE,
                JOptionPane.WARNING_MESSAGE);
    }

    static void about(Component parent) {
        String version = TextDialogs.class.getPackage().getImplementationVersion();
        String text = "Version " + (version == null ? "under development" : version) + ", Java "
                + Runtime.version().feature() + ".\n\n"
                + "Apache License, Version 2.0. The licences of the libraries in it are in META-INF/THIRD-PARTY.txt of"
                + " the program file; ohmloom tables lists every published table with its source.";
        JOptionPane.showMessageDialog(
                parent, DialogText.of("Ohmloom", text, 60), TITLE, JOptionPane.INFORMATION_MESSAGE);
    }

    static void log(Component parent, Desk desk) {
        String text = desk.analysis().map(Analysis::log).map(log -> log.text()).orElse("No calculation yet.");
        JTextArea area = new JTextArea(text);
        area.setEditable(false);
        area.setFont(area.getFont().deriveFont(area.getFont().getSize2D()));
        area.setCaretPosition(0);
        area.getAccessibleContext().setAccessibleName("Calculation log");
        HelpPage.ask(area, () -> CitedPages.at(area).or(() -> Optional.of("dialogs/calculation-log")));
        show(parent, "Calculation log", area, 860, 560);
    }

    static void keys(Component parent, CommandBook book) {
        DefaultTableModel model = new ReadRows(List.of("Command", "Keys", "What it does"));
        book.all()
                .forEach(command -> model.addRow(new Object[] {
                    command.name(), command.keys().map(Keys::text).orElse(""), command.about()
                }));
        model.addRow(
                new Object[] {"On the layout", "Arrows", "Nudge what is selected, otherwise pan; with Shift farther"});
        model.addRow(new Object[] {"On the layout", "Ctrl+A", "Select everything"});
        model.addRow(new Object[] {"On the layout", "Ctrl+C, Ctrl+X, Ctrl+V", "Copy, cut, paste what is selected"});
        model.addRow(new Object[] {"On the layout", "Ctrl+D", "Duplicate what is selected"});
        model.addRow(new Object[] {"On the layout", "Delete", "Take out what is selected"});
        model.addRow(new Object[] {"On the layout", "Enter", "Use the tool where its cross is; the arrows move it"});
        model.addRow(new Object[] {"On the layout", "Shift+F10, right button", "Show the menu of what is selected"});
        model.addRow(new Object[] {
            "On the layout", "A letter alone", "Take the tool that has this letter with Ctrl and Shift"
        });
        model.addRow(
                new Object[] {"On the layout", "Middle or right button, or Space", "Pan by dragging, whatever the tool"
                });
        model.addRow(new Object[] {"On the layout", "+ and -", "Zoom"});
        model.addRow(new Object[] {"On the layout", "Page Down, Page Up", "Select the next or previous thing"});
        model.addRow(new Object[] {"On the layout", "Esc", "Give up what is under way, otherwise select nothing"});
        model.addRow(new Object[] {"In a list", "Enter, or start typing", "Edit the cell"});
        model.addRow(new Object[] {"In a list", "Ctrl+Enter", "Put what was typed into all selected rows"});
        model.addRow(new Object[] {"In a list", "Ctrl+C, Ctrl+V", "Copy rows; paste a block of cells"});
        model.addRow(new Object[] {"In the print window", "Page Down, Page Up", "Turn to the next or previous sheet"});
        JTable table = new JTable(model);
        table.getColumnModel().getColumn(0).setPreferredWidth(UIScale.scale(190));
        table.getColumnModel().getColumn(1).setPreferredWidth(UIScale.scale(150));
        table.getColumnModel().getColumn(2).setPreferredWidth(UIScale.scale(460));
        table.getAccessibleContext().setAccessibleName("Commands and their keys");
        HelpPage.name(table, "dialogs/keys");
        show(parent, "Keys", table, 820, 560);
    }

    private static void show(Component parent, String title, Component content, int width, int height) {
        JScrollPane scroll = new JScrollPane(content);
        scroll.setPreferredSize(new Dimension(UIScale.scale(width), UIScale.scale(height)));
        JOptionPane.showMessageDialog(parent, scroll, title, JOptionPane.PLAIN_MESSAGE);
    }
}
