package org.ohmloom.workbench.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.swing.JTable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.StateSubject;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.review.Severity;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.wiring.OutputOff;
import org.ohmloom.workbench.CountedHand;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.Workbench;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.settings.Look;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.window.WorkbenchWindow;

/**
 * The rescue pickup, planned by hand in the real window from nothing but the list of its sensors and two units: to pins, wires, colours and
 * lengths. Skipped where there is no display.
 */
class RefitByHandTest {

    /** Most clicks, drags, shortcuts and field entries it may take. */
    private static final int MOST_ACTIONS = 80;

    private WorkbenchWindow window;

    @BeforeEach
    void openThePickupWithoutSensors() throws Exception {
        Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
        PreferenceStore preferences = PreferenceStore.inMemory(Preferences.DEFAULT.withCautionsRead());
        Harness bare = BarePickup.withoutUnits();
        window = OnEventThread.get(() -> {
            Look.LIGHT.install();
            WorkbenchWindow made = Workbench.window(preferences, () -> {});
            made.setSize(1280, 800);
            made.setVisible(true);
            made.setSize(1280, 800);
            made.view().desk().open(Document.unsaved(bare, "refit"));
            return made;
        });
        awaitResults();
    }

    /** Waits for currents and their findings, longer than for anything a person waits for at the window. */
    private void awaitResults() {
        for (int patience = 0; patience < 5 && !OnEventThread.get(() -> desk().isCurrent()); patience++) {
            try {
                OnEventThread.await("results", () -> desk().isCurrent());
            } catch (AssertionError slow) {
                if (patience == 4) {
                    throw slow;
                }
            }
        }
    }

    @AfterEach
    void closeTheWindow() {
        if (window != null) {
            OnEventThread.run(() -> {
                desk().stopCalculating();
                window.dispose();
            });
        }
    }

    private Desk desk() {
        return window.view().desk();
    }

    private Harness harness() {
        return OnEventThread.get(() -> desk().harness().orElseThrow());
    }

    /** Errors of the check, by rule and subject. */
    private Set<String> errors() {
        return OnEventThread.get(() -> desk().analysis().orElseThrow().findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .map(finding -> finding.rule() + " " + finding.subjects())
                .collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void fromAListOfSensorsAndTwoUnitsToAWiredHarness() throws Exception {
        Harness before = harness();
        Set<String> errorsBefore = errors();
        CountedHand hand = new CountedHand();
        Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(BarePickup.sensorList()), null);

        hand.shortcut(KeyEvent.VK_ALT, KeyEvent.VK_G);
        hand.click("menu-study-channels");
        hand.click("channels-list");
        CountedHand.see("things");
        hand.click("things-paste");
        hand.click("things-add");
        OnEventThread.await("the list to close", () -> !CountedHand.isSeen("things-add"));
        unit(hand, 1, "E1", "F8", "G3");
        unit(hand, 4, "BN", "F9", "G4");
        hand.click("channels-plan");
        OnEventThread.await(
                "the plan", () -> CountedHand.text("channels-summary").contains("points"));
        assertTrue(OnEventThread.get(() -> CountedHand.text("channels-summary")).contains("proven the least"));
        JTable needs = (JTable) CountedHand.see("channels-needs");
        hand.click("channels-apply");
        OnEventThread.await(
                "the channels", () -> channels(desk().harness().orElseThrow()).size() >= 10);
        hand.click("channels-wire");
        OnEventThread.await(
                "the wires", () -> CountedHand.text("wiring-summary").contains("would be made"));
        hand.click("wiring-make");
        OnEventThread.await(
                "the wires",
                () -> desk().harness().orElseThrow().wires().all().size()
                        > before.wires().all().size() + 20);
        awaitResults();

        assertTrue(needs.isShowing());
        assertTrue(hand.actions().size() <= MOST_ACTIONS, hand.actions().size() + " actions: " + hand.actions());
        assertEquals(hand.typed().size(), Set.copyOf(hand.typed()).size(), "nothing is typed twice: " + hand.typed());
        assertTrue(desk().document().orElseThrow().file().isEmpty(), "no file is touched");
        Harness after = harness();
        everySensorReachesItsPin(after);
        everyWireHasItsWayLengthAndColour(before, after);
        noTwoLinesOfAConnectorLookAlike(before, after);
        everyOutputIsSetInAStateAndWhatItServesTakesCurrent(after);
        Set<String> caused = errors();
        caused.removeAll(errorsBefore);
        assertEquals(Set.of(), caused);
    }

    /** Puts a unit in: which of the list, where it is, what feeds it, where it is grounded. */
    private static void unit(CountedHand hand, int entry, String place, String feed, String ground) {
        hand.click("channels-unit");
        hand.clickEntry("unit-list", entry);
        hand.enter("unit-place", place);
        hand.enter("unit-feed", feed);
        hand.enter("unit-ground", ground);
        hand.click("unit-put");
        OnEventThread.await("the dialog to close", () -> !CountedHand.isSeen("unit-put"));
    }

    private static List<Channel> channels(Harness harness) {
        return harness.components().all().stream()
                .filter(component -> component.device() instanceof ControlUnit)
                .flatMap(component -> ((ControlUnit) component.device()).channels().stream())
                .toList();
    }

    private static void everySensorReachesItsPin(Harness harness) {
        Joints joints = Joints.of(harness);
        int sensors = 0;
        for (Component unit : harness.components().all()) {
            if (unit.device() instanceof ControlUnit device) {
                for (Channel channel : device.channels()) {
                    if (harness.components().get(channel.component()).device() instanceof Sensor) {
                        sensors++;
                        assertTrue(
                                joints.with(unit.id(), channel.pin())
                                        .contains(Joints.terminal(channel.component(), Sensor.SIGNAL)),
                                channel + " is wired");
                    }
                }
            }
        }
        assertEquals(10, sensors);
    }

    /** The bed lamp, the main pump and the relay K1 of the lift pump FP1 are on where the states ask for the loads; current flows. */
    private void everyOutputIsSetInAStateAndWhatItServesTakesCurrent(Harness harness) {
        assertEquals(List.of(), OutputOff.of(harness));
        Map<String, Set<String>> set = new TreeMap<>();
        for (Component unit : harness.components().all()) {
            if (unit.device() instanceof ControlUnit device) {
                for (Channel channel : device.channels()) {
                    StateSubject output = new StateSubject.Output(new OutputPin(unit.id(), channel.pin()));
                    for (OperatingState state : harness.states().all()) {
                        if (!output.written(state).isEmpty()) {
                            set.computeIfAbsent(channel.component().value(), key -> new TreeSet<>())
                                    .add(state.id() + " " + output.written(state));
                        }
                    }
                }
            }
        }
        Set<String> withEngine = Set.of("cranking on", "idling on", "night-rescue on", "running on", "winching on");
        assertEquals(Map.of("BL1", Set.of("night-rescue on"), "FP2", withEngine, "K1", withEngine), set);
        for (String load : List.of("BL1", "FP1", "FP2")) {
            double amps = OnEventThread.get(() -> desk().analysis()
                    .orElseThrow()
                    .solution(new StateId("night-rescue"))
                    .orElseThrow()
                    .loads()
                    .get(new ComponentId(load))
                    .amps());
            assertTrue(amps > 1, load + " takes " + amps + " A");
        }
    }

    private void everyWireHasItsWayLengthAndColour(Harness before, Harness after) {
        List<Wire> made = made(before, after);
        assertTrue(made.size() > 50, made.size() + " wires");
        var lengths = OnEventThread.get(
                () -> desk().analysis().orElseThrow().evidence().lengths().metres());
        for (Wire wire : made) {
            assertTrue(wire.lengthMetres().isPresent() || lengths.containsKey(wire.id()), wire.id() + " has a length");
            boolean drain = wire.signalClass() == SignalClass.SHIELD;
            assertTrue(drain || wire.colour().isPresent(), wire.id() + " has a colour");
        }
    }

    private static List<Wire> made(Harness before, Harness after) {
        return after.wires().all().stream()
                .filter(wire -> before.wires().find(wire.id()).isEmpty())
                .toList();
    }

    /** Wires made in one connector have the same colour only where they belong to one line. */
    private static void noTwoLinesOfAConnectorLookAlike(Harness before, Harness after) {
        Map<String, String> lines = new HashMap<>();
        after.wires().all().forEach(wire -> {
            String one = root(lines, BarePickup.place(after, wire.from()));
            String other = root(lines, BarePickup.place(after, wire.to()));
            lines.put(one, other);
        });
        Map<String, Set<String>> seen = new HashMap<>();
        for (Wire wire : made(before, after)) {
            for (WireEnd end : wire.ends()) {
                if (end instanceof WireEnd.AtCavity at && wire.colour().isPresent()) {
                    seen.computeIfAbsent(
                                    at.connector() + " " + wire.colour().get().text(), key -> new HashSet<>())
                            .add(root(lines, BarePickup.place(after, end)));
                }
            }
        }
        List<String> alike = new ArrayList<>();
        seen.forEach((where, several) -> {
            if (several.size() > 1) {
                alike.add(where);
            }
        });
        assertEquals(List.of(), alike);
    }

    private static String root(Map<String, String> lines, String place) {
        String at = place;
        while (lines.containsKey(at) && !lines.get(at).equals(at)) {
            at = lines.get(at);
        }
        return at;
    }
}
