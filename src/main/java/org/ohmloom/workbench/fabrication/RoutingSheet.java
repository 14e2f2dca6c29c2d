package org.ohmloom.workbench.fabrication;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.Wire;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.Words;

/** Where wires may lie, rule by rule. */
final class RoutingSheet implements Sheet<RoutingSheet.Row> {
    private static final Words WORDS = Words.of("fabrication");

    /**
     * One rule.
     *
     * @param place   its place among the rules, from 0
     * @param rule    the rule
     * @param asked   the wires it asks something of
     * @param refused how many of them have no permitted way
     * @param harness the harness as it is
     */
    record Row(int place, RoutingRule rule, List<Wire> asked, long refused, Harness harness) {}

    /** Makes an edit of rules from what is typed. */
    private interface Typed {
        Edit of(Harness harness, List<Integer> places, String typed);
    }

    @Override
    public String title() {
        return WORDS.get("routing.routing-rules");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>number(
                                WORDS.term("routing.rule"),
                                "",
                                WORDS.get("routing.rule.about"),
                                row -> CellText.of(row.place() + 1))
                        .wide(5),
                words(
                        WORDS.term("routing.wires-lie"),
                        WORDS.get("routing.wires-lie.about"),
                        27,
                        row -> RoutingEdits.rule(row.rule()),
                        RoutingEdits::rule),
                words(
                        WORDS.term("routing.all-wires-of"),
                        WORDS.get("routing.all-wires-of.about"),
                        20,
                        row -> RoutingEdits.signals(row.rule().classes()),
                        RoutingEdits::classes),
                words(
                        WORDS.term("routing.and-wires"),
                        WORDS.get("routing.and-wires.about"),
                        16,
                        row -> RoutingEdits.wires(row.rule()),
                        RoutingEdits::wires),
                words(
                        WORDS.term("routing.because"),
                        WORDS.get("routing.because.about"),
                        22,
                        row -> row.rule().reason().orElse(""),
                        RoutingEdits::reason),
                Column.number(
                        WORDS.term("routing.asks"),
                        "",
                        WORDS.get("routing.asks.about"),
                        row -> CellText.of(row.asked().size())),
                Column.number(
                        WORDS.term("routing.not-kept"),
                        "",
                        WORDS.get("routing.not-kept.about"),
                        row -> row.refused() == 0
                                ? CellText.of(0)
                                : CellText.of(row.refused()).in(Tone.WARNING)));
    }

    private static Column<Row> words(Term title, String tip, int letters, Function<Row, String> text, Typed typed) {
        BiFunction<List<Row>, String, Edit> parse = (rows, given) ->
                typed.of(rows.get(0).harness(), rows.stream().map(Row::place).toList(), given);
        return ColumnEdits.words(title, tip, letters, text, parse);
    }

    @Override
    public List<Row> rows(Readout readout) {
        Harness harness = readout.harness();
        List<RoutingRule> rules = harness.rules().fabricationRules().routing();
        List<Row> rows = new ArrayList<>();
        for (int place = 0; place < rules.size(); place++) {
            RoutingRule rule = rules.get(place);
            List<Wire> asked = harness.wires().all().stream().filter(rule::asks).toList();
            long refused = readout.analysis()
                    .map(Analysis::routes)
                    .map(routes -> asked.stream()
                            .filter(wire -> routes.refused().containsKey(wire.id()))
                            .count())
                    .orElse(0L);
            rows.add(new Row(place, rule, asked, refused, harness));
        }
        return rows;
    }

    @Override
    public String key(Row row) {
        return WORDS.get("routing.rule-2", row.place());
    }

    @Override
    public List<String> about(Row row) {
        return row.asked().stream().map(wire -> wire.id().value()).toList();
    }
}
