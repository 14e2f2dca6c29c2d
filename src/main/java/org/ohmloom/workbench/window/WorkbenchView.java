package org.ohmloom.workbench.window;

import java.awt.CardLayout;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.draw.SceneOptions.Numbers;
import org.ohmloom.workbench.bench.Bench;
import org.ohmloom.workbench.bench.ChooseLook;
import org.ohmloom.workbench.bench.CloseFile;
import org.ohmloom.workbench.bench.ExportPack;
import org.ohmloom.workbench.bench.FilterRows;
import org.ohmloom.workbench.bench.FitLayout;
import org.ohmloom.workbench.bench.OpenExample;
import org.ohmloom.workbench.bench.OpenFile;
import org.ohmloom.workbench.bench.PaneCommands;
import org.ohmloom.workbench.bench.Recalculate;
import org.ohmloom.workbench.bench.Redo;
import org.ohmloom.workbench.bench.SaveFile;
import org.ohmloom.workbench.bench.SaveFileAs;
import org.ohmloom.workbench.bench.ShowHeat;
import org.ohmloom.workbench.bench.ShowNumbers;
import org.ohmloom.workbench.bench.ShowSelection;
import org.ohmloom.workbench.bench.ShowWires;
import org.ohmloom.workbench.bench.StepState;
import org.ohmloom.workbench.bench.StopCalculating;
import org.ohmloom.workbench.bench.Studies;
import org.ohmloom.workbench.bench.Undo;
import org.ohmloom.workbench.bench.ViewTabs;
import org.ohmloom.workbench.bench.ZoomLayout;
import org.ohmloom.workbench.canvas.LayoutPane;
import org.ohmloom.workbench.channel.ChannelsPane;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.compare.CompareCommands;
import org.ohmloom.workbench.compare.ComparePane;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Examples;
import org.ohmloom.workbench.desk.Filing;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.drafting.DrawingCommands;
import org.ohmloom.workbench.drafting.ToolLine;
import org.ohmloom.workbench.drafting.ToolStrip;
import org.ohmloom.workbench.drafting.Toolbox;
import org.ohmloom.workbench.fabrication.FabricationPane;
import org.ohmloom.workbench.findings.ApplyFix;
import org.ohmloom.workbench.findings.FindingCommands;
import org.ohmloom.workbench.findings.FindingsPane;
import org.ohmloom.workbench.findings.RemediesDialog;
import org.ohmloom.workbench.findings.StepFinding;
import org.ohmloom.workbench.findings.TryRemedies;
import org.ohmloom.workbench.guide.FirstStepBanner;
import org.ohmloom.workbench.guide.GuideCommands;
import org.ohmloom.workbench.inspect.InspectorPane;
import org.ohmloom.workbench.lists.ListCommands;
import org.ohmloom.workbench.lists.ListsPane;
import org.ohmloom.workbench.lists.NewLoadGroup;
import org.ohmloom.workbench.lists.NewSequence;
import org.ohmloom.workbench.personal.PersonalCommands;
import org.ohmloom.workbench.pinview.PinViewPane;
import org.ohmloom.workbench.print.PrintCommands;
import org.ohmloom.workbench.record.RecordPane;
import org.ohmloom.workbench.record.TakeInValues;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.states.StatesPane;
import org.ohmloom.workbench.study.CurrentsPane;
import org.ohmloom.workbench.study.TolerancePane;
import org.ohmloom.workbench.whatif.WhatIf;
import org.ohmloom.workbench.whatif.WhatIfBand;
import org.ohmloom.workbench.whatif.WhatIfCommands;
import org.ohmloom.workbench.whatif.WhatIfPane;
import org.ohmloom.workbench.widget.EdgeLine;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Reveal;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.SharedSplit;
import org.ohmloom.workbench.words.Words;

/**
 * Everything inside the window: tools, layout, studies, lists, inspector, findings and the status bar, or the start screen while
 * no harness is open. Needs no window itself, so that pictures can be taken of it without a display.
 */
public final class WorkbenchView extends JPanel {
    private static final Words WORDS = Words.of("window");

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient Filing filing;
    private final transient CommandBook book;
    private final transient Executor reader;
    private final transient Journal journal = new Journal();
    private final transient Map<String, JSplitPane> dividers = new TreeMap<>();
    private final LayoutPane layout;
    private final transient Toolbox toolbox;
    private final ListsPane lists;
    private final ViewTabs views;
    private final FindingsPane findings;
    private final InspectorPane inspector;
    private final StartView start;
    private final JMenuBar menus;

    /**
     * A view.
     *
     * @param windows what only a window can do
     */
    public WorkbenchView(Services services, WindowTasks windows) {
        super(new CardLayout());
        reader = services.reader();
        desk = new Desk(services.calculation(), services.eventThread());
        takeUpUnits(services.preferences());
        filing = new Filing(desk, services);
        layout = new LayoutPane(desk, services.painter(), services.layout(), services.eventThread());
        toolbox = new Toolbox(desk, layout, services.painter(), services.reader(), services.eventThread());
        Samples samples = new Samples(services.painter());
        lists = new ListsPane(desk, samples, services.preferences());
        CurrentsPane currents = new CurrentsPane(desk, services.painter(), services.eventThread());
        List<CompareCommands.Compare> compares = CompareCommands.of(desk, services.prompts());
        TakeInValues takeIn = new TakeInValues(desk, services.prompts(), services.reader(), services.eventThread());
        RecordPane record = new RecordPane(desk, samples, takeIn, Clock.systemDefaultZone());
        ComparePane compare = new ComparePane(desk, services, samples, List.copyOf(compares));
        List<Command> sides = WhatIfCommands.of(desk, lists::commit);
        WhatIf whatIf = new WhatIf(desk, services);
        WhatIfPane tried = new WhatIfPane(desk, whatIf, samples, sides);
        FabricationPane fabrication = new FabricationPane(desk, samples);
        lists.commitToo(fabrication.tables());
        lists.commitToo(List.of(record.table()));
        takeIn.fillFrom(record);
        compares.forEach(each -> each.workOn(compare));
        views = new ViewTabs(
                desk,
                layout,
                currents,
                Studies.ALL,
                List.of(
                        new TolerancePane(desk, services.painter(), samples, services.eventThread()),
                        new PinViewPane(desk, samples),
                        new ChannelsPane(desk, services, samples),
                        new StatesPane(desk),
                        fabrication,
                        record,
                        compare,
                        tried),
                services,
                samples);
        inspector = new InspectorPane(desk, services.painter());
        Bench bench = new Bench(desk, filing, services.preferences(), layout, lists, views, windows.looks());
        ApplyFix fix = new ApplyFix(desk);
        TryRemedies remedies = new TryRemedies(desk, finding -> RemediesDialog.show(this, desk, finding));
        findings = new FindingsPane(desk, remedies, fix);
        List<Command> cures = new ArrayList<>(List.of(fix, remedies));
        cures.addAll(FindingCommands.of(desk, this, services.calculation(), Clock.systemDefaultZone()));
        findings.offer(cures);
        List<Command> revisions = new ArrayList<>(PrintCommands.of(desk, services, this, lists::commit));
        revisions.addAll(List.of(takeIn, compares.get(0), compares.get(1)));
        book = new CommandBook(commands(bench, cures, revisions, sides, windows), desk, journal::note);
        book.rebind(services.preferences().now().personal().keys());
        layout.furnish(new ToolStrip(MenuPlan.TOOLS.stream().map(book::get).toList()), new ToolLine(toolbox));
        toolbox.offerMenu(book::get);
        menus = new Menus(book, filing, services.preferences()).bar();
        start = new StartView(book, filing, services.preferences());
        HelpPage.name(start, "views/start");
        HelpPage.name(inspector, "views/inspector");
        HelpPage.name(findings, "views/findings");
        HelpPage.name(this, "views/window");
        add(start, "start");
        WhatIfBand band = new WhatIfBand(
                desk,
                whatIf,
                List.of(book.get("study-what-if"), book.get("keep-side-copy"), book.get("drop-side-copy")));
        Command compareSaved = book.get("compare-saved");
        filing.compareBy(compareSaved::run);
        DiskBand disk = new DiskBand(desk, filing.watch(), compareSaved::run);
        add(work(services.preferences(), List.of(disk, band), windows), "work");
        desk.listen(topic -> {
            if (topic == Topic.DOCUMENT) {
                showCard();
            }
        });
        showCard();
    }

    public Desk desk() {
        return desk;
    }

    /** Shows everything in the units a person has settled. */
    void takeUpUnits(PreferenceStore preferences) {
        desk.showIn(preferences.now().personal().units().shown());
    }

    public Filing filing() {
        return filing;
    }

    public CommandBook book() {
        return book;
    }

    public Journal journal() {
        return journal;
    }

    public JMenuBar menus() {
        return menus;
    }

    public LayoutPane layoutPane() {
        return layout;
    }

    /** The tools for drawing on the layout. */
    public Toolbox toolbox() {
        return toolbox;
    }

    public ViewTabs viewTabs() {
        return views;
    }

    public ListsPane lists() {
        return lists;
    }

    public FindingsPane findings() {
        return findings;
    }

    public InspectorPane inspector() {
        return inspector;
    }

    /** Places of the dividers, px, by name. */
    public Map<String, Integer> dividerPlaces() {
        Map<String, Integer> places = new TreeMap<>();
        dividers.forEach((name, split) -> places.put(name, split.getDividerLocation()));
        return places;
    }

    /** Puts the dividers where they were. */
    public void placeDividers(Map<String, Integer> places) {
        places.forEach((name, place) -> {
            if (dividers.containsKey(name)) {
                dividers.get(name).setDividerLocation(place);
            }
        });
    }

    private List<Command> commands(
            Bench bench, List<Command> cures, List<Command> revisions, List<Command> sides, WindowTasks windows) {
        List<Command> all = new ArrayList<>();
        all.addAll(GuideCommands.of(() -> this, desk::units, filing, reader, () -> Reveal.inFront(layout.canvas())
                .requestFocusInWindow()));
        all.add(new OpenFile(filing));
        Examples.ALL.forEach(example -> all.add(new OpenExample(filing, example)));
        all.addAll(List.of(new SaveFile(bench), new SaveFileAs(bench), new ExportPack(bench, windows.export())));
        all.addAll(revisions);
        all.add(new CloseFile(bench));
        all.addAll(WindowCommands.of(windows.actions(), desk));
        all.addAll(List.of(new Undo(bench), new Redo(bench)));
        all.addAll(PersonalCommands.of(
                () -> this,
                desk,
                bench.preferences(),
                this::book,
                () -> {
                    takeUpUnits(bench.preferences());
                    windows.looks().accept(bench.preferences().now().look());
                },
                lists::commit));
        all.addAll(cures);
        all.addAll(List.of(new NewLoadGroup(desk), new NewSequence(desk)));
        all.addAll(ListCommands.of(desk, lists));
        all.add(new FilterRows(bench));
        all.addAll(List.of(new FitLayout(bench), ZoomLayout.larger(bench), ZoomLayout.smaller(bench)));
        all.add(new ShowSelection(bench));
        for (Numbers numbers : Numbers.values()) {
            all.add(new ShowNumbers(desk, numbers));
        }
        all.addAll(List.of(new ShowHeat(desk), new ShowWires(bench), new ChooseLook(bench)));
        all.addAll(DrawingCommands.of(toolbox));
        all.addAll(PaneCommands.of(targets()));
        all.addAll(Studies.commands(bench));
        all.addAll(List.of(StepFinding.next(desk, findings), StepFinding.previous(desk, findings)));
        all.addAll(List.of(StepState.next(desk), StepState.previous(desk)));
        all.addAll(List.of(new Recalculate(bench), new StopCalculating(bench)));
        all.addAll(sides);
        all.addAll(windows.help());
        return all;
    }

    private Map<String, Supplier<JComponent>> targets() {
        Map<String, Supplier<JComponent>> targets = new LinkedHashMap<>();
        targets.put("layout", layout::canvas);
        targets.put("lists", lists::front);
        targets.put("inspector", inspector::content);
        targets.put("findings", findings::findings);
        targets.put("studies", views::latestFront);
        return targets;
    }

    private JPanel work(PreferenceStore preferences, List<JComponent> bands, WindowTasks windows) {
        JPanel work = new JPanel(new MigLayout("insets 0, fill, gap 0, wrap 1, hidemode 3"));
        work.add(new ToolBar(book, desk), "growx, wmin 0");
        work.add(new CautionBanner(preferences, windows.cautions()), "growx, wmin 0");
        bands.forEach(band -> work.add(band, "growx, wmin 0"));
        work.add(new FirstStepBanner(desk, book.get("new-guided")), "growx, wmin 0");
        work.add(views(), "grow, push, wmin 0");
        work.add(
                new StatusBar(desk, filing, book.get("stop-calculating"), () -> findings.findings()
                        .requestFocusInWindow()),
                "growx");
        return work;
    }

    private JSplitPane views() {
        JSplitPane left = split("lists", JSplitPane.VERTICAL_SPLIT, views, lists, 0.62);
        JSplitPane right = split("findings", JSplitPane.VERTICAL_SPLIT, inspector, findings, 0.55);
        JSplitPane all = split("side", JSplitPane.HORIZONTAL_SPLIT, left, right, 1);
        all.setBorder(EdgeLine.above());
        return all;
    }

    private JSplitPane split(String name, int orientation, JComponent first, JComponent second, double weight) {
        JSplitPane split = new JSplitPane(orientation, true, first, second);
        split.setResizeWeight(weight);
        SharedSplit.name(split, name);
        dividers.put(name, split);
        return split;
    }

    private void showCard() {
        boolean open = desk.document().isPresent();
        if (!open) {
            start.refresh();
        }
        ((CardLayout) getLayout()).show(this, open ? "work" : "start");
    }
}
