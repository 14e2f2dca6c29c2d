package org.ohmloom.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Harness;

/** Feeds with and without protective devices, from sources of several kinds. */
@BesideOthers
class ProtectionCasesTest {

    private static final String RULE = "feed-without-protection";
    private static final String BATTERY =
            "{\"kind\": \"battery\", \"emfVolts\": 12.6, \"internalOhms\": 0.005, \"capacityAmpHours\": 60}";

    @Test
    void aStarterThatIsSimplyOnWhileTheEngineCranksIsExempt() {
        Harness harness = Altered.of(Examined.within(RULE), "{\"starting\": true}", "true");
        assertEquals(List.of(), Examined.findings(harness, RULE));
    }

    @Test
    void theSameMotorAskedOnWhileDrivingIsNoStarter() {
        Harness harness = Altered.of(
                Examined.within(RULE),
                "\"mode\": \"cranking\"",
                "\"mode\": \"running\"",
                "{\"starting\": true}",
                "true");
        assertEquals(List.of("M1"), Examined.findings(harness, RULE).get(0).subjects());
    }

    /** The supply gives 60 A at most; 2.5 mm2 of class B in free air at 30 C may carry 35.2 A by heat balance less 10 %. */
    @Test
    void aSupplyThatLimitsItselfAboveWhatTheConductorMayCarryIsAWarning() {
        Harness harness = fedBySupply("60");
        Finding finding = Examined.findings(harness, RULE).get(0);
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals("No device protects W1, W2 (35.2 A) from BT1, which can give 60 A.", finding.message());
    }

    @Test
    void aSupplyThatLimitsItselfBelowThatNeedsNoDevice() {
        assertEquals(List.of(), Examined.findings(fedBySupply("35"), RULE));
    }

    private static Harness fedBySupply(String limitAmps) {
        return Altered.of(
                Examined.breaking(RULE),
                BATTERY,
                "{\"kind\": \"regulated-supply\", \"use\": \"bench-supply\", \"outputVolts\": 12.6, \"internalOhms\": 0.005,"
                        + " \"limitAmps\": " + limitAmps + "}",
                "\"mode\": \"off\",",
                "\"mode\": \"off\", \"sources\": {\"BT1\": true},");
    }

    /** The fan's 5 A ask for 5/0.8 = 6.25 A at least: the next rating is 7.5 A, well below the 17.4 A of W2. */
    @Test
    void theFixOfATooLargeFuseIsTheFuseThatItsLoadNeeds() {
        Harness harness = Examined.breaking("device-exceeds-conductor");
        Finding finding = Examined.findings(harness, "device-exceeds-conductor").get(0);
        String mended =
                finding.fix().orElseThrow().apply(harness).components().all().toString();
        assertTrue(mended.contains("ratingAmps=7.5"), mended);
    }

    @Test
    void aConverterThatLimitsItselfNeedsNoFuseAndItsLoadIsFedAndReturns() {
        Harness harness = throughConverter();
        assertEquals(
                List.of("W5, W6: two returns side by side; they share the current."),
                Examined.findings(harness).stream().map(Finding::message).toList());
    }

    /** The heater's feed passes a 5 A converter with a common return whose two negatives both lead to the battery. */
    private static Harness throughConverter() {
        return Altered.of(
                Examined.breaking("not-checked"),
                "\"ratedAmps\": 2",
                "\"ratedAmps\": 1",
                "      \"id\": \"L1\",",
                "      \"id\": \"K1\", \"name\": \"Converter\", \"device\": {\"kind\": \"converter\", \"outputVolts\": 12,"
                        + " \"outputOhms\": 0.01, \"limitAmps\": 5, \"efficiencyFraction\": 0.9}}, {\"id\": \"L1\",",
                "\"to\": {\"component\": \"L1\", \"terminal\": \"+\"},",
                "\"to\": {\"component\": \"L1\", \"terminal\": \"+\"}, \"lengthMetres\": 1,",
                "\"from\": {\"component\": \"F1\", \"terminal\": \"2\"}",
                "\"from\": {\"component\": \"K1\", \"terminal\": \"out+\"}",
                "      \"id\": \"W3\",",
                "      \"id\": \"W4\", \"from\": {\"component\": \"F1\", \"terminal\": \"2\"}, \"to\": {\"component\": \"K1\","
                        + " \"terminal\": \"in+\"}, \"gauge\": \"1.5 mm2\", \"lengthMetres\": 1, \"signalClass\": \"feed\"},"
                        + " {\"id\": \"W5\", \"from\": {\"component\": \"K1\", \"terminal\": \"in-\"}, \"to\": {\"component\":"
                        + " \"BT1\", \"terminal\": \"-\"}, \"gauge\": \"1.5 mm2\", \"lengthMetres\": 1, \"signalClass\":"
                        + " \"return\"}, {\"id\": \"W6\", \"from\": {\"component\": \"K1\", \"terminal\": \"out-\"}, \"to\":"
                        + " {\"component\": \"BT1\", \"terminal\": \"-\"}, \"gauge\": \"1.5 mm2\", \"lengthMetres\": 1,"
                        + " \"signalClass\": \"return\"}, {\"id\": \"W3\",");
    }
}
