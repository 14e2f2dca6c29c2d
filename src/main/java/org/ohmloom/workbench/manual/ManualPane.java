package org.ohmloom.workbench.manual;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.manual.Hit;
import org.ohmloom.manual.Manual;
import org.ohmloom.manual.ManualSearch;
import org.ohmloom.manual.Page;
import org.ohmloom.manual.PageHtml;
import org.ohmloom.manual.SearchWords;
import org.ohmloom.workbench.widget.DividerKeys;
import org.ohmloom.workbench.widget.EdgeLine;
import org.ohmloom.workbench.widget.FilterField;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.SharedSplit;
import org.ohmloom.workbench.words.Words;

/** The manual: contents or what was found on the left, the page on the right, search and steps back above. */
public final class ManualPane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final String CONTENTS = "contents";
    private static final String HITS = "hits";

    private final transient Words words = Words.of("manual");
    private final transient Executor background;
    private final transient Executor eventThread;
    private final transient Trail trail = new Trail();
    private final transient Consumer<String> titles;
    private final JTextField field;
    private final JButton back = button("back", () -> step(-1));
    private final JButton forward = button("forward", () -> step(1));
    private final PageView view = new PageView(words.get("page.name"), this::follow);
    private final ContentsTree contents = new ContentsTree(words.get("contents.name"), page -> show(page, List.of()));
    private final DefaultListModel<Hit> found = new DefaultListModel<>();
    private final HitRenderer renderer = new HitRenderer();
    private final JList<Hit> hits = new JList<>(found);
    private final JPanel left = new JPanel(new CardLayout());
    private final JLabel count = new JLabel();
    private final JSplitPane split;
    private transient Optional<ManualSearch> search = Optional.empty();
    private boolean filling;

    /**
     * A pane; the whole manual is read while it can be used already.
     *
     * @param background  runs the reading
     * @param eventThread runs a task on the event thread
     * @param titles      takes the title of the page in front
     */
    public ManualPane(Executor background, Executor eventThread, Consumer<String> titles) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1"));
        this.background = background;
        this.eventThread = eventThread;
        this.titles = titles;
        HelpPage.name(this, "the-manual");
        field = new FilterField(22, words.get("search"), words.get("search.name"), this::find);
        field.setName("manual-search");
        split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, left(), view.scroll());
        SharedSplit.name(split, "page");
        split.setBorder(EdgeLine.above());
        add(bar(), "growx");
        add(split, "grow, push");
        keys();
        read();
    }

    /** Shows a page; the first one where there is none of that id. */
    public void show(String id) {
        Page page = bundled(id).or(() -> bundled(Manual.HOME)).orElseThrow();
        show(page, List.of());
    }

    private static Optional<Page> bundled(String id) {
        return Manual.bundledPage(Words.language(), id);
    }

    /** The id of the page in front. */
    public Optional<String> shown() {
        return view.page().map(Page::id);
    }

    /** What should have the keyboard first. */
    public JComponent first() {
        return view;
    }

    /** Where the divider between contents and page should lie, px. */
    void divide(int pixels) {
        split.setDividerLocation(pixels);
    }

    private JPanel left() {
        JScrollPane tree = new JScrollPane(contents);
        FocusFrame.around(tree, contents);
        hits.setName("manual-hits");
        hits.getAccessibleContext().setAccessibleName(words.get("hits.name"));
        hits.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        hits.setCellRenderer(renderer);
        hits.addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting() && !filling && hits.getSelectedValue() != null) {
                show(hits.getSelectedValue().page(), SearchWords.of(field.getText()));
            }
        });
        JScrollPane list = new JScrollPane(hits);
        FocusFrame.around(list, hits);
        list.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        JPanel result = new JPanel(new MigLayout("insets 0, fill, gap 0, wrap 1"));
        count.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        result.add(count, "growx, gap 8 8 4 4, wmin 0");
        result.add(list, "grow, push");
        left.add(tree, CONTENTS);
        left.add(result, HITS);
        return left;
    }

    private JPanel bar() {
        JPanel bar = new JPanel(new MigLayout("insets 6 8 6 8, fillx", "[][][]push[]"));
        bar.add(back);
        bar.add(forward);
        bar.add(button("first", () -> show(Manual.HOME)));
        bar.add(field, "wmin 120");
        enableSteps();
        return bar;
    }

    private JButton button(String key, Runnable task) {
        JButton button = new JButton(words.get(key));
        button.setName("manual-" + key);
        button.setToolTipText(words.get(key + ".about"));
        button.setMnemonic(words.letter(key));
        button.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
        button.addActionListener(event -> task.run());
        return button;
    }

    private void keys() {
        Keys.bind(this, WHEN_IN_FOCUSED_WINDOW, Keys.alt(KeyEvent.VK_LEFT), "back", () -> step(-1));
        Keys.bind(this, WHEN_IN_FOCUSED_WINDOW, Keys.alt(KeyEvent.VK_RIGHT), "forward", () -> step(1));
        Keys.bind(this, WHEN_IN_FOCUSED_WINDOW, Keys.alt(KeyEvent.VK_HOME), "first", () -> show(Manual.HOME));
        Keys.bind(this, WHEN_IN_FOCUSED_WINDOW, Keys.menu(KeyEvent.VK_F), "search", () -> {
            field.requestFocusInWindow();
            field.selectAll();
        });
        Keys.bind(this, WHEN_IN_FOCUSED_WINDOW, Keys.plain(KeyEvent.VK_F6), "next", this::nextPart);
        Keys.bind(
                this,
                WHEN_IN_FOCUSED_WINDOW,
                Keys.shift(KeyEvent.VK_F6),
                "divider",
                () -> DividerKeys.next(
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()));
        Keys.bind(contents, WHEN_FOCUSED, Keys.plain(KeyEvent.VK_ENTER), "read", view::requestFocusInWindow);
        Keys.bind(hits, WHEN_FOCUSED, Keys.plain(KeyEvent.VK_ENTER), "read", view::requestFocusInWindow);
        field.addActionListener(event -> view.requestFocusInWindow());
        field.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                int by = event.getKeyCode() == KeyEvent.VK_DOWN ? 1 : event.getKeyCode() == KeyEvent.VK_UP ? -1 : 0;
                if (by != 0 && !found.isEmpty()) {
                    int next = Math.floorMod(hits.getSelectedIndex() + by, found.size());
                    hits.setSelectedIndex(next);
                    hits.ensureIndexIsVisible(next);
                    event.consume();
                } else if (event.getKeyCode() == KeyEvent.VK_ESCAPE
                        && !field.getText().isEmpty()) {
                    field.setText("");
                    event.consume();
                }
            }
        });
    }

    private void nextPart() {
        JComponent listed = field.getText().isBlank() ? contents : hits;
        List<JComponent> parts = List.of(field, listed, view);
        int now = -1;
        for (JComponent part : parts) {
            now = part.isFocusOwner() ? parts.indexOf(part) : now;
        }
        parts.get((now + 1) % parts.size()).requestFocusInWindow();
    }

    private void read() {
        background.execute(() -> {
            Manual manual = Manual.bundled(Words.language());
            ManualSearch made = new ManualSearch(manual);
            eventThread.execute(() -> {
                contents.list(manual);
                search = Optional.of(made);
                view.page().ifPresent(contents::follow);
                find();
            });
        });
    }

    private void find() {
        List<String> typed = SearchWords.of(field.getText());
        boolean searching = !typed.isEmpty();
        ((CardLayout) left.getLayout()).show(left, searching ? HITS : CONTENTS);
        filling = true;
        try {
            renderer.mark(typed);
            found.clear();
            search.ifPresent(ready -> found.addAll(ready.find(field.getText())));
        } finally {
            filling = false;
        }
        count.setText(found.isEmpty() ? words.get("found-none") : words.get("found", String.valueOf(found.size())));
        if (field.getText().strip().length() > 1 && !found.isEmpty()) {
            hits.setSelectedIndex(0);
        }
    }

    private void follow(String target) {
        if (target.startsWith(PageHtml.PAGE)) {
            show(target.substring(PageHtml.PAGE.length()));
        }
    }

    private void show(Page page, List<String> marked) {
        trail.go(page.id());
        put(page, marked);
    }

    private void step(int by) {
        trail.step(by).flatMap(ManualPane::bundled).ifPresent(page -> put(page, List.of()));
    }

    private void put(Page page, List<String> marked) {
        view.show(page, marked);
        contents.follow(page);
        enableSteps();
        titles.accept(page.title());
    }

    private void enableSteps() {
        back.setEnabled(trail.hasBack());
        forward.setEnabled(trail.hasForward());
    }
}
