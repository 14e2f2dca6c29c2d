package org.ohmloom.workbench.print;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.KeyEvent;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.print.PrintService;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.draw.Paper;
import org.ohmloom.pack.PrintedDocument;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Spoken;
import org.ohmloom.workbench.widget.TextChanges;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.words.Words;

/**
 * What is printed, on what and by which printer, beside the sheets as they will come out. Documents are set in sheets off the
 * event thread, the latest wish alone; printing has a thread of its own and can be stopped.
 */
final class PrintPane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int MOST_COPIES = 99;

    private final transient Words words = Words.of("print");
    private final transient LatestWins<Wish, PrintedDocument> setter;
    private final transient Printing printing;
    private final transient Consumer<String> told;
    private final transient Runnable close;
    private final JComboBox<Printed> documents;
    private final JComboBox<Paper> paper = new JComboBox<>(Paper.values());
    private final JCheckBox monochrome = new JCheckBox();
    private final JComboBox<PrintService> printers = new JComboBox<>();
    private final JComboBox<Optional<Paper>> onto = new JComboBox<>();
    private final JTextField ranges = new JTextField(10);
    private final JSpinner copies = new JSpinner(new SpinnerNumberModel(1, 1, MOST_COPIES, 1));
    private final SheetPreview preview;
    private final JLabel place = new JLabel(" ");
    private final JLabel says = new JLabel(" ");
    private final JProgressBar progress = new JProgressBar();
    private final JButton print = new JButton();
    private final JButton cancel = new JButton();
    private final JButton first = turn("first", () -> turnTo(0));
    private final JButton previous = turn("previous", () -> turnBy(-1));
    private final JButton next = turn("next", () -> turnBy(1));
    private final transient List<JButton> zooming = new ArrayList<>();
    private transient Optional<PrintedDocument> set = Optional.empty();
    private transient Optional<Throwable> notSet = Optional.empty();
    private int sheet;

    private record Wish(Printed printed, Paper paper, boolean monochrome) {}

    /**
     * A pane.
     *
     * @param told  takes what is said when all went well
     * @param close closes the window it is in
     */
    PrintPane(List<Printed> all, Services services, Consumer<String> told, Runnable close) {
        super(new MigLayout("insets 14, fill, hidemode 3", "[310lp:pref:420lp,fill]14[grow,fill]", "[grow,fill][][]"));
        this.told = told;
        this.close = close;
        this.documents = new JComboBox<>(all.toArray(Printed[]::new));
        this.preview = new SheetPreview(services.eventThread());
        this.printing = new Printing(this::showStep, this::finished);
        this.setter = new LatestWins<>(
                "print sheets",
                (wish, cancelled, soFar) -> wish.printed().set(wish.paper(), wish.monochrome()),
                Duration.ofMillis(50),
                services.eventThread(),
                this::receive);
        setName("print-pane");
        paper.setSelectedItem(Paper.A3);
        add(choices(), "aligny top");
        add(sheets(), "grow, wrap");
        add(progress, "span, growx, wrap");
        says.setName("print-says");
        add(says, "span, split 3, growx, pushx, wmin 0");
        print.setText(words.get("print"));
        print.setName("print-start");
        print.addActionListener(event -> start());
        cancel.setText(words.get("close"));
        cancel.setName("print-close");
        cancel.addActionListener(event -> stop());
        add(print, "tag ok");
        add(cancel, "tag cancel");
        progress.getAccessibleContext().setAccessibleName(words.get("progress"));
        progress.setVisible(false);
        documents.addActionListener(event -> wish());
        paper.addActionListener(event -> wish());
        monochrome.addActionListener(event -> wish());
        TextChanges.listen(ranges, this::refresh);
        bind();
        wish();
    }

    private JComponent choices() {
        JPanel pane = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy 3, novisualpadding", "[grow,fill]"));
        row(pane, "document", documents);
        named(documents, value -> value instanceof Printed printed ? printed.name() : "");
        row(pane, "paper", paper);
        monochrome.setText(words.get("monochrome"));
        monochrome.setName("print-monochrome");
        pane.add(monochrome, "gaptop 4");
        row(pane, "printer", printers);
        named(printers, value -> value instanceof PrintService service ? service.getName() : words.get("no-printer"));
        onto.addItem(Optional.empty());
        List.of(Paper.A4, Paper.A3, Paper.ANSI_A, Paper.ANSI_B).forEach(each -> onto.addItem(Optional.of(each)));
        named(
                onto,
                value -> value instanceof Optional<?> paperOnto
                        ? paperOnto
                                .map(each -> words.get("onto.shrunk", each.toString()))
                                .orElse(words.get("onto.true"))
                        : "");
        row(pane, "onto", onto);
        TextUndo.install(ranges);
        ranges.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, words.get("ranges.all"));
        ranges.setToolTipText(words.get("ranges.about"));
        row(pane, "ranges", ranges);
        row(pane, "copies", copies);
        Spoken.name(copies, words.get("copies"));
        return pane;
    }

    private void row(JPanel pane, String key, JComponent field) {
        JLabel label = new JLabel(words.get(key));
        label.setLabelFor(field);
        field.setName("print-" + key);
        // A box would take these for its own list.
        Keys.leave(field, KeyEvent.VK_PAGE_DOWN, KeyEvent.VK_PAGE_UP);
        field.getAccessibleContext().setAccessibleName(words.get(key));
        pane.add(label, "gaptop 6");
        pane.add(field, "wmin 0");
    }

    /** Texts of a box by what stands for a value. */
    private static void named(JComboBox<?> box, Function<Object, String> name) {
        box.setRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean isSelected, boolean cellHasFocus) {
                return super.getListCellRendererComponent(list, name.apply(value), index, isSelected, cellHasFocus);
            }
        });
    }

    private JComponent sheets() {
        JPanel pane = new JPanel(
                new MigLayout("insets 0, fill, gap 4, novisualpadding", "[][][][]push[][][]", "[][grow,fill]"));
        pane.add(first);
        pane.add(previous);
        place.setName("print-place");
        // as wide as it gets once there are sheets
        int wide = new JLabel(words.get("place", "888", "888")).getPreferredSize().width;
        place.setMinimumSize(new Dimension(wide, place.getPreferredSize().height));
        pane.add(place);
        pane.add(next);
        pane.add(zoom("smaller", () -> preview.zoom(-1)));
        pane.add(zoom("larger", () -> preview.zoom(1)));
        pane.add(zoom("whole", preview::fit), "wrap");
        JScrollPane scroll = new JScrollPane(preview);
        preview.getAccessibleContext().setAccessibleName(words.get("sheet"));
        scroll.getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                preview.wish();
            }
        });
        pane.add(scroll, "span, grow, push, w 640lp, h 480lp");
        return pane;
    }

    private JButton zoom(String key, Runnable task) {
        JButton button = turn(key, task);
        zooming.add(button);
        return button;
    }

    private JButton turn(String key, Runnable task) {
        JButton button = new JButton(words.get("turn." + key));
        button.setName("print-" + key);
        button.setToolTipText(words.get("turn." + key + ".about"));
        button.addActionListener(event -> task.run());
        return button;
    }

    private void bind() {
        key(Keys.plain(KeyEvent.VK_PAGE_DOWN), () -> turnBy(1));
        key(Keys.plain(KeyEvent.VK_PAGE_UP), () -> turnBy(-1));
        key(Keys.menu(KeyEvent.VK_EQUALS), () -> preview.zoom(1));
        key(Keys.menu(KeyEvent.VK_MINUS), () -> preview.zoom(-1));
        key(Keys.menu(KeyEvent.VK_0), preview::fit);
    }

    private void key(KeyStroke keys, Runnable task) {
        Keys.bind(this, WHEN_IN_FOCUSED_WINDOW, keys, keys.toString(), task);
    }

    JButton printButton() {
        return print;
    }

    /** The printers there are; they are looked for while the window is open already. */
    void offer(List<PrintService> found, Optional<PrintService> usual) {
        printers.removeAllItems();
        found.forEach(printers::addItem);
        usual.filter(found::contains).ifPresent(printers::setSelectedItem);
        refresh();
    }

    private void wish() {
        set = Optional.empty();
        notSet = Optional.empty();
        preview.clear();
        setter.ask(new Wish(
                (Printed) documents.getSelectedItem(), (Paper) paper.getSelectedItem(), monochrome.isSelected()));
        refresh();
    }

    private void receive(LatestWins.Outcome<Wish, PrintedDocument> outcome) {
        set = outcome.answer();
        notSet = outcome.failure();
        sheet = 0;
        turnTo(0);
        refresh();
    }

    private void turnBy(int sheets) {
        turnTo(sheet + sheets);
    }

    private void turnTo(int wanted) {
        set.filter(document -> wanted >= 0 && wanted < document.sheetCount()).ifPresent(document -> {
            sheet = wanted;
            preview.show(document, sheet);
            refresh();
        });
    }

    /** Whether sheets are being set or painted. */
    boolean isBusy() {
        return setter.isBusy() || preview.isBusy();
    }

    private List<Integer> chosen() {
        return SheetRanges.of(
                ranges.getText(), set.map(PrintedDocument::sheetCount).orElse(0));
    }

    private void refresh() {
        place.setText(set.map(document ->
                        words.get("place", String.valueOf(sheet + 1), String.valueOf(document.sheetCount())))
                .orElse(notSet.isPresent() ? " " : words.get("setting")));
        first.setEnabled(sheet > 0);
        previous.setEnabled(sheet > 0);
        next.setEnabled(sheet < set.map(PrintedDocument::sheetCount).orElse(0) - 1);
        zooming.forEach(button -> button.setEnabled(set.isPresent()));
        boolean printer = printers.getSelectedItem() != null;
        String problem = notSet.map(Words::said).orElse(printer ? "" : words.get("no-printer.about"));
        if (set.isPresent()) {
            try {
                chosen();
            } catch (IllegalArgumentException wrong) {
                problem = Words.said(wrong);
            }
        }
        if (!printing.isRunning()) {
            say(problem, printer || notSet.isPresent() ? "Ohmloom.error" : "Ohmloom.soft");
            print.setEnabled(set.isPresent() && problem.isEmpty());
            cancel.setText(words.get("close"));
        }
    }

    @SuppressWarnings("unchecked")
    private void start() {
        print.setEnabled(false);
        progress.setVisible(true);
        progress.setIndeterminate(true);
        cancel.setText(words.get("stop"));
        printing.start(new Printing.Job(
                (PrintService) printers.getSelectedItem(),
                set.orElseThrow(),
                chosen(),
                (Optional<Paper>) onto.getSelectedItem(),
                (Integer) copies.getValue()));
    }

    private void showStep(Printing.Step step) {
        progress.setIndeterminate(false);
        progress.setMaximum(step.total());
        progress.setValue(step.done());
        say(words.get("step", String.valueOf(step.done() + 1), String.valueOf(step.total())), "Ohmloom.soft");
    }

    private void finished(Printing.Result result) {
        progress.setVisible(false);
        refresh();
        if (result.problem().isPresent()) {
            say(words.get("failed", result.problem().get()), "Ohmloom.error");
        } else if (result.cancelled()) {
            say(words.get("stopped"), "Ohmloom.soft");
        } else {
            told.accept(
                    words.get("printed", set.map(PrintedDocument::title).orElse(""), String.valueOf(result.sheets())));
            close.run();
        }
    }

    /** Stops the printing under way, or closes the window. */
    void stop() {
        if (printing.isRunning()) {
            printing.cancel();
            say(words.get("stopping"), "Ohmloom.soft");
        } else {
            setter.stop();
            preview.clear();
            close.run();
        }
    }

    /** What is said below. */
    String saysText() {
        return says.getText();
    }

    private void say(String text, String colour) {
        says.setText(text.isEmpty() ? " " : text);
        says.setToolTipText(text);
        says.putClientProperty(FlatClientProperties.STYLE, "foreground: $" + colour);
    }
}
