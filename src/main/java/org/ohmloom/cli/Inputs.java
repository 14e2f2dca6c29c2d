package org.ohmloom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.AnalysisRefusedException;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NearestText;
import org.ohmloom.model.OperatingState;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.tables.WireTables;

/** What commands read before they start. */
final class Inputs {

    private Inputs() {}

    /**
     * Reads a file and analyses it.
     *
     * @throws HarnessFileException  when it cannot be read
     * @throws RefusedInputException when it names a table entry nobody has
     */
    static Analysis analysed(Path file) throws HarnessFileException, RefusedInputException {
        return analysed(file, HarnessFiles.read(file));
    }

    /**
     * Analyses a harness that comes from a file.
     *
     * @throws RefusedInputException when it names a table entry nobody has
     */
    static Analysis analysed(Path file, Harness harness) throws RefusedInputException {
        try {
            return Analyst.analyse(harness, WireTables.bundled().beside(file), Cancel.NEVER);
        } catch (AnalysisRefusedException refused) {
            throw new RefusedInputException(file + ": " + refused.getMessage());
        }
    }

    /**
     * Refuses to write over the file that is read.
     *
     * @throws RefusedInputException when both names lead to the same file
     * @throws IOException           when that cannot be told
     */
    static void refuseSame(Path file, Path target) throws IOException, RefusedInputException {
        if (Files.exists(file) && Files.exists(target) && Files.isSameFile(file, target)) {
            throw new RefusedInputException(
                    target + ": this is the file that is read; give another name to --out so that nothing is lost");
        }
    }

    /**
     * The operating states asked for: all, or the one with that name or id.
     *
     * @throws RefusedInputException when there is no such state
     */
    static List<OperatingState> states(Harness harness, Optional<String> asked) throws RefusedInputException {
        List<OperatingState> all = List.copyOf(harness.states().all());
        if (asked.isEmpty()) {
            return all;
        }
        List<OperatingState> named = all.stream()
                .filter(state ->
                        state.name().equals(asked.get()) || state.id().value().equals(asked.get()))
                .toList();
        if (named.isEmpty()) {
            List<String> names = all.stream().map(OperatingState::name).toList();
            throw notInHarness("operating state", asked.get(), names);
        }
        return named;
    }

    /** The refusal of something that was asked for by a name nothing of its kind has. */
    static RefusedInputException notInHarness(String kind, String asked, List<String> names) {
        return new RefusedInputException("no " + kind + " '" + asked + "'"
                + (names.isEmpty()
                        ? "; the harness has none"
                        : NearestText.question(asked, names).english()));
    }
}
