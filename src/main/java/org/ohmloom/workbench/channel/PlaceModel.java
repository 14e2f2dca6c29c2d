package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.swing.table.AbstractTableModel;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.signal.unit.ChannelProblem.UnitPin;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The pins of the units, what each can be, and how it suits the need looked at. */
final class PlaceModel extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    /** The columns. */
    enum Column {
        PIN,
        USED,
        FIT,
        ROLES,
        LIMITS,
        CAVITY
    }

    private final transient Words words;
    private transient Optional<PinSurvey> survey = Optional.empty();
    private transient Map<UnitPin, String> proposed = Map.of();
    private transient Optional<PinNeed> need = Optional.empty();
    private transient Map<UnitPin, PinSurvey.Fit> fits = Map.of();
    private transient Optional<Component> unit = Optional.empty();
    private transient List<PinPlace> places = List.of();
    private boolean onlyFitting;

    PlaceModel(Words words) {
        this.words = words;
    }

    /** Shows the pins of a unit, or of all. */
    void show(Optional<PinSurvey> shown, Optional<Component> ofUnit) {
        survey = shown;
        unit = ofUnit;
        judge();
        choose();
    }

    /** Shows only pins that suit the need looked at, or all. */
    void onlyFitting(boolean only) {
        onlyFitting = only;
        choose();
    }

    /** Says of every pin how it suits a need. */
    void lookAt(Optional<PinNeed> changed) {
        need = changed;
        judge();
        if (onlyFitting) {
            choose();
        } else if (!places.isEmpty()) {
            fireTableRowsUpdated(0, places.size() - 1);
        }
    }

    /** Shows what a plan would put where. */
    void propose(Map<UnitPin, String> changes) {
        proposed = Map.copyOf(changes);
        if (!places.isEmpty()) {
            fireTableRowsUpdated(0, places.size() - 1);
        }
    }

    private void judge() {
        fits = survey.flatMap(now -> need.map(now::fits)).orElse(Map.of());
    }

    private void choose() {
        List<PinPlace> shown = new ArrayList<>();
        survey.ifPresent(now -> now.places().stream()
                .filter(place ->
                        unit.isEmpty() || unit.get().id().equals(place.unit().id()))
                .filter(place -> !onlyFitting || need.isEmpty() || suits(place))
                .forEach(shown::add));
        places = List.copyOf(shown);
        fireTableDataChanged();
    }

    /** Whether the need looked at may go to a pin. */
    boolean suits(PinPlace place) {
        return fit(place).filter(fit -> fit == PinSurvey.Fit.FITS).isPresent();
    }

    /** Whether it may go there, also where a channel that is not locked would give way. */
    boolean suits(PinPlace place, boolean orTaken) {
        return suits(place)
                || orTaken
                        && fit(place).filter(fit -> fit == PinSurvey.Fit.TAKEN).isPresent()
                        && place.channels().stream().noneMatch(Channel::locked);
    }

    private Optional<PinSurvey.Fit> fit(PinPlace place) {
        return Optional.ofNullable(fits.get(place.at()));
    }

    PinPlace place(int row) {
        return places.get(row);
    }

    /** The row of a pin; -1 when it is not shown. */
    int rowOf(UnitPin at) {
        for (int row = 0; row < places.size(); row++) {
            if (places.get(row).at().equals(at)) {
                return row;
            }
        }
        return -1;
    }

    @Override
    public int getRowCount() {
        return places == null ? 0 : places.size();
    }

    @Override
    public int getColumnCount() {
        return Column.values().length;
    }

    @Override
    public String getColumnName(int column) {
        return words.get("pin." + TradeWords.lower(Column.values()[column]));
    }

    @Override
    public Object getValueAt(int row, int column) {
        PinPlace place = places.get(row);
        return switch (Column.values()[column]) {
            case PIN -> place.text();
            case CAVITY -> place.cavity().orElse("");
            case ROLES -> PinWords.roles(place.pin());
            case LIMITS -> PinWords.limits(place.pin());
            case USED -> used(place);
            case FIT -> fit(place)
                    .map(fit -> words.get(
                            "fit." + fit.name().toLowerCase(Locale.ROOT).replace('_', '-')))
                    .orElse("");
        };
    }

    private String used(PinPlace place) {
        Map<String, String> users = new TreeMap<>();
        place.wired().forEach(id -> users.put(id, id));
        place.channels()
                .forEach(channel -> users.put(
                        channel.component().value(),
                        channel.component() + (channel.locked() ? words.get("need.locked") : "")));
        String now = String.join(", ", users.values());
        String next = proposed.getOrDefault(place.at(), "");
        return next.isEmpty() || next.equals(now) ? now : now.isEmpty() ? "→ " + next : now + " → " + next;
    }
}
