using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Records;
using TrialKit.Ingest.Settings;
using TrialKit.Ingest.Tables;
using TrialKit.Trials;

namespace TrialKit.Ingest;

/// <summary>Finds where the records that break a rule stand in the files.</summary>
/// <param name="settings">Where treatments and the layout stand.</param>
/// <param name="tables">Where records stand.</param>
/// <param name="ranks">Takes the file of each violation.</param>
/// <param name="problems">Takes the violations.</param>
internal sealed class RuleReport(TrialSettings settings, TrialTables tables, FileRanks ranks, ProblemList problems)
{
    /// <summary>Adds each violation with its place.</summary>
    public void Add(IEnumerable<RuleViolation> violations)
    {
        foreach (var violation in violations.Where(violation => !FollowsFromError(violation)))
        {
            var (file, at) = Place(violation);
            ranks.Begin(file);
            problems.Add(TrialProblems.Broken(at, violation));
        }
    }

    /// <summary>Whether rows that were not read for their own errors are what the rule misses.</summary>
    private bool FollowsFromError(RuleViolation violation) => violation.Rule switch
    {
        DesignRule.PairsHaveTwoTreatments => !settings.KnowsTreatments,
        DesignRule.BlockHasControl => tables.StripsHaveErrors,
        DesignRule.VisitedTwice or DesignRule.FirstVisitFindsNothing => tables.Emergence.IsPartial((EmergenceSpot)violation.Subject),
        _ => false,
    };

    private (string File, ProblemLocation At) Place(RuleViolation violation) => violation.Subject switch
    {
        Treatment treatment => (SettingsReader.FileName, PlaceOf(treatment)),
        Design => (SettingsReader.FileName, settings.DesignPlace),
        Strip strip => ("strips", tables.Strips.At(strip, violation.Rule switch
        {
            DesignRule.StripListedOnce => Schema.Strip,
            DesignRule.TreatmentOnceInBlock => Schema.Treatment,
            DesignRule.OrderTakenOnce => Schema.Order,
            _ => Schema.Block,
        })),
        StandCount count => ("stand-counts", tables.StandCounts.At(count, violation.Rule == DesignRule.NotBeforePlanting ? Schema.Date : Schema.RequiredPlants)),
        EmergenceSpot spot => ("emergence", tables.Emergence.At(spot, violation.Item ?? 0, violation.Rule switch
        {
            DesignRule.VisitedTwice => Schema.RequiredSpot,
            DesignRule.NotBeforePlanting or DesignRule.VisitsInOrder => Schema.RequiredDate,
            _ => tables.Emergence.CountColumn,
        })),
        Plant plant => ("plants", tables.Plants.At(plant, violation.Rule switch
        {
            DesignRule.NotBeforePlanting => Schema.FirstSeen,
            DesignRule.PositionsDoNotGoBack => Schema.Position,
            _ => Schema.Plant,
        })),
        StripHarvest harvest => ("harvest", tables.Harvests.At(harvest, violation.Rule == DesignRule.YieldIsPossible ? Schema.Weight : Schema.Strip)),
        StripMeasurement measurement => ("measures", tables.Measurements.At(measurement, Schema.Unit)),
        TemperatureSeries series => ReferenceEquals(series, tables.SoilTemperature.Series)
            ? ("soil-temperature", tables.SoilTemperature.Start!)
            : ("weather", tables.Weather.Start!),
        var other => throw new InvalidOperationException($"The rule {violation.Rule} was broken by a {other.GetType().Name}; a record of the trial was expected."),
    };

    private ProblemLocation PlaceOf(Treatment treatment)
    {
        var index = 0;
        while (!ReferenceEquals(settings.Treatments[index], treatment))
        {
            index++;
        }

        return settings.TreatmentPlaces[index];
    }
}
