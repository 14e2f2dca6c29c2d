package org.ohmloom.workbench.channel;

import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PinRole;
import org.ohmloom.signal.pins.PinPlan;
import org.ohmloom.signal.pins.Preferences;
import org.ohmloom.signal.unit.ChannelPlan;
import org.ohmloom.signal.unit.ChannelProblem.UnitPin;
import org.ohmloom.tables.WireTables;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.LatestWins;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.widget.Choices;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.HintLine;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.MainButton;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.SharedSplit;
import org.ohmloom.workbench.widget.WrapLayout;
import org.ohmloom.workbench.words.Words;

/** What needs pins on the left, the pins on the right, and what came of planning below. */
final class PinPlanPane extends StudyTab {

    private static final long serialVersionUID = 1L;

    private final transient Words words = Words.of("channels");
    private final transient Desk desk;
    private final transient Services services;
    private final transient PlanRun run;
    private final NeedModel needs;
    private final PlaceModel places = new PlaceModel(words);
    private final ReadTable needTable;
    private final ReadTable placeTable;
    private final PlanOutcomePane outcome = new PlanOutcomePane(words);
    private final JComboBox<String> units = new JComboBox<>();
    private final JCheckBox onlyFitting = new JCheckBox(words.get("only-fitting"));
    private final JButton list = button("list");
    private final JButton unit = button("unit");
    private final JButton plan = button("plan");
    private final JButton stop = button("stop");
    private final JButton apply = button("apply");
    private final JButton wire = button("wire");
    private final JButton asked = button("asked");
    private final JButton lock = button("lock");
    private final JButton unlock = button("unlock");
    private final JProgressBar progress = new JProgressBar();
    private final HintLine hint = new HintLine("channels-hint", words.get("keys"));
    private transient Optional<PinSurvey> survey = Optional.empty();
    private transient Optional<ChannelPlan> proposal = Optional.empty();
    private transient Preferences preferences = Preferences.USUAL;
    private boolean quiet;

    PinPlanPane(Desk desk, Services services) {
        super(
                new MigLayout("insets 0, fill, gap 0, wrap 1"),
                new TabName(
                        "channels-pins",
                        Words.of("channels").get("tab.pins"),
                        Words.of("channels").get("title.about")));
        this.desk = desk;
        this.services = services;
        this.run = new PlanRun(services.eventThread(), this::receive);
        this.needs =
                new NeedModel(words, new UsualRates(WireTables.bundled().signals()), () -> propose(Optional.empty()));
        this.needTable = new ReadTable(
                needs, words.get("needs"), new int[] {40, 170, 120, 205, 90, 70}, (row, column) -> needs.need(row)
                        .lines()
                        .isEmpty());
        this.placeTable = new ReadTable(
                places,
                words.get("pins"),
                new int[] {72, 90, 74, 150, 150, 60},
                (row, column) -> chosenNeed().isPresent() && !places.suits(places.place(row)));
        needTable.setName("channels-needs");
        placeTable.setName("channels-places");
        add(bar(), "growx, wmin 0");
        JSplitPane tables = new SharedSplit("pins", JSplitPane.HORIZONTAL_SPLIT, left(), right(), 0.54);
        add(new SharedSplit("outcome", JSplitPane.VERTICAL_SPLIT, tables, outcome, 0.68), "grow, push");
        add(hint, "growx, gap 10 10 4 4, wmin 0");
        listen();
    }

    private JButton button(String name) {
        JButton made = new JButton(words.get(name));
        made.setName("channels-" + name);
        made.setToolTipText(words.get(name + ".about"));
        return made;
    }

    private JComponent bar() {
        JPanel bar = new JPanel();
        WrapLayout.on(bar, 6);
        MainButton.style(plan);
        progress.setIndeterminate(true);
        progress.setVisible(false);
        progress.getAccessibleContext().setAccessibleName(words.get("planning"));
        stop.setVisible(false);
        List.of(list, unit, plan, apply, wire).forEach(bar::add);
        bar.add(asked);
        bar.add(progress);
        bar.add(stop);
        return bar;
    }

    private JComponent left() {
        JPanel left = side();
        JPanel head = head();
        head.add(PaneTitle.of(words.get("needs")));
        head.add(unlock);
        left.add(head, "growx, wmin 0");
        left.add(scroll(needTable), "grow, push");
        return left;
    }

    private JComponent right() {
        JPanel right = side();
        JPanel head = head();
        units.setName("channels-unit-shown");
        units.getAccessibleContext().setAccessibleName(words.get("unit-shown"));
        units.setPrototypeDisplayValue(words.get("all-units") + "0000");
        onlyFitting.setName("channels-only-fitting");
        head.add(units);
        head.add(onlyFitting);
        head.add(lock);
        right.add(head, "growx, wmin 0");
        right.add(scroll(placeTable), "grow, push");
        return right;
    }

    private static JPanel side() {
        JPanel side = new JPanel(new MigLayout("insets 0, fill, gap 0, wrap 1"));
        side.setMinimumSize(new Dimension(120, 60));
        return side;
    }

    private static JPanel head() {
        JPanel head = new JPanel();
        WrapLayout.on(head, 4);
        return head;
    }

    private static JScrollPane scroll(JComponent content) {
        JScrollPane scroll = new JScrollPane(content);
        FocusFrame.around(scroll, content);
        return scroll;
    }

    private void listen() {
        needTable.getSelectionModel().addListSelectionListener(event -> choseNeed());
        placeTable.getSelectionModel().addListSelectionListener(event -> refresh());
        units.addActionListener(event -> {
            if (!quiet) {
                quietly(() -> places.show(survey, shownUnit()));
            }
        });
        onlyFitting.addActionListener(event -> quietly(() -> places.onlyFitting(onlyFitting.isSelected())));
        list.addActionListener(event ->
                desk.harness().ifPresent(now -> ThingListDialog.ask(this, now).ifPresent(desk::apply)));
        unit.addActionListener(event -> desk.harness()
                .ifPresent(now -> UnitDialog.ask(this, now, desk, services).ifPresent(desk::apply)));
        plan.addActionListener(event -> plan());
        stop.addActionListener(event -> stop());
        apply.addActionListener(event -> applyPlan());
        wire.addActionListener(event -> desk.harness()
                .ifPresent(now -> WiringDialog.ask(this, now, services).ifPresent(desk::apply)));
        asked.addActionListener(event -> desk.harness()
                .ifPresent(now -> AskedDialog.ask(this, now, preferences).ifPresent(this::ask)));
        lock.addActionListener(event -> lock());
        unlock.addActionListener(event -> unlock());
        Keys.bind(needTable, WHEN_FOCUSED, Keys.plain(KeyEvent.VK_ENTER), "lock", this::lock);
        Keys.bind(placeTable, WHEN_FOCUSED, Keys.plain(KeyEvent.VK_ENTER), "lock", this::lock);
        Keys.bind(needTable, WHEN_FOCUSED, Keys.plain(KeyEvent.VK_DELETE), "unlock", this::unlock);
        PinDrag.between(needTable, placeTable, row -> lock());
    }

    private void ask(AskedDialog.Answer answer) {
        preferences = answer.preferences();
        propose(Optional.empty());
        answer.edit().ifPresent(desk::apply);
    }

    @Override
    public JComponent front() {
        return needTable;
    }

    private Optional<PinNeed> chosenNeed() {
        int row = needTable.getSelectedRow();
        return row < 0 || row >= needs.getRowCount() ? Optional.empty() : Optional.of(needs.need(row));
    }

    private Optional<PinPlace> chosenPlace() {
        int row = placeTable.getSelectedRow();
        return row < 0 || row >= places.getRowCount() ? Optional.empty() : Optional.of(places.place(row));
    }

    private void choseNeed() {
        if (!quiet) {
            Optional<UnitPin> before = chosenPlace().map(PinPlace::at);
            places.lookAt(chosenNeed());
            before.ifPresent(at -> placeTable.choose(places.rowOf(at)));
            chosenNeed().ifPresent(need -> desk.select(Selection.of(List.of(need.id()))));
            refresh();
        }
    }

    private void lock() {
        Optional<PinNeed> need = chosenNeed();
        Optional<PinPlace> place = chosenPlace();
        if (need.isEmpty() || place.isEmpty()) {
            hint.say(words.get("lock.choose"));
            return;
        }
        try {
            Edit edit = PinLocks.lock(desk.harness().orElseThrow(), need.get(), place.get(), words);
            hint.say("");
            desk.apply(edit);
        } catch (IllegalArgumentException refused) {
            hint.say(Words.said(refused));
        }
    }

    private void unlock() {
        chosenNeed().flatMap(need -> PinLocks.unlock(need, words)).ifPresent(desk::apply);
    }

    private void plan() {
        desk.harness().ifPresent(now -> {
            propose(Optional.empty());
            outcome.say(words.get("planning"));
            run.ask(new PlanRun.Question(now, needs.without(), preferences));
            refresh();
        });
    }

    private void stop() {
        run.stop();
        outcome.say(words.get("stopped"));
        refresh();
    }

    private void receive(LatestWins.Outcome<PlanRun.Question, ChannelPlan> came) {
        if (desk.harness().filter(now -> now == came.question().harness()).isPresent()) {
            came.answer().ifPresent(found -> {
                propose(Optional.of(found));
                outcome.show(found.answer());
            });
            came.failure()
                    .filter(failure -> !(failure instanceof CancellationException))
                    .ifPresent(failure -> outcome.say(words.get("failed", Words.said(failure))));
        }
        refresh();
    }

    /** Shows a plan beside what there is; none takes it back. */
    private void propose(Optional<ChannelPlan> changed) {
        proposal = changed;
        if (changed.isEmpty()) {
            outcome.say("");
        }
        Map<ComponentId, UnitPin> byComponent = new TreeMap<>();
        Map<UnitPin, TreeSet<String>> byPin = new HashMap<>();
        changed.ifPresent(found -> {
            found.channels()
                    .forEach((id, channels) -> channels.forEach(
                            channel -> byComponent.put(channel.component(), new UnitPin(id, channel.pin()))));
            found.pins().forEach((line, pin) -> byPin.computeIfAbsent(pin, at -> new TreeSet<>())
                    .add(line.component().value()));
        });
        quietly(() -> {
            needs.propose(byComponent);
            places.propose(byPin.entrySet().stream()
                    .collect(Collectors.toMap(Map.Entry::getKey, each -> String.join(", ", each.getValue()))));
        });
        refresh();
    }

    private void applyPlan() {
        proposal.filter(found ->
                        desk.harness().filter(now -> now == found.harness()).isPresent())
                .flatMap(ChannelPlan::edit)
                .ifPresent(edit -> {
                    desk.apply(edit);
                    desk.say(words.get("applied"));
                    outcome.say(words.get("applied"));
                });
    }

    private void quietly(Runnable task) {
        Optional<String> need = chosenNeed().map(PinNeed::id);
        Optional<UnitPin> place = chosenPlace().map(PinPlace::at);
        boolean before = quiet;
        quiet = true;
        try {
            task.run();
            need.ifPresent(id -> needTable.choose(needs.rowOf(id)));
            place.ifPresent(at -> placeTable.choose(places.rowOf(at)));
        } finally {
            quiet = before;
        }
    }

    @Override
    public void showRows() {
        Optional<Harness> now = desk.harness();
        if (!survey.map(PinSurvey::harness).equals(now)) {
            survey = now.map(PinSurvey::of);
            run.stop();
            propose(Optional.empty());
            quietly(() -> {
                needs.show(survey.map(PinSurvey::needs).orElse(List.of()));
                List<String> choices = new ArrayList<>(List.of(words.get("all-units")));
                now.ifPresent(harness -> harness.components().all().stream()
                        .filter(component -> component.device() instanceof ControlUnit)
                        .forEach(component -> choices.add(component.id() + " " + component.name())));
                Choices.put(units, choices);
                places.show(survey, shownUnit());
            });
            places.lookAt(chosenNeed());
        }
        refresh();
    }

    private Optional<Component> shownUnit() {
        String shown = String.valueOf(units.getSelectedItem());
        return desk.harness().stream()
                .flatMap(now -> now.components().all().stream())
                .filter(component -> component.device() instanceof ControlUnit)
                .filter(component -> (component.id() + " " + component.name()).equals(shown))
                .findFirst();
    }

    @Override
    public void showSelection() {
        desk.selection().lead().map(needs::rowOf).filter(row -> row >= 0).ifPresent(row -> {
            if (needTable.getSelectedRow() != row) {
                quietly(() -> needTable.choose(row));
                needTable.choose(row);
                places.lookAt(chosenNeed());
                refresh();
            }
        });
    }

    private void refresh() {
        boolean open = desk.document().isPresent();
        boolean busy = run.isBusy();
        boolean found = proposal.map(ChannelPlan::answer)
                .filter(PinPlan.Found.class::isInstance)
                .isPresent();
        progress.setVisible(busy);
        stop.setVisible(busy);
        list.setEnabled(open);
        unit.setEnabled(open);
        plan.setEnabled(open && !busy && needs.getRowCount() > 0);
        apply.setEnabled(found);
        wire.setEnabled(open
                && survey.filter(each -> hasChannels(each) || hasBusPins(each)).isPresent());
        asked.setEnabled(open);
        lock.setEnabled(chosenNeed().isPresent() && chosenPlace().isPresent());
        unlock.setEnabled(chosenNeed().filter(PinNeed::isLocked).isPresent());
    }

    private static boolean hasChannels(PinSurvey survey) {
        return survey.needs().stream().anyMatch(need -> need.channel().isPresent());
    }

    /** Units that a data bus can join have something to wire without any channel. */
    private static boolean hasBusPins(PinSurvey survey) {
        return survey.harness().components().all().stream()
                .anyMatch(each -> each.device() instanceof ControlUnit unit
                        && unit.pinsOf(PinRole.BUS_HIGH).findFirst().isPresent());
    }
}
