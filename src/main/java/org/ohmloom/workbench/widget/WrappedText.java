package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/** A text that takes as many lines as its width asks for; it can be marked and copied with the mouse. */
public final class WrappedText extends JTextArea {

    private static final long serialVersionUID = 1L;

    private WrappedText(String text) {
        // A caret that follows the text would scroll the pane around it.
        if (getCaret() instanceof DefaultCaret caret) {
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
        setText(text);
        setEditable(false);
        setFocusable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setBorder(null);
        setMargin(new Insets(0, 0, 0, 0));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                // The height follows the width, which is known only now.
                revalidate();
            }
        });
    }

    /** It takes nothing that is dropped, so what lies behind it may. */
    @Override
    public void updateUI() {
        super.updateUI();
        setDropTarget(null);
    }

    /**
     * A text.
     *
     * @param key    name of its colour
     * @param points how much larger or smaller than the usual font
     */
    public static WrappedText of(String text, String key, int points) {
        WrappedText area = new WrappedText(text);
        String font = points == 0 ? "" : "; font: " + (points > 0 ? "+" : "") + points;
        area.putClientProperty(FlatClientProperties.STYLE, "foreground: $" + key + "; margin: 0,0,0,0" + font);
        area.getAccessibleContext().setAccessibleName(text);
        return area;
    }
}
