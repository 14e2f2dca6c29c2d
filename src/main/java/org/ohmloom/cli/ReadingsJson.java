package org.ohmloom.cli;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bench.Judgement;
import org.ohmloom.bench.Replacement;
import org.ohmloom.model.Reading;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Quantity;

/** The as-built record under {@code readings}, the measured resistances in use under {@code measuredResistances}. */
final class ReadingsJson {

    private ReadingsJson() {}

    static void write(Analysis analysis, JsonObjectWriter root) {
        root.array("readings", array -> analysis.evidence()
                .tests()
                .record()
                .judgements()
                .forEach(judgement -> array.object(item -> reading(judgement, item))));
        root.array("measuredResistances", array -> Replacement.of(
                        analysis.evidence().bench())
                .forEach(each -> array.object(item -> {
                    item.put("subject", each.subject());
                    item.put("reading", each.reading().id().value());
                    item.put("ohms", each.ohms());
                    item.put("insteadOhms", each.insteadOhms());
                })));
    }

    private static void reading(Judgement judgement, JsonObjectWriter item) {
        Reading reading = judgement.reading();
        item.put("id", reading.id().value());
        item.put("serialNumber", reading.serialNumber());
        item.put("what", reading.measured().words().english());
        item.put("place", reading.measured().place());
        item.put("verdict", judgement.verdict().name());
        item.put("value", canonical(judgement.value().map(Quantity::canonical)));
        item.put("limit", canonical(judgement.limit().map(Quantity::canonical)));
        item.put("unit", judgement.value().map(value -> value.unit().name().toLowerCase(Locale.ROOT)));
        item.put("side", judgement.limit().map(limit -> judgement.atMost() ? "at most" : "at least"));
        item.put("because", judgement.because());
        item.put("source", judgement.source());
        item.put("replaces", reading.replaces());
        item.put("supersededBy", judgement.superseded().map(later -> later.id().value()));
    }

    private static OptionalDouble canonical(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
