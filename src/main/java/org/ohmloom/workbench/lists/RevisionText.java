package org.ohmloom.workbench.lists;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetOfHarness;
import org.ohmloom.model.Revision;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.workbench.words.Words;

/** The revision table as one text: {@code A 2025-03-03 A. Example: First issue; B …}, oldest first. */
final class RevisionText {

    private static final Pattern LINE = Pattern.compile("(\\S+)\\s+(\\d{4}-\\d\\d-\\d\\d)\\s+([^:]+):\\s*(.+)");

    private RevisionText() {}

    static String of(List<Revision> revisions) {
        return revisions.stream()
                .map(each -> each.index() + " " + each.date() + " " + each.by() + ": " + each.description())
                .collect(Collectors.joining("; "));
    }

    /** Puts other revisions into the title block. */
    static Edit edit(String typed) {
        List<Revision> revisions = Arrays.stream(typed.split(";"))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .map(RevisionText::revision)
                .toList();
        return SetOfHarness.title(
                Words.of("lists").text("design.set-revisions"),
                before -> new TitleBlock(
                        before.title(),
                        before.supplementaryTitle(),
                        before.number(),
                        before.owner(),
                        before.creator(),
                        before.approver(),
                        before.date(),
                        before.language(),
                        revisions));
    }

    private static Revision revision(String line) {
        Matcher parts = LINE.matcher(line);
        if (!parts.matches()) {
            throw new IllegalArgumentException(Words.of("lists").get("design.no-revision", line));
        }
        return new Revision(parts.group(1), parts.group(2), parts.group(3).strip(), parts.group(4));
    }
}
