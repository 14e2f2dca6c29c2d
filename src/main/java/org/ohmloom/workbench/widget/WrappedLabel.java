package org.ohmloom.workbench.widget;

import java.awt.Dimension;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JLabel;
import javax.swing.plaf.basic.BasicHTML;
import javax.swing.text.View;

/** A label that takes as many lines as its width asks for, with its icon before them. */
public class WrappedLabel extends JLabel {

    private static final long serialVersionUID = 1L;

    private String whole;

    public WrappedLabel(String text) {
        super(text);
        whole = text;
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                wrap();
            }
        });
        addPropertyChangeListener("font", event -> wrap());
    }

    /** What it says, however it is wrapped. */
    public String said() {
        return whole;
    }

    /** Says something else. */
    public void say(String text) {
        whole = text;
        setText(text);
        getAccessibleContext().setAccessibleName(text.isBlank() ? null : text);
        wrap();
    }

    private void wrap() {
        int room = room();
        boolean fits = room <= 0 || getFontMetrics(getFont()).stringWidth(whole) <= room;
        String wanted = fits
                ? whole
                : "<html>" + whole.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;") + "</html>";
        if (!wanted.equals(getText())) {
            setText(wanted);
        }
        if (getPreferredSize().height != getHeight()) {
            revalidate();
        }
    }

    /** Width there is for the text, px. */
    private int room() {
        Insets insets = getInsets();
        int icon = getIcon() == null ? 0 : getIcon().getIconWidth() + getIconTextGap();
        return getWidth() - insets.left - insets.right - icon;
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension usual = super.getPreferredSize();
        if (getClientProperty(BasicHTML.propertyKey) instanceof View view && room() > 0 && !isPreferredSizeSet()) {
            view.setSize(room(), 0);
            Insets insets = getInsets();
            int height = (int) Math.ceil(view.getPreferredSpan(View.Y_AXIS)) + insets.top + insets.bottom;
            return new Dimension(Math.min(usual.width, getWidth()), height);
        }
        return usual;
    }
}
