package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.study.OffsetCharts;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetLimits;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** Offsets of every reference point in every state, and at its worst who makes it. */
final class OffsetSection {

    private static final int MOST_PICTURES = 8;

    /** Shares smaller than that part of all magnitudes together are not listed. */
    private static final double SMALLEST_SHARE = 0.01;

    private static final List<Column> COLUMNS = List.of(
            Column.code("Of"),
            Column.words("What"),
            Column.code("From"),
            Column.words("State"),
            Column.number("Offset", Unit.MILLIVOLT, 2),
            Column.number("Ripple", Unit.MILLIVOLT, 2),
            Column.number("Limit", Unit.MILLIVOLT, 1),
            Column.words("Most of it from"),
            Column.number("Share", Unit.MILLIVOLT, 2));

    private static final List<Column> SHARES = List.of(
            Column.code("Of"),
            Column.words("What"),
            Column.words("State"),
            Column.words("From"),
            Column.number("Transfer", Unit.MILLIOHM, 4),
            Column.number("Current", Unit.AMP, 3),
            Column.number("Share", Unit.MILLIVOLT, 3),
            Column.number("Ripple", Unit.MILLIVOLT, 3),
            Column.number("Offset if switched off", Unit.MILLIVOLT, 3));

    private final Analysis analysis;
    private final SceneFonts fonts;
    private final ReturnStudy study;

    OffsetSection(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.fonts = fonts;
        this.study = analysis.evidence().returns();
    }

    List<Block> blocks() {
        if (study.offsets().stream().noneMatch(OffsetSection::isNotGround)) {
            return List.of();
        }
        List<Offset> worst = ReturnReadings.offsets(
                study, Optional.empty(), offset -> OffsetLimits.isOver(analysis.harness(), offset));
        List<Row> shares = new ArrayList<>();
        worst.stream().filter(OffsetSection::isNotGround).forEach(offset -> {
            double all =
                    offset.shares().stream().mapToDouble(OffsetSection::size).sum();
            offset.shares().stream()
                    .filter(share -> size(share) > SMALLEST_SHARE * all)
                    .forEach(share -> shares.add(share(offset, share)));
        });
        List<Scene> pictures = worst.stream()
                .filter(OffsetSection::isNotGround)
                .filter(offset -> !offset.shares().isEmpty())
                .limit(MOST_PICTURES)
                .map(offset -> OffsetCharts.of(analysis.harness(), offset).scene(fonts, Block.Pictures.HALF_MM))
                .toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Offsets of reference points"));
        blocks.add(new Block.Prose(
                "Each load, and each source but the reference one, is replaced by its solved current; its"
                        + " share is transfer resistance times that current, and the shares sum to the offset. \"If switched off\" is a"
                        + " full solution without that load. Offsets of ground points stand with them above; of the shares, those below 1 %"
                        + " are left out."));
        blocks.add(new Block.Table(
                "offsets",
                COLUMNS,
                study.offsets().stream()
                        .filter(OffsetSection::isNotGround)
                        .map(this::row)
                        .toList(),
                ""));
        if (!pictures.isEmpty()) {
            blocks.add(new Block.Heading("Who offsets what, in the worst state of each"));
            blocks.add(new Block.Pictures(pictures));
        }
        blocks.add(new Block.Table("offset-shares", SHARES, shares, "No current makes an offset."));
        return blocks;
    }

    private static boolean isNotGround(Offset offset) {
        return offset.point().kind() != ReferencePoint.Kind.GROUND_POINT;
    }

    private static double size(OffsetShare share) {
        return Math.abs(share.volts()) + share.rippleVolts();
    }

    private Row row(Offset offset) {
        OptionalDouble limit = OffsetLimits.judged(analysis.harness(), offset);
        boolean over = OffsetLimits.isOver(analysis.harness(), offset);
        Cell volts = milli(offset.volts());
        Optional<OffsetShare> most = offset.shares().stream().findFirst();
        return Row.of(
                Cell.text(offset.point().owner().value()).toned(Cell.Tone.STRONG),
                Cell.text(OffsetCharts.word(offset.point().kind()).english()),
                Cell.text(offset.point().against().value()),
                Cell.text(Named.state(analysis.harness(), offset.state())),
                over ? volts.toned(Cell.Tone.ALERT) : volts,
                milli(offset.rippleVolts()),
                limit.isPresent() ? milli(limit.getAsDouble()) : Cell.empty(),
                Cell.text(most.map(share -> Named.label(analysis.harness(), share.cause()))),
                most.map(share -> milli(share.volts())).orElse(Cell.empty()));
    }

    private Row share(Offset offset, OffsetShare share) {
        return Row.of(
                Cell.text(offset.point().owner().value()).toned(Cell.Tone.STRONG),
                Cell.text(OffsetCharts.word(offset.point().kind()).english()),
                Cell.text(Named.state(analysis.harness(), offset.state())),
                Cell.text(Named.label(analysis.harness(), share.cause())),
                Cell.number(Unit.MILLIOHM.fromCanonical(share.transferOhms())),
                Cell.number(share.amps()),
                milli(share.volts()),
                milli(share.rippleVolts()),
                share.switchedOffVolts().isPresent()
                        ? milli(share.switchedOffVolts().getAsDouble())
                        : Cell.empty());
    }

    private static Cell milli(double volts) {
        return Cell.number(Unit.MILLIVOLT.fromCanonical(volts));
    }
}
