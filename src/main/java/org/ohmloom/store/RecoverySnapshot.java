package org.ohmloom.store;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * What is known about a harness kept aside while it is worked on.
 *
 * @param key     identity among snapshots, letters, digits and dashes
 * @param owner   the running program that keeps it
 * @param name    what people call the harness
 * @param file    the file it lives in, if any
 * @param changes how many changes were not saved, 0 or more
 * @param at      when it was kept
 */
public record RecoverySnapshot(String key, String owner, String name, Optional<Path> file, int changes, Instant at) {

    public RecoverySnapshot {
        notBlank(key, "key of a snapshot");
        if (!key.matches("[A-Za-z0-9-]+")) {
            throw new IllegalArgumentException("a key is letters, digits and dashes, not '" + key + "'");
        }
        notBlank(owner, "owner of a snapshot");
        notBlank(name, "name of a snapshot");
        notNegative(changes, "count of changes");
    }
}
