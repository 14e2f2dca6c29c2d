package org.ohmloom.pack;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.ground.LostReturn;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Formats;

/** What happens when a ground, a ground wire, a strap or a fuse opens. */
final class LossSection {

    private static final int MOST_DETOURS = 4;

    private static final List<Column> COLUMNS = List.of(
            Column.words("Opens"),
            Column.words("State"),
            Column.words("Then over its limit"),
            Column.words("Fed backwards"),
            Column.words("No longer runs"),
            Column.words("The current goes by"));

    private final Analysis analysis;

    LossSection(Analysis analysis) {
        this.analysis = analysis;
    }

    List<Block> blocks() {
        List<LostReturn> worst = ReturnReadings.losses(analysis.evidence().returns(), Optional.empty());
        if (worst.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Block.Heading("Lost returns"),
                new Block.Prose(
                        "Each ground point, ground wire, strap and fuse opened in turn and solved anew; shown is the"
                                + " state in which most happens, and nothing where that is harmless."),
                new Block.Table(
                        "lost-returns", COLUMNS, worst.stream().map(this::row).toList(), ""));
    }

    private Row row(LostReturn loss) {
        String over = loss.overLimit().stream()
                .map(each -> each.member() + " " + Formats.amps(each.amps()) + ", may " + Formats.amps(each.limitAmps())
                        + " (" + each.source() + ")")
                .collect(Collectors.joining("; "));
        String detours = loss.detours().stream()
                .limit(MOST_DETOURS)
                .map(each ->
                        each.member() + " " + Formats.amps(each.beforeAmps()) + " to " + Formats.amps(each.afterAmps()))
                .collect(Collectors.joining("; "));
        int more = loss.detours().size() - MOST_DETOURS;
        return Row.of(
                Cell.text(Named.label(analysis.harness(), loss.opened())).toned(Cell.Tone.STRONG),
                Cell.text(Named.state(analysis.harness(), loss.state())),
                over.isEmpty() ? Cell.empty() : Cell.missing(over),
                Cell.text(Wording.ids(loss.fedBackwards())),
                Cell.text(Wording.ids(loss.dead())),
                Cell.text(detours + (more > 0 ? "; " + more + " more" : "")));
    }
}
