package org.ohmloom.workbench.fabrication;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.ohmloom.edit.ChangeRouting;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireId;
import org.ohmloom.model.ZoneId;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** What is typed about routing rules, as edits, and the same as text. */
final class RoutingEdits {
    private static final Words WORDS = Words.of("fabrication");

    private RoutingEdits() {}

    /** "out of ENGINE", "apart from feed, return", "through K3". */
    static String rule(RoutingRule rule) {
        if (rule instanceof RoutingRule.AvoidZone avoid) {
            return WORDS.get("routing.out-of", avoid.avoidZone());
        }
        return rule instanceof RoutingRule.Through through
                ? WORDS.get("routing.through", through.through())
                : WORDS.get("routing.apart-from", signals(((RoutingRule.Apart) rule).apartFrom()));
    }

    static String signals(List<SignalClass> classes) {
        return classes.stream().map(TradeWords::signal).collect(Collectors.joining(", "));
    }

    static String wires(RoutingRule rule) {
        return rule.wires().stream().map(WireId::value).collect(Collectors.joining(", "));
    }

    /** Rules asked of the same wires with another demand; nothing takes them out. */
    static Edit rule(Harness harness, List<Integer> places, String typed) {
        String text = typed.strip();
        if (text.isEmpty()) {
            return remove(harness, places);
        }
        return change(harness, places, WORDS.get("routing.routing-rule"), was -> demanded(harness, was, text));
    }

    private static RoutingRule demanded(Harness harness, RoutingRule was, String text) {
        Optional<String> out = WORDS.filling("routing.out-of", text);
        Optional<String> through = WORDS.filling("routing.through", text);
        Optional<String> apart = WORDS.filling("routing.apart-from", text);
        if (out.isPresent()) {
            ZoneId zone = found(out.get(), harness.zones().ids(), WORDS.get("routing.kind.zone"));
            return new RoutingRule.AvoidZone(zone, was.wires(), was.classes(), was.reason());
        } else if (through.isPresent()) {
            BreakoutId breakout = found(through.get(), harness.breakouts().ids(), WORDS.get("routing.kind.breakout"));
            return new RoutingRule.Through(breakout, was.wires(), was.classes(), was.reason());
        } else if (apart.isPresent()) {
            return new RoutingRule.Apart(classes(apart.get()), was.wires(), was.classes(), was.reason());
        }
        throw new IllegalArgumentException(WORDS.get("routing.is-no-routing-rule", text));
    }

    private static <I extends ElementId> I found(String name, Iterable<I> ids, String kind) {
        List<String> names = new ArrayList<>();
        for (I id : ids) {
            if (id.value().equalsIgnoreCase(name)) {
                return id;
            }
            names.add(id.value());
        }
        throw new IllegalArgumentException(WORDS.get(
                "routing.there-is-no",
                kind,
                name,
                names.isEmpty()
                        ? WORDS.get("routing.the-harness-has-none")
                        : WORDS.get("routing.there-are", String.join(", ", names))));
    }

    /** Asks the rules of other wires by name. */
    static Edit wires(Harness harness, List<Integer> places, String typed) {
        List<WireId> wires = Arrays.stream(typed.split("[,;\\s]+"))
                .filter(each -> !each.isEmpty())
                .map(each -> found(each, harness.wires().ids(), WORDS.get("routing.kind.wire")))
                .toList();
        return change(harness, places, WORDS.get("routing.wires-of-a-routing"), was -> was.with(wires));
    }

    /** Asks the rules of all wires of other signals. */
    static Edit classes(Harness harness, List<Integer> places, String typed) {
        List<SignalClass> classes = classes(typed);
        return change(
                harness, places, WORDS.get("routing.signals-of-a-routing"), was -> of(was, classes, was.reason()));
    }

    static Edit reason(Harness harness, List<Integer> places, String typed) {
        Optional<String> reason = Optional.of(typed.strip()).filter(text -> !text.isEmpty());
        return change(harness, places, WORDS.get("routing.reason-of-a-routing"), was -> of(was, was.classes(), reason));
    }

    private static RoutingRule of(RoutingRule was, List<SignalClass> classes, Optional<String> reason) {
        if (was instanceof RoutingRule.AvoidZone avoid) {
            return new RoutingRule.AvoidZone(avoid.avoidZone(), was.wires(), classes, reason);
        }
        return was instanceof RoutingRule.Through through
                ? new RoutingRule.Through(through.through(), was.wires(), classes, reason)
                : new RoutingRule.Apart(((RoutingRule.Apart) was).apartFrom(), was.wires(), classes, reason);
    }

    private static List<SignalClass> classes(String typed) {
        Map<String, SignalClass> byWord = Arrays.stream(SignalClass.values())
                .collect(Collectors.toMap(each -> TradeWords.signal(each).toLowerCase(Locale.ROOT), each -> each));
        List<SignalClass> found = new ArrayList<>();
        for (String word : typed.strip().split("\\s*[,;]\\s*")) {
            if (!word.isEmpty()) {
                SignalClass signal = byWord.get(word.toLowerCase(Locale.ROOT));
                if (signal == null) {
                    throw new IllegalArgumentException(WORDS.get(
                            "routing.is-no-signal-there",
                            word,
                            Arrays.stream(SignalClass.values())
                                    .map(TradeWords::signal)
                                    .collect(Collectors.joining(", "))));
                }
                found.add(signal);
            }
        }
        return found;
    }

    /** A new rule at the end. */
    static Edit add(Harness harness, RoutingRule rule) {
        List<RoutingRule> rules = new ArrayList<>(rules(harness));
        rules.add(rule);
        return new ChangeRouting(WORDS.text("routing.add-routing-rule"), rules);
    }

    /** Without the rules at those places, counted from 0. */
    static Edit remove(Harness harness, List<Integer> places) {
        List<RoutingRule> left = new ArrayList<>();
        for (int place = 0; place < rules(harness).size(); place++) {
            if (!places.contains(place)) {
                left.add(rules(harness).get(place));
            }
        }
        return new ChangeRouting(
                places.size() == 1
                        ? WORDS.text("routing.remove-routing-rule")
                        : WORDS.text("routing.remove-routing-rules"),
                left);
    }

    private static Edit change(Harness harness, List<Integer> places, String what, UnaryOperator<RoutingRule> change) {
        List<RoutingRule> rules = new ArrayList<>(rules(harness));
        places.forEach(place -> rules.set(place, change.apply(rules.get(place))));
        return new ChangeRouting(WORDS.text("routing.set", what), rules);
    }

    private static List<RoutingRule> rules(Harness harness) {
        return harness.rules().fabricationRules().routing();
    }
}
