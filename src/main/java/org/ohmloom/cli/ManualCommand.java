package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ohmloom.manual.Chapter;
import org.ohmloom.manual.Hit;
import org.ohmloom.manual.Manual;
import org.ohmloom.manual.ManualSearch;
import org.ohmloom.manual.Page;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints a page of the manual, lists the pages that hold some words, or its contents. */
@Command(
        name = "manual",
        mixinStandardHelpOptions = true,
        description =
                "Prints a page of the manual; with words lists the pages that hold them; without any, its contents.")
final class ManualCommand implements Callable<Integer> {

    private static final int MOST_HITS = 20;
    private static final int WIDTH = 100;

    @Parameters(paramLabel = "PAGE|WORDS", arity = "0..*", description = "A page, as the contents name it, or words.")
    private List<String> words = List.of();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws RefusedInputException {
        PrintWriter out = spec.commandLine().getOut();
        Optional<Page> page = words.size() == 1 ? Manual.bundledPage(words.get(0)) : Optional.empty();
        if (page.isPresent()) {
            out.print(page.get().markdown());
        } else if (words.isEmpty()) {
            contents(out);
        } else {
            hits(String.join(" ", words), out);
        }
        return ExitStatus.CLEAN;
    }

    private static void contents(PrintWriter out) {
        for (Chapter chapter : Manual.bundled().chapters()) {
            line(chapter.page(), "", out);
            chapter.below().forEach(page -> line(page, "  ", out));
        }
    }

    private static void hits(String asked, PrintWriter out) throws RefusedInputException {
        List<Hit> found = new ManualSearch(Manual.bundled()).find(asked);
        if (found.isEmpty()) {
            throw new RefusedInputException("no page of the manual holds '" + asked + "'; 'ohmloom manual' lists all");
        }
        found.stream().limit(MOST_HITS).forEach(hit -> {
            line(hit.page(), "", out);
            out.println(Wrap.indented(hit.passage(), 4, WIDTH));
        });
    }

    private static void line(Page page, String indent, PrintWriter out) {
        out.println(indent + page.id() + "  " + page.title());
    }
}
