package org.ohmloom.signal.unit;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Names of the channels of one unit: what people call the component, cut to what the unit takes, each name once. */
public final class ChannelNames {
    private final Optional<Integer> most;
    private final Set<String> taken = new HashSet<>();

    /**
     * No name taken yet.
     *
     * @param most most characters the unit takes, if it is limited
     */
    public ChannelNames(Optional<Integer> most) {
        this.most = most;
    }

    /** A name that is given away already. */
    public void take(String name) {
        taken.add(key(name));
    }

    /** What two names have in common that are one but for capitals and spaces. */
    public static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
    }

    /** The name for what people call so; a number is put behind what is taken already. */
    public String next(String wanted) {
        String name = cut(wanted.strip(), "");
        for (int number = 2; !taken.add(key(name)); number++) {
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
