package org.ohmloom.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ohmloom.graph.MeasuredOhms;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Reading;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.BenchLimit;
import org.ohmloom.tables.Citation;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * Judges measured resistances of conductors: the listed maximum of the wires at the temperature of the measurement, contacts and
 * joints, and what the instrument adds. Below a share of what the wires alone must have a value is not to be believed.
 */
final class ResistanceJudge {
    private static final String ENTERED = "resistance.entered";

    private final BenchInput input;
    private final Harness harness;
    private final TestPlan plan;
    private final ConductorResistance listed;

    ResistanceJudge(BenchInput input, TestPlan plan) {
        this.input = input;
        this.harness = input.harness();
        this.plan = plan;
        this.listed = new ConductorResistance(input.tables(), input.basis());
    }

    Judgement path(Reading reading, Measured.Path path) {
        Optional<ContinuityTest> asked = plan.continuity().stream()
                .filter(test -> isBetween(test, path.from(), path.to()) || isBetween(test, path.to(), path.from()))
                .findFirst();
        if (asked.isEmpty()) {
            return none(reading, TestTexts.text("resistance.no-way", path.place()));
        }
        ContinuityTest test = asked.get();
        if (test.path().wireOhms().isEmpty()) {
            return none(reading, TestTexts.text("resistance.no-length"));
        }
        List<Wire> wires = test.net().wires();
        return judged(
                reading,
                wires.size() == 1
                        ? TestTexts.text("resistance.listed-wire", wires.get(0).id())
                        : TestTexts.text("resistance.listed-wires"),
                test.path().wireOhms().getAsDouble(),
                test.path().jointOhms(),
                rows(wires));
    }

    private static boolean isBetween(ContinuityTest test, String from, String to) {
        return test.from().text().equals(from) && test.to().text().equals(to);
    }

    Judgement wire(Reading reading, Measured.OfWire of) {
        Optional<Wire> found = harness.wires().all().stream()
                .filter(wire -> wire.id().value().equals(of.wire()))
                .findFirst();
        if (found.isEmpty()) {
            return none(reading, TestTexts.text("resistance.no-wire", of.wire()));
        }
        Wire wire = found.get().unmeasured();
        OptionalDouble length = input.routes().lengthMetres(found.get());
        if (length.isEmpty()) {
            return none(reading, TestTexts.text("resistance.no-wire-length", of.wire()));
        }
        double ohms = listed.ohms(wire, input.rating(wire).gauge(), length, 20);
        return judged(reading, TestTexts.text("resistance.listed-wire", wire.id()), ohms, 0, rows(List.of(wire)));
    }

    private String rows(List<Wire> wires) {
        return wires.stream()
                .map(wire -> listed.row(wire, input.rating(wire).gauge()).citation())
                .map(Citation::text)
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private Judgement judged(Reading reading, Text ofWires, double wireOhms, double jointOhms, String rows) {
        double celsius = MeasuredOhms.celsius(reading);
        double metal = wireOhms * listed.ratio(celsius);
        double error = errorOhms(reading, wireOhms + jointOhms);
        double measured = reading.measured().ohms().orElseThrow();
        Text atCelsius = reading.conductorCelsius().isPresent()
                ? TestTexts.text("resistance.at", ofWires, Formats.ohms(metal), Formats.celsius(celsius))
                : TestTexts.text("resistance.at-usual", ofWires, Formats.ohms(metal));
        Text joined =
                jointOhms > 0 ? TestTexts.text("resistance.joints", atCelsius, Formats.ohms(jointOhms)) : atCelsius;
        Text because = TestTexts.text("resistance.instrument", joined, Formats.ohms(error));
        double least = input.limit(BenchLimit.PLAUSIBLE_FRACTION) * metal - error;
        Judgement judged = Judgement.atMost(
                        reading,
                        Quantity.of(measured, Unit.OHM),
                        Quantity.of(metal + jointOhms + error, Unit.OHM),
                        because,
                        Stream.of(rows, instrument(reading))
                                .filter(text -> !text.isEmpty())
                                .collect(Collectors.joining("; ")))
                .believable(Quantity.of(Math.max(0, least), Unit.OHM));
        OptionalDouble typical = harness.rules().fabricationRules().typicalFraction();
        return typical.isPresent()
                ? judged.atLeastToo(
                        Quantity.of(ContinuityTest.leastOhms(typical.getAsDouble(), metal, error), Unit.OHM),
                        TestTexts.text("resistance.typical", Formats.percent(typical.getAsDouble()), because))
                : judged;
    }

    /** What the instrument adds: as entered, otherwise by the method used, otherwise by the one the sheet asks for. */
    private double errorOhms(Reading reading, double expectedOhms) {
        Reading.Method method =
                reading.method().orElseGet(() -> ContinuityTest.method(input, OptionalDouble.of(expectedOhms)));
        return reading.instrumentErrorOhms().orElseGet(() -> ContinuityTest.errorOhms(input, method));
    }

    private String instrument(Reading reading) {
        return reading.instrumentErrorOhms().isPresent()
                ? ""
                : input.cited(BenchLimit.TWO_WIRE_OHMS).citation().text();
    }

    Judgement joint(Reading reading, Measured.OfJoint of) {
        String id = of.joint();
        Optional<Judgement> found = harness.splices().all().stream()
                .filter(splice -> splice.id().value().equals(id))
                .findFirst()
                .map(splice -> joint(reading, 2 * splice.jointOhms(), "resistance.entered-twice", ""))
                .or(() -> harness.grounds().all().stream()
                        .filter(ground -> ground.id().value().equals(id))
                        .findFirst()
                        .map(ground -> joint(reading, ground.jointOhms(), ENTERED, "")))
                .or(() -> harness.straps().all().stream()
                        .filter(strap -> strap.id().value().equals(id))
                        .findFirst()
                        .map(strap -> joint(reading, strap.ohms(), ENTERED, "")))
                .or(() -> contact(id)
                        .map(contact -> joint(reading, contact.contactOhms(), "resistance.entered-for", contact.id())));
        return found.orElseGet(() -> none(reading, TestTexts.text("resistance.no-joint", id)));
    }

    private Optional<ContactPart> contact(String place) {
        for (Connector connector : harness.connectors().all()) {
            for (Cavity cavity : connector.cavities()) {
                if (place.equals(connector.id() + "." + cavity.name())) {
                    return cavity.contact().flatMap(harness.contacts()::find);
                }
            }
        }
        return Optional.empty();
    }

    private Judgement joint(Reading reading, double entered, String key, Object of) {
        if (entered == 0) {
            return none(reading, TestTexts.text("resistance.nothing-entered"));
        }
        double error = errorOhms(reading, entered);
        return Judgement.atMost(
                reading,
                Quantity.of(reading.measured().ohms().orElseThrow(), Unit.OHM),
                Quantity.of(entered + error, Unit.OHM),
                TestTexts.text(key, Formats.ohms(entered), Formats.ohms(error), of),
                instrument(reading));
    }

    private static Judgement none(Reading reading, Text because) {
        return Judgement.none(
                reading, Optional.of(Quantity.of(reading.measured().ohms().orElseThrow(), Unit.OHM)), because);
    }
}
