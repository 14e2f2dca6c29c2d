package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.CurveChart;
import org.ohmloom.draw.chart.CurveChart.Curve;
import org.ohmloom.draw.chart.CurveChart.Sample;
import org.ohmloom.model.Measurement;
import org.ohmloom.signal.calibration.CalibrationCurve;
import org.ohmloom.signal.calibration.CurvePoint;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.calibration.SignalKind;
import org.ohmloom.units.Dimension;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/** The calibration curve of a channel: what the sensor gives, and the voltage at the pin where that is another thing. */
public final class CalibrationCharts {

    private static final int SAMPLES = 121;

    private CalibrationCharts() {}

    /** The curve over the use of the sensor; empty for a contact, and for pulses of which no rate is known. */
    public static Optional<CurveChart> of(SensorCalibration calibration) {
        return calibration.curve().map(curve -> chart(calibration, curve));
    }

    private static CurveChart chart(SensorCalibration calibration, CalibrationCurve curve) {
        Measurement measurement = calibration.channel().measurement().orElseThrow();
        List<Sample> signal = new ArrayList<>();
        List<Sample> pin = new ArrayList<>();
        for (double value : calibration.spread(SAMPLES)) {
            double given = curve.signal().applyAsDouble(value);
            signal.add(new Sample(value, given));
            OptionalDouble volts = calibration.input().pinVolts(curve.kind(), given);
            volts.ifPresent(each -> pin.add(new Sample(value, each)));
        }
        boolean other = curve.kind() == SignalKind.RESISTANCE || curve.kind() == SignalKind.CURRENT;
        return new CurveChart(
                Text.of(calibration.channel().name() + ", "
                        + calibration.channel().at()),
                curve.formula(),
                Text.of(measurement.quantity() + ", " + measurement.unit()),
                new Curve(
                        StudyTexts.text("calibration.gives", Constants.text(curve.kind())),
                        curve.kind().dimension(),
                        signal,
                        rows(calibration)),
                other && pin.size() > 1
                        ? Optional.of(new Curve(StudyTexts.text("calibration.pin"), Dimension.VOLTAGE, pin, List.of()))
                        : Optional.empty(),
                calibration.channel().component().id().value());
    }

    private static List<Sample> rows(SensorCalibration calibration) {
        return calibration.points().stream()
                .filter(point -> point.value() >= calibration.lowest() && point.value() <= calibration.highest())
                .map((CurvePoint point) -> new Sample(point.value(), point.signal()))
                .toList();
    }
}
