package org.ohmloom.pack;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.ground.coupling.Coupling;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** What wires that switch put onto signal wires beside them. */
final class CouplingSection {

    private static final List<Column> COLUMNS = List.of(
            Column.code("Switches"),
            Column.code("Signal"),
            Column.words("State"),
            Column.number("Together", Unit.METRE, 2),
            Column.number("Apart", Unit.MILLIMETRE, 1),
            Column.number("Electric", Unit.MILLIVOLT, 2),
            Column.number("Magnetic", Unit.MILLIVOLT, 2),
            Column.number("At the input", Unit.MILLIVOLT, 2),
            Column.number("Filtered", Unit.MILLIVOLT, 2),
            Column.number("May be", Unit.MILLIVOLT, 2));

    private final Analysis analysis;

    CouplingSection(Analysis analysis) {
        this.analysis = analysis;
    }

    List<Block> blocks() {
        List<Coupling> worst = ReturnReadings.couplings(analysis.evidence().returns(), Optional.empty());
        if (worst.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Block.Heading("Coupling along bundles"),
                new Block.Prose(
                        "At the edges of a wire that switches, in the worst state of each pair: by the electric and the"
                                + " magnetic field, together at the signal's input after twist and shield, and after its filter where"
                                + " that is known."),
                new Block.Table(
                        "couplings", COLUMNS, worst.stream().map(this::row).toList(), ""));
    }

    private Row row(Coupling coupling) {
        boolean over = coupling.limitVolts().isPresent()
                && ReturnReadings.left(coupling) > coupling.limitVolts().getAsDouble();
        return Row.of(
                Cell.text(coupling.culprit().value()).toned(Cell.Tone.STRONG),
                Cell.text(coupling.victim().value()).toned(Cell.Tone.STRONG),
                Cell.text(Named.state(analysis.harness(), coupling.state())),
                Cell.number(coupling.lengthMetres()),
                Cell.number(Unit.MILLIMETRE.fromCanonical(coupling.separationMetres())),
                milli(OptionalDouble.of(coupling.capacitiveVolts())),
                milli(OptionalDouble.of(coupling.inductiveVolts())),
                milli(OptionalDouble.of(coupling.volts())),
                milli(coupling.filteredVolts()),
                over ? milli(coupling.limitVolts()).toned(Cell.Tone.ALERT) : milli(coupling.limitVolts()));
    }

    private static Cell milli(OptionalDouble volts) {
        return volts.isPresent() ? Cell.number(Unit.MILLIVOLT.fromCanonical(volts.getAsDouble())) : Cell.empty();
    }
}
