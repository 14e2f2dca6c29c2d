package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.bundle.splice.SpliceAdvice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.inspect.Inspection.Fact;
import org.ohmloom.workbench.inspect.Inspection.Facts;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Where a splice lies best, for the inspector. */
final class SpliceFacts {
    private static final Words WORDS = Words.of("inspector");

    private SpliceFacts() {}

    static Optional<Facts> of(Readout readout, SpliceId splice) {
        return readout.analysis()
                .map(results -> results.evidence().splices().get(splice))
                .map(SpliceFacts::facts);
    }

    private static Facts facts(SpliceAdvice advice) {
        List<Fact> facts = new ArrayList<>();
        advice.stays().ifPresent(why -> facts.add(Fact.of(WORDS.get("splice.stays"), why)));
        advice.best().ifPresent(place -> {
            facts.add(Fact.of(WORDS.get("splice.copper-to-its-ends"), Formats.kilograms(advice.presentKg())));
            facts.add(Fact.of(WORDS.get("splice.least-of-all-places"), Formats.kilograms(advice.bestKg())));
            facts.add(Fact.of(WORDS.get("splice.there"), TradeWords.place(place)));
        });
        advice.tooNear().forEach(near -> facts.add(Fact.of(WORDS.get("splice.too-near-to"), near)));
        return new Facts(WORDS.get("splice.best-place"), facts);
    }
}
