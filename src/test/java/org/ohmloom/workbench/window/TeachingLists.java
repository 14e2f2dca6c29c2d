package org.ohmloom.workbench.window;

import java.util.stream.Collectors;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.CountedHand;
import org.ohmloom.workbench.HandAtATable;
import org.ohmloom.workbench.HandAtTheLists;

/** Types what the layout does not ask for into the lists by hand, until a harness that was drawn is the teaching example. */
final class TeachingLists {

    private static final String TORQUE = "18 N m, sheet of the invented bolt EX-GB8";

    private final CountedHand hand;
    private final HandAtTheLists lists;

    TeachingLists(CountedHand hand) {
        this.hand = hand;
        this.lists = new HandAtTheLists(hand, "Title and rules");
    }

    /** Types everything but the notes, which are pasted as they stand in the example. */
    void type(Harness example) {
        rules();
        parts();
        devices();
        joints();
        wires();
        states();
        lists.open("Notes");
        example.notes().all().forEach(note -> lists.add());
        lists.front()
                .paste(
                        "N-1",
                        "About",
                        example.notes().all().stream()
                                .map(note -> note.about().map(String::valueOf).orElse("") + "\t" + note.text())
                                .collect(Collectors.joining("\n")));
    }

    private void rules() {
        lists.type(
                        "Title",
                        "Value",
                        "Two-load teaching harness",
                        "Every number worked by hand",
                        "EX-D-0001",
                        "Example workshop (invented)",
                        "A. Example",
                        "B. Example",
                        "2025-03-10",
                        "en",
                        "A 2025-03-03 A. Example: First issue; B 2025-03-10 A. Example: Pump added beside the heater")
                .type("Insulation", "Value", "ISO 6722-1 class B", "20");
        lists.open("Workshop").type("Workmanship class", "Value", "1", "", "EUR");
    }

    private void parts() {
        lists.open("Parts").show("Mass");
        part("EX-BAT44", "Battery 12 V 44 Ah", "146", "11000");
        part("EX-F15C", "Blade fuse 15 A with holder", "0,63", "20");
        part("EX-GB8", "Ground bolt M8 with serrated washer", "1.05", "30");
        part("EX-H02", "Housing, 2 cavities", "2.51", "6 g");
        part("EX-HT60", "Heater 60 W 12 V", "21.12", "0.4 kg");
        part("EX-PU36", "Pump with a regulated motor, 3 A", "58.58", "0.6 kg");
        part("EX-SPL1", "Crimped splice sleeve with sealing tube", "0.67", "2");
        part("EX-SW16", "Toggle switch 16 A", "8.54", "30");
        part("EX-T28", "Female contact 2.8 mm, 0.75 to 2.5 mm2", "0.21", "1");
        lists.add("EX-TL28", "Crimping tool for EX-T28", "Example");
        lists.open("Contacts")
                .show("Contact resistance", "Insulation from", "Insulation to")
                .add(
                        "CT-T",
                        "EX-T28",
                        "ex-tl28",
                        "5 mm",
                        "0.75",
                        "2.5",
                        "24 A at 20 C; 18 A at 85 C; 10 at 120",
                        "Sn",
                        "",
                        "3",
                        "1.7",
                        "3.2");
    }

    private void part(String number, String description, String price, String mass) {
        String order = number.replace("EX", "ES");
        lists.add(number, description, "Example", "Example stores", order, price, "", "", mass);
    }

    private void devices() {
        lists.open("Breakouts")
                .type("P1", "Breakout", "B1", "B2", "B4", "B5", "B7", "B6", "B3")
                .type(
                        "B1",
                        "Name",
                        "Battery",
                        "Switch panel",
                        "Heater",
                        "Pump",
                        "Battery ground",
                        "Load ground",
                        "Split");
        lists.open("Components")
                .show("Contact resistance", "May carry", "Inner resistance", "Capacity")
                .type("F1", "Name", "Main fuse")
                .type("F1", "Rating (A)", "15")
                .type("BT1", "Part", "EX-BAT44", "EX-F15C", "EX-SW16")
                .type("S1", "Contact resistance (mΩ)", "10")
                .type("S1", "May carry (A)", "16")
                .type("BT1", "Inner resistance (mΩ)", "20")
                .type("BT1", "Capacity (Ah)", "44");
        lists.open("Loads")
                .show("Control", "Part")
                .type("E1", "Load", "P1", "H1")
                .type("P1", "Name", "Pump", "Heater")
                .type("P1", "Rated (A)", "3", "5")
                .type("P1", "Control", "command", "feed")
                .type("P1", "Part", "EX-PU36", "EX-HT60");
    }

    private void joints() {
        lists.open("Connectors")
                .type("X1", "Name", "Heater plug", "Pump plug")
                .type("X1", "Stands (°C)", "125", "125")
                .type("X1", "Housing", "EX-H02", "EX-H02");
        lists.open("Cavities").type("X1", "Contact", "CT-T", "CT-T", "CT-T", "CT-T");
        lists.open("Splices, grounds")
                .show("Part", "Sealed", "Cover", "Thread", "Torque")
                .type("SP1", "Name", "Split of the feed", "Battery ground", "Load ground")
                .type("SP1", "Joint (mΩ)", "0.5", "0.5", "0.5")
                .type("SP1", "Part", "EX-SPL1", "EX-GB8", "EX-GB8")
                .type("SP1", "Sealed", "yes")
                .type("SP1", "Cover", "sealing tube of the sleeve")
                .type("G1", "Thread (mm)", "8", "8")
                .type("G1", "Torque", TORQUE, TORQUE);
        lists.open("Chassis bodies").type("FR", "Paths", "G1 to G2 2");
    }

    private void wires() {
        lists.open("Wires")
                .show("Circuit")
                .type("W1", "Conductor", "4", "2.5", "2,5 mm2", "1.5", "1.5", "1.5", "1.5", "4")
                .type("W1", "Length (m)", "150 mm", "1", "1", "1", "1.5", "1,5 m", "2", "0.5")
                .type("W1", "Colour", "RD", "RDWH", "rd/ye", "RDBU", "RDGN", "BK", "BKGN", "BK")
                .type("W1", "Circuit", "main", "main", "main", "heater", "pump", "heater", "pump", "main");
    }

    private void states() {
        lists.open("States")
                .add("both", "Heater and pump")
                .add("heater-only", "Heater alone")
                .add("off", "All off");
        hand.click("job-run");
        hand.click("view-of-state-matrix");
        HandAtATable matrix = new HandAtATable(hand, "states-matrix");
        matrix.type("H1", "Heater and pump", "on", "on", "on");
        matrix.type("H1", "Heater alone", "on", "", "on");
    }
}
