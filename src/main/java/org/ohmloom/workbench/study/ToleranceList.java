package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.ohmloom.analysis.tolerance.Chance;
import org.ohmloom.analysis.tolerance.Measure;
import org.ohmloom.analysis.tolerance.Outcome;
import org.ohmloom.analysis.tolerance.Share;
import org.ohmloom.analysis.tolerance.Spread;
import org.ohmloom.analysis.tolerance.SpreadInput;
import org.ohmloom.analysis.tolerance.ToleranceResult;
import org.ohmloom.draw.study.ToleranceCharts;
import org.ohmloom.model.ElementId;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.study.ToleranceDraws.Drawn;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** What became of each result over all harnesses drawn, least margin first. */
final class ToleranceList implements Study<Outcome> {
    private static final Words WORDS = Words.of("tolerance");

    private static final double PERCENT = 100;
    private static final double LEAST_LIMIT = 1e-9;

    private final Supplier<Optional<Drawn>> drawn;

    ToleranceList(Supplier<Optional<Drawn>> drawn) {
        this.drawn = drawn;
    }

    @Override
    public String key() {
        return TolerancePane.KEY;
    }

    @Override
    public String title() {
        return WORDS.get("title");
    }

    @Override
    public String about() {
        return WORDS.get("title.about");
    }

    @Override
    public List<Column<Outcome>> columns() {
        return List.of(
                text("of", 7, row -> row.watch().subject().value()),
                text("result", 10, row -> measure(row)),
                value("as-drawn", Outcome::nominalValue),
                value("low", Outcome::lowValue),
                value("high", Outcome::highValue),
                quantity(
                        "limit",
                        row -> row.watch().limit().isPresent()
                                ? CellText.of(
                                        shown(row, row.watch().limit().getAsDouble()),
                                        row.watch().limit().getAsDouble())
                                : CellText.EMPTY),
                percent("beyond", Chance::fraction),
                percent("at-most", Chance::upToFraction),
                text("made-by", 20, row -> row.shares()
                        .map(shares -> share(shares.largest()))
                        .orElse("")),
                text("state", 12, this::state));
    }

    private static Column<Outcome> text(String key, int letters, Function<Outcome, String> cell) {
        return Column.text(WORDS.term(key), WORDS.get(key + ".about"), letters, cell);
    }

    private static Column<Outcome> value(String key, ToDoubleFunction<Outcome> of) {
        return quantity(key, row -> CellText.of(shown(row, of.applyAsDouble(row)), of.applyAsDouble(row)));
    }

    private static Column<Outcome> quantity(String key, Function<Outcome, CellText> cell) {
        return new Column<>(WORDS.term(key), "", WORDS.get(key + ".about"), 8, cell, Optional.empty()).quantities();
    }

    private static Column<Outcome> percent(String key, ToDoubleFunction<Chance> of) {
        return Column.number(WORDS.term(key), "%", WORDS.get(key + ".about"), row -> row.chance()
                .map(chance -> CellText.of(PERCENT * of.applyAsDouble(chance))
                        .in(chance.beyondCount() > 0 ? Tone.ERROR : Tone.PLAIN))
                .orElse(CellText.EMPTY));
    }

    private static String measure(Outcome row) {
        return WORDS.get("measure." + row.watch().measure().name().toLowerCase(java.util.Locale.ROOT));
    }

    private static String shown(Outcome row, double value) {
        return Formats.quantity(value, row.watch().measure().unit().dimension());
    }

    private static String share(Share share) {
        return WORDS.get("kind." + share.kind().key()) + " " + Formats.percent(share.fraction());
    }

    private String state(Outcome row) {
        return drawn.get()
                .flatMap(each ->
                        each.analysis().harness().states().find(row.watch().state()))
                .map(state -> state.name())
                .orElse("");
    }

    @Override
    public Optional<Readout> reading(Desk desk) {
        return Readout.of(desk);
    }

    @Override
    public boolean isOld(Desk desk) {
        return drawn.get()
                .filter(each -> desk.harness()
                        .filter(now -> now == each.analysis().harness())
                        .isPresent())
                .isEmpty();
    }

    @Override
    public List<Outcome> rows(Readout readout) {
        List<Outcome> rows = new ArrayList<>(
                drawn.get().map(each -> each.result().outcomes()).orElse(List.of()));
        rows.sort(Comparator.comparingDouble(ToleranceList::marginRatio));
        return rows;
    }

    private static double marginRatio(Outcome row) {
        return row.marginValue().isEmpty()
                ? Double.POSITIVE_INFINITY
                : row.marginValue().getAsDouble()
                        / Math.max(LEAST_LIMIT, Math.abs(row.watch().limit().getAsDouble()));
    }

    @Override
    public ElementId id(Outcome row) {
        return row.watch().subject();
    }

    @Override
    public String nothing(Readout readout) {
        if (drawn.get().isEmpty()) {
            return WORDS.get("nothing-drawn");
        }
        return WORDS.get(drawn.get().get().result().inputs().isEmpty() ? "nothing-spreads" : "nothing-followed");
    }

    @Override
    public Optional<Picture> picture(Readout readout, Outcome row, Optional<String> selected) {
        return drawn.get()
                .map(each -> new Picture(
                        String.join(" ", steps(readout, row)),
                        (fonts, widthMm, heightMm) ->
                                ToleranceCharts.scene(each.analysis().harness(), row, fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, Outcome row) {
        List<String> steps = new ArrayList<>();
        drawn.get().map(Drawn::result).ifPresent(result -> {
            steps.add(WORDS.get(
                    "step.values",
                    row.watch().subject(),
                    measure(row),
                    state(row),
                    shown(row, row.meanValue()),
                    deviation(row, row.meanErrorValue(result.plan().runs())),
                    deviation(row, row.deviationValue()),
                    shown(row, row.leastValue()),
                    shown(row, row.mostValue())));
            row.chance()
                    .ifPresent(chance -> steps.add(WORDS.get(
                            "step.chance",
                            chance.beyondCount(),
                            chance.runCount(),
                            Formats.percent(chance.upToFraction()))));
            if (row.unsolvedCount() > 0) {
                steps.add(WORDS.get("step.unsolved", row.unsolvedCount()));
            }
            row.shares().ifPresent(shares -> {
                shares.all()
                        .forEach(each ->
                                steps.add(WORDS.get("step.share", share(each), Formats.percent(each.errorFraction()))));
                steps.add(WORDS.get("step.together", Formats.percent(1 - shares.explainedFraction())));
            });
            sources(result).forEach(steps::add);
        });
        return steps;
    }

    /** A difference of temperatures is no temperature. */
    private static String deviation(Outcome row, double value) {
        return row.watch().measure() == Measure.WIRE_CELSIUS ? Formats.in(value, Unit.KELVIN) : shown(row, value);
    }

    private static List<String> sources(ToleranceResult result) {
        return result.kinds().stream()
                .map(kind -> {
                    SpreadInput first = result.inputs().stream()
                            .filter(input -> input.kind() == kind)
                            .findFirst()
                            .orElseThrow();
                    return WORDS.get(
                            "step.source",
                            WORDS.get("kind." + kind.key()),
                            Spread.plain(first.spread().lowUnits()),
                            Spread.plain(first.spread().highUnits()),
                            kind.unit(),
                            WORDS.get("shape." + first.spread().shape().key()),
                            first.spread().source());
                })
                .toList();
    }
}
