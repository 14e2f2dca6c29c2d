package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

/**
 * A separately built part of the harness with a number and a revision of its own; assemblies meet at in-line
 * connectors.
 *
 * @param id       identity
 * @param name     what people call it
 * @param number   drawing number
 * @param revision revision letter or number
 */
public record Assembly(AssemblyId id, String name, String number, String revision) implements Element {

    public Assembly {
        notBlank(name, "name of assembly %s", id);
        notBlank(number, "number of assembly %s", id);
        notBlank(revision, "revision of assembly %s", id);
    }
}
