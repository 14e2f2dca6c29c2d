package org.ohmloom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.MeasuredOhms;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.Reading;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;

/**
 * A measured resistance the calculation uses in the place of a calculated or entered one.
 *
 * @param subject    the wire, ground point, strap or splice by its id, the contact by its cavity
 * @param reading    where it comes from
 * @param ohms       what is used: of a wire at 20 C, of a joint as measured, ohm
 * @param insteadOhms what would be used without it, of a wire at 20 C, ohm; empty where that is not known
 * @param steps      how it comes about
 */
public record Replacement(String subject, Reading reading, double ohms, OptionalDouble insteadOhms, String steps) {

    /** Those of a harness: wires, then joints, in the order of their ids. */
    public static List<Replacement> of(BenchInput input) {
        MeasuredOhms measured = MeasuredOhms.of(input.harness());
        ConductorResistance with = new ConductorResistance(input.tables(), input.basis(), measured);
        ConductorResistance without = new ConductorResistance(input.tables(), input.basis());
        List<Replacement> all = new ArrayList<>();
        for (WireId id : measured.wires()) {
            Wire wire = input.harness().wires().get(id);
            Gauge gauge = input.rating(wire).gauge();
            Optional<MeasuredOhms.Taken> taken = with.taken(wire, gauge);
            OptionalDouble length = input.routes().lengthMetres(wire);
            OptionalDouble instead = length.isPresent() || wire.measuredOhms().isPresent()
                    ? OptionalDouble.of(without.ohms(wire, gauge, length, 20))
                    : OptionalDouble.empty();
            taken.ifPresent(each -> all.add(new Replacement(
                    id.value(), each.reading(), with.ohmsAt20Celsius(each), instead, ofWire(each, with))));
        }
        for (Map.Entry<String, MeasuredOhms.Taken> joint : measured.joints().entrySet()) {
            all.add(new Replacement(
                    joint.getKey(),
                    joint.getValue().reading(),
                    joint.getValue().ohms(),
                    OptionalDouble.empty(),
                    "measured "
                            + Formats.ohms(
                                    joint.getValue().reading().measured().ohms().orElseThrow())
                            + (joint.getValue().ohms()
                                            < joint.getValue()
                                                    .reading()
                                                    .measured()
                                                    .ohms()
                                                    .orElseThrow()
                                    ? " from wire to wire, half for each joint"
                                    : "")));
        }
        return all;
    }

    private static String ofWire(MeasuredOhms.Taken taken, ConductorResistance resistance) {
        double measured = taken.reading().measured().ohms().orElseThrow();
        double celsius = MeasuredOhms.celsius(taken.reading());
        String contacts = measured > taken.ohms() ? " less its contacts " + Formats.ohms(measured - taken.ohms()) : "";
        return "measured " + Formats.ohms(measured) + contacts + ", divided by "
                + Formats.number(resistance.ratio(celsius)) + " for " + Formats.celsius(celsius);
    }

    /** The whole in one line. */
    public String text() {
        String instead = insteadOhms.isPresent() ? " instead of " + Formats.ohms(insteadOhms.getAsDouble()) : "";
        return subject + ": " + Formats.ohms(ohms) + instead + ", " + steps + " (reading " + reading.id()
                + reading.serialNumber()
                        .map(serial -> " of serial number " + serial)
                        .orElse("") + ")";
    }
}
