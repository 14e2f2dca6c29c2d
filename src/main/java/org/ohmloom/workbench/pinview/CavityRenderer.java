package org.ohmloom.workbench.pinview;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import org.ohmloom.edit.CavityUse;
import org.ohmloom.edit.EndOfWire;
import org.ohmloom.model.WireColour;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** Paints a cavity: its name, its wires with a sample and the code of their colour, what it meets, and what clashes. */
final class CavityRenderer extends JComponent implements TableCellRenderer {

    private static final long serialVersionUID = 1L;
    private static final int PAD = 6;

    private final transient CavityModel model;
    private final transient Samples samples;
    private final transient Words words;
    private transient Optional<CavityUse> use = Optional.empty();
    private boolean chosen;
    private boolean taken;
    private transient Optional<String> takenUp = Optional.empty();

    CavityRenderer(CavityModel model, Samples samples, Words words) {
        this.model = model;
        this.samples = samples;
        this.words = words;
        setOpaque(true);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.LABEL;
                }
            };
        }
        return accessibleContext;
    }

    /** Marks the cavity whose wire is being carried. */
    void takeUp(Optional<String> cavity) {
        takenUp = cavity;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        use = model.use(row, column);
        chosen = selected;
        taken = use.isPresent() && takenUp.equals(use.map(each -> each.cavity().name()));
        setFont(table.getFont());
        getAccessibleContext().setAccessibleName(String.valueOf(value));
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setColor(Tone.colour("Panel.background"));
            g.fillRect(0, 0, getWidth(), getHeight());
            use.ifPresent(each -> paint(g, each));
        } finally {
            g.dispose();
        }
    }

    private void paint(Graphics2D g, CavityUse each) {
        boolean wrong = !each.clashes().isEmpty();
        int gap = UIScale.scale(3);
        int wide = getWidth() - 2 * gap;
        int high = getHeight() - 2 * gap;
        Color ground = each.ends().isEmpty() ? Tone.colour("Panel.background") : Tone.colour("Table.background");
        g.setColor(chosen ? Tone.colour("Table.selectionInactiveBackground") : ground);
        g.fillRoundRect(gap, gap, wide, high, gap * 2, gap * 2);
        Color edge = wrong
                ? Tone.ERROR.colour()
                : chosen ? Tone.colour("Component.focusColor") : Tone.colour("Component.borderColor");
        g.setColor(edge);
        int lines = wrong || chosen ? UIScale.scale(2) : 1;
        for (int k = 0; k < lines; k++) {
            g.drawRoundRect(gap + k, gap + k, wide - 1 - 2 * k, high - 1 - 2 * k, gap * 2, gap * 2);
        }
        if (taken) {
            g.drawLine(gap, gap, gap + wide, gap + high);
        }
        texts(g, each, chosen ? Tone.colour("Table.selectionInactiveForeground") : Tone.PLAIN.colour());
    }

    private void texts(Graphics2D g, CavityUse each, Color fore) {
        FontMetrics metrics = g.getFontMetrics(getFont());
        int pad = UIScale.scale(PAD + 3);
        int y = UIScale.scale(PAD) + metrics.getAscent();
        g.setFont(getFont().deriveFont(Font.BOLD));
        g.setColor(fore);
        g.drawString(each.cavity().name(), pad, y);
        String meets = each.cavity().terminal().orElse("");
        g.setFont(getFont());
        g.setColor(chosen ? fore : Tone.SOFT.colour());
        g.drawString(meets, getWidth() - pad - metrics.stringWidth(meets), y);
        if (!each.ends().isEmpty()) {
            y += metrics.getHeight();
            g.setColor(fore);
            String ids = each.ends().stream()
                    .map(end -> end.wire().value())
                    .distinct()
                    .collect(Collectors.joining(", "));
            g.drawString(fitted(ids, metrics, pad), pad, y);
            y += metrics.getHeight();
            colours(g, each, pad, y, metrics);
        }
        if (each.ends().isEmpty() && each.cavity().plug().isPresent()) {
            y += metrics.getHeight();
            g.setColor(chosen ? fore : Tone.SOFT.colour());
            g.drawString(words.get("plugged"), pad, y);
        }
        each.clashes().stream().min(Comparator.naturalOrder()).ifPresent(clash -> {
            g.setColor(Tone.ERROR.colour());
            g.drawString(
                    fitted(CavityModel.said(words, clash), metrics, pad),
                    pad,
                    getHeight() - UIScale.scale(PAD) - metrics.getDescent());
        });
    }

    private String fitted(String text, FontMetrics metrics, int left) {
        int room = getWidth() - left - UIScale.scale(PAD + 1);
        String fitted = text;
        while (fitted.length() > 1 && metrics.stringWidth(fitted) > room) {
            fitted = fitted.substring(0, fitted.length() - 2) + "…";
        }
        return fitted;
    }

    /** A sample and the code of the colour of each wire, side by side. */
    private void colours(Graphics2D g, CavityUse each, int left, int y, FontMetrics metrics) {
        int x = left;
        for (EndOfWire end : each.ends()) {
            Optional<WireColour> colour = model.wire(end).colour();
            if (colour.isPresent() && x < getWidth() - 2 * left) {
                Icon icon = samples.icon(Samples.swatch(colour.get()));
                icon.paintIcon(this, g, x, y - metrics.getAscent() + (metrics.getAscent() - icon.getIconHeight()) / 2);
                x += icon.getIconWidth() + UIScale.scale(2);
                String code = fitted(colour.get().text(), metrics, x);
                g.drawString(code, x, y);
                x += metrics.stringWidth(code) + UIScale.scale(6);
            }
        }
    }
}
