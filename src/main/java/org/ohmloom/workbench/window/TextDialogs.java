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
import org.ohmloom.workbench.widget.ColumnHeads;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.ReadRows;
import org.ohmloom.workbench.words.CitedPages;
import org.ohmloom.workbench.words.Words;

/** Dialogs that show a text or a table to read. */
final class TextDialogs {
    private static final Words WORDS = Words.of("window");

    private static final String TITLE = "Ohmloom";

    private TextDialogs() {}

    static void cautions(Component parent) {
        String text = Cautions.everything().stream().map(Words::said).collect(Collectors.joining("\n\n"));
        JOptionPane.showMessageDialog(
                parent,
                HelpPage.name(
                        DialogText.of(WORDS.get("text-dialogs.before-you-rely-on"), text, 70), "dialogs/cautions"),
                TITLE,
                JOptionPane.WARNING_MESSAGE);
    }

    static void about(Component parent) {
        String version = TextDialogs.class.getPackage().getImplementationVersion();
        String text = WORDS.get(
                "text-dialogs.version-java-apache-license",
                version == null ? WORDS.get("text-dialogs.under-development") : version,
                Runtime.version().feature());
        JOptionPane.showMessageDialog(
                parent, DialogText.of("Ohmloom", text, 60), TITLE, JOptionPane.INFORMATION_MESSAGE);
    }

    static void log(Component parent, Desk desk) {
        String text = desk.analysis()
                .map(Analysis::log)
                .map(log -> log.text())
                .orElse(WORDS.get("text-dialogs.no-calculation-yet"));
        JTextArea area = new JTextArea(text);
        area.setEditable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setFont(area.getFont().deriveFont(area.getFont().getSize2D()));
        area.setCaretPosition(0);
        area.getAccessibleContext().setAccessibleName(WORDS.get("text-dialogs.calculation-log"));
        HelpPage.ask(area, () -> CitedPages.at(area).or(() -> Optional.of("dialogs/calculation-log")));
        show(parent, WORDS.get("text-dialogs.calculation-log"), area, 860, 560);
    }

    static void keys(Component parent, CommandBook book) {
        DefaultTableModel model = new ReadRows(List.of(
                WORDS.get("text-dialogs.command"),
                WORDS.get("text-dialogs.keys"),
                WORDS.get("text-dialogs.what-it-does")));
        book.all()
                .forEach(command -> model.addRow(new Object[] {
                    command.listed(), command.keys().map(Keys::text).orElse(""), command.about()
                }));
        rows(
                model,
                WORDS.get("text-dialogs.on-the-layout"),
                WORDS.get("text-dialogs.arrows"),
                WORDS.get("text-dialogs.nudge-what-is-selected"),
                WORDS.get("text-dialogs.ctrl-a"),
                WORDS.get("text-dialogs.select-everything"),
                WORDS.get("text-dialogs.ctrl-c-ctrl-x"),
                WORDS.get("text-dialogs.copy-cut-paste-what"),
                WORDS.get("text-dialogs.ctrl-d"),
                WORDS.get("text-dialogs.duplicate-what-is-selected"),
                WORDS.get("text-dialogs.delete"),
                WORDS.get("text-dialogs.take-out-what-is"),
                WORDS.get("text-dialogs.enter"),
                WORDS.get("text-dialogs.use-the-tool-where"),
                WORDS.get("text-dialogs.shift-f10-right-button"),
                WORDS.get("text-dialogs.show-the-menu-of"),
                WORDS.get("text-dialogs.a-letter-alone"),
                WORDS.get("text-dialogs.take-the-tool-that"),
                WORDS.get("text-dialogs.middle-or-right-button"),
                WORDS.get("text-dialogs.pan-by-dragging-whatever"),
                WORDS.get("text-dialogs.and"),
                WORDS.get("text-dialogs.zoom"),
                WORDS.get("text-dialogs.page-down-page-up"),
                WORDS.get("text-dialogs.select-the-next-or"),
                WORDS.get("text-dialogs.esc"),
                WORDS.get("text-dialogs.give-up-what-is"));
        rows(
                model,
                WORDS.get("text-dialogs.in-a-list"),
                WORDS.get("text-dialogs.enter-or-start-typing"),
                WORDS.get("text-dialogs.edit-the-cell"),
                WORDS.get("text-dialogs.ctrl-enter"),
                WORDS.get("text-dialogs.put-what-was-typed"),
                WORDS.get("text-dialogs.ctrl-c-ctrl-v"),
                WORDS.get("text-dialogs.copy-rows-paste-a"),
                WORDS.get("text-dialogs.tab-shift-tab"),
                WORDS.get("text-dialogs.go-from-cell-to-cell"),
                WORDS.get("text-dialogs.ctrl-tab"),
                WORDS.get("text-dialogs.leave-the-list"));
        rows(
                model,
                WORDS.get("text-dialogs.in-a-view"),
                WORDS.get("text-dialogs.ctrl-page-down"),
                WORDS.get("text-dialogs.go-from-view-to-view"));
        rows(
                model,
                WORDS.get("text-dialogs.in-the-print-window"),
                WORDS.get("text-dialogs.page-down-page-up"),
                WORDS.get("text-dialogs.turn-to-the-next"));
        JTable table = new JTable(model);
        ColumnHeads.begin(table);
        table.getColumnModel().getColumn(0).setPreferredWidth(UIScale.scale(220));
        table.getColumnModel().getColumn(1).setPreferredWidth(UIScale.scale(150));
        table.getColumnModel().getColumn(2).setPreferredWidth(UIScale.scale(570));
        table.getAccessibleContext().setAccessibleName(WORDS.get("text-dialogs.commands-and-their-keys"));
        HelpPage.name(table, "dialogs/keys");
        show(parent, WORDS.get("text-dialogs.keys"), table, 960, 560);
    }

    /** Adds what keys do in one place: by turns the keys and what they do. */
    private static void rows(DefaultTableModel model, String where, String... keysAndTasks) {
        for (int k = 0; k < keysAndTasks.length; k += 2) {
            model.addRow(new Object[] {where, keysAndTasks[k], keysAndTasks[k + 1]});
        }
    }

    private static void show(Component parent, String title, Component content, int width, int height) {
        JScrollPane scroll = new JScrollPane(content);
        scroll.setPreferredSize(new Dimension(UIScale.scale(width), UIScale.scale(height)));
        JOptionPane.showMessageDialog(parent, scroll, title, JOptionPane.PLAIN_MESSAGE);
    }
}
