using System.CommandLine;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;

namespace TrialKit.Cli.Commands;

/// <summary>Options that commands share.</summary>
internal static class CommonOptions
{
    private const string Letter = "letter";
    private const string A4 = "a4";

    /// <summary>The paper.</summary>
    public static Option<string?> Paper()
    {
        var paper = new Option<string?>("--paper") { Description = "The sheet: letter or a4; by the trial's units when not given.", HelpName = "SIZE" };
        paper.AcceptOnlyFromAmong(Letter, A4);
        return paper;
    }

    /// <summary>The paper that was named, or the one of the units.</summary>
    public static PageSize PaperOf(string? named, UnitSystem units) => named switch
    {
        Letter => PageSize.Letter,
        A4 => PageSize.A4,
        _ => units == UnitSystem.Us ? PageSize.Letter : PageSize.A4,
    };

    public static Option<bool> Quiet() => new("--quiet", "-q") { Description = "Print nothing but errors and warnings." };
}
