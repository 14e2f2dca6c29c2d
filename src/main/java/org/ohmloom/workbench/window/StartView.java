package org.ohmloom.workbench.window;

import com.formdev.flatlaf.FlatClientProperties;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.review.Cautions;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Examples;
import org.ohmloom.workbench.desk.Filing;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.widget.Icons;
import org.ohmloom.workbench.widget.MainButton;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** What a person sees before a harness is open: files opened last, examples, and the cautions. */
final class StartView extends JPanel {
    private static final Words WORDS = Words.of("window");

    private static final long serialVersionUID = 1L;

    private final transient CommandBook book;
    private final transient Filing filing;
    private final transient PreferenceStore preferences;
    private final JPanel recent = column("");

    StartView(CommandBook book, Filing filing, PreferenceStore preferences) {
        super(new MigLayout("insets 0, fill"));
        this.book = book;
        this.filing = filing;
        this.preferences = preferences;
        setName("start");
        JPanel page = new JPanel(new MigLayout(
                "insets 34 40 30 40, wrap 2, gapx 44, gapy 0", "[360::,fill]44[420::,fill]", "push[][][][]push"));
        JLabel name = new JLabel("Ohmloom");
        name.putClientProperty(FlatClientProperties.STYLE, "font: semibold +18");
        page.add(name, "span");
        page.add(soft(WORDS.get("start.electrical-harnesses-of-vehicles")), "span, gaptop 2, gapbottom 26");
        page.add(files(), "aligny top");
        page.add(examples(), "aligny top");
        page.add(cautions(), "span, growx, w 100:100, gaptop 26");
        JScrollPane scroll = new JScrollPane(centred(page));
        scroll.setBorder(null);
        scroll.getVerticalScrollBar().setUnitIncrement(24);
        add(scroll, "grow, push");
    }

    /** Lists the files opened last anew. */
    void refresh() {
        recent.removeAll();
        List<Path> files = preferences.now().recent();
        for (Path file : files) {
            JButton open = card(Document.nameOf(file), String.valueOf(file.getParent()));
            open.setEnabled(Files.isReadable(file));
            open.addActionListener(event -> filing.open(file));
            recent.add(open);
        }
        if (files.isEmpty()) {
            recent.add(WrappedText.of(WORDS.get("start.none-yet-drop-a"), "Ohmloom.soft", 0), "wmin 0");
        }
        recent.revalidate();
        recent.repaint();
    }

    private JComponent files() {
        JPanel pane = column("");
        JButton open = new JButton(book.get("open-file"));
        open.setText(WORDS.get("start.open-a-harness-file"));
        open.setIcon(Icons.onAccent("open"));
        MainButton.styleLarge(open);
        pane.add(open, "growx 0, gapbottom 4");
        JButton guided = new JButton(book.get("new-guided"));
        JButton empty = new JButton(book.get("new-empty"));
        for (JButton begin : List.of(guided, empty)) {
            begin.setIcon(null);
            begin.putClientProperty(FlatClientProperties.STYLE, "margin: 7,14,7,14");
        }
        pane.add(guided, "growx 0, split 2");
        pane.add(empty, "growx 0, gapbottom 18");
        pane.add(PaneTitle.of(WORDS.get("start.opened-last")), "gapbottom 4");
        pane.add(recent);
        refresh();
        return pane;
    }

    private JComponent examples() {
        JPanel pane = column("");
        pane.add(PaneTitle.of(WORDS.get("start.examples-all-invented")), "gapbottom 4");
        for (Examples.Example example : Examples.ALL) {
            JButton open = card(example.title(), example.about());
            open.setName("example-" + example.name());
            open.addActionListener(book.get("open-example-" + example.name()));
            pane.add(open);
        }
        return pane;
    }

    private static JComponent cautions() {
        JPanel pane = new JPanel(new MigLayout("insets 12 16 14 16, fillx, wrap 2, gapy 5, gapx 8", "[][grow,fill]"));
        pane.putClientProperty(FlatClientProperties.STYLE, "arc: 10; background: $Ohmloom.warningGround");
        JLabel title = PaneTitle.of(WORDS.get("start.before-you-rely-on"));
        pane.add(title, "span");
        Cautions.everything().stream().map(Words::said).forEach(caution -> {
            pane.add(new JLabel("•"), "aligny top");
            pane.add(WrappedText.of(caution, "Label.foreground", 0), "growx, wmin 0");
        });
        return pane;
    }

    private static JButton card(String title, String about) {
        JButton card = new JButton();
        card.setLayout(new MigLayout("insets 6 8 6 8, fillx, gapy 1, wrap 1", "[grow,fill]"));
        JLabel first = new JLabel(title);
        first.putClientProperty(FlatClientProperties.STYLE, "font: semibold");
        card.add(first, "wmin 0");
        card.add(soft(about), "wmin 0");
        card.setHorizontalAlignment(SwingConstants.LEADING);
        card.putClientProperty(FlatClientProperties.STYLE, "background: $Ohmloom.pane; margin: 0,0,0,0; arc: 8");
        card.getAccessibleContext().setAccessibleName(WORDS.get("start.open", title, about));
        return card;
    }

    private static JPanel column(String more) {
        JPanel pane = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 5" + more, "[grow,fill]"));
        pane.setOpaque(false);
        return pane;
    }

    private static JPanel centred(JPanel page) {
        JPanel around = new JPanel(new MigLayout("insets 0, fill, align center center"));
        around.add(page, "align center center");
        return around;
    }

    private static JLabel soft(String text) {
        JLabel label = new JLabel(text);
        label.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        return label;
    }
}
