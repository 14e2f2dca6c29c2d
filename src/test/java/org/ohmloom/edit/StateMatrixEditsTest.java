package org.ohmloom.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Switch;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;

/** What is typed into the matrix of operating states. */
class StateMatrixEditsTest {

    private static final Load LOAD = Load.of(new Draw.Resistive(5, 12));
    private static final Switch SWITCH = new Switch(List.of("low", "high"), 0.001, 20, OptionalDouble.empty());
    private static final Battery BATTERY = new Battery(12.6, 0.01, 90, Optional.empty());
    private static final Alternator ALTERNATOR = new Alternator(14.2, 0.01, 100, Optional.empty());

    private static Harness example(String name) throws HarnessFileException {
        return HarnessFiles.read(Path.of("examples", name + HarnessFiles.ENDING));
    }

    @ParameterizedTest
    @CsvSource({
        "on, true, 1",
        "off, false, 1",
        "40 %, true, 0.4",
        "'12,5 %', true, 0.125",
        "40, true, 0.4",
        "7 %, true, 0.07",
        "100, true, 1",
        "0, false, 1"
    })
    void aDutyIsTypedInPercentWithEitherDecimalSign(String typed, boolean on, double dutyFraction) {
        Setting setting = SettingText.read(typed, LOAD).orElseThrow();
        assertEquals(on, setting.on());
        assertEquals(dutyFraction, setting.dutyFraction());
        assertEquals(Optional.of(setting), SettingText.read(SettingText.of(setting), LOAD));
    }

    @Test
    void aDutyIsWrittenAsItIsTyped() {
        // 0.07 x 100 is 7.000000000000001 in doubles
        assertEquals("7 %", SettingText.of(Setting.duty(0.07)));
        assertEquals("12.5 %", SettingText.of(Setting.duty(0.125)));
    }

    @Test
    void aSwitchTakesItsPositionsWithOrWithoutADuty() {
        assertEquals(Optional.of(Setting.at("high")), SettingText.read("HIGH", SWITCH));
        Setting half = SettingText.read("low 50 %", SWITCH).orElseThrow();
        assertEquals(new Setting(true, 0.5, Optional.of("low"), false), half);
        assertEquals("low 50 %", SettingText.of(half));
        assertEquals(Optional.of(Setting.start()), SettingText.read("start", LOAD));
        assertEquals(Optional.empty(), SettingText.read(" ", LOAD));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "0.4 | '0.4' may mean a share or a percentage; write 0.4 % or a number from 1",
                "140 % | a duty is more than 0 % and at most 100 %, not '140 %'",
                "often | 'often' is no setting; write on, off, start or a duty such as 40 %, or a position: low, high"
            })
    void whatIsNoSettingIsRefusedWithWhatWouldBeRight(String typed, String message) {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> SettingText.read(typed, SWITCH));
        assertEquals(message, refused.getMessage());
    }

    @Test
    void aSourceTakesItsWordsInAnyOrder() {
        SourceSetting cold = SourceText.read("-10 °C; on; 80 %", BATTERY).orElseThrow();
        assertEquals(SourceSetting.ON.withChargeFraction(0.8).withCelsius(-10), cold);
        assertEquals("on; 80 %; -10 °C", SourceText.of(cold));
        SourceSetting fast = SourceText.read("3000 rpm, 60 A", ALTERNATOR).orElseThrow();
        assertEquals("on; 3000 rpm; 60 A", SourceText.of(fast));
        assertEquals(Optional.of(SourceSetting.OFF), SourceText.read("off", ALTERNATOR));
        assertThrows(IllegalArgumentException.class, () -> SourceText.read("3000 rpm", BATTERY));
        assertThrows(IllegalArgumentException.class, () -> SourceText.read("80 %", ALTERNATOR));
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat", "rescue-pickup"})
    void everyCellCanBeTypedAgainAsItIsWritten(String name) throws HarnessFileException {
        Harness harness = example(name);
        int filled = 0;
        for (StateSubject subject : StateSubject.all(harness)) {
            for (OperatingState state : harness.states().all()) {
                String written = subject.written(state);
                filled += written.isEmpty() ? 0 : 1;
                assertEquals(state, subject.typed(harness, state, written), subject.text() + " in " + state.id());
            }
        }
        int set = harness.states().all().stream()
                .mapToInt(state -> state.sources().size()
                        + state.components().size()
                        + state.outputs().size())
                .sum();
        assertEquals(set, filled, "everything the states set stands in the matrix");
    }

    @Test
    void severalCellsAreSetAsOneStep() throws HarnessFileException {
        Harness before = example("teaching");
        StateSubject heater = new StateSubject.Switched(new ComponentId("H1"));
        List<SetInStates.Cell> cells = List.of(
                new SetInStates.Cell(heater, new StateId("both")), new SetInStates.Cell(heater, new StateId("off")));
        SetInStates edit = SetInStates.of(before, cells, "25 %");
        Harness after = edit.apply(before);
        assertEquals("Set 2 cells of the states to 25 %", edit.label().english());
        for (SetInStates.Cell cell : cells) {
            assertEquals(
                    Optional.of(Setting.duty(0.25)),
                    after.states().get(cell.state()).setting(new ComponentId("H1")));
        }
        Harness cleared = SetInStates.of(after, cells, "").apply(after);
        assertTrue(cleared.states()
                .get(new StateId("both"))
                .setting(new ComponentId("H1"))
                .isEmpty());
        assertFalse(cleared.states().get(new StateId("both")).components().isEmpty());
        assertThrows(IllegalArgumentException.class, () -> SetInStates.of(before, cells, "warm"));
    }

    @Test
    void everyKindThatCanBeSwitchedHasARow() throws HarnessFileException {
        Harness harness = example("rescue-pickup");
        List<String> rows =
                StateSubject.all(harness).stream().map(StateSubject::text).toList();
        harness.components().all().forEach(component -> {
            Device device = component.device();
            if (device.isSource() || device instanceof Load || device instanceof Switch) {
                assertTrue(rows.contains(component.id().value()), component.id() + " has a row");
            }
        });
        assertEquals(rows.size(), rows.stream().distinct().count(), "each once");
    }
}
