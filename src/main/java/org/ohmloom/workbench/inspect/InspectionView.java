package org.ohmloom.workbench.inspect;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Font;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.workbench.widget.FocusEdge;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.widget.WrappedLabel;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.CitedPages;
import org.ohmloom.workbench.words.Words;

/** Builds the components that show an inspection. */
final class InspectionView {
    private static final Words WORDS = Words.of("inspector");

    /** A text this short stands in the first column of words unbroken. */
    private static final int LETTERS_OF_A_NAME = 18;

    private InspectionView() {}

    /** Puts an inspection on a panel; numbers that are not up to date are marked. */
    static void fill(JPanel panel, Inspection shown, boolean current, ScenePainter painter) {
        JLabel title = new WrappedLabel(shown.title());
        title.putClientProperty(FlatClientProperties.STYLE_CLASS, "h2");
        panel.add(title, "growx, wmin 0");
        if (!shown.subtitle().isEmpty()) {
            panel.add(WrappedText.of(shown.subtitle(), "Ohmloom.soft", 0), "growx, wmin 0, gaptop 1");
        }
        if (!current) {
            panel.add(
                    WrappedText.of(WORDS.get("inspection.numbers-are-of-an"), "Ohmloom.warning", 0),
                    "gaptop 6, wmin 0");
        }
        for (Inspection.Section section : shown.sections()) {
            add(panel, section, painter);
        }
    }

    private static void add(JPanel panel, Inspection.Section section, ScenePainter painter) {
        if (section instanceof Inspection.Grid grid && grid.rows().isEmpty()) {
            return;
        }
        if (!section.title().isEmpty()) {
            JLabel heading = new WrappedLabel(section.title());
            heading.putClientProperty(FlatClientProperties.STYLE, "font: semibold");
            panel.add(heading, "growx, gaptop 14, gapbottom 4, wmin 0");
        }
        if (section instanceof Inspection.Facts facts) {
            // facts without a heading of their own belong to what stands above
            panel.add(facts(facts), facts.title().isEmpty() ? "growx, wmin 0, gaptop 6" : "growx, wmin 0");
        } else if (section instanceof Inspection.Grid grid) {
            panel.add(grid(grid), "growx, wmin 0");
        } else if (section instanceof Inspection.Reasons reasons) {
            reasons.reasons().forEach(reason -> panel.add(reason(reason), "growx, wmin 0, gapbottom 6"));
        } else if (section instanceof Inspection.Drawing drawing) {
            panel.add(new InspectedPicture(drawing, painter), "growx, wmin 0");
        } else if (section instanceof Inspection.Prose prose) {
            panel.add(prose(prose), "growx, wmin 0");
        }
    }

    private static JComponent facts(Inspection.Facts facts) {
        JPanel pane = clear(new MigLayout("insets 0, fillx, gapy 3, gapx 12, wrap 2", "[120!][grow,fill]"));
        for (Inspection.Fact fact : facts.facts()) {
            JComponent label = WrappedText.of(fact.label(), "Ohmloom.soft", 0);
            JComponent value = WrappedText.of(fact.value(), key(fact.tone()), 0);
            value.getAccessibleContext().setAccessibleName(fact.label() + ": " + fact.value());
            if (!fact.about().isEmpty()) {
                label.setToolTipText(fact.about());
                value.setToolTipText(fact.about());
                value.getAccessibleContext().setAccessibleDescription(fact.about());
            }
            pane.add(label, "aligny top, growx, wmin 0");
            pane.add(value, "growx, wmin 0");
        }
        return pane;
    }

    private static JComponent grid(Inspection.Grid grid) {
        int count = grid.heads().size();
        boolean numbers = grid.rows().stream()
                .allMatch(row -> row.stream().skip(1).allMatch(cell -> cell.matches("[-<>]?[0-9.<-]*|unknown")));
        JPanel pane = clear(new MigLayout(
                "insets 0, fillx, gapy 3, gapx 10, wrap " + count,
                numbers ? "[grow,fill]" + "[right]".repeat(count - 1) : "[]" + "[grow,fill]".repeat(count - 1)));
        for (String head : grid.heads()) {
            JLabel label = new JLabel(
                    head, numbers && head != grid.heads().get(0) ? SwingConstants.TRAILING : SwingConstants.LEADING);
            label.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft; font: -1");
            pane.add(label, numbers ? "" : "wmin 0");
        }
        for (List<String> row : grid.rows()) {
            for (int k = 0; k < count; k++) {
                boolean number = numbers && k > 0;
                boolean name = !numbers && k == 0 && row.get(k).length() <= LETTERS_OF_A_NAME;
                JComponent cell = number || name
                        ? new JLabel(row.get(k), number ? SwingConstants.TRAILING : SwingConstants.LEADING)
                        : WrappedText.of(row.get(k), "Label.foreground", 0);
                pane.add(cell, number || name ? "aligny top" : "aligny top, growx, wmin " + (numbers ? 60 : 24));
            }
        }
        return pane;
    }

    private static JComponent reason(Inspection.Reason reason) {
        JPanel pane = new JPanel(new MigLayout("insets 7 9 8 9, fillx, gapy 2, wrap 1", "[grow,fill]"));
        FocusEdge.on(pane, reason.title() + ": " + reason.text() + "; " + reason.source());
        HelpPage.ask(pane, () -> CitedPages.in(reason.source()).or(() -> CitedPages.in(reason.text())));
        pane.putClientProperty(
                FlatClientProperties.STYLE,
                "arc: 8; background: $" + (reason.governs() ? "Ohmloom.noteGround" : "TableHeader.background"));
        JLabel title = new WrappedLabel(reason.title() + (reason.governs() ? WORDS.get("inspection.governs") : ""));
        title.setFont(title.getFont().deriveFont(reason.governs() ? Font.BOLD : Font.PLAIN));
        pane.add(title, "growx, wmin 0");
        pane.add(WrappedText.of(reason.text(), "Label.foreground", 0), "growx, wmin 0");
        pane.add(WrappedText.of(reason.source(), "Ohmloom.soft", -1), "growx, wmin 0");
        return pane;
    }

    private static JComponent prose(Inspection.Prose prose) {
        String ground =
                switch (prose.tone()) {
                    case ERROR -> "Ohmloom.errorGround";
                    case WARNING -> "Ohmloom.warningGround";
                    default -> "Ohmloom.noteGround";
                };
        JPanel pane = new JPanel(new MigLayout("insets 7 9 8 9, fillx", "[grow,fill]"));
        pane.putClientProperty(FlatClientProperties.STYLE, "arc: 8; background: $" + ground);
        pane.add(WrappedText.of(prose.text(), "Label.foreground", 0), "growx, wmin 0");
        return pane;
    }

    private static String key(Tone tone) {
        return switch (tone) {
            case PLAIN -> "Label.foreground";
            case SOFT -> "Ohmloom.soft";
            case GOOD -> "Ohmloom.good";
            case NOTE -> "Ohmloom.note";
            case WARNING -> "Ohmloom.warning";
            case ERROR -> "Ohmloom.error";
        };
    }

    private static JPanel clear(MigLayout layout) {
        JPanel pane = new JPanel(layout);
        pane.setOpaque(false);
        return pane;
    }
}
