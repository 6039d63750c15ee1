using System.Collections.Immutable;

namespace TrialKit.Starter;

/// <summary>The cautions that stand on every output that shows an amount near the seed: the one place where they are worded.</summary>
public static class StarterCautions
{
    /// <summary>The first, which governs the others.</summary>
    public const string LabelFirst = "The product's label governs. Follow it before anything printed here.";

    /// <summary>Every caution, the first first.</summary>
    public static ImmutableArray<(string Id, string Text)> All { get; } =
    [
        ("label-first", LabelFirst),
        ("local-advice", "Limits of your own extension service, local rules and licensed advice come before any figure here."),
        ("screening-only", "A limit here is a screening figure from the source named beside it. Over it is no proof of injury; under it is no proof of safety."),
        ("dry-soil", "Dry soil makes injury likelier: salt stays beside the seed until rain moves it."),
        ("sandy-soil", "Sandy soil, low in clay and organic matter, takes less than the same amount on heavier soil."),
        ("row-width", "The wider the rows, the more of a rate per area lies along each foot of row."),
    ];
}
