using TrialKit.Reporting.Tests.Sheets.Teaching.Derivations;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>For each topic, the working of its answers from the text of a student's sheet.</summary>
internal static class DerivationList
{
    public static readonly IReadOnlyDictionary<string, Func<SheetText, Hand, IEnumerable<Derived>>> All = new Dictionary<string, Func<SheetText, Hand, IEnumerable<Derived>>>(StringComparer.Ordinal)
    {
        ["stand-counts"] = StandCountsDerivation.Of,
        ["emergence-curve"] = EmergenceCurveDerivation.Of,
        ["degree-days"] = DegreeDaysDerivation.Of,
        ["paired-t"] = PairedTDerivation.Of,
        ["spots-not-replicates"] = SpotsDerivation.Of,
        ["block-anova"] = BlockAnovaDerivation.Of,
        ["coins"] = CoinsDerivation.Of,
        ["p-of-030"] = WhatPSaysDerivation.Of,
        ["how-many-strips"] = HowManyStripsDerivation.Of,
        ["uneven-emergence"] = UnevenEmergenceDerivation.Of,
        ["starter"] = StarterDerivation.Of,
        ["break-even"] = BreakEvenDerivation.Of,
        ["replant"] = ReplantDerivation.Of,
    };
}
