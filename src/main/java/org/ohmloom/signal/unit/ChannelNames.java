package org.ohmloom.signal.unit;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Names of the channels of one unit: what people call the component, cut to what the unit takes, each name once. */
final class ChannelNames {
    private final Optional<Integer> most;
    private final Set<String> taken = new HashSet<>();

    ChannelNames(Optional<Integer> most) {
        this.most = most;
    }

    /** The name for what people call so; a number is put behind what is taken already. */
    String next(String wanted) {
        String name = cut(wanted.strip(), "");
        for (int number = 2; !taken.add(name); number++) {
            name = cut(wanted.strip(), " " + number);
        }
        return name;
    }

    private String cut(String text, String behind) {
        int room = most.orElse(Integer.MAX_VALUE) - behind.length();
        if (text.length() <= room) {
            return text + behind;
        }
        return room > 0 ? text.substring(0, room).strip() + behind : behind.substring(behind.length() - most.orElse(1));
    }
}
