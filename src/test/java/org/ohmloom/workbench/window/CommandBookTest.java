package org.ohmloom.workbench.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.swing.Action;
import org.junit.jupiter.api.Test;
import org.ohmloom.workbench.Stage;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.command.CommandSearch;
import org.ohmloom.workbench.command.PlainCommand;
import org.ohmloom.workbench.widget.Keys;

/** Every command is known, reachable and has keys of its own. */
class CommandBookTest {

    private static final String GOLDEN =
            """
            new-guided | New harness, guided… | Ctrl+N
            new-empty | New empty harness | Ctrl+Shift+N
            open-file | Open… | Ctrl+O
            open-example-teaching | Teaching harness |
            open-example-star-ground | Star ground |
            open-example-rescue-pickup | Rescue pickup |
            open-example-workboat | Workboat console |
            open-example-faults | Deliberate faults |
            save | Save | Ctrl+S
            save-as | Save as… | Ctrl+Shift+S
            export-pack | Build pack… | Ctrl+E
            print | Print… | Ctrl+P
            take-in-values | Take in measured values… |
            compare-file | Compare with a file… |
            compare-saved | Changes since saved |
            close-file | Close | Ctrl+W
            new-window | New window | Ctrl+Alt+N
            same-in-window | Same harness in a new window |
            close-window | Close window | Ctrl+Shift+W
            quit | Quit | Ctrl+Q
            undo | Undo | Ctrl+Z
            redo | Redo | Ctrl+Shift+Z
            change-list | List of changes… | Ctrl+Alt+Z
            settings | Settings… | Ctrl+Comma
            apply-fix | Fix | Ctrl+.
            try-remedies | Remedies… |
            preview-fix | What the fix changes… |
            fix-kind | Fix all of a kind… |
            accept-finding | Accept finding… |
            reopen-finding | Open finding again |
            new-load-group | Group the selected loads |
            new-sequence | New sequence of states |
            add-row | Add to the list… | Ctrl+Insert
            copy-rows | Add another of the selected | Ctrl+Shift+Insert
            take-out | Take out the selected | Ctrl+Delete
            fill-down | Fill down |
            find-replace | Find and replace… | Ctrl+H
            rename-pattern | Rename by a pattern… | Ctrl+R
            choose-columns | Choose columns… |
            filter-rows | Filter rows | Ctrl+F
            fit-layout | Fit layout | Ctrl+0
            zoom-in | Zoom in | Ctrl+=
            zoom-out | Zoom out | Ctrl+-
            show-selection | Show selection on layout | Ctrl+J
            numbers-none | No numbers | Ctrl+Shift+1
            numbers-current | Current | Ctrl+Shift+2
            numbers-drop | Drop | Ctrl+Shift+3
            numbers-temperature | Temperature | Ctrl+Shift+4
            numbers-size | Size | Ctrl+Shift+5
            numbers-margin | Margin | Ctrl+Shift+6
            numbers-diameter | Diameter | Ctrl+Shift+7
            show-heat | Shade by the number | Ctrl+Shift+8
            show-wires | Draw single wires |
            look | Dark | Ctrl+Shift+D
            tool-select | Select and move | Ctrl+Shift+A
            tool-lasso | Lasso | Ctrl+Shift+L
            tool-component | Place component | Ctrl+Shift+C
            tool-connector | Place connector | Ctrl+Shift+X
            tool-ground | Drop ground point | Ctrl+Shift+G
            tool-breakout | Place breakout | Ctrl+Shift+B
            tool-segment | Draw segment | Ctrl+Shift+E
            tool-wire | Draw wire | Ctrl+Shift+I
            tool-splice | Insert splice | Ctrl+Shift+J
            tool-zone | Paint zone | Ctrl+Shift+O
            tool-hang | Hang at breakout | Ctrl+Shift+H
            snap-grid | Snap to grid | Ctrl+Shift+R
            board-cut | Cut from layout |
            board-copy | Copy from layout |
            board-paste | Paste on layout |
            duplicate | Duplicate on layout |
            align-left | Align left sides |
            align-centre | Align centres |
            align-right | Align right sides |
            align-top | Align upper sides |
            align-middle | Align middles |
            align-bottom | Align lower sides |
            share-across | Share out sideways |
            share-down | Share out downwards |
            mirror-across | Mirror left and right |
            mirror-down | Mirror top and bottom |
            turn-clockwise | Turn clockwise |
            turn-anticlockwise | Turn anticlockwise |
            put-on-grid | Put on the grid |
            select-all | Select everything on layout |
            focus-layout | Layout | Ctrl+1
            focus-lists | Lists | Ctrl+2
            focus-inspector | Inspector | Ctrl+3
            focus-findings | Findings | Ctrl+4
            focus-studies | Studies | Ctrl+5
            next-pane | Next view | F6
            move-divider | Move a divider | Shift+F6
            study-currents | Currents |
            study-protection | Protection |
            study-start-up | Start-up |
            study-charge | Charge |
            study-combinations | Worst case |
            study-duty | Duty |
            study-duty-range | Duty range |
            study-conductors | Conductors |
            study-returns | Returns |
            study-tolerance | Tolerance |
            study-pin-view | Pin view |
            study-channels | Channels |
            study-state-matrix | State matrix |
            study-fabrication | Fabrication |
            study-as-built | As-built |
            study-revision | Compare |
            study-what-if | What if |
            next-finding | Next finding | F8
            previous-finding | Previous finding | Shift+F8
            next-state | Next operating state | Alt+Page Down
            previous-state | Previous operating state | Alt+Page Up
            recalculate | Calculate again | F5
            stop-calculating | Stop calculating | Shift+F5
            begin-side-copy | Try on a side copy | Ctrl+T
            keep-side-copy | Keep side copy | Ctrl+Shift+K
            drop-side-copy | Drop side copy | Ctrl+Shift+Backspace
            take-up-side-copy | Take up dropped side copy |
            show-log | Calculation log | Ctrl+L
            help-here | Manual: what is in front | F1
            open-manual | Manual | Ctrl+K
            find-command | Find a command… | Ctrl+Shift+P
            show-keys | Keys | Ctrl+Shift+F1
            show-cautions | Cautions | Shift+F1
            about | About Ohmloom | Ctrl+I
            """;

    private final Stage stage = new Stage();

    @Test
    void theListOfCommandsIsTheOneAgreed() {
        String found = stage.view.book().all().stream()
                .map(command -> (command.id() + " | " + command.name() + " | "
                                + command.keys().map(Keys::text).orElse(""))
                        .stripTrailing())
                .collect(Collectors.joining("\n", "", "\n"));
        assertEquals(GOLDEN.lines().map(String::stripTrailing).collect(Collectors.joining("\n", "", "\n")), found);
    }

    @Test
    void twoCommandsNeverShareTheirKeys() {
        Command one = command("one", 'X');
        Command other = command("other", 'X');
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> new CommandBook(List.of(one, other), stage.desk(), note -> {}));
        assertTrue(refused.getMessage().contains("Ctrl+X"), refused.getMessage());
    }

    @Test
    void keysOfTextFieldsStayTheirs() {
        Set<String> keys = stage.view.book().all().stream()
                .flatMap(command -> command.keys().stream())
                .map(Keys::text)
                .collect(Collectors.toSet());
        for (String ofTexts : List.of("Ctrl+A", "Ctrl+C", "Ctrl+V", "Ctrl+X", "Delete", "Home", "End")) {
            assertTrue(!keys.contains(ofTexts), ofTexts);
        }
    }

    @Test
    void everyCommandStandsInAMenuOnce() {
        List<String> inMenus = new ArrayList<>();
        MenuPlan.MENUS.forEach(menu -> menu.ids().stream()
                .filter(id -> !Set.of(MenuPlan.LINE, MenuPlan.RECENT, MenuPlan.EXAMPLES)
                        .contains(id))
                .forEach(inMenus::add));
        assertEquals(inMenus.size(), new HashSet<>(inMenus).size());
        Set<String> expected = stage.view.book().all().stream()
                .map(Command::id)
                .filter(id -> !id.startsWith("open-example-"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(expected, new TreeSet<>(inMenus));
    }

    @Test
    void lettersUnderlinedInAMenuDiffer() {
        for (MenuPlan.Menu menu : MenuPlan.MENUS) {
            Set<Object> letters = new HashSet<>(Set.of((int) 'R', (int) 'E'));
            if (!menu.title().equals("File")) {
                letters.clear();
            }
            menu.ids().stream()
                    .filter(id -> !Set.of(MenuPlan.LINE, MenuPlan.RECENT, MenuPlan.EXAMPLES)
                            .contains(id))
                    .map(stage.view.book()::get)
                    .filter(command -> command.getValue(Action.MNEMONIC_KEY) != null)
                    .forEach(command -> assertTrue(
                            letters.add(command.getValue(Action.MNEMONIC_KEY)), menu.title() + ": " + command.id()));
        }
    }

    @Test
    void aCommandThatMakesNoSenseIsDisabledAndSaysWhy() {
        Command save = stage.view.book().get("save");
        assertTrue(!save.isEnabled());
        assertTrue(String.valueOf(save.getValue(Action.SHORT_DESCRIPTION)).contains("no harness is open"));
    }

    @Test
    void aCommandIsFoundByAFewLetters() {
        List<Command> found = CommandSearch.matches(stage.view.book().all(), "pin tab");
        assertEquals(List.of("export-pack"), found.stream().map(Command::id).toList());
    }

    @Test
    void examplesAreFoundByWhatIsDoneWithThem() {
        List<Command> found = CommandSearch.matches(stage.view.book().all(), "open example teaching");
        assertEquals(
                List.of("open-example-teaching"),
                found.stream().map(Command::id).toList());
        assertTrue(found.get(0).listed().startsWith("Open example: "), found.get(0)::listed);
        assertEquals("Open example: " + found.get(0).name(), found.get(0).listed());
        Command save = stage.view.book().get("save");
        assertEquals(save.name(), save.listed());
    }

    private static Command command(String id, char key) {
        return new PlainCommand(id, id, "about " + id, Keys.menu(key), key, () -> {});
    }
}
