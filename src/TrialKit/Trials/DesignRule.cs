namespace TrialKit.Trials;

/// <summary>The rules that tie the parts of a trial together.</summary>
public enum DesignRule
{
    /// <summary>A treatment is named once.</summary>
    TreatmentNamedOnce,

    /// <summary>A pair trial has two treatments.</summary>
    PairsHaveTwoTreatments,

    /// <summary>A pair trial names its control.</summary>
    PairsHaveControl,

    /// <summary>A strip is listed once.</summary>
    StripListedOnce,

    /// <summary>A block holds a treatment once.</summary>
    TreatmentOnceInBlock,

    /// <summary>A block holds the control (a warning: without it the block leaves the comparison).</summary>
    BlockHasControl,

    /// <summary>A place across the field is taken once.</summary>
    OrderTakenOnce,

    /// <summary>A count stays within four times the seeding rate.</summary>
    CountIsPossible,

    /// <summary>Nothing is counted, seen or weighed before planting.</summary>
    NotBeforePlanting,

    /// <summary>Visits to a spot follow each other in time.</summary>
    VisitsInOrder,

    /// <summary>A flagged spot was visited at least twice; until it was, it takes no part in timing.</summary>
    VisitedTwice,

    /// <summary>Cumulative counts do not fall (a warning: plants die, and the highest count so far is used).</summary>
    CumulativeCountsDoNotFall,

    /// <summary>The first visit finds nothing up (a warning: otherwise the first interval reaches back to planting).</summary>
    FirstVisitFindsNothing,

    /// <summary>Plants up stay within the seeds sown (a warning: the plants are used as the seeds).</summary>
    PlantsWithinSeeds,

    /// <summary>A plant is listed once in its spot.</summary>
    PlantListedOnce,

    /// <summary>Positions along the tape do not go back (a warning: they are used in the order of the tape).</summary>
    PositionsDoNotGoBack,

    /// <summary>A strip is weighed once.</summary>
    StripWeighedOnce,

    /// <summary>A strip's weight over its area stays within what a field can bear.</summary>
    YieldIsPossible,

    /// <summary>A measure has one unit.</summary>
    MeasureHasOneUnit,

    /// <summary>Temperatures are on record for each day from planting to the last visit.</summary>
    WeatherCoversEmergence,
}
