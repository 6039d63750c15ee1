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
    };
}
