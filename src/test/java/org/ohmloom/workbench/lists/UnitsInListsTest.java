package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.Session;
import org.ohmloom.edit.SetWireLength;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.units.ShownUnits.Decimals;
import org.ohmloom.units.ShownUnits.Lengths;
import org.ohmloom.units.ShownUnits.Sizes;
import org.ohmloom.units.ShownUnits.Temperatures;
import org.ohmloom.workbench.desk.Examples;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.BlockPaste;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.SheetModel;

/** The list of wires of the teaching harness read and typed in other units than it is written in. 1 ft = 0.3048 m, exact. */
class UnitsInListsTest {

    private static final int CONDUCTOR = 3;
    private static final int LENGTH = 4;
    private static final ShownUnits AMERICAN =
            new ShownUnits(Sizes.AWG, Lengths.FEET, Temperatures.FAHRENHEIT, Decimals.POINT);
    private static final ShownUnits COMMA =
            new ShownUnits(Sizes.AS_NAMED, Lengths.METRIC, Temperatures.CELSIUS, Decimals.COMMA);

    private ShownUnits units = ShownUnits.USUAL;
    private Session session;
    private SheetModel<WireSheet.Row> model;

    @BeforeEach
    void openTeaching() throws HarnessFileException {
        session = Examples.open("teaching").session();
        model = new SheetModel<>(new WireSheet(), session::apply, () -> units);
        session.listen((before, after) -> show());
        show();
    }

    private void show() {
        Harness harness = session.current();
        Readout readout = new Readout(harness, Optional.empty(), Optional.empty());
        model.show(new WireSheet().rows(readout), readout.isCurrent());
    }

    private int row(String wire) {
        return model.rowOf(wire);
    }

    private OptionalDouble metres(String wire) {
        return session.current().wires().get(new WireId(wire)).lengthMetres();
    }

    @Test
    void headsAndCellsFollowTheUnitsWithoutAnyChangeOfTheHarness() {
        Harness before = session.current();
        assertEquals("0.15", model.getValueAt(row("W1"), LENGTH).text());
        assertEquals("1.5 mm²", model.getValueAt(row("W4"), CONDUCTOR).text());
        units = AMERICAN;
        assertEquals("Length (ft)", model.getColumnName(LENGTH));
        assertEquals("0.492", model.getValueAt(row("W1"), LENGTH).text(), "0.15 / 0.3048 = 0.49213");
        assertEquals("≈15 AWG", model.getValueAt(row("W4"), CONDUCTOR).text(), "15 AWG has 1.650 mm2, 16 AWG 1.309");
        units = COMMA;
        assertEquals("0,15", model.getValueAt(row("W1"), LENGTH).text());
        assertEquals("1,5 mm²", model.getValueAt(row("W4"), CONDUCTOR).text());
        assertSame(before, session.current());
        assertFalse(session.isChanged());
    }

    @Test
    void aCellIsWrittenOnceUntilTheRowsOrTheUnitsChange() {
        CellText before = model.getValueAt(row("W1"), LENGTH);
        assertSame(before, model.getValueAt(row("W1"), LENGTH));
        units = AMERICAN;
        assertEquals("0.492", model.getValueAt(row("W1"), LENGTH).text());
        units = ShownUnits.USUAL;
        session.apply(new SetWireLength(List.of(new WireId("W1")), OptionalDouble.of(0.25)));
        assertEquals("0.25", model.getValueAt(row("W1"), LENGTH).text());
    }

    @Test
    void typedNumbersAreInTheUnitShownOrInTheOneBehindThem() {
        units = AMERICAN;
        model.setValueAt("3", row("W4"), LENGTH);
        assertEquals(OptionalDouble.of(0.9144), metres("W4"));
        model.setValueAt("18 in", row("W4"), LENGTH);
        assertEquals(OptionalDouble.of(0.4572), metres("W4"));
        model.setValueAt("1,5 m", row("W4"), LENGTH);
        assertEquals(OptionalDouble.of(1.5), metres("W4"));
        model.setValueAt("16", row("W4"), CONDUCTOR);
        assertEquals(
                Optional.of(Gauge.awg(16)),
                session.current().wires().get(new WireId("W4")).gauge());
        model.setValueAt("1,5 mm²", row("W4"), CONDUCTOR);
        assertEquals(
                Optional.of(Gauge.metric(1.5)),
                session.current().wires().get(new WireId("W4")).gauge());
        assertThrows(IllegalArgumentException.class, () -> model.setValueAt("≈15 AWG", row("W4"), CONDUCTOR));
        units = COMMA;
        model.setValueAt("1,234", row("W4"), LENGTH);
        assertEquals(OptionalDouble.of(1.234), metres("W4"));
    }

    @Test
    void aCellLeftAsItWasKeepsEveryBitAndMakesNoStep() {
        double third = 1.0 / 3;
        session.apply(new SetWireLength(List.of(new WireId("W4")), OptionalDouble.of(third)));
        Harness before = session.current();
        units = AMERICAN;
        for (int column : List.of(CONDUCTOR, LENGTH)) {
            for (int row = 0; row < model.getRowCount(); row++) {
                String start = model.getValueAt(row, column).exact();
                session.apply(BlockPaste.of(model, List.of(row), List.of(column), start));
            }
        }
        assertSame(before, session.current(), "what is copied in feet and pasted back is the same");
        assertEquals(third, metres("W4").orElseThrow());
    }
}
