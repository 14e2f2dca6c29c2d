package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.study.StartCharts;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.solve.run.StartUp;
import org.ohmloom.solve.run.StartUps;
import org.ohmloom.solve.run.StarterTrace;
import org.ohmloom.solve.run.SupplySag;
import org.ohmloom.units.Unit;

/** What happens while something starts: the supply hit hardest by every start, and the worst starts over time. */
final class StartSection {

    private static final int MOST_PICTURES = 6;
    private static final double PICTURE_HEIGHT_MM = 68;

    private static final List<Column> COLUMNS = List.of(
            Column.words("Starts"),
            Column.words("State"),
            Column.number("Peak", Unit.AMP, 1),
            Column.number("Settled after", Unit.SECOND, 3),
            Column.code("Hit hardest"),
            Column.number("Before", Unit.VOLT, 2),
            Column.number("Lowest", Unit.VOLT, 2),
            Column.number("Works from", Unit.VOLT, 2),
            Column.number("Below for", Unit.SECOND, 3),
            Column.words("Then"));

    private final Analysis analysis;
    private final SceneFonts fonts;

    StartSection(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.fonts = fonts;
    }

    List<Block> blocks() {
        StartUps starts = analysis.evidence().startUps();
        if (starts.runs().isEmpty()) {
            return List.of();
        }
        List<StartUp> worstFirst = starts.runs().stream()
                .sorted(Comparator.comparing(
                                (StartUp run) -> run.sags().stream().limit(1).noneMatch(SupplySag::isTooLow))
                        .thenComparingDouble(StartSection::margin))
                .toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Starts, the supply hit hardest first"));
        blocks.add(
                new Block.Prose("One thing starts, or all of a state at once, while everything else runs; outputs run"
                        + " at a duty count as on. The supply hit hardest is the one that comes nearest to the least voltage it"
                        + " works at, or that falls most where none is entered."));
        blocks.add(new Block.Table(
                "starts", COLUMNS, worstFirst.stream().map(this::row).toList(), ""));
        List<Scene> pictures = worstFirst.stream()
                .flatMap(run -> StartCharts.of(analysis.harness(), run).stream())
                .limit(MOST_PICTURES)
                .map(chart -> chart.scene(fonts, Block.Pictures.HALF_MM, PICTURE_HEIGHT_MM))
                .toList();
        blocks.add(new Block.Pictures(pictures));
        List<String> left = starts.skipped().stream()
                .map(each -> Named.state(analysis.harness(), each.state()) + ": "
                        + each.starters().stream()
                                .map(id -> id.value())
                                .reduce((one, other) -> one + ", " + other)
                                .map(text -> text + ". ")
                                .orElse("")
                        + each.reason())
                .toList();
        if (!left.isEmpty()) {
            blocks.add(new Block.Prose("Starts that were not followed over time:"));
            blocks.add(new Block.Points(left));
        }
        return blocks;
    }

    private static double margin(StartUp run) {
        return run.sags().stream()
                .findFirst()
                .map(sag -> sag.lowestVolts() / sag.minimumVolts().orElse(sag.beforeVolts()))
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private Row row(StartUp run) {
        Optional<SupplySag> worst = run.sags().stream().findFirst();
        Cell lowest = worst.map(sag -> Cell.number(sag.lowestVolts())).orElse(Cell.empty());
        String starts = run.starter()
                .map(id -> id + " " + analysis.harness().components().get(id).name())
                .orElse("all at once, " + run.starters().size());
        return Row.of(
                Cell.text(starts).toned(Cell.Tone.STRONG),
                Cell.text(Named.state(analysis.harness(), run.state())),
                Cell.number(run.starters().stream()
                        .mapToDouble(StarterTrace::peakAmps)
                        .sum()),
                Cell.number(run.durationSeconds()),
                Cell.text(worst.map(sag -> sag.id().value())),
                worst.map(sag -> Cell.number(sag.beforeVolts())).orElse(Cell.empty()),
                worst.filter(SupplySag::isTooLow).isPresent() ? lowest.toned(Cell.Tone.ALERT) : lowest,
                worst.map(sag -> Cell.number(sag.minimumVolts())).orElse(Cell.empty()),
                worst.filter(sag -> sag.minimumVolts().isPresent())
                        .map(sag -> Cell.number(sag.belowSeconds()))
                        .orElse(Cell.empty()),
                switch (run.outcome()) {
                    case SETTLED -> Cell.text("runs");
                    case CUT_OFF -> Cell.text("still settling");
                    case STALLED -> Cell.missing("does not turn");
                    case NO_OPERATING_POINT -> Cell.missing("collapses");
                });
    }
}
