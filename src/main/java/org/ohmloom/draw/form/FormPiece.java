package org.ohmloom.draw.form;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.AssemblyId;

/**
 * A connected piece of the harness, made ready for laying.
 *
 * @param tree       it as a tree
 * @param cards      the card of each node, in the order of the nodes
 * @param assemblies the assemblies its segments belong to
 * @param opened     sentences on rings that are opened
 */
record FormPiece(FormTree tree, List<Optional<FormCard>> cards, SortedSet<AssemblyId> assemblies, List<String> opened) {

    FormPiece {
        cards = List.copyOf(cards);
        assemblies = new TreeSet<>(assemblies);
        opened = List.copyOf(opened);
    }
}
