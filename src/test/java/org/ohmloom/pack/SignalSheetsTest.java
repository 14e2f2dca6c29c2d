package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.TableFile;

/** The channel, calibration and bus sheets of the rescue pickup, as they stand in their files. */
@BesideOthers
class SignalSheetsTest {

    private static final Analysis PICKUP = AnalysedExamples.of("rescue-pickup");
    private static final SceneFonts FONTS = SceneFonts.load();

    private static List<String> lines(Report report, String file) {
        Map<String, String> texts = TableFile.texts(report);
        return texts.get(file).lines().toList();
    }

    @Test
    void everySensorHasItsLineWithPinRateColoursAndSetUp() {
        List<String> lines = lines(new ChannelSheet(PICKUP).report(), "channels");
        assertEquals(1 + 10, lines.size());
        String oil = lines.stream()
                .filter(line -> line.startsWith("U1,AN1,"))
                .findFirst()
                .orElseThrow();
        assertTrue(oil.contains("Oil pressure,B1"), oil);
        assertTrue(oil.contains(",100,M1 on CAN1,"), oil);
        assertTrue(oil.contains("PK, BU, GN"), oil);
        assertTrue(oil.contains("10 % to 90 % of 5 V from 0 to 10 bar"), oil);
    }

    @Test
    void everyPinOfEachUnitIsInThePlanOnce() {
        List<String> lines = lines(new ChannelSheet(PICKUP).report(), "pins");
        long pins = PICKUP.harness().components().all().stream()
                .filter(each -> each.device() instanceof ControlUnit)
                .mapToLong(each -> each.device().terminals().size())
                .sum();
        assertEquals(1 + pins, lines.size());
        assertTrue(
                lines.stream().anyMatch(line -> line.startsWith("N1,AN1,analogue input,Fuel pressure,X12.6,W108,BU,")));
    }

    /** R = 2500 exp(3500 (1/T - 1/293.15)) at 0 deg C is 5992 ohm, and 5 V over 1 kohm leave 5 x 5992 / 6992 = 4.285 V. */
    @Test
    void theCalibrationSheetHasThePointsOfAThermistor() {
        String line = lines(new CalibrationSheet(PICKUP, FONTS).report(), "points").stream()
                .filter(each -> each.startsWith("B5,U1.TH1,0,"))
                .findFirst()
                .orElseThrow();
        String[] cells = line.split(",");
        assertEquals(2500 * Math.exp(3500 * (1 / 273.15 - 1 / 293.15)), Double.parseDouble(cells[4]), 1e-6);
        assertEquals(4.285, Double.parseDouble(cells[6]), 0.0005);
    }

    /**
     * 500 kbit/s: Commands of 8 bytes has 135 bits, 0.27 ms, behind another of 135 bits: 0.54 ms. At rest two 120 ohm with 0.323 ohm of
     * wire between them read 120 x 120.323 / 240.323 = 60.1 ohm.
     */
    @Test
    void theBusSheetTellsWhatAMeterReadsAndHowLateEachMessageCanCome() {
        Report report = new BusSheet(PICKUP, FONTS).report();
        List<String> messages = lines(report, "messages");
        assertTrue(messages.get(1).startsWith("CAN1,Commands,0x200,U1,"), messages.get(1));
        assertTrue(messages.get(1).endsWith("135,0.27,0.27,0.54,20"), messages.get(1));
        assertEquals(
                List.of(
                        "CAN1,120,\"inner resistor of U1, switched on\",U1.CANH,U1.CANL,,",
                        "CAN1,120,\"inner resistor of N1, switched on\",N1.CANH,N1.CANL,,"),
                lines(report, "terminations").subList(1, 3));
        for (String node : lines(report, "nodes").subList(1, 3)) {
            String[] cells = node.split(",");
            double rest = Double.parseDouble(cells[cells.length - (node.endsWith(",") ? 1 : 2)]);
            assertEquals(60.1, rest, 0.05, node);
        }
    }
}
