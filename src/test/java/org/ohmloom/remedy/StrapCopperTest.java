package org.ohmloom.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.ReturnTrial;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Strap;
import org.ohmloom.model.StrapId;

/** What the copper of a strap comes to. */
@BesideOthers
class StrapCopperTest {

    private static final double GRAM = 0.001;

    private final Analysis analysis = AnalysedExamples.of("teaching");

    private StrapCopper with(boolean existing, double ohms, OptionalDouble lengthMetres, OptionalDouble areaMm2) {
        Harness harness = analysis.harness()
                .withAll(List.of(
                        ground("GX1"),
                        ground("GX2"),
                        new Strap(
                                new StrapId("STX"),
                                "Strap",
                                new GroundPointId("GX1"),
                                new GroundPointId("GX2"),
                                ohms,
                                Optional.empty(),
                                existing,
                                Optional.empty(),
                                lengthMetres,
                                areaMm2)));
        return StrapCopper.of(ReturnTrial.of(analysis, Cancel.NEVER)
                .changed(harness, Cancel.NEVER)
                .evidence());
    }

    private GroundPoint ground(String id) {
        ChassisBodyId body = analysis.harness().bodies().ids().iterator().next();
        return new GroundPoint(
                new GroundPointId(id),
                id,
                body,
                0.001,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    @Test
    void lengthTimesSectionTimesDensity() {
        // 0.3 m x 25 mm2 = 7.5 cm3, at 8.89 g/cm3 66.7 g
        StrapCopper copper = with(false, 0.0003, OptionalDouble.of(0.3), OptionalDouble.of(25));
        assertEquals(0.3, copper.lengthMetres());
        assertEquals(0.0667, copper.copperKg(), GRAM);
        assertEquals(List.of(), copper.unknown());
    }

    @Test
    void withoutASectionTheLeastThatHasItsResistance() {
        // 0.01724 ohm mm2/m x 0.3 m / 0.0003 ohm = 17.2 mm2, 5.17 cm3, 46 g
        assertEquals(
                0.046,
                with(false, 0.0003, OptionalDouble.of(0.3), OptionalDouble.empty())
                        .copperKg(),
                GRAM);
    }

    @Test
    void oneInTheVehicleAlreadyTakesNoneAndOneWithoutALengthIsNamed() {
        assertEquals(
                0,
                with(true, 0.0003, OptionalDouble.of(0.3), OptionalDouble.of(25))
                        .copperKg());
        StrapCopper unknown = with(false, 0.0003, OptionalDouble.empty(), OptionalDouble.of(25));
        assertEquals(List.of("STX"), unknown.unknown());
        assertEquals(0, unknown.copperKg());
    }
}
