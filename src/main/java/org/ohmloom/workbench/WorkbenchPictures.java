package org.ohmloom.workbench;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.bench.Studies;
import org.ohmloom.workbench.compare.ComparePane;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.study.DutyRangeStudy;
import org.ohmloom.workbench.study.ReturnsPane;
import org.ohmloom.workbench.study.Study;
import org.ohmloom.workbench.study.TolerancePane;
import org.ohmloom.workbench.whatif.WhatIfPane;
import org.ohmloom.workbench.window.WorkbenchView;

/**
 * Takes the pictures of the window that the manual and README.md show. Needs no display:
 * {@code mvn -q compile exec:java -Dexec.mainClass=org.ohmloom.workbench.WorkbenchPictures}.
 */
public final class WorkbenchPictures {

    /** Where the manual has its pictures. */
    public static final Path PLACE = Path.of("src/main/resources/org/ohmloom/manual/pictures");

    private static final int WIDTH = 1320;
    private static final int HEIGHT = 900;
    /** For views that hold a few rows. */
    private static final int LOW = 640;
    /** The views are painted higher than they are beside the lists at first. */
    private static final double VIEWS = 0.72;

    /** Width of the window as a whole. */
    private static final int SMALL = 1180;

    private static final double HALF = 0.5;

    /** What a view gets of a window, px. */
    private static final int VIEW_ACROSS = 880;

    /** What the tabs above a view take of the height it gets, px. */
    private static final int TABS_DOWN = 29;

    private static final int SIDE_ACROSS = 433;
    private static final int INSPECTOR_DOWN = 450;
    private static final int FINDINGS_DOWN = 357;

    /** Lists that only the example of faults has something for. */
    private static final Set<String> OF_FAULTS = Set.of("returns-coupling", "returns-lost");

    private final Path folder;

    private WorkbenchPictures(Path folder) {
        this.folder = folder;
    }

    /**
     * Writes a picture of the window, of every view, of the start screen, of inspector and findings.
     *
     * @param args the folder to write to; none for that of the manual
     * @throws IOException when a picture cannot be written
     */
    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        take(args.length > 0 ? Path.of(args[0]) : PLACE);
    }

    /** Takes all of them. */
    static void take(Path folder) throws IOException {
        takeStart(folder);
        WorkbenchPictures pictures = new WorkbenchPictures(folder);
        pictures.sideCopy();
        pictures.tolerance();
        pictures.window(Look.LIGHT, "window");
        pictures.window(Look.DARK, "window-dark");
        pictures.faults();
        pictures.views();
    }

    /** Takes the one of the start screen, which needs no results. */
    static void takeStart(Path folder) throws IOException {
        Files.createDirectories(folder);
        new WorkbenchPictures(folder).start();
    }

    private void start() throws IOException {
        write("start", OffscreenWindow.open(Look.LIGHT, 1000, 640, VIEWS).picture());
    }

    /** Two hundred harnesses drawn from the teaching example. */
    private void tolerance() throws IOException {
        OffscreenWindow window = OffscreenWindow.open(Look.LIGHT, WIDTH, HEIGHT, VIEWS);
        open(window, "teaching");
        window.work(view -> {
            view.viewTabs().showStudy(TolerancePane.KEY);
            ((TolerancePane) view.viewTabs().study(TolerancePane.KEY)).draw();
        });
        window.await(view -> !((TolerancePane) view.viewTabs().study(TolerancePane.KEY)).isBusy());
        view(window, TolerancePane.KEY);
    }

    /** What a change does to the teaching example, on a side copy and against what was opened. */
    private void sideCopy() throws IOException {
        OffscreenWindow window = OffscreenWindow.open(Look.LIGHT, WIDTH, LOW, VIEWS);
        open(window, "teaching");
        window.work(view -> view.book().get("begin-side-copy").run());
        window.work(view ->
                view.desk().apply(new SetWireGauge(List.of(new WireId("W4")), Optional.of(Gauge.metric(0.75)))));
        window.await(view -> !((WhatIfPane) view.viewTabs().study(WhatIfPane.KEY)).isBusy());
        view(window, WhatIfPane.KEY);
        window.work(view -> view.book().get("keep-side-copy").run());
        window.work(view -> view.book().get("compare-saved").run());
        window.await(view -> !((ComparePane) view.viewTabs().study(ComparePane.KEY)).isBusy());
        view(window, ComparePane.KEY);
    }

    private void views() throws IOException {
        OffscreenWindow window = OffscreenWindow.open(Look.LIGHT, WIDTH, HEIGHT, VIEWS);
        open(window, "rescue-pickup");
        window.work(WorkbenchPictures::choose);
        write("layout", inView(window, WorkbenchView::layoutPane));
        write("inspector", window.picture(WorkbenchView::inspector, SIDE_ACROSS, INSPECTOR_DOWN));
        window.turn("fabrication-lists", 1);
        window.work(view -> view.viewTabs().showStudy(DutyRangeStudy.KEY));
        window.await(view -> view.desk().dutySteps().isPresent());
        for (String key : window.ask(view -> view.viewTabs().keys())) {
            if (!List.of(WhatIfPane.KEY, ComparePane.KEY, ReturnsPane.KEY, TolerancePane.KEY)
                    .contains(key)) {
                view(window, key);
            }
        }
        returns(window, key -> !OF_FAULTS.contains(key));
    }

    /** What the other examples do not have. */
    private void faults() throws IOException {
        OffscreenWindow window = OffscreenWindow.open(Look.LIGHT, WIDTH, HEIGHT, VIEWS);
        open(window, "faults");
        write("findings", window.picture(WorkbenchView::findings, SIDE_ACROSS, FINDINGS_DOWN));
        returns(window, OF_FAULTS::contains);
    }

    private void returns(OffscreenWindow window, Predicate<String> asked) throws IOException {
        window.work(view -> view.viewTabs().showStudy(ReturnsPane.KEY));
        for (Study<?> study : Studies.RETURNS) {
            if (asked.test(study.key())) {
                window.work(view -> view.viewTabs().returns().showList(study.key()));
                write(study.key(), inView(window, view -> view.viewTabs().returns()));
            }
        }
    }

    private void window(Look look, String name) throws IOException {
        OffscreenWindow window = OffscreenWindow.open(look, SMALL, LOW, HALF);
        open(window, "teaching");
        window.work(WorkbenchPictures::choose);
        write(name, window.picture());
    }

    private void view(OffscreenWindow window, String key) throws IOException {
        window.work(view -> view.viewTabs().showStudy(key));
        write(key, inView(window, view -> view.viewTabs().study(key)));
    }

    private static BufferedImage inView(OffscreenWindow window, Function<WorkbenchView, JComponent> part) {
        return window.picture(part, VIEW_ACROSS, (int) (window.height() * VIEWS) - TABS_DOWN);
    }

    private static void open(OffscreenWindow window, String example) {
        window.work(view -> view.filing().openExample(example));
        window.await(view -> view.desk().isWhole());
    }

    /** Selects a wire that has something to tell. */
    private static void choose(WorkbenchView view) {
        view.desk()
                .analysis()
                .flatMap(results -> results.ratings().values().stream()
                        .max((one, other) -> Double.compare(one.worstDropVolts(), other.worstDropVolts())))
                .ifPresent(rating -> view.desk()
                        .select(Selection.of(List.of(rating.wire().id().value()))));
    }

    private void write(String name, BufferedImage image) throws IOException {
        ImageIO.write(FewColours.of(image), "png", folder.resolve(name + ".png").toFile());
    }
}
