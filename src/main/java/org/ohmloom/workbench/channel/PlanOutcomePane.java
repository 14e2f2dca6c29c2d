package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Insets;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.review.Severity;
import org.ohmloom.signal.pins.PinPlan;
import org.ohmloom.workbench.widget.EdgeLine;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.SeverityIcon;
import org.ohmloom.workbench.words.Words;

/** What came of planning: in one line, and why below it. */
final class PlanOutcomePane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient PlanWords plans;
    private final JLabel summary = new JLabel(" ");
    private final JTextArea reasons = new JTextArea();

    PlanOutcomePane(Words words) {
        super(new MigLayout("insets 6 10 0 0, fill, wrap 1, gapy 4"));
        this.words = words;
        this.plans = new PlanWords(words);
        setBorder(EdgeLine.above());
        summary.setName("channels-summary");
        summary.putClientProperty(FlatClientProperties.STYLE_CLASS, "h4");
        reasons.setName("channels-reasons");
        reasons.setEditable(false);
        reasons.setLineWrap(true);
        reasons.setWrapStyleWord(true);
        reasons.setOpaque(false);
        reasons.setMargin(new Insets(0, 0, 0, 0));
        reasons.getAccessibleContext().setAccessibleName(words.get("reasons"));
        JScrollPane scroll = new JScrollPane(reasons);
        FocusFrame.around(scroll, reasons);
        add(summary, "growx, wmin 0");
        add(scroll, "grow, push");
        say("");
    }

    /** Says something instead of a plan; nothing says how to begin. */
    void say(String text) {
        summary.setIcon(null);
        summary.setText(text.isEmpty() ? words.get("nothing-planned") : text);
        summary.setToolTipText(summary.getText());
        write(text.isEmpty() ? List.of(words.get("nothing-planned.about")) : List.of());
    }

    /** Shows what came of planning. */
    void show(PinPlan plan) {
        summary.setIcon(plan instanceof PinPlan.Found ? null : new SeverityIcon(Severity.ERROR));
        summary.setText(plans.summary(plan));
        summary.setToolTipText(summary.getText());
        write(plans.reasons(plan));
    }

    private void write(List<String> lines) {
        reasons.setText(String.join("\n", lines));
        reasons.setCaretPosition(0);
    }

    /** What it says now, in one line. */
    String summaryText() {
        return summary.getText();
    }

    /** Why, below it. */
    String reasonsText() {
        return reasons.getText();
    }
}
