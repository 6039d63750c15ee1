using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Planning;

/// <summary>Made-up trials that have a field and no strips yet.</summary>
internal static class PlanTrial
{
    public static FieldSpace Field { get; } = new() { Length = Length.FromFeet(1180), PlanterRows = 8, Replicates = 6 };

    /// <summary>A trial of so many treatments; two are laid out in pairs.</summary>
    public static StripTrial Of(int treatments, FieldSpace? field)
    {
        var control = new Treatment("control", "Control", Cost: null, Products: []);
        Treatment[] others = [.. Enumerable.Range(1, treatments - 1).Select(i => new Treatment($"t{i}", $"Treatment {i}", Cost: null, Products: []))];
        return StripTrial.Create(SmallTrial.Draft with
        {
            Treatments = [control, .. others],
            Design = new(treatments == 2 ? Layout.Pairs : Layout.Blocks, control, default),
            Strips = [],
            Field = field,
        });
    }
}
