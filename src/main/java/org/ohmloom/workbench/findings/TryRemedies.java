package org.ohmloom.workbench.findings;

import java.util.Optional;
import java.util.function.Consumer;
import org.ohmloom.remedy.RemedySearch;
import org.ohmloom.review.Finding;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.words.Words;

/** Tries remedies for the selected finding on returns and lists them. */
public final class TryRemedies extends Command {
    private static final Words WORDS = Words.of("findings");

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient Consumer<Finding> show;

    /**
     * The command.
     *
     * @param show opens the list of remedies of a finding
     */
    public TryRemedies(Desk desk, Consumer<Finding> show) {
        super("try-remedies", WORDS.get("try-remedies.remedies"), WORDS.get("try-remedies.remedies.about"));
        this.desk = desk;
        this.show = show;
        withMnemonic('M');
        refresh();
    }

    @Override
    public void run() {
        finding().ifPresent(show);
    }

    @Override
    public void refresh() {
        Optional<Finding> chosen = desk.selection().finding();
        String whyNot = chosen.isEmpty()
                ? WORDS.get("try-remedies.select-a-finding-first")
                : desk.isWhole()
                        ? WORDS.get("try-remedies.it-is-not-about")
                        : WORDS.get("try-remedies.wait-for-the-calculation");
        setReady(finding().isPresent(), whyNot);
    }

    private Optional<Finding> finding() {
        return desk.isWhole()
                ? desk.selection().finding().filter(each -> desk.analysis()
                        .filter(results -> RemedySearch.isAboutReturns(each, results))
                        .isPresent())
                : Optional.empty();
    }
}
