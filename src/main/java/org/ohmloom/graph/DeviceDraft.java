package org.ohmloom.graph;

import java.util.Optional;
import org.ohmloom.model.Component;
import org.ohmloom.model.Setting;
import org.ohmloom.words.Text;

/**
 * One component while its branches are drafted.
 *
 * @param network   where the branches go
 * @param component the component
 */
record DeviceDraft(NetworkDraft network, Component component) {

    /** How the operating state sets the component. */
    Optional<Setting> setting() {
        return network.state().setting(component.id());
    }

    PointName terminal(String name) {
        return PointName.terminal(component.id(), name);
    }

    /** The component's only branch, which has its identity. */
    void branch(BranchKind kind, String from, String to, Law law) {
        network.branch(component.id().value(), kind, terminal(from), terminal(to), component.id(), law);
    }

    /** One of several branches; {@code part} follows the component's identity. */
    void branch(String part, BranchKind kind, String from, String to, Law law) {
        branch(part, kind, terminal(from), terminal(to), law);
    }

    void branch(String part, BranchKind kind, PointName from, PointName to, Law law) {
        network.branch(name(part), kind, from, to, component.id(), law);
    }

    /** Text of the identity of a part's branch. */
    String name(String part) {
        return component.id() + "." + part;
    }

    void assume(Text text, String source) {
        network.assume(component.id(), text, source);
    }
}
