package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
import org.ohmloom.workbench.words.Words;

/** What is typed about which loads may run together, as edits, and the same as text. */
public final class GroupEdits {
    private static final Words WORDS = Words.of("lists");
    private static final Pattern NUMBER = Pattern.compile("\\b[1-9][0-9]{0,3}\\b");

    private GroupEdits() {}

    /** "one at a time", "all together" or "at most 2". */
    public static String rule(LoadGroup group) {
        return switch (group.kind()) {
            case EXCLUSIVE -> WORDS.get("group.one");
            case TOGETHER -> WORDS.get("group.all");
            case AT_MOST -> WORDS.get("group.most", group.atMost().orElseThrow());
        };
    }

    /** "WL1, WL2". */
    public static String loads(LoadGroup group) {
        return group.members().stream().map(ComponentId::value).collect(Collectors.joining(", "));
    }

    /** Sets the rule. */
    public static Edit rule(List<LoadGroup> groups, String typed) {
        String words = typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        LoadGroup.Kind kind = words.equals("one at a time") || words.equalsIgnoreCase(WORDS.get("group.one"))
                ? LoadGroup.Kind.EXCLUSIVE
                : words.equals("all together") || words.equalsIgnoreCase(WORDS.get("group.all"))
                        ? LoadGroup.Kind.TOGETHER
                        : LoadGroup.Kind.AT_MOST;
        Optional<Integer> most = kind == LoadGroup.Kind.AT_MOST ? Optional.of(count(words, typed)) : Optional.empty();
        return all(
                groups,
                WORDS.get("group.rule-2"),
                group -> new LoadGroup(group.id(), group.name(), kind, group.members(), most));
    }

    private static int count(String words, String typed) {
        Matcher at = NUMBER.matcher(words);
        boolean alone = at.find() && words.equals(at.group());
        if (!alone && !words.equalsIgnoreCase("at most " + found(at)) && !words.equalsIgnoreCase(most(found(at)))) {
            throw new IllegalArgumentException(WORDS.get(
                    "group.no-rule", typed.strip(), WORDS.get("group.one"), WORDS.get("group.all"), most("2")));
        }
        return Integer.parseInt(found(at));
    }

    private static String most(String count) {
        return WORDS.get("group.most", count);
    }

    private static String found(Matcher at) {
        return at.reset().find() ? at.group() : "";
    }

    /** Sets the loads, by their identities. */
    public static Edit loads(Harness harness, List<LoadGroup> groups, String typed) {
        List<ComponentId> members = List.of(typed.strip().split("[,;\\s]+")).stream()
                .filter(each -> !each.isEmpty())
                .map(each -> load(harness, each))
                .toList();
        return all(
                groups,
                WORDS.get("group.loads-2"),
                group -> new LoadGroup(group.id(), group.name(), group.kind(), members, group.atMost()));
    }

    private static ComponentId load(Harness harness, String typed) {
        return harness.components().all().stream()
                .filter(component -> component.device() instanceof Load)
                .map(component -> component.id())
                .filter(id -> id.value().equalsIgnoreCase(typed))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(WORDS.get("group.there-is-no-load", typed)));
    }

    static Edit name(List<LoadGroup> groups, String typed) {
        return all(
                groups,
                WORDS.get("group.name-2"),
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
                WORDS.get("group.loads-that-do-not"),
                LoadGroup.Kind.EXCLUSIVE,
                loads,
                Optional.empty());
        return PutElements.one(WORDS.text("group.add-load-group", group.id()), group);
    }

    private interface Change {
        LoadGroup of(LoadGroup group);
    }

    private static Edit all(List<LoadGroup> groups, String what, Change change) {
        List<Edit> edits = groups.stream()
                .map(group ->
                        (Edit) ChangeElements.tried(WORDS.text("group.set-of", what, group.id()), group, change::of))
                .toList();
        return TypedNumbers.together(WORDS.text("group.set-of-load-groups", what, groups.size()), edits);
    }
}
