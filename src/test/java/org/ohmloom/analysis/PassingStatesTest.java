package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.heat.ShortPeak;
import org.ohmloom.heat.SkinCheck;
import org.ohmloom.heat.WireRating;
import org.ohmloom.heat.WireTemperature;
import org.ohmloom.heat.balance.SkinEffect;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessText;
import org.ohmloom.tables.WireTables;

/** Short states, slow cycles and switching frequencies through the whole analysis, on one invented feed of 0.75 mm2. */
@BesideOthers
class PassingStatesTest {

    private static final String HARNESS =
            """
            {
              "format": "ohmloom-harness", "version": 1,
              "titleBlock": {"title": "One feed", "number": "EX-HEAT", "language": "en"},
              "rules": {"basis": "road-vehicle", "nominalVolts": 12, "allowedDropFraction": 0.2, "gaugeSystem": "metric",
                "insulation": "ISO 6722-1 class B", "ambientCelsius": 30},
              "components": [
                {"id": "BT1", "name": "Battery",
                 "device": {"kind": "battery", "emfVolts": 12.6, "internalOhms": 0.005, "capacityAmpHours": 60}},
                {"id": "H1", "name": "Heater", "device": {"kind": "load",
                   "draw": {"kind": "constant-current", "ratedAmps": 12, "ratedVolts": 12}, "control": "command"CYCLE}},
                {"id": "H2", "name": "Booster", "device": {"kind": "load",
                   "draw": {"kind": "constant-current", "ratedAmps": BOOST, "ratedVolts": 12}, "control": "command"}}
              ],
              "wires": [
                {"id": "W1", "from": {"component": "BT1", "terminal": "+"}, "to": {"component": "H1", "terminal": "+"},
                 "gauge": "0.75 mm2", "lengthMetres": 1, "signalClass": "feed"},
                {"id": "W2", "from": {"component": "BT1", "terminal": "-"}, "to": {"component": "H1", "terminal": "-"},
                 "gauge": "4 mm2", "lengthMetres": 1, "signalClass": "return"},
                {"id": "W3", "from": {"component": "H1", "terminal": "+"}, "to": {"component": "H2", "terminal": "+"},
                 "gauge": "6 mm2", "lengthMetres": 1, "signalClass": "feed"},
                {"id": "W4", "from": {"component": "H2", "terminal": "-"}, "to": {"component": "BT1", "terminal": "-"},
                 "gauge": "6 mm2", "lengthMetres": 1, "signalClass": "return"}
              ],
              "states": [
                {"id": "on", "name": "On", "mode": "off", "components": {"H1": SETTING}},
                {"id": "boost", "name": "Boost", "mode": "off", "durationSeconds": 8, "components": {"H2": true}}
              ]
            }
            """;

    private static Analysis analyse(String cycle, String setting) throws HarnessFileException {
        return analyse(cycle, setting, "30");
    }

    private static Analysis analyse(String cycle, String setting, String boostAmps) throws HarnessFileException {
        String text =
                HARNESS.replace("CYCLE", cycle).replace("SETTING", setting).replace("BOOST", boostAmps);
        Harness harness = HarnessText.read(text, Path.of("one-feed"));
        return Analyst.analyse(harness, WireTables.bundled(), Cancel.NEVER);
    }

    private static WireRating feed(Analysis analysis) {
        return analysis.ratings().get(new WireId("W1"));
    }

    @Test
    void aShortStateHeatsFromTheRunningTemperatureAndIsNotJudgedAsLasting() throws Exception {
        WireRating rating = feed(analyse("", "true"));
        assertEquals(12, rating.worstAmps(), 0.01);
        assertEquals(30, rating.peakAmps(), 0.1);
        ShortPeak peak = rating.temperature().shortPeak().orElseThrow();
        assertEquals(8, peak.seconds(), 0);
        assertTrue(peak.stated());
        assertEquals(rating.celsius(), peak.fromCelsius(), 1e-9);
        // copper alone: 30 A in 0.698 mm2 (listed resistance) for 8 s: K2 A2 ln((234.5+T2)/(234.5+T1)) = I2 t gives
        // ln = 7200/(226 x 0.698)^2 = 0.289, so at most (234.5 + T1) e^0.289 - 234.5; insulation and air take some of
        // it
        double most = (234.5 + peak.fromCelsius()) * Math.exp(7200 / Math.pow(226 * 0.698, 2)) - 234.5;
        assertTrue(peak.celsius() > peak.fromCelsius() + 20 && peak.celsius() < most, peak + " against " + most);
    }

    @Test
    void aShortStateThatEndsBeyondTheInsulationIsFound() throws Exception {
        Analysis analysis = analyse("", "true", "45");
        ShortPeak peak = feed(analysis).temperature().shortPeak().orElseThrow();
        assertTrue(peak.celsius() > 100, "class B stands 100 C: " + peak);
        Finding finding = analysis.findings().stream()
                .filter(each -> each.rule().equals("conductor-over-ampacity"))
                .findFirst()
                .orElseThrow();
        assertEquals(Severity.WARNING, finding.severity());
        assertTrue(finding.message().contains("after 8 s in 'Boost'"), finding.message());
    }

    @Test
    void aSlowCycleIsJudgedOnItsPeakAndAFastOneOnItsMeanSquare() throws Exception {
        double steady = feed(analyse("", "true")).celsius();
        WireTemperature slow = feed(analyse(", \"cycle\": {\"periodSeconds\": 120}", "{\"dutyFraction\": 0.5}"))
                .temperature();
        WireTemperature fast = feed(analyse(", \"cycle\": {\"periodSeconds\": 1}", "{\"dutyFraction\": 0.5}"))
                .temperature();
        assertTrue(
                slow.heat().place().contains("peak of a cycle of 120 s"),
                slow.heat().place());
        assertFalse(fast.heat().place().contains("cycle"), fast.heat().place());
        // 12 A for half of the time: 8.49 A in the root mean square, half of the rise; the slow one comes near the rise
        // of 12 A
        assertEquals((steady - 30) / 2, fast.heat().celsius() - 30, 0.15 * (steady - 30));
        assertTrue(slow.heat().celsius() > fast.heat().celsius() + 5);
        assertTrue(slow.heat().celsius() < steady);
    }

    @Test
    void theSkinDepthIsCheckedAtTheFrequencyThatSwitches() throws Exception {
        Analysis analysis = analyse(", \"cycle\": {\"periodSeconds\": 0.005}", "{\"dutyFraction\": 0.5}");
        List<SkinCheck> checks = feed(analysis).temperature().skin();
        assertEquals(1, checks.size());
        assertEquals(200, checks.get(0).frequencyHertz(), 1e-6);
        assertFalse(checks.get(0).matters());
        // half on, half off: half of the square alternates
        WireTemperature feed = feed(analysis).temperature();
        double ohmsPerMetre = 24.7e-3 * (234.5 + feed.heat().celsius()) / 254.5;
        assertEquals(
                SkinEffect.extraHeatFraction(200, 0.5, ohmsPerMetre),
                checks.get(0).extraHeatFraction(),
                1e-9);
        assertTrue(analysis.log().text().contains("skin depth"), "the calculation log says so");
    }
}
