package org.ohmloom.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a shop needs to know of parts, connectors and joints; the impossible is refused. */
class WorkshopFieldsTest {

    private static Part part(double unitPrice, String... alternates) {
        return new Part(
                new PartId("EX-1"),
                "Example",
                "2-way housing",
                OptionalDouble.empty(),
                Optional.of("Example stores"),
                Optional.of("100-1"),
                OptionalDouble.of(unitPrice),
                List.of(alternates),
                false);
    }

    private static void refused(String line, org.junit.jupiter.api.function.Executable what) {
        assertEquals(line, assertThrows(IllegalArgumentException.class, what).getMessage());
    }

    @Test
    void aPriceIsZeroOrMore() {
        assertEquals(0, part(0).unitPrice().orElseThrow());
        refused("price of part EX-1 must be 0 or more, was -0.01", () -> part(-0.01));
        refused("price of part EX-1 must be 0 or more, was NaN", () -> part(Double.NaN));
        refused("price of part EX-1 must be 0 or more, was Infinity", () -> part(Double.POSITIVE_INFINITY));
    }

    @Test
    void anAlternateIsAnotherPartAndStandsOnce() {
        assertEquals(
                List.of("EX-2", "any of 2.8 mm"),
                part(1, "EX-2", "any of 2.8 mm").alternates());
        refused("part EX-1 cannot be its own alternate", () -> part(1, "EX-1"));
        refused("alternates of part EX-1 repeat: [EX-2, EX-2]", () -> part(1, "EX-2", "EX-2"));
        refused("alternate of part EX-1 must not be blank, was ' '", () -> part(1, " "));
    }

    @Test
    void aClassOfWorkmanshipIsOneToThreeAndWasteAShare() {
        Optional<Integer> two = Optional.of(2);
        FabricationRules rules = FabricationRules.NONE.withWorkshop(two, OptionalDouble.of(0.1), Optional.of("EUR"));
        assertEquals(two, rules.workmanshipClass());
        assertEquals(two, rules.withRouting(List.of()).workmanshipClass());
        refused(
                "class of workmanship must be from 1 to 3, was 4",
                () -> rules.withWorkshop(Optional.of(4), OptionalDouble.empty(), Optional.empty()));
        refused(
                "waste of wire must be from 0.0 to 1.0, was NaN",
                () -> rules.withWorkshop(two, OptionalDouble.of(Double.NaN), Optional.empty()));
        refused(
                "currency must not be blank, was ''",
                () -> rules.withWorkshop(two, OptionalDouble.empty(), Optional.of("")));
    }

    @Test
    void aGridSeenFromTheOtherSideIsItsMirrorImage() {
        CavityGrid grid = new CavityGrid(CavityGrid.Side.MATING_SIDE, 3, List.of("1", "2", "3", "", "4"));
        assertEquals(List.of(List.of("1", "2", "3"), List.of("", "4", "")), grid.rows(CavityGrid.Side.MATING_SIDE));
        assertEquals(List.of(List.of("3", "2", "1"), List.of("", "4", "")), grid.rows(CavityGrid.Side.WIRE_SIDE));
    }

    @Test
    void aGridHoldsEveryCavityOfItsConnectorOnceAndNothingElse() {
        refused("names in a grid of cavities repeat: [1, 1]", () -> grid("1", "1"));
        refused("the grid of connector X1 has no cavity '3'", () -> connector(grid("1", "2", "3")));
        refused("cavity '2' of connector X1 has no place in its grid", () -> connector(grid("1", "")));
        assertEquals(Optional.of(grid("2", "1")), connector(grid("2", "1")).grid());
        assertEquals(
                Optional.of(grid("2", "1")),
                connector(grid("2", "1")).withCavity(Cavity.of("1", "B", "C2")).grid());
    }

    private static CavityGrid grid(String... places) {
        return new CavityGrid(CavityGrid.Side.WIRE_SIDE, 2, List.of(places));
    }

    private static Connector connector(CavityGrid grid) {
        return new Connector(
                new ConnectorId("X1"),
                "lamp",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(Cavity.of("1", "A", "C1"), Cavity.of("2", "B", "C1")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.of(grid));
    }

    @Test
    void aSpliceMovedAndAGroundWithAnotherJointKeepWhatIsSaidOfThem() {
        Splice splice = new Splice(
                new SpliceId("S1"),
                "feed",
                0,
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.of(Splice.Form.END),
                Optional.of(true),
                Optional.of("adhesive sleeve"));
        Place place = new Place.AtBreakout(new BreakoutId("B1"));
        Splice moved = splice.withPlace(place);
        assertEquals(Optional.of(place), moved.place());
        assertEquals(
                List.of(splice.form(), splice.sealed(), splice.cover()),
                List.of(moved.form(), moved.sealed(), moved.cover()));
        GroundPoint ground = new GroundPoint(
                new GroundPointId("G1"),
                "frame",
                new ChassisBodyId("FRAME"),
                0.001,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.of(2),
                OptionalDouble.of(8),
                Optional.of("9 Nm by the maker's sheet"));
        GroundPoint cleaned = ground.withJointOhms(0.0002);
        assertEquals(0.0002, cleaned.jointOhms());
        assertEquals(
                List.of(ground.studs(), ground.studMm(), ground.torque()),
                List.of(cleaned.studs(), cleaned.studMm(), cleaned.torque()));
    }
}
