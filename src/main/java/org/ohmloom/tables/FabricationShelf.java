package org.ohmloom.tables;

import java.util.ArrayList;
import java.util.List;

/** Tables of how harnesses are made, while they are read. */
final class FabricationShelf {
    final Shelf<PracticeFigure> practice = new Shelf<>("figure of practice");
    final Shelf<CoveringSize> coverings = new Shelf<>("size of covering");
    final List<LengthTolerance> tolerances = new ArrayList<>();
    final Shelf<WorkmanshipClass> classes = new Shelf<>("class of workmanship");
    final Shelf<LabelSize> labels = new Shelf<>("size of label");
    final List<TieSpacing> ties = new ArrayList<>();
}
