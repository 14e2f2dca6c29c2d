package org.ohmloom.workbench.findings;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.review.Finding;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.widget.CellPanel;
import org.ohmloom.workbench.widget.SeverityIcon;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** Paints a finding: its sign, its sentence in as many lines as it needs, below it subjects and source. */
final class FindingRenderer implements ListCellRenderer<FindingsModel.Row> {
    private static final Words WORDS = Words.of("findings");

    private final JPanel card = new CellPanel(new MigLayout("insets 7 10 7 10, gap 0, wrap 2", "[]8[]")) {
        private static final long serialVersionUID = 1L;

        @Override
        protected void paintComponent(Graphics g) {
            super.paintComponent(g);
            g.setColor(Tone.colour("Table.gridColor"));
            g.fillRect(0, getHeight() - 1, getWidth(), 1);
        }
    };
    private final JPanel headingPane = new CellPanel(new MigLayout("insets 6 10 5 10, fillx"));
    private final JLabel heading = new JLabel();
    private final JLabel sign = new JLabel();
    private final JTextArea message = text();
    private final JTextArea source = text();
    private final Supplier<ShownUnits> units;

    /**
     * A renderer.
     *
     * @param units the units in which sentences are read, asked for each time
     */
    FindingRenderer(Supplier<ShownUnits> units) {
        this.units = units;
        headingPane.add(heading);
        heading.putClientProperty(FlatClientProperties.STYLE_CLASS, "h4");
        card.add(sign, "aligny top, gaptop 1");
        card.add(message, "wmin 50");
        card.add(source, "skip 1, wmin 50, gaptop 3");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends FindingsModel.Row> list,
            FindingsModel.Row row,
            int index,
            boolean selected,
            boolean focus) {
        if (row.isHeading()) {
            heading.setText(row.title() + "  " + row.count());
            heading.setForeground(SeverityIcon.tone(row.severity()).colour());
            headingPane.setBackground(Tone.colour("TableHeader.background"));
            return headingPane;
        }
        Finding finding = row.finding().orElseThrow();
        sign.setIcon(new SeverityIcon(row.severity()));
        String sentence = finding.message(units.get(), Words.language());
        message.setText(sentence);
        source.setText((row.again() ? again() : "") + line(finding));
        message.setFont(list.getFont().deriveFont(row.again() ? Font.ITALIC : Font.PLAIN));
        Color fore = selected ? list.getSelectionForeground() : list.getForeground();
        card.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        message.setForeground(row.again() && !selected ? Tone.SOFT.colour() : fore);
        source.setForeground(selected ? fore : Tone.SOFT.colour());
        card.getAccessibleContext()
                .setAccessibleName(finding.severity() + ": " + sentence
                        + (row.again() ? WORDS.get("finding-renderer.being-worked-out-again") : ""));
        fit(list.getWidth());
        return card;
    }

    /** Gives the texts the width they will have, so that they know their height. */
    private void fit(int width) {
        int inner = Math.max(UIScale.scale(80), width - UIScale.scale(20 + 14 + 8 + 4));
        for (JTextArea area : new JTextArea[] {message, source}) {
            area.setSize(new Dimension(inner, Short.MAX_VALUE));
            area.setPreferredSize(null);
            area.setPreferredSize(new Dimension(inner, area.getPreferredSize().height));
        }
    }

    private String line(Finding finding) {
        String subjects = String.join(", ", finding.subjects());
        String fix = finding.fix().isPresent()
                ? WORDS.get(
                        "finding-renderer.fix",
                        units.get().text(Words.said(finding.fix().get().label())))
                : "";
        String accepted = finding.isOpen() ? "" : WORDS.get("finding-renderer.accepted");
        return subjects + (subjects.isEmpty() ? "" : "  ·  ") + Words.said(finding.citation()) + fix + accepted;
    }

    private static JTextArea text() {
        JTextArea area = new JTextArea();
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setFocusable(false);
        area.setOpaque(false);
        area.setBorder(BorderFactory.createEmptyBorder());
        return area;
    }

    private static String again() {
        return WORDS.get("finding-renderer.being-worked-out-again-2");
    }
}
