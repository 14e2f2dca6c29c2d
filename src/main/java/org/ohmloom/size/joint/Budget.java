package org.ohmloom.size.joint;

import java.util.List;

/**
 * What a load may lose in a state, spent by all parts on its way.
 *
 * @param id     what it is called
 * @param volts  what the parts may lose together, V; may be less than 0 when everything else loses too much already
 * @param shares what the parts spend; a part may be there more than once
 */
public record Budget(String id, double volts, List<Share> shares) {

    public Budget {
        shares = List.copyOf(shares);
    }
}
