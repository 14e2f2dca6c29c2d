package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.review.Finding;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.inspect.Inspection.Fact;
import org.ohmloom.workbench.inspect.Inspection.Facts;
import org.ohmloom.workbench.inspect.Inspection.Prose;
import org.ohmloom.workbench.inspect.Inspection.Section;
import org.ohmloom.workbench.widget.SeverityIcon;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** A finding as the inspector shows it, above the thing it is about. */
final class FindingSections {
    private static final Words WORDS = Words.of("inspector");

    private FindingSections() {}

    static List<Section> of(Finding finding, ShownUnits units) {
        List<Section> sections = new ArrayList<>();
        sections.add(new Prose(
                TradeWords.capital(TradeWords.named(finding.severity())),
                finding.message(units, Words.language()),
                SeverityIcon.tone(finding.severity())));
        List<Fact> facts = new ArrayList<>();
        finding.values()
                .forEach((name, quantity) -> facts.add(
                        Fact.of(RecordFacts.words(name), units.quantity(quantity.canonical(), quantity.dimension()))));
        facts.add(Fact.of(WORDS.get("finding-sections.about"), String.join(", ", finding.subjects())));
        facts.add(Fact.of(WORDS.get("finding-sections.source"), Words.said(finding.citation())));
        facts.add(Fact.of(WORDS.get("finding-sections.rule"), TradeWords.rule(finding.rule())));
        finding.fix().ifPresent(fix -> facts.add(Fact.of(WORDS.get("finding-sections.fix"), Words.said(fix.label()))));
        finding.waiver()
                .ifPresent(waiver -> facts.add(Fact.of(WORDS.get("finding-sections.accepted"), waiver.reason())));
        sections.add(new Facts("", facts));
        return sections;
    }
}
