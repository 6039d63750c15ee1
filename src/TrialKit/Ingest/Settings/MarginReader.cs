using System.Collections.Immutable;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Toml;
using TrialKit.Trials;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads <c>[design.margin]</c>: for each measure the difference that would not matter.</summary>
internal static class MarginReader
{
    private const string OwnPrefix = "own-";

    private static readonly Dictionary<string, UnitKind> Kinds = new(StringComparer.Ordinal)
    {
        ["stand"] = UnitKinds.StandDifference,
        ["stand-share"] = UnitKinds.Share,
        ["emergence-share"] = UnitKinds.Share,
        ["t10"] = UnitKinds.Time,
        ["t50"] = UnitKinds.Time,
        ["t90"] = UnitKinds.Time,
        ["t50-sown"] = UnitKinds.Time,
        ["spread"] = UnitKinds.Time,
        ["heat-t10"] = UnitKinds.Heat,
        ["heat-t50"] = UnitKinds.Heat,
        ["heat-t90"] = UnitKinds.Heat,
        ["heat-spread"] = UnitKinds.Heat,
        ["up-24h"] = UnitKinds.Share,
        ["up-48h"] = UnitKinds.Share,
        ["lag-mean"] = UnitKinds.Time,
        ["lag-sd"] = UnitKinds.Time,
        ["late-3d"] = UnitKinds.Share,
        ["stage-behind"] = UnitKinds.Share,
        ["stage-lag"] = UnitKinds.Heat,
        ["spacing-mean"] = UnitKinds.Length,
        ["spacing-sd"] = UnitKinds.Length,
        ["spacing-cv"] = UnitKinds.Share,
        ["spacing-multiples"] = UnitKinds.Share,
        ["spacing-single"] = UnitKinds.Share,
        ["spacing-missed"] = UnitKinds.Share,
        ["depth"] = UnitKinds.Length,
        ["depth-sd"] = UnitKinds.Length,
        ["depth-near"] = UnitKinds.Share,
        ["yield"] = UnitKinds.Yield,
    };

    /// <summary>The measures that a margin can be set for, besides the trial's own.</summary>
    public static IReadOnlyCollection<string> Measures => Kinds.Keys;

    /// <summary>The margins that are sound; every fault is added to the problems.</summary>
    public static ImmutableArray<EquivalenceMargin> Read(TomlSection design, ProblemList problems) =>
        design.Section("margin", "[design.margin]") is { } section
            ? [.. section.Keys.ToArray().Select(key => Read(section, key.Key, key.At, problems)).OfType<EquivalenceMargin>()]
            : [];

    private static EquivalenceMargin? Read(TomlSection section, string key, ProblemLocation at, ProblemList problems)
    {
        if (key.StartsWith(OwnPrefix, StringComparison.Ordinal))
        {
            return ReadOwn(section, key, problems);
        }

        if (!Kinds.TryGetValue(key, out var kind))
        {
            problems.Add(TomlProblems.NoMeasure(at, key, [.. Kinds.Keys]));
            return null;
        }

        return SettingsReader.Positive(section.Quantity(key, kind), key, problems) is { } margin ? new(key, margin.Value, margin.Unit) : null;
    }

    // The unit of a measure of the trial's own is known only with its table; a plain number needs none.
    private static EquivalenceMargin? ReadOwn(TomlSection section, string key, ProblemList problems)
    {
        if (section.Text(key) is not { } text)
        {
            return null;
        }

        if (!QuantityText.TrySplit(text, out var amount, out var unit))
        {
            problems.Add(TomlProblems.NotQuantity(section.At(key), key, text, "20 kPa"));
            return null;
        }

        return SettingsReader.Positive(new QuantityText(amount, unit, section.At(key), text), key, problems) is null ? null : new(key, amount, unit);
    }
}
