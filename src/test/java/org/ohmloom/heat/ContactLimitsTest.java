package org.ohmloom.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.ContactLimit;
import org.ohmloom.model.ContactPart;

class ContactLimitsTest {
    private static final double EXACT = 1e-12;

    /** An invented contact: 14 A at 20 C, 8 A at 80 C. */
    private final ContactPart contact = contact(List.of(new ContactLimit(20, 14), new ContactLimit(80, 8)));

    private static ContactPart contact(List<ContactLimit> limits) {
        return new ContactPart(
                new ContactId("EX-C1"),
                Optional.empty(),
                0.002,
                limits,
                0.5,
                1.5,
                1.2,
                2.4,
                List.of(),
                4,
                "Sn",
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void betweenTwoPointsTheLimitRunsStraight() {
        // half way, 50 C: (14 + 8)/2 = 11 A
        assertEquals(11, ContactLimits.amps(contact, 50).orElseThrow(), EXACT);
        assertEquals(8, ContactLimits.amps(contact, 80).orElseThrow(), EXACT);
    }

    @Test
    void coolerThanTheCoolestPointTheLimitDoesNotRise() {
        assertEquals(14, ContactLimits.amps(contact, -40).orElseThrow(), EXACT);
    }

    @Test
    void hotterThanTheHottestPointNothingIsClaimed() {
        assertEquals(0, ContactLimits.amps(contact, 81).orElseThrow(), EXACT);
    }

    @Test
    void aContactWithoutPointsHasNoLimitToCheck() {
        assertTrue(ContactLimits.amps(contact(List.of()), 25).isEmpty());
    }
}
