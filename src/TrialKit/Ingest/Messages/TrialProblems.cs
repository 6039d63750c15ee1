using System.Globalization;
using TrialKit.Trials;

namespace TrialKit.Ingest.Messages;

/// <summary>What can be wrong between the parts of a trial: codes TK301 to TK399.</summary>
internal static class TrialProblems
{
    public static Problem UnknownStrip(ProblemLocation at, string name, string? nearest) => Error("TK301", at,
        $"strip {Wording.Quote(name)} is not in strips", nearest is null ? "a strip of that table was expected" : $"a strip of that table was expected; the nearest is {Wording.Quote(nearest)}");

    public static Problem UnknownTreatment(ProblemLocation at, string name, IReadOnlyList<string> treatments) => Error("TK302", at,
        $"treatment {Wording.Quote(name)} is not in trial.toml", treatments.Count == 0 ? "a treatment described there was expected" : $"one of {Wording.Or([.. treatments.Select(Wording.Quote)])} was expected");

    public static Problem UnknownSpot(ProblemLocation at, string spot, string strip) => Error("TK303", at,
        $"spot {Wording.Quote(spot)} of strip {Wording.Quote(strip)} is in neither emergence nor stand-counts", "a spot of one of these tables was expected");

    public static Problem SpotDiffers(ProblemLocation at, string column, string found, string earlier) => Error("TK304", at,
        $"column {Wording.Quote(column)} holds {Wording.Quote(found)} where {Wording.Quote(earlier)} stood before for the same spot", "one value for all visits to a spot was expected");

    public static Problem PlannedSpotTwice(ProblemLocation at, string spot, string strip) => Error("TK305", at,
        $"spot {Wording.Quote(spot)} of strip {Wording.Quote(strip)} is listed a second time", "each spot once in a strip was expected");

    /// <summary>The code of a row without a value.</summary>
    public const string LeftOutCode = "TK306";

    /// <summary>The code of a spot with one visit.</summary>
    public const string VisitedTwiceCode = "TK333";

    public static Problem LeftOut(ProblemLocation at, string column) => Warning(LeftOutCode, at,
        $"column {Wording.Quote(column)} is not recorded, so the row is left out", "a value was expected");

    public static Problem NewPlantsNotRecorded(ProblemLocation at, string column) => Error("TK307", at,
        $"column {Wording.Quote(column)} is not recorded", "every visit's new plants were expected, since the plants standing are their sum; 0 is written 0");

    public static Problem UnknownLetter(ProblemLocation at, string note) => Warning("TK308", at,
        $"the note {Wording.Quote(note)} is a letter without a meaning", "d (double), v (volunteer), x (died) or words were expected");

    /// <summary>A rule of the design that the records break.</summary>
    public static Problem Broken(ProblemLocation at, RuleViolation violation) => new(
        CodeOf(violation.Rule),
        violation.IsError ? ProblemSeverity.Error : ProblemSeverity.Warning,
        at,
        Wording.OneLine(violation.Found),
        $"expected {Wording.OneLine(violation.Expected)}");

    private static string CodeOf(DesignRule rule) => rule switch
    {
        DesignRule.TreatmentNamedOnce => "TK320",
        DesignRule.PairsHaveTwoTreatments => "TK321",
        DesignRule.PairsHaveControl => "TK322",
        DesignRule.StripListedOnce => "TK323",
        DesignRule.TreatmentOnceInBlock => "TK324",
        DesignRule.BlockHasControl => "TK325",
        DesignRule.OrderTakenOnce => "TK326",
        DesignRule.CountIsPossible => "TK330",
        DesignRule.NotBeforePlanting => "TK331",
        DesignRule.VisitsInOrder => "TK332",
        DesignRule.VisitedTwice => VisitedTwiceCode,
        DesignRule.CumulativeCountsDoNotFall => "TK334",
        DesignRule.FirstVisitFindsNothing => "TK335",
        DesignRule.PlantsWithinSeeds => "TK336",
        DesignRule.PlantListedOnce => "TK340",
        DesignRule.PositionsDoNotGoBack => "TK341",
        DesignRule.StripWeighedOnce => "TK350",
        DesignRule.YieldIsPossible => "TK352",
        DesignRule.MeasureHasOneUnit => "TK351",
        DesignRule.WeatherCoversEmergence => "TK360",
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, string.Create(CultureInfo.InvariantCulture, $"Rule {rule} has no code; a rule that has one was expected.")),
    };

    private static Problem Error(string code, ProblemLocation at, string found, string expected) =>
        new(code, ProblemSeverity.Error, at, found, expected);

    private static Problem Warning(string code, ProblemLocation at, string found, string expected) =>
        new(code, ProblemSeverity.Warning, at, found, expected);
}
