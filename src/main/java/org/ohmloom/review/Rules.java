package org.ohmloom.review;

import java.util.List;

/** All rules, in the order of the report. */
public final class Rules {

    /** The rules. */
    public static final List<Rule> ALL = List.of(
            new SolutionIncomplete(),
            new NoReturnPath(),
            new FeedWithoutProtection(),
            new DeviceExceedsConductor(),
            new ConductorNotProtected(),
            new FaultNotCleared(),
            new BreakingCapacityExceeded(),
            new VoltageRatingExceeded(),
            new DeviceOverloaded(),
            new StartOpensDevice(),
            new LimitedFaultOverheats(),
            new FuseBehindLimit(),
            new DevicesNotSelective(),
            new DeviceTooFarFromSource(),
            new ConductorOverAmpacity(),
            new ContactOverCurrent(),
            new EnvelopeOverLimit(),
            new OutputOverLimit(),
            new ClampOverLimit(),
            new FreewheelMissing(),
            new DropOverLimit(),
            new LoadNotFed(),
            new SupplyLowWhileStarting(),
            new RelayDropsOutWhileStarting(),
            new OutputTripsWhileStarting(),
            new BelowMinimumVolts(),
            new BatteryDischargesWhileRunning(),
            new AlternatorReserve(),
            new SequenceBelowVoltage(),
            new LoadFedWhenOff(),
            new ConductorOutsideCrimpRange(),
            new CavityDoubleOccupied(),
            new WireEndLoose(),
            new SensorErrorOverLimit(),
            new CouplingOverLimit(),
            new SensorReturnShared(),
            new UnitGroundOffset(),
            new GroundOffset(),
            new UnitOffsetSurvival(),
            new BusCommonMode(),
            new BusNotJoined(),
            new BusTermination(),
            new BusBeyondLimits(),
            new BusPairOpen(),
            new BusMessageLate(),
            new SensorCalibrationUnfit(),
            new UpdateRateUnfit(),
            new LostReturnOverloads(),
            new GroundLoop(),
            new GroundStudCrowded(),
            new WireNotRoutable(),
            new CoveringDoesNotFit(),
            new CoveringTooHot(),
            new SpliceMisplaced(),
            new ReadingBeyondLimit(),
            new ReadingImplausible(),
            new NotChecked());

    private Rules() {}
}
