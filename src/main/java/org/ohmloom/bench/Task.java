package org.ohmloom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.ohmloom.model.Element;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.BenchLimit;
import org.ohmloom.words.Text;

/**
 * One thing to be measured on a built harness, with a value of nothing in the place of the measured one.
 *
 * @param blank what is to be measured
 * @param words what it is, as a heading of the test sheet: {@code Continuity}
 * @param about ids of the elements it is about
 */
public record Task(Measured blank, Text words, List<String> about) {

    public Task {
        about = List.copyOf(about);
    }

    /** All that can be measured: the tests of the sheet in their order, then single wires and joints. */
    public static List<Task> of(BenchInput input, TestPlan plan) {
        List<Task> tasks = new ArrayList<>();
        for (ContinuityTest test : plan.continuity()) {
            Measured path = new Measured.Path(test.from().text(), test.to().text(), 0);
            tasks.add(new Task(path, TestTexts.text("task.continuity"), wires(test.net())));
        }
        for (IsolationTest test : plan.isolation()) {
            Measured isolation = new Measured.Isolation(test.probe().text(), 0, test.testVolts(), false);
            tasks.add(new Task(isolation, TestTexts.text("task.isolation"), wires(test.net())));
        }
        for (CableTest test : plan.cables()) {
            Measured check = new Measured.CableCheck(
                    test.cable().id().value(), test.check(), Measured.CableCheck.Outcome.FAILED);
            tasks.add(new Task(
                    check,
                    TestTexts.text("task.cable", test.must()),
                    List.of(test.cable().id().value())));
        }
        OptionalDouble pulls = OptionalDouble.of(input.limit(BenchLimit.PULL_COUNT));
        for (CrimpFamily family : plan.crimps()) {
            tasks.add(new Task(
                    new Measured.Pull(family.terminal(), family.gauge(), 0, pulls),
                    TestTexts.text("task.pull"),
                    List.of()));
        }
        for (PoweredTest test : plan.powered()) {
            String load = test.load().load().value();
            Measured powered = new Measured.Powered(
                    load,
                    test.state().id().value(),
                    OptionalDouble.empty(),
                    OptionalDouble.of(0),
                    OptionalDouble.empty());
            tasks.add(new Task(powered, TestTexts.text("task.drop"), List.of(load)));
        }
        for (Wire wire : input.harness().wires().all()) {
            String id = wire.id().value();
            tasks.add(new Task(new Measured.OfWire(id, 0), TestTexts.text("task.wire"), List.of(id)));
        }
        Consumer<Element> joint = element -> {
            String id = element.id().value();
            tasks.add(new Task(new Measured.OfJoint(id, 0), TestTexts.text("task.joint"), List.of(id)));
        };
        input.harness().splices().all().forEach(joint);
        input.harness().grounds().all().forEach(joint);
        input.harness().straps().all().forEach(joint);
        return tasks;
    }

    private static List<String> wires(BenchNet net) {
        return net.wires().stream().map(wire -> wire.id().value()).toList();
    }

    /** Whether a measured thing is what this asks for. */
    public boolean asksFor(Measured measured) {
        return measured.getClass() == blank.getClass() && measured.place().equals(blank.place());
    }
}
