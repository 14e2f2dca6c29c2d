package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.SignedBars;
import org.ohmloom.draw.chart.SignedRow;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Network;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** The members of a loop in order, with the current in each. */
public final class LoopCharts {

    private LoopCharts() {}

    /** The currents round a loop in a state; empty where the loop was not solved in it. */
    public static Optional<SignedBars> of(Harness harness, Network drawn, LoopReading loop, Optional<StateId> wanted) {
        Optional<StateId> state = ReturnReadings.state(loop, wanted);
        if (state.isEmpty()) {
            return Optional.empty();
        }
        List<Double> amps = loop.ampsByState().get(state.get());
        if (amps == null || amps.size() != loop.loop().members().size()) {
            return Optional.empty();
        }
        Unit unit = ReturnReadings.largest(amps) < 1 ? Unit.MILLIAMP : Unit.AMP;
        List<SignedRow> rows = new ArrayList<>();
        for (int k = 0; k < amps.size(); k++) {
            BranchId member = loop.loop().members().get(k);
            boolean stray =
                    loop.stray().filter(each -> each.member().equals(member)).isPresent();
            rows.add(SignedRow.of(
                    stray ? SignedRow.Kind.STRAY : SignedRow.Kind.PART,
                    Named.member(drawn, member),
                    unit.fromCanonical(amps.get(k)),
                    Named.element(drawn, member).map(ElementId::value)));
        }
        return Optional.of(new SignedBars(
                StudyTexts.text("loop", conductors(drawn, loop)),
                StudyTexts.text("loop.about", Named.state(harness, state.get()), Formats.ohms(loop.ohms())),
                StudyTexts.text("loop.axis"),
                unit.symbol(),
                Text.NONE,
                OptionalDouble.empty(),
                true,
                rows));
    }

    /** The wires, shields and straps of a loop: "W1, W2, SH1"; all members where there is none. */
    public static String conductors(Network drawn, LoopReading loop) {
        List<String> conductors = loop.loop().members().stream()
                .filter(member -> drawn.branch(member)
                        .filter(branch -> switch (branch.kind()) {
                            case WIRE, SHIELD, STRAP, INTERNAL -> true;
                            default -> false;
                        })
                        .isPresent())
                .map(BranchId::value)
                .toList();
        return String.join(
                ", ",
                conductors.isEmpty()
                        ? loop.loop().members().stream().map(BranchId::value).toList()
                        : conductors);
    }

    /** The elements a loop runs through, each once, in order. */
    public static List<ElementId> elements(Network drawn, LoopReading loop) {
        return loop.loop().members().stream()
                .flatMap(member -> Named.element(drawn, member).stream())
                .distinct()
                .toList();
    }
}
