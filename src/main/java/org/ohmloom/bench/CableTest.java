package org.ohmloom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmloom.model.Cable;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * One check of a cable, a twisted pair or a shield.
 *
 * @param cable the cable
 * @param check which check, as readings name it: {@code cores}, {@code twist}, {@code shield W5}
 * @param words what is looked at
 * @param must  what it must be
 */
public record CableTest(Cable cable, String check, String words, Text must) {

    /** All of a harness, for cables with a wire to be made. */
    public static List<CableTest> of(BenchInput input) {
        List<CableTest> tests = new ArrayList<>();
        for (Cable cable : input.harness().cables().all()) {
            List<Wire> members = input.harness().wires().all().stream()
                    .filter(wire -> wire.cable().equals(Optional.of(cable.id())) && !wire.existing())
                    .toList();
            if (!members.isEmpty()) {
                add(cable, members, tests);
            }
        }
        return tests;
    }

    private static void add(Cable cable, List<Wire> members, List<CableTest> tests) {
        List<Wire> cores = members.stream()
                .filter(wire -> wire.signalClass() != SignalClass.SHIELD)
                .toList();
        tests.add(new CableTest(cable, "cores", "Cores not swapped: " + ends(cores), TestTexts.text("cable.own-ends")));
        if (cable.kind() == Cable.Kind.TWISTED_PAIR) {
            Text lay = cable.layLengthMm().isPresent()
                    ? TestTexts.text(
                            "cable.turn",
                            Formats.millimetres(cable.layLengthMm().getAsDouble()))
                    : TestTexts.text("cable.twisted");
            tests.add(new CableTest(cable, "twist", "Twist, untwisted ends as short as the connector allows", lay));
        }
        for (Wire shield : members) {
            if (shield.signalClass() == SignalClass.SHIELD) {
                tests.add(new CableTest(
                        cable,
                        "shield " + shield.id(),
                        "Shield " + shield.id() + " from " + shield.from().text() + " to "
                                + shield.to().text(),
                        TestTexts.text("cable.shield")));
            }
        }
    }

    private static String ends(List<Wire> cores) {
        return cores.stream()
                .map(wire ->
                        wire.id() + " " + wire.from().text() + "–" + wire.to().text())
                .collect(Collectors.joining(", "));
    }
}
