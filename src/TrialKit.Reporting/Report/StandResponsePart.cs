using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Stand;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>Each treatment's stand beside a published table of yield by stand and planting date; corn only.</summary>
internal static class StandResponsePart
{
    public static IEnumerable<Block> Of(TrialAnalysis analysis)
    {
        var strips = analysis.Strips.Stands.Where(stand => stand.Strip.IsAnalysed).ToArray();
        if (strips.Length == 0 || !Identifier.Same(analysis.Trial.Crop.Name, "corn"))
        {
            yield break;
        }

        var rows =
            from treatment in analysis.Trial.Treatments
            let own = strips.Where(stand => Identifier.Same(stand.Strip.Treatment.Name, treatment.Name)).ToArray()
            where own.Length > 0
            let mean = PlantDensity.FromPerHectare(own.Average(stand => stand.Mean.PerHectare))
            let planted = own.Min(stand => stand.Strip.Planted)
            select TableRow.Of(
                treatment.Label,
                NumberText.Stand(analysis.Trial.Units == UnitSystem.Us ? mean.PerAcre : mean.PerHectare),
                NumberText.ShortDate(planted),
                NumberText.Number(StandResponse.PercentAt(planted, mean), 0));
        yield return new Table(
            "Stand and planting date in a published table of corn yield",
            [new("Treatment"), new("Stand", analysis.Trial.Units == UnitSystem.Us ? "plants/ac" : "plants/ha", ColumnAlignment.Right), new("Planted"), new("Of the best", "%", ColumnAlignment.Right)],
            [.. rows],
            $"{StandResponse.Source}. {StandResponse.Caution} A dash: outside the table.");
    }
}
