package org.ohmloom.pack;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bench.CrimpFamily;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Harness;
import org.ohmloom.pack.label.LabelChoice;
import org.ohmloom.pack.label.LabelFit;
import org.ohmloom.pack.label.LabelText;
import org.ohmloom.tables.LabelSize;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** What the shop needs besides the parts of the drawing: labels, supports and ties by the plan of each segment, and crimp tools. */
final class ShopMaterials {
    private final Analysis analysis;
    private final Harness harness;
    private final SceneFonts fonts;
    private final Supplier<List<LabelText>> labels;
    private final Materials materials;

    ShopMaterials(Analysis analysis, SceneFonts fonts, Supplier<List<LabelText>> labels, Materials materials) {
        this.labels = labels;
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.fonts = fonts;
        this.materials = materials;
    }

    void collect() {
        for (LabelChoice choice : new LabelReport(analysis, fonts, labels).choices()) {
            label(choice);
        }
        for (BundleSegment segment : harness.segments().all()) {
            analysis.evidence().bundles().of(segment.id()).ifPresent(section -> fixings(segment, section));
        }
        for (CrimpFamily family : analysis.evidence().tests().plan().crimps()) {
            tool(family);
        }
    }

    private void label(LabelChoice choice) {
        Optional<LabelFit> fit = choice.chosen();
        int count = choice.text().count();
        String subject = choice.text().subject();
        if (fit.filter(each -> each.size().kind() == LabelSize.Kind.SLEEVE).isPresent()) {
            double metres = Unit.MILLIMETRE.toCanonical(fit.orElseThrow().lengthMm() * count);
            materials.length(
                    Material.length(
                            Optional.empty(),
                            MaterialKind.LABEL,
                            Optional.empty(),
                            Text.of(fit.orElseThrow().size().words())),
                    OptionalDouble.of(metres),
                    subject);
        } else {
            Text words = fit.map(each -> Text.of(each.size().words())).orElseGet(() -> MaterialTexts.text("label"));
            materials.pieces(
                    Material.piece(Optional.empty(), MaterialKind.LABEL, Optional.empty(), words), count, subject);
        }
    }

    private void fixings(BundleSegment segment, SegmentSection section) {
        int supports = section.supports().supportMetres().size();
        if (supports > 0) {
            Text words = Fixings.support(Fixings.sizeMm(section));
            materials.pieces(
                    Material.piece(segment.assembly(), MaterialKind.FIXING, Optional.empty(), words),
                    supports,
                    segment.id().value());
        }
        int ties = section.supports().tieMetres().size();
        if (ties > 0) {
            materials.pieces(
                    Material.piece(
                            segment.assembly(), MaterialKind.FIXING, Optional.empty(), MaterialTexts.text("tie")),
                    ties,
                    segment.id().value());
        }
    }

    private void tool(CrimpFamily family) {
        Optional<ContactPart> contact = family.contact();
        Text words = contact.isPresent()
                ? MaterialTexts.text("tool", contact.get().id())
                : MaterialTexts.text("tool-of-sizes", family.terminal());
        Material tool = Material.piece(Optional.empty(), MaterialKind.TOOL, contact.flatMap(ContactPart::tool), words);
        materials.once(tool, contact.map(each -> each.id().value()).orElse(Wording.size(family.gauge())));
    }
}
