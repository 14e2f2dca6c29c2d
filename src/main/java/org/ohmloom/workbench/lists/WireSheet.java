package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.BranchId;
import org.ohmloom.heat.Ampacity;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.units.Gauge;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedEdits;
import org.ohmloom.workbench.words.Words;

/** The wires as a list. */
final class WireSheet implements ElementSheet<WireSheet.Row> {
    private static final Words WORDS = Words.of("lists");

    private static final double CLOSE_TO_LIMIT = 0.9;

    /**
     * One wire with its numbers.
     *
     * @param wire         the wire
     * @param lengthMetres cut length: entered, or its way and allowances
     * @param rating       what it carries at worst and may carry
     * @param choice       the size it needs
     * @param flow         its flow in the state asked for; empty when the worst of all is asked
     * @param worstState   name of its worst state
     */
    record Row(
            Wire wire,
            OptionalDouble lengthMetres,
            Optional<WireRating> rating,
            Optional<ConductorChoice> choice,
            Optional<BranchFlow> flow,
            OptionalDouble celsius,
            String worstState) {

        CellText size() {
            if (wire.gauge().isPresent()) {
                return CellText.of(
                        TradeWords.size(wire.gauge()), wire.gauge().get().nominalAreaMm2());
            }
            return rating.map(
                            each -> CellText.of(WORDS.get("wire.open", TradeWords.size(each.gauge())), each.areaMm2()))
                    .orElse(CellText.of(WORDS.get("wire.open-2"), 0))
                    .in(Tone.SOFT)
                    .saying(WORDS.get("wire.no-size-set-yet"));
        }

        CellText length() {
            CellText text = CellText.of(lengthMetres);
            return wire.lengthMetres().isPresent() || lengthMetres.isEmpty()
                    ? text
                    : text.in(Tone.SOFT).saying(WORDS.get("wire.cut-length-its-way"));
        }

        CellText current() {
            CellText text = flow.map(BranchFlow::rmsAmps)
                    .or(() -> rating.map(WireRating::worstAmps))
                    .map(CellText::of)
                    .orElse(CellText.EMPTY);
            OptionalDouble limit = limitAmps();
            if (text.number().isEmpty() || limit.isEmpty()) {
                return text;
            }
            double share = text.number().getAsDouble() / limit.getAsDouble();
            if (share > 1) {
                return text.in(Tone.ERROR).saying(WORDS.get("wire.more-than-it-may"));
            }
            return share > CLOSE_TO_LIMIT ? text.in(Tone.WARNING).saying(WORDS.get("wire.close-to-what-it")) : text;
        }

        CellText drop() {
            return flow.map(each -> Math.abs(each.onDropVolts()))
                    .or(() -> rating.map(WireRating::worstDropVolts))
                    .map(CellText::of)
                    .orElse(CellText.EMPTY);
        }

        CellText watts() {
            return flow.map(BranchFlow::watts)
                    .or(() -> rating.map(WireRating::worstWatts))
                    .map(CellText::of)
                    .orElse(CellText.EMPTY);
        }

        CellText temperature() {
            CellText text = celsius.isPresent()
                    ? CellText.of(celsius)
                    : rating.map(each -> CellText.of(each.celsius())).orElse(CellText.EMPTY);
            OptionalDouble limit = rating.flatMap(WireRating::ampacity)
                    .map(each -> OptionalDouble.of(each.limitCelsius()))
                    .orElse(OptionalDouble.empty());
            return text.number().isPresent()
                            && limit.isPresent()
                            && text.number().getAsDouble() > limit.getAsDouble()
                    ? text.in(Tone.ERROR).saying(WORDS.get("wire.hotter-than-its-insulation"))
                    : text;
        }

        OptionalDouble limitAmps() {
            return rating.flatMap(WireRating::ampacity)
                    .map(Ampacity::limitAmps)
                    .map(OptionalDouble::of)
                    .orElse(OptionalDouble.empty());
        }

        CellText required() {
            if (choice.isEmpty()) {
                return CellText.EMPTY;
            }
            Optional<Gauge> needed = choice.get().gauge();
            if (needed.isEmpty()) {
                return CellText.of(WORDS.get("wire.none-serves"), Double.MAX_VALUE)
                        .in(Tone.ERROR)
                        .saying(reason());
            }
            CellText text = CellText.of(TradeWords.size(needed), needed.get().nominalAreaMm2());
            boolean small = wire.gauge()
                    .filter(own -> own.nominalAreaMm2() < needed.get().nominalAreaMm2() * 0.999)
                    .isPresent();
            return (small && !wire.existing() ? text.in(Tone.WARNING) : text).saying(reason());
        }

        private String reason() {
            return choice.map(ConductorChoice::governing)
                    .map(governing -> Words.said(governing.why()))
                    .orElse("");
        }
    }

    @Override
    public String title() {
        return WORDS.get("wire.wires");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>text(WORDS.term("wire.wire"), WORDS.get("wire.wire.about"), 7, row -> row.wire()
                        .id()
                        .value()),
                Column.text(WORDS.term("wire.from"), WORDS.get("wire.from.about"), 11, row -> row.wire()
                        .from()
                        .text()),
                Column.text(WORDS.term("wire.to"), WORDS.get("wire.to.about"), 11, row -> row.wire()
                        .to()
                        .text()),
                new Column<Row>(
                                WORDS.term("wire.conductor"),
                                "",
                                WORDS.get("wire.conductor.about"),
                                10,
                                Row::size,
                                Optional.of(ColumnEdits.<Row, WireId>of(
                                        row -> true,
                                        row -> row.wire()
                                                .gauge()
                                                .map(TradeWords::size)
                                                .orElse(""),
                                        row -> row.wire().id(),
                                        TypedEdits::conductor)))
                        .sizes(),
                Column.number(WORDS.term("wire.length"), "m", WORDS.get("wire.length.about"), Row::length)
                        .edited(ColumnEdits.<Row, WireId>of(
                                row -> true,
                                row -> row.wire().lengthMetres().isPresent()
                                        ? CellText.of(row.wire().lengthMetres()).exact() + " m"
                                        : "",
                                row -> row.wire().id(),
                                TypedEdits::length)),
                Column.<Row>text(
                                WORDS.term("wire.carries"),
                                WORDS.get("wire.carries.about"),
                                17,
                                row -> TradeWords.signal(row.wire().signalClass()))
                        .with(row -> Optional.of(Samples.line(row.wire().signalClass()))),
                Column.<Row>text(WORDS.term("wire.colour"), WORDS.get("wire.colour.about"), 11, row -> row.wire()
                                .colour()
                                .map(colour -> colour.text())
                                .orElse(""))
                        .with(row -> row.wire().colour().map(Samples::swatch)),
                Column.number(WORDS.term("wire.current"), "A", WORDS.get("wire.current.about"), Row::current),
                Column.number(WORDS.term("wire.drop"), "V", WORDS.get("wire.drop.about"), Row::drop),
                Column.number(WORDS.term("wire.heat"), "W", WORDS.get("wire.heat.about"), Row::watts),
                Column.number(WORDS.term("wire.temp"), "°C", WORDS.get("wire.temp.about"), Row::temperature),
                Column.number(
                        WORDS.term("wire.limit"),
                        "A",
                        WORDS.get("wire.limit.about"),
                        row -> CellText.of(row.limitAmps())),
                new Column<Row>(
                                WORDS.term("wire.needs"),
                                "",
                                WORDS.get("wire.needs.about"),
                                10,
                                Row::required,
                                Optional.empty())
                        .sizes(),
                Column.text(WORDS.term("wire.governed-by"), WORDS.get("wire.governed-by.about"), 15, row -> row.choice()
                        .map(each -> TradeWords.named(each.governing().governor()))
                        .orElse("")),
                Column.text(WORDS.term("wire.worst-state"), WORDS.get("wire.worst-state.about"), 16, Row::worstState));
    }

    @Override
    public List<Row> rows(Readout readout) {
        return readout.harness().wires().all().stream()
                .map(wire -> row(wire, readout))
                .toList();
    }

    private static Row row(Wire wire, Readout readout) {
        Optional<WireRating> rating = readout.rating(wire.id());
        return new Row(
                wire,
                readout.analysis()
                        .map(results -> results.routes().lengthMetres(wire))
                        .orElse(wire.lengthMetres()),
                rating,
                readout.choice(wire.id()),
                readout.state().isEmpty()
                        ? Optional.empty()
                        : readout.flow(new BranchId(wire.id().value())),
                readout.state()
                        .flatMap(state -> readout.analysis().map(results -> results.wireCelsius(state, wire.id())))
                        .orElse(OptionalDouble.empty()),
                rating.flatMap(WireRating::worstState).map(readout::stateName).orElse(""));
    }

    @Override
    public ElementId id(Row row) {
        return row.wire().id();
    }
}
