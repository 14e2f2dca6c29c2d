package org.ohmloom.signal.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinGroup;
import org.ohmloom.model.PinRole;

/** Control units from sheets a person writes. */
@BesideOthers
class UnitSheetTest {

    private static final String SHEET =
            """
            # title: Small unit
            # source: data sheet, invented
            # drawAmps: 0.2
            # nameCharacters: 8
            # group drivers: 5
            pin,role,connector,cavity,limitAmps,pullUpVolts,pullUpOhms,lowestVolts,highestVolts,group
            AN1,analogue-input,A,1,,,,0,5,
            AN1,thermistor-input,,,,5,2200,,,
            LS1,low-side-output,A,2,3,,,,,drivers
            LS2,low-side-output,A,3,3,,,,,drivers
            """;

    private static UnitDescription read(String text) throws Exception {
        return UnitSheet.read(text, "small.csv");
    }

    @Test
    void linesOfOnePinAreItsUsesAndTheFirstIsHowItIsDelivered() throws Exception {
        UnitDescription description = read(SHEET);
        ControlUnit unit = description.unit();
        Pin pin = unit.pin("AN1").orElseThrow();
        assertEquals(PinRole.ANALOGUE_INPUT, pin.role());
        assertEquals(Set.of(PinRole.ANALOGUE_INPUT, PinRole.THERMISTOR_INPUT), pin.capabilities());
        assertEquals(
                OptionalDouble.of(2200), pin.setUpAs(PinRole.THERMISTOR_INPUT).pullUpOhms());
        assertEquals(OptionalDouble.empty(), pin.pullUpOhms());
        assertEquals(List.of(new PinGroup("drivers", List.of("LS1", "LS2"), 5)), unit.groups());
        assertEquals(Optional.of(8), unit.nameCharacters());
        assertEquals("small", description.name());
        assertEquals("{A={1=AN1, 2=LS1, 3=LS2}}", description.connectors().toString());
    }

    @Test
    void theSameSheetWithSemicolonsAndDecimalCommasIsTheSameUnit() throws Exception {
        String german = SHEET.replace(',', ';').replace("data sheet; invented", "data sheet, invented");
        assertEquals(
                read(SHEET).unit(),
                read(german.replace(";3;;;;;drivers", ";3,0;;;;;drivers")).unit());
    }

    /** Each mistake is told in one line with its place and what would be right. */
    @Test
    void aMistakeIsToldInOneLineWithItsPlace() {
        refused(
                SHEET.replace("thermistor-input", "thermister-input"),
                "small.csv, line 8, column role: 'thermister-input' is none of supply, ",
                "did you mean 'thermistor-input'?");
        refused(SHEET.replace(",2200,", ",2k2,"), "small.csv, line 8, column pullUpOhms: '2k2' is no number;", "unit");
        refused(SHEET.replace("# group drivers: 5\n", ""), "small.csv: the limit of group drivers is missing;", "12 A");
        refused(
                SHEET.replace("drawAmps", "draw"),
                "small.csv, line 3: 'draw' is no head of a control unit;",
                "drawAmps");
        refused(SHEET.replace("drawAmps", "dr[aw"), "small.csv, line 3: 'dr[aw' is no head of a control unit;", "draw");
        refused(SHEET.replace("pullUpOhms", "pullup"), "small.csv: no column is called 'pullup';", "pullUpOhms");
        refused(
                SHEET.replace("LS2,low-side-output,A,3", "LS2,low-side-output,A,2"),
                "small.csv, line 10, column cavity",
                "");
        refused(SHEET.replace("0,5,", "5,0,"), "small.csv, line 7, pin AN1: the highest value", "");
        refused("pin,role\n", "small.csv: no pin is listed", "");
    }

    private static void refused(String text, String start, String within) {
        String message =
                assertThrows(UnitSheetException.class, () -> read(text)).getMessage();
        assertTrue(message.startsWith(start), message);
        assertTrue(message.contains(within), message);
        assertEquals(1, message.lines().count(), message);
    }

    @Test
    void everyUnitThatComesWithTheProgramIsInventedAndWhole() {
        List<UnitDescription> shipped = UnitLibrary.shipped();
        assertEquals(
                UnitLibrary.NAMES, shipped.stream().map(UnitDescription::name).toList());
        for (UnitDescription each : shipped) {
            assertTrue(each.source().startsWith("invented"), each.name());
            long placed = each.connectors().values().stream()
                    .mapToLong(cavities -> cavities.size())
                    .sum();
            assertEquals(each.unit().pins().size(), placed, each.name());
            assertTrue(each.unit().pinsOf(PinRole.SUPPLY).findAny().isPresent(), each.name());
            assertTrue(each.unit().pinsOf(PinRole.GROUND).findAny().isPresent(), each.name());
        }
    }
}
