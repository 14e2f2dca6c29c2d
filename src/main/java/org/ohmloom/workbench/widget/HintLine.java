package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JLabel;
import org.ohmloom.review.Severity;

/** A line below a list that says what can be done there or, with the sign of an error before it, what is wrong. */
public final class HintLine extends JLabel {

    private static final long serialVersionUID = 1L;

    private final String hint;

    /**
     * A line.
     *
     * @param hint what it says while nothing is wrong
     */
    public HintLine(String name, String hint) {
        this.hint = hint;
        setName(name);
        say("");
    }

    /** Says something that is not wrong; the hint again without a text. */
    public void tell(String text) {
        say("");
        if (!text.isEmpty()) {
            setText(text);
            setToolTipText(text);
            putClientProperty(FlatClientProperties.STYLE, null);
        }
    }

    /** Says what is wrong, or the hint again when nothing is. */
    public void say(String problem) {
        boolean wrong = !problem.isEmpty();
        setText(wrong ? problem : hint);
        setToolTipText(getText());
        setIcon(wrong ? new SeverityIcon(Severity.ERROR) : null);
        putClientProperty(FlatClientProperties.STYLE, "foreground: $" + (wrong ? "Ohmloom.error" : "Ohmloom.soft"));
    }
}
