using System.Collections.Immutable;
using TrialKit.Reporting.Document;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Report;

/// <summary>A page on what is put near the seed, before or without a trial.</summary>
public static class StarterReport
{
    /// <summary>The page as plain data.</summary>
    /// <param name="title">What it is about.</param>
    /// <param name="review">What is put where.</param>
    /// <param name="flows">The flow of each liquid; may be empty.</param>
    /// <param name="units">The units printed.</param>
    /// <param name="size">The sheet.</param>
    /// <param name="inputs">The files it was made from; empty when there are none.</param>
    public static ReportDocument Of(string title, StarterReview review, ImmutableArray<StreamFlow> flows, UnitSystem units, PageSize size, IReadOnlyList<ReportInput> inputs)
    {
        ArgumentNullException.ThrowIfNull(review);
        return new(
            title,
            "What is put near the seed: amounts, published limits, flow",
            "en-US",
            size,
            new ReportFooter($"TrialKit {Library.Version}", Fingerprint.Of(inputs)),
            [
                new Heading(1, title),
                .. StarterPart.Of(review, flows, units),
                .. FindingNotes.Of(review.Findings, []) is var notes && notes.Any() ? [new Heading(2, "Doubts and notes"), .. notes] : Array.Empty<Block>(),
                new Heading(2, "Methods"),
                new BulletList([.. StarterReview.Methods.Concat(flows.Take(1).Select(_ => StreamFlow.Method)).Select(method => RichText.Of(method.Name, Emphasis.Strong).Then($". {method.Source}."))]),
            ]);
    }
}
