package org.ohmloom.model;

import static org.ohmloom.units.Require.finite;
import static org.ohmloom.units.Require.positive;

/**
 * A point of a contact's current limit against ambient temperature; between points the limit runs straight, outside
 * them the nearest colder claim is never extended upwards.
 *
 * @param ambientCelsius ambient temperature, deg C
 * @param limitAmps      most continuous current there, A, more than 0
 */
public record ContactLimit(double ambientCelsius, double limitAmps) {

    public ContactLimit {
        finite(ambientCelsius, "ambient of a contact limit");
        positive(limitAmps, "current of a contact limit");
    }
}
