package org.ohmloom.workbench.study;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.model.ElementId;
import org.ohmloom.review.Severity;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.sheet.SheetPane;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.widget.FocusEdge;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.SeverityIcon;
import org.ohmloom.workbench.widget.SharedSplit;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.CitedPages;
import org.ohmloom.workbench.words.Words;

/**
 * One study in its pane: its list, below it how the numbers of the chosen row came about, beside it the chart of that
 * row; or what to enter where there is nothing to show yet.
 *
 * @param <R> type of its rows
 */
public final class StudyPane<R> extends StudyTab {
    private static final Words WORDS = Words.of("studies");

    private static final long serialVersionUID = 1L;

    private final transient Study<R> study;
    private final transient Desk desk;
    private final SheetPane<R> list;
    private final ChartCanvas chart;
    private final JLabel again = new JLabel();
    private final JTextArea steps = new JTextArea();
    private final JPanel nothing = new JPanel(new MigLayout("insets 24, fill, wrap 1", "push[]push", "push[][]push"));
    private transient List<R> rows = List.of();
    private boolean choosing;

    public StudyPane(Study<R> study, Desk desk, ScenePainter painter, Samples samples) {
        super(new CardLayout(), TabName.of(study));
        this.study = study;
        this.desk = desk;
        this.list = new SheetPane<>(study, desk, samples, desk::say, this::choose);
        this.chart = new ChartCanvas(
                WORDS.get("study.chart-of", study.title()), painter, ids -> desk.select(Selection.of(ids)));
        list.table().setName("study-" + study.key());
        chart.setName("chart-" + study.key());
        list.table().getSelectionModel().addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting()) {
                showChosen();
            }
        });
        nothing.putClientProperty(FlatClientProperties.STYLE, "background: $Ohmloom.pane");
        FocusEdge.on(nothing, study.title());
        add(content(), "content");
        add(nothing, "nothing");
    }

    Study<R> study() {
        return study;
    }

    ChartCanvas chart() {
        return chart;
    }

    /** The text that says how the numbers came about. */
    String stepsText() {
        return steps.getText();
    }

    @Override
    public JComponent front() {
        return rows.isEmpty() ? nothing : list.table();
    }

    SheetTable table() {
        return list.table();
    }

    private JComponent content() {
        steps.setEditable(false);
        steps.setLineWrap(true);
        steps.setWrapStyleWord(true);
        steps.setName("steps-" + study.key());
        HelpPage.ask(steps, () -> CitedPages.at(steps));
        steps.setBorder(BorderFactory.createEmptyBorder(6, 10, 8, 10));
        steps.getAccessibleContext().setAccessibleName(WORDS.get("study.how-these-numbers-of", study.title()));
        steps.putClientProperty(FlatClientProperties.STYLE, "background: $Ohmloom.pane");
        JScrollPane scroll = new JScrollPane(steps);
        FocusFrame.around(scroll, steps, "Ohmloom.line");
        JSplitPane left = new SharedSplit("reasons", JSplitPane.VERTICAL_SPLIT, list, scroll, 0.62);
        JScrollPane pictures = new JScrollPane(chart);
        pictures.setBorder(BorderFactory.createEmptyBorder());
        left.setMinimumSize(new Dimension(160, 60));
        pictures.setMinimumSize(new Dimension(160, 60));
        JPanel content = new JPanel(new MigLayout("insets 0, fill, gap 0, wrap 1, hidemode 3"));
        again.setName("again-" + study.key());
        again.setIcon(new SeverityIcon(Severity.NOTE));
        again.setBorder(BorderFactory.createEmptyBorder(4, 10, 4, 10));
        again.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        content.add(again, "growx, wmin 0");
        content.add(
                new SharedSplit("chart", JSplitPane.HORIZONTAL_SPLIT, left, pictures, study.listShare()), "grow, push");
        return content;
    }

    private void choose(List<String> ids) {
        choosing = true;
        try {
            List<String> path = study.reading(desk).stream()
                    .flatMap(readout -> chosen().stream().flatMap(row -> study.path(readout, row).stream()))
                    .map(ElementId::value)
                    .toList();
            desk.select(new Selection(ids, path, Optional.empty(), false));
        } finally {
            choosing = false;
        }
    }

    @Override
    public void showRows() {
        study.prepare(desk);
        boolean held = nothing.isFocusOwner() || list.table().isFocusOwner();
        Optional<Readout> readout = study.reading(desk);
        rows = readout.map(study::rows).orElse(List.of());
        list.show(readout);
        nothing.removeAll();
        if (rows.isEmpty()) {
            String words = studying()
                    ? WORDS.get("study.being-worked-out")
                    : readout.map(study::nothing).orElse("");
            nothing.getAccessibleContext().setAccessibleName(study.title() + ": " + words);
            nothing.add(PaneTitle.of(study.title()));
            nothing.add(WrappedText.of(words, "Ohmloom.soft", 0), "w 200:460:520, growx");
        }
        ((CardLayout) getLayout()).show(this, rows.isEmpty() ? "nothing" : "content");
        if (held && !front().isFocusOwner()) {
            front().requestFocusInWindow();
        }
        again.setVisible(!rows.isEmpty() && study.isOld(desk));
        again.setText(
                desk.status().isBusy()
                        ? WORDS.get("study.being-worked-out-again")
                        : WORDS.get("study.outdated-these-are-the"));
        showChosen();
    }

    /** Whether it has no numbers yet because they are still being worked out. */
    private boolean studying() {
        return study.isOld(desk) && desk.status().isBusy();
    }

    /** Marks the row of what is selected elsewhere, or the one that tells about it. */
    @Override
    public void showSelection() {
        if (choosing) {
            mark();
            return;
        }
        List<String> ids = desk.selection().ids();
        if (ids.stream().anyMatch(list::has)) {
            list.select(ids);
        } else {
            Optional<Readout> readout = study.reading(desk);
            List<String> leads = ids.stream()
                    .flatMap(id -> readout.flatMap(numbers -> study.lead(numbers, id)).stream())
                    .map(ElementId::value)
                    .toList();
            if (leads.stream().anyMatch(list::has)) {
                list.select(leads);
            }
        }
        showChosen();
    }

    private void mark() {
        chart.mark(study.marksSelection() ? desk.selection() : Selection.NONE);
    }

    private Optional<R> chosen() {
        int row = list.table().getSelectedRow();
        int index = row < 0 ? 0 : list.table().convertRowIndexToModel(row);
        return index < rows.size() ? Optional.of(rows.get(index)) : Optional.empty();
    }

    private void showChosen() {
        Optional<Readout> readout = study.reading(desk);
        Optional<R> row = chosen();
        mark();
        chart.show(readout.flatMap(numbers -> row.flatMap(each ->
                study.picture(numbers, each, desk.selection().lead()).map(picture -> picture.in(desk.units())))));
        String text = readout.flatMap(numbers -> row.map(each -> String.join("\n", study.steps(numbers, each))))
                .map(desk.units()::text)
                .orElse("");
        if (!text.equals(steps.getText())) {
            steps.setText(text);
            steps.setCaretPosition(0);
        }
    }
}
