package org.ohmloom.analysis.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.Assembled;
import org.ohmloom.model.Assembly;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Note;
import org.ohmloom.model.Part;
import org.ohmloom.model.Reading;
import org.ohmloom.model.Revision;
import org.ohmloom.model.Splice;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Waiver;
import org.ohmloom.model.Zone;

/**
 * An assembly as a harness of its own, under its own number and revision: everything that belongs to it, and what that touches.
 * What it touches and does not own counts as being there already. An in-line connector says in its name what it mates with.
 * Operating states stay with the whole vehicle, for an assembly alone is not powered.
 */
public final class AssemblyHarness {

    private AssemblyHarness() {}

    /** The assembly of a harness. */
    public static Harness of(Harness whole, AssemblyId id) {
        Assembly assembly = whole.assemblies().get(id);
        Set<ElementId> kept = new HashSet<>();
        List<Element> waiting = new ArrayList<>(
                whole.elements().filter(each -> belongs(each, id)).toList());
        while (!waiting.isEmpty()) {
            Element next = waiting.remove(waiting.size() - 1);
            if (kept.add(next.id())) {
                waiting.addAll(new Touched(whole).by(next));
            }
        }
        List<ElementId> others = whole.elements()
                .filter(each -> !isShared(each) && !kept.contains(each.id()) && !isMeasured(whole, each, kept))
                .map(Element::id)
                .toList();
        Harness part = new TakeOut(others).apply(whole);
        List<Element> changed = new ArrayList<>();
        part.elements()
                .filter(each -> !belongs(each, id))
                .map(AssemblyHarness::asExisting)
                .forEach(changed::add);
        for (Connector connector : part.connectors().all()) {
            whole.mate(whole.connectors().get(connector.id()))
                    .filter(mate -> !part.connectors().has(mate.id()))
                    .ifPresent(mate -> changed.add(connector.withName("mates with " + mate.id()
                            + mate.assembly()
                                    .map(whole.assemblies()::get)
                                    .map(other -> " of " + other.number())
                                    .orElse("")
                            + ": " + connector.name())));
        }
        return part.withAll(changed).withTitleBlock(titled(whole.titleBlock(), assembly));
    }

    private static Element asExisting(Element element) {
        if (element instanceof Component component) {
            return component.asExisting();
        }
        if (element instanceof Splice splice) {
            return splice.asExisting();
        }
        return element instanceof GroundPoint ground ? ground.asExisting() : element;
    }

    private static boolean belongs(Element element, AssemblyId id) {
        return element instanceof Assembled part
                && part.assembly().filter(id::equals).isPresent();
    }

    /** Whether it is a reading of what the assembly has; tests under power are of the whole. */
    private static boolean isMeasured(Harness whole, Element element, Set<ElementId> kept) {
        if (element instanceof Reading reading && reading.measured() instanceof Measured.Pull pull) {
            return whole.connectors().all().stream()
                    .filter(connector -> kept.contains(connector.id()))
                    .flatMap(connector -> connector.cavities().stream())
                    .flatMap(cavity -> cavity.contact().stream())
                    .anyMatch(contact -> contact.value().equals(pull.terminal()));
        }
        return element instanceof Reading reading
                && reading.measured().names().stream().allMatch(name -> kept.stream()
                        .anyMatch(id -> id.value().equals(name)));
    }

    /** What all assemblies have in common: lists of parts and places, remarks on the whole. */
    private static boolean isShared(Element element) {
        return element instanceof Part
                || element instanceof ContactPart
                || element instanceof Assembly
                || element instanceof Zone
                || element instanceof Note
                || element instanceof Waiver;
    }

    private static TitleBlock titled(TitleBlock whole, Assembly assembly) {
        List<Revision> revisions = new ArrayList<>(whole.revisions());
        if (!whole.currentRevision().equals(assembly.revision())) {
            revisions.removeIf(each -> !each.index().equals(assembly.revision()));
            if (revisions.isEmpty()) {
                revisions.add(new Revision(assembly.revision(), whole.date().orElse(""), "", ""));
            }
        }
        return new TitleBlock(
                assembly.name(),
                Optional.of("Assembly of " + whole.number() + " revision " + whole.currentRevision() + ", "
                        + whole.title()),
                assembly.number(),
                whole.owner(),
                whole.creator(),
                whole.approver(),
                whole.date(),
                whole.language(),
                revisions);
    }
}
