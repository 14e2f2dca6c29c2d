package org.ohmloom.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.pack.BuildPack;
import org.ohmloom.pack.PackOptions;
import org.ohmloom.pack.Progress;
import org.ohmloom.review.Cautions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the build pack; in full also when there are error findings. */
@Command(
        name = "pack",
        mixinStandardHelpOptions = true,
        description = "Writes the build pack: PDF documents, and CSV beside each table.")
final class PackCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "A harness file, *.harness.json.")
    private Path file;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "The folder to write to.")
    private Path directory;

    @Option(
            names = "--documents",
            paramLabel = "a,b",
            description =
                    "Only these: cover, drawing, wiring-diagram, form-board, pin-tables, bill-of-materials, wire-list, bundles,"
                            + " build-order, test-sheet, labels, channel-sheet, calibration-sheet, bus-sheet, installation-sheet,"
                            + " calculation.")
    private @Nullable String documents;

    @Option(
            names = "--paper",
            paramLabel = "A3",
            description =
                    "Sheet of the drawing and of the form board's tiles, A4 to A0 or 'ANSI A' to 'ANSI E'; A3 unless given."
                            + " Tables are on A4 or ANSI A.")
    private @Nullable String paper;

    @Option(
            names = "--board",
            paramLabel = "2440x1220",
            description = "Largest form board, width by height in mm; 2440x1220 (one sheet of plywood) unless given.")
    private @Nullable String board;

    @Option(
            names = "--board-in-one",
            description = "Each form board on one sheet of its own size, for a plotter, instead of tiles.")
    private boolean boardInOne;

    @Option(
            names = "--pictures",
            paramLabel = "svg,png",
            description = "Pictures of each sheet of the drawing: svg, png, or none; svg unless given.")
    private @Nullable String pictures;

    @Option(names = "--dots", paramLabel = "200", description = "Dots to the inch of PNG pictures; 200 unless given.")
    private @Nullable Integer dots;

    @Option(
            names = "--per-assembly",
            description = "Also writes a pack of each assembly, into a folder named by its number.")
    private boolean perAssembly;

    @Option(names = "--monochrome", description = "All of it in black and greys, for a printer without colours.")
    private boolean monochrome;

    @Option(
            names = "--remedies",
            description =
                    "Also tries remedies for the findings on returns and lists them in the calculation; takes many"
                            + " analyses.")
    private boolean remedies;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PackOptions options = PackOptions.ALL;
        if (documents != null) {
            options = options.withDocuments(documents);
        }
        if (paper != null) {
            options = options.withPaper(paper);
        }
        if (board != null) {
            options = options.withBoard(board);
        }
        if (pictures != null) {
            options = options.withPictures(pictures);
        }
        if (dots != null) {
            options = options.withDots(dots);
        }
        Analysis analysis = Inputs.analysed(file);
        options = options.withRemedies(remedies)
                .withPerAssembly(perAssembly)
                .withMonochrome(monochrome)
                .withWholeBoards(boardInOne);
        List<Path> written = BuildPack.write(analysis, directory, options, Progress.NONE);
        PrintWriter out = spec.commandLine().getOut();
        out.println("Written to " + directory + ":");
        written.forEach(path -> out.println("  " + directory.relativize(path)));
        out.println();
        FindingsText.summary(analysis, 8, out);
        out.println();
        out.println(Wrap.text(Cautions.paragraph().english(), 100));
        return ExitStatus.of(analysis);
    }
}
