package org.ohmloom;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.Harness;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.tables.WireTables;

/** Analyses of the examples, each made once for all tests that only look at it: nothing in an analysis can change. */
public final class AnalysedExamples {
    private static final Map<String, Analysis> BY_NAME = new ConcurrentHashMap<>();

    private static final Map<String, Harness> HARNESSES = new ConcurrentHashMap<>();

    private AnalysedExamples() {}

    /** The analysis of an example by its short name. */
    public static Analysis of(String name) {
        return BY_NAME.computeIfAbsent(name, AnalysedExamples::anew);
    }

    /** The same, made anew. */
    public static Analysis anew(String name) {
        return Analyst.analyse(harness(name), WireTables.bundled(), Cancel.NEVER);
    }

    /** The harness of an example, not analysed. */
    public static Harness harness(String name) {
        return HARNESSES.computeIfAbsent(name, AnalysedExamples::read);
    }

    private static Harness read(String name) {
        try {
            return HarnessFiles.read(Path.of("examples", name + HarnessFiles.ENDING));
        } catch (HarnessFileException broken) {
            throw new AssertionError(name, broken);
        }
    }
}
