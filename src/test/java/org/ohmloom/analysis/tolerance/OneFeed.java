package org.ohmloom.analysis.tolerance;

import java.nio.file.Path;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessText;
import org.ohmloom.tables.WireTables;

/** One battery of 12 V with next to no resistance, one feed and one return, one load; all spreads none but those asked for. */
final class OneFeed {

    private static final String HARNESS =
            """
            {
              "format": "ohmloom-harness", "version": 1,
              "titleBlock": {"title": "One feed", "number": "EX-TOL", "language": "en"},
              "rules": {"basis": "road-vehicle", "nominalVolts": 12, "allowedDropFraction": 0.05, "gaugeSystem": "metric",
                "insulation": "ISO 6722-1 class B", "ambientCelsius": 20},
              "components": [
                {"id": "BT1", "name": "Battery",
                 "device": {"kind": "battery", "emfVolts": 12, "internalOhms": 1e-6, "capacityAmpHours": 60}},
                {"id": "H1", "name": "Heater", "device": {"kind": "load", "draw": DRAW, "control": "feed"}}
              ],
              "wires": [
                {"id": "W1", "from": {"component": "BT1", "terminal": "+"}, "to": {"component": "H1", "terminal": "+"},
                 "gauge": "1.5 mm2", "lengthMetres": 4, "signalClass": "feed"MEASURED},
                {"id": "W2", "from": {"component": "BT1", "terminal": "-"}, "to": {"component": "H1", "terminal": "-"},
                 "gauge": "1.5 mm2", "lengthMetres": 4, "signalClass": "return"MEASURED}
              ],
              "states": [STATE]
            }
            """;

    /** A load that takes 0.5 A whatever its voltage: it warms its wires by less than 0.1 K. */
    static final String HALF_AN_AMP = "{\"kind\": \"constant-current\", \"ratedAmps\": 0.5, \"ratedVolts\": 12}";

    private static final String ON = "{\"id\": \"on\", \"name\": \"On\", \"mode\": \"off\"}";

    private OneFeed() {}

    static Analysis with(String draw) {
        return analysed(HARNESS.replace("DRAW", draw).replace("MEASURED", "").replace("STATE", ON));
    }

    /** Each wire of that resistance at any temperature. */
    static Analysis with(String draw, double wireOhms) {
        return analysed(HARNESS.replace("DRAW", draw)
                .replace("MEASURED", ", \"measuredOhms\": " + wireOhms)
                .replace("STATE", ON));
    }

    static Analysis withoutState() {
        return analysed(
                HARNESS.replace("DRAW", HALF_AN_AMP).replace("MEASURED", "").replace("STATE", ""));
    }

    private static Analysis analysed(String text) {
        try {
            return Analyst.analyse(HarnessText.read(text, Path.of("one-feed")), WireTables.bundled(), Cancel.NEVER);
        } catch (HarnessFileException wrong) {
            throw new AssertionError(wrong);
        }
    }

    /** Nothing spreads but what is said. */
    static Spreads spreads(String... said) {
        Spreads spreads = Spreads.of(WireTables.bundled());
        for (SpreadKind kind : SpreadKind.values()) {
            spreads = spreads.with(kind.key() + "=none");
        }
        for (String each : said) {
            spreads = spreads.with(each);
        }
        return spreads;
    }

    static TolerancePlan plan(int runs, String... said) {
        return new TolerancePlan(runs, 1, spreads(said), Optional.empty(), Optional.of(new ComponentId("H1")));
    }

    static ToleranceResult run(Analysis analysis, int runs, String... said) {
        return ToleranceStudy.of(analysis, plan(runs, said), Cancel.NEVER, done -> {});
    }

    static Outcome outcome(ToleranceResult result, Measure measure, String subject) {
        return result.outcomes().stream()
                .filter(each -> each.watch().measure() == measure
                        && each.watch().subject().value().equals(subject))
                .findFirst()
                .orElseThrow();
    }
}
