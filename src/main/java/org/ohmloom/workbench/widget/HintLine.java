package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.FlatClientProperties;
import org.ohmloom.review.Severity;

/** A line below a list that says what can be done there or, with the sign of an error before it, what is wrong. */
public final class HintLine extends WrappedLabel {

    private static final long serialVersionUID = 1L;

    private final String hint;

    /**
     * A line.
     *
     * @param hint what it says while nothing is wrong
     */
    public HintLine(String name, String hint) {
        super(hint);
        this.hint = hint;
        setName(name);
        say("");
    }

    /** Says something that is not wrong; the hint again without a text. */
    public void tell(String text) {
        say("");
        if (!text.isEmpty()) {
            super.say(text);
            setToolTipText(text);
            putClientProperty(FlatClientProperties.STYLE, null);
        }
    }

    /** Says what is wrong, or the hint again when nothing is. */
    @Override
    public void say(String problem) {
        boolean wrong = !problem.isEmpty();
        setIcon(wrong ? new SeverityIcon(Severity.ERROR) : null);
        super.say(wrong ? problem : hint);
        setToolTipText(wrong ? problem : hint);
        putClientProperty(FlatClientProperties.STYLE, "foreground: $" + (wrong ? "Ohmloom.error" : "Ohmloom.soft"));
    }
}
