package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.assembly.AssemblyAnalysis;
import org.ohmloom.model.Assembly;
import org.ohmloom.model.Harness;

/**
 * What becomes one folder of documents: the whole harness, or one of its assemblies.
 *
 * @param folder    its folder within that of the pack, with a slash; empty for the whole harness
 * @param analysis  the results about it
 * @param whole     the harness it belongs to, which has the operating states
 * @param documents its documents, in the order of the pack
 */
record PackPart(String folder, Analysis analysis, Harness whole, Set<PackDocument> documents) {

    PackPart {
        Set<PackDocument> copy = EnumSet.noneOf(PackDocument.class);
        copy.addAll(documents);
        documents = Collections.unmodifiableSet(copy);
    }

    /** The whole harness. */
    static PackPart whole(Analysis analysis, PackOptions options) {
        return new PackPart("", analysis, analysis.harness(), options.documents());
    }

    /** The parts of a pack: the whole, and the assemblies where they are asked for and some document is about them. */
    static List<PackPart> of(Analysis analysis, PackOptions options) {
        List<PackPart> parts = new ArrayList<>();
        parts.add(whole(analysis, options));
        Set<PackDocument> documents =
                options.documents().stream().filter(PackDocument::isOfAssembly).collect(Collectors.toSet());
        if (options.perAssembly() && !documents.isEmpty()) {
            for (Assembly assembly : analysis.harness().assemblies().all()) {
                Analysis results = AssemblyAnalysis.of(analysis, assembly.id());
                parts.add(new PackPart(
                        new FileNames(assembly.number()).folder(), results, analysis.harness(), documents));
            }
        }
        return List.copyOf(parts);
    }
}
