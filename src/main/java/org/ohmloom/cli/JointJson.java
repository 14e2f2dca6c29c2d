package org.ohmloom.cli;

import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.LoadBudget;
import org.ohmloom.size.Requirement;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.words.Text;

/** The joint choice of sizes, and what is asked of each wire, as JSON. */
final class JointJson {

    private JointJson() {}

    /** Writes the choice under {@code joint}. */
    static void write(JointChoice joint, JsonObjectWriter root) {
        root.object("joint", item -> choice(item, joint));
    }

    private static void choice(JsonObjectWriter item, JointChoice joint) {
        item.put("outcome", joint.outcome().name());
        item.put("sentence", joint.sentence());
        item.put("measure", joint.isPrice() ? "price" : "kg");
        item.put("enteredKg", joint.enteredKg());
        item.put("beforeKg", joint.beforeKg());
        item.put("afterKg", joint.afterKg());
        item.put("before", joint.before());
        item.put("after", joint.after());
        item.put("lowerBound", joint.lowerBound());
        item.put("continuousBound", joint.continuousBound());
        item.put("gapRatio", joint.gapRatio());
        item.put("allOpenBoundKg", joint.allOpenBoundKg());
        item.texts("unmet", joint.unmet());
        item.texts("steps", Text.english(joint.steps()));
        item.array("budgets", array -> joint.budgets().forEach(budget -> array.object(entry -> budget(entry, budget))));
    }

    private static void budget(JsonObjectWriter entry, LoadBudget budget) {
        entry.put("load", budget.load().value());
        entry.put("state", budget.state().value());
        entry.put("limitVolts", budget.limitVolts());
        entry.put("spentVolts", budget.spentVolts());
        entry.put("otherVolts", budget.otherVolts());
        entry.array("wires", array -> budget.wires()
                .forEach(spend -> array.object(wire -> {
                    wire.put("id", spend.wire().value());
                    wire.put("volts", spend.volts());
                })));
    }

    /** All that is asked of a wire, and which of it governs. */
    static void requirements(JsonObjectWriter item, ConductorChoice choice) {
        item.array("requirements", array -> choice.requirements()
                .forEach(requirement -> array.object(entry -> requirement(entry, choice, requirement))));
    }

    private static void requirement(JsonObjectWriter entry, ConductorChoice choice, Requirement requirement) {
        entry.put("constraint", requirement.governor().words());
        entry.put("gauge", requirement.smallest().map(gauge -> gauge.text()));
        entry.put("areaMm2", requirement.areaMm2());
        entry.put("governs", requirement.equals(choice.governing()));
        entry.put("reason", requirement.reason());
        entry.put("source", requirement.citation().text());
    }
}
