package org.ohmloom.heat;

import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.model.ContactLimit;
import org.ohmloom.model.ContactPart;

/**
 * The current a contact may carry at an ambient temperature.
 *
 * <p>Straight between the points its maker states; below the coolest point the coolest point's own limit, never more.
 * Above the hottest point nobody claims anything, so the limit is 0.
 */
public final class ContactLimits {

    private ContactLimits() {}

    /** Most continuous current, A, 0 or more; empty when the contact states no limit at all. */
    public static OptionalDouble amps(ContactPart contact, double ambientCelsius) {
        List<ContactLimit> points = contact.limits();
        if (points.isEmpty()) {
            return OptionalDouble.empty();
        }
        ContactLimit cooler = points.get(0);
        if (ambientCelsius <= cooler.ambientCelsius()) {
            return OptionalDouble.of(cooler.limitAmps());
        }
        for (ContactLimit hotter : points) {
            if (ambientCelsius <= hotter.ambientCelsius()) {
                return OptionalDouble.of(between(cooler, hotter, ambientCelsius));
            }
            cooler = hotter;
        }
        return OptionalDouble.of(0);
    }

    private static double between(ContactLimit cooler, ContactLimit hotter, double ambientCelsius) {
        double share = (ambientCelsius - cooler.ambientCelsius()) / (hotter.ambientCelsius() - cooler.ambientCelsius());
        return cooler.limitAmps() + share * (hotter.limitAmps() - cooler.limitAmps());
    }
}
