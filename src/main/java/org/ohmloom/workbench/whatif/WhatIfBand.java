package org.ohmloom.workbench.whatif;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandButton;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.widget.EdgeLine;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Icons;
import org.ohmloom.workbench.words.Words;

/** Says above the views, in words, that a side copy is worked on, and what it changes so far. */
public final class WhatIfBand extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient WhatIf whatIf;
    private final transient Words words = Words.of("what-if");
    private final JLabel title = new JLabel();
    private final JLabel effect = new JLabel();

    /**
     * A band.
     *
     * @param whatIf   listens at the desk already
     * @param commands show the view, keep, drop
     */
    public WhatIfBand(Desk desk, WhatIf whatIf, List<Command> commands) {
        super(new MigLayout("insets 6 12 6 10, fillx, gapy 1", "[][grow,fill][][][]", "[][]"));
        this.whatIf = whatIf;
        setName("side-copy-band");
        HelpPage.name(this, "views/what-if");
        putClientProperty(FlatClientProperties.STYLE, "background: $Ohmloom.noteGround");
        setBorder(EdgeLine.around());
        Icons.find("side-copy").ifPresent(icon -> add(new JLabel(icon), "span 1 2, aligny top, gapright 4"));
        title.setName("side-copy-title");
        title.putClientProperty(FlatClientProperties.STYLE, "font: bold");
        add(title, "growx, wmin 0");
        for (Command command : commands) {
            JButton button = CommandButton.of(command);
            button.setName("band-" + command.id());
            button.setIcon(null);
            add(button, "span 1 2, aligny center");
        }
        effect.setName("side-copy-effect");
        add(effect, "newline, skip 1, growx, wmin 0");
        whatIf.listen(this::refresh);
        desk.listen(topic -> {
            if (topic != Topic.SELECTION && topic != Topic.MESSAGE) {
                refresh();
            }
        });
        refresh();
    }

    private void refresh() {
        boolean copy = whatIf.copy().isPresent();
        whatIf.copy().flatMap(Document::original).ifPresent(original -> {
            boolean moved = whatIf.copy().filter(open -> !open.canBeKept()).isPresent();
            title.setText(words.get(moved ? "band.moved" : "band", original.name()));
            title.setToolTipText(title.getText());
            effect.setText(WhatIfText.of(whatIf, words));
            effect.setToolTipText(effect.getText());
        });
        if (copy != isVisible()) {
            setVisible(copy);
            revalidate();
        }
    }
}
