package org.ohmloom.tables;

import java.util.ArrayList;
import java.util.List;

/** Tables of sensors and data buses, while they are read. */
final class SignalShelf {
    final List<BusLimit> limits = new ArrayList<>();
    final Shelf<BusFigure> figures = new Shelf<>("figure of a data bus");
    final Shelf<ChangeTime> changeTimes = new Shelf<>("time constant of a sort of sensor");
}
