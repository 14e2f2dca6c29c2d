package org.ohmloom.bench;

import java.util.Optional;
import org.ohmloom.model.Measured;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Reading;
import org.ohmloom.tables.BenchLimit;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.PullForce;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** Judges what is no resistance of a conductor: isolation, checks of cables, pull tests, loads under power. */
final class TestJudge {
    private final BenchInput input;
    private final TestPlan plan;

    TestJudge(BenchInput input, TestPlan plan) {
        this.input = input;
        this.plan = plan;
    }

    Judgement isolation(Reading reading, Measured.Isolation measured) {
        Quantity value = Quantity.of(measured.isolationOhms(), Unit.OHM);
        Optional<IsolationTest> asked = plan.isolation().stream()
                .filter(test ->
                        test.net().ends().stream().anyMatch(end -> end.text().equals(measured.isolated())))
                .findFirst();
        if (asked.isEmpty()) {
            return Judgement.none(reading, Optional.of(value), TestTexts.text("isolation.no-net", measured.isolated()));
        }
        IsolationTest test = asked.get();
        Text volts = test.testVolts().isPresent()
                ? TestTexts.text(
                        "isolation.at-volts", Formats.volts(test.testVolts().getAsDouble()), test.because())
                : TestTexts.text("isolation.ohmmeter", test.because());
        CitedValue least = input.cited(BenchLimit.ISOLATION_OHMS);
        Judgement judged = Judgement.atLeast(
                reading,
                value,
                Quantity.of(test.leastOhms(), Unit.OHM),
                volts,
                least.citation().text());
        if (measured.beyondRange() && measured.isolationOhms() < test.leastOhms()) {
            return Judgement.none(
                    reading, Optional.of(value), TestTexts.text("isolation.range", Formats.ohms(test.leastOhms())));
        }
        boolean known = measured.testVolts().isPresent() && test.testVolts().isPresent();
        if (known && measured.testVolts().getAsDouble() < test.testVolts().getAsDouble()) {
            return judged.provingNothing(TestTexts.text("isolation.less-volts"));
        }
        return judged;
    }

    Judgement cable(Reading reading, Measured.CableCheck measured) {
        return plan.cables().stream()
                .filter(test -> test.cable().id().value().equals(measured.cable())
                        && test.check().equals(measured.check()))
                .findFirst()
                .map(test -> Judgement.of(
                        reading,
                        measured.outcome() == Measured.CableCheck.Outcome.PASSED ? Verdict.PASSED : Verdict.FAILED,
                        TestTexts.text("cable.must", test.must())))
                .orElseGet(() -> Judgement.none(
                        reading,
                        Optional.empty(),
                        TestTexts.text("cable.no-check", measured.check(), measured.cable())));
    }

    Judgement pull(Reading reading, Measured.Pull measured) {
        Quantity value = Quantity.of(measured.lowestNewtons(), Unit.NEWTON);
        Optional<CrimpFamily> family = plan.crimps().stream()
                .filter(each -> each.terminal().equals(measured.terminal())
                        && each.gauge().equals(measured.conductor()))
                .findFirst();
        if (family.isEmpty()) {
            return Judgement.none(
                    reading,
                    Optional.of(value),
                    TestTexts.text(
                            "pull.no-crimp",
                            measured.terminal(),
                            measured.conductor().text()));
        }
        Optional<PullForce> force = family.get().force();
        if (force.isEmpty()) {
            return Judgement.none(
                    reading,
                    Optional.of(value),
                    TestTexts.text(
                            "pull.not-listed",
                            CrimpFamily.set(measured.conductor().system()),
                            measured.conductor().text()));
        }
        CitedValue least = force.get().forceNewtons();
        Judgement judged = Judgement.atLeast(
                reading,
                value,
                Quantity.of(least.value(), Unit.NEWTON),
                TestTexts.text("pull.lowest", force.get().set()),
                least.citation().text());
        double asked = input.limit(BenchLimit.PULL_COUNT);
        double pulled = measured.pulledCount().orElse(asked);
        return pulled < asked
                ? judged.provingNothing(TestTexts.text("pull.too-few", Math.round(pulled), Math.round(asked)))
                : judged;
    }

    Judgement powered(Reading reading, Measured.Powered measured) {
        Optional<OperatingState> state = input.harness().states().all().stream()
                .filter(each -> each.id().value().equals(measured.state()))
                .findFirst();
        Optional<PoweredTest> asked = state.flatMap(each -> PoweredTest.in(input, each).stream()
                .filter(test -> test.load().load().value().equals(measured.load()))
                .findFirst());
        Optional<Quantity> drop = measured.dropVolts().isPresent()
                ? Optional.of(Quantity.of(measured.dropVolts().getAsDouble(), Unit.VOLT))
                : Optional.empty();
        Optional<Quantity> volts = measured.loadVolts().isPresent()
                ? Optional.of(Quantity.of(measured.loadVolts().getAsDouble(), Unit.VOLT))
                : Optional.empty();
        if (asked.isEmpty()) {
            return Judgement.none(
                    reading,
                    drop.or(() -> volts),
                    TestTexts.text("powered.not-running", measured.load(), measured.state()));
        }
        PoweredTest test = asked.get();
        Optional<Judgement> byDrop = drop.map(value -> Judgement.atMost(
                reading,
                value,
                Quantity.of(test.load().limitVolts(), Unit.VOLT),
                TestTexts.text("powered.drop", Formats.volts(test.load().onDropVolts())),
                ""));
        Optional<Judgement> byVolts = volts.map(value -> Judgement.atLeast(
                reading,
                value,
                Quantity.of(test.sourceVolts() - test.load().limitVolts(), Unit.VOLT),
                TestTexts.text(
                        "powered.volts",
                        Formats.volts(test.sourceVolts()),
                        Formats.volts(test.load().onVolts())),
                ""));
        // A drop does not depend on how full the battery was, so it decides where there is one.
        return byDrop.or(() -> byVolts)
                .orElseGet(() -> Judgement.none(
                        reading,
                        Optional.of(Quantity.of(measured.loadAmps().orElseThrow(), Unit.AMP)),
                        TestTexts.text(
                                "powered.amps", Formats.amps(test.load().on().amps()))));
    }
}
