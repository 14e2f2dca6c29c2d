package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmloom.edit.ChangeElements;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.LoadGroup;
import org.ohmloom.model.LoadGroupId;
import org.ohmloom.workbench.words.TypedNumbers;

/** What is typed about which loads may run together, as edits, and the same as text. */
public final class GroupEdits {

    private static final String ONE = "one at a time";
    private static final String ALL = "all together";
    private static final String MOST = "at most";

    private GroupEdits() {}

    /** "one at a time", "all together" or "at most 2". */
    public static String rule(LoadGroup group) {
        return switch (group.kind()) {
            case EXCLUSIVE -> ONE;
            case TOGETHER -> ALL;
            case AT_MOST -> MOST + " " + group.atMost().orElseThrow();
        };
    }

    /** "WL1, WL2". */
    public static String loads(LoadGroup group) {
        return group.members().stream().map(ComponentId::value).collect(Collectors.joining(", "));
    }

    /** Sets the rule. */
    public static Edit rule(List<LoadGroup> groups, String typed) {
        String words = typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        LoadGroup.Kind kind = words.equals(ONE)
                ? LoadGroup.Kind.EXCLUSIVE
                : words.equals(ALL) ? LoadGroup.Kind.TOGETHER : LoadGroup.Kind.AT_MOST;
        Optional<Integer> most = kind == LoadGroup.Kind.AT_MOST ? Optional.of(count(words, typed)) : Optional.empty();
        return all(groups, "rule", group -> new LoadGroup(group.id(), group.name(), kind, group.members(), most));
    }

    private static int count(String words, String typed) {
        String number = words.startsWith(MOST) ? words.substring(MOST.length()).strip() : words;
        if (!number.matches("[1-9][0-9]{0,3}")) {
            throw new IllegalArgumentException("'" + typed.strip() + "' is no rule: " + ONE + ", " + ALL + ", or "
                    + MOST + " and a number, such as " + MOST + " 2");
        }
        return Integer.parseInt(number);
    }

    /** Sets the loads, by their identities. */
    public static Edit loads(Harness harness, List<LoadGroup> groups, String typed) {
        List<ComponentId> members = List.of(typed.strip().split("[,;\\s]+")).stream()
                .filter(each -> !each.isEmpty())
                .map(each -> load(harness, each))
                .toList();
        return all(
                groups,
                "loads",
                group -> new LoadGroup(group.id(), group.name(), group.kind(), members, group.atMost()));
    }

    private static ComponentId load(Harness harness, String typed) {
        return harness.components().all().stream()
                .filter(component -> component.device() instanceof Load)
                .map(component -> component.id())
                .filter(id -> id.value().equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no load '" + typed
                        + "'; loads are named by their identities, as in the list of loads"));
    }

    static Edit name(List<LoadGroup> groups, String typed) {
        return all(
                groups,
                "name",
                group -> new LoadGroup(group.id(), typed.strip(), group.kind(), group.members(), group.atMost()));
    }

    /** A new group of loads of which one may run at a time. */
    static PutElements create(Harness harness, List<ComponentId> loads) {
        int number = 1;
        while (harness.element("LG" + number).isPresent()) {
            number++;
        }
        LoadGroup group = new LoadGroup(
                new LoadGroupId("LG" + number),
                "Loads that do not run together",
                LoadGroup.Kind.EXCLUSIVE,
                loads,
                Optional.empty());
        return PutElements.one("Add load group " + group.id(), group);
    }

    private interface Change {
        LoadGroup of(LoadGroup group);
    }

    private static Edit all(List<LoadGroup> groups, String what, Change change) {
        List<Edit> edits = groups.stream()
                .map(group -> (Edit) ChangeElements.tried("Set " + what + " of " + group.id(), group, change::of))
                .toList();
        return TypedNumbers.together("Set " + what + " of " + groups.size() + " load groups", edits);
    }
}
