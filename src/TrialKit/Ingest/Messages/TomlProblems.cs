using System.Globalization;

namespace TrialKit.Ingest.Messages;

/// <summary>What can be wrong with <c>trial.toml</c> by itself: codes TK201 to TK299.</summary>
internal static class TomlProblems
{
    public static Problem Syntax(ProblemLocation at, string reason) => Error("TK201", at,
        $"the file is not TOML here: {Wording.OneLine(reason.TrimEnd('.'))}", "a line such as key = \"value\" or [section] was expected");

    public static Problem TooDeep(ProblemLocation at, int deepest) => Error("TK226", at,
        $"brackets within brackets go more than {deepest.ToString(CultureInfo.InvariantCulture)} deep", "a line such as key = \"value\" or [section] was expected");

    public static Problem ControlCharacter(ProblemLocation at, string key, char value) => Error("TK225", at,
        string.Create(CultureInfo.InvariantCulture, $"{Wording.Quote(key)} holds a control character (0x{(int)value:X2})"), "text that can be read was expected; type it again");

    public static Problem UnknownKey(ProblemLocation at, string section, string key, IReadOnlyList<string> known) => Error("TK202", at,
        $"the key {Wording.Quote(key)} is not known in {section}", known.Count == 0 ? "no key was expected here" : $"the nearest known key is {Wording.Quote(NearestName.Of(key, known))}, of {string.Join(", ", known)}");

    public static Problem WrongKind(ProblemLocation at, string key, string found, string expected) => Error("TK203", at,
        $"{Wording.Quote(key)} is {found}", $"{expected} was expected");

    public static Problem BareNumber(ProblemLocation at, string key, string number, string exampleUnit, IReadOnlyList<string> units) => Error("TK204", at,
        $"{Wording.Quote(key)} is the bare number {number}", $"a quantity with its unit was expected, written \"{number} {exampleUnit}\"; the units are {Wording.Or(units)}");

    public static Problem NotQuantity(ProblemLocation at, string key, string text, string example) => Error("TK205", at,
        $"{Wording.Quote(key)} is {Wording.Quote(text)}", $"a number and its unit were expected, written \"{example}\"");

    public static Problem UnknownUnit(ProblemLocation at, string key, string unit, IReadOnlyList<string> units) => Error("TK206", at,
        $"{Wording.Quote(key)} has the unit {Wording.Quote(unit)}", $"one of {Wording.Or(units)} was expected");

    public static Problem MissingKey(ProblemLocation at, string section, string key, string example) => Error("TK207", at,
        $"there is no {Wording.Quote(key)} in {section}", $"a line such as {example} was expected");

    public static Problem NotChoice(ProblemLocation at, string key, string text, IReadOnlyList<string> choices) => Error("TK208", at,
        $"{Wording.Quote(key)} is {Wording.Quote(text)}", $"{(choices.Count == 1 ? choices[0] : $"one of {Wording.Or(choices)}")} was expected");

    public static Problem OutOfRange(ProblemLocation at, string key, string text, string range) => Error("TK209", at,
        $"{Wording.Quote(key)} is {text}", $"{range} was expected");

    public static Problem EmptyText(ProblemLocation at, string key) => Error("TK210", at,
        $"{Wording.Quote(key)} is empty", "text was expected; leave the line out when there is nothing to say");

    public static Problem UnknownCrop(ProblemLocation at, string name, IReadOnlyList<string> crops) => Error("TK211", at,
        $"the crop {Wording.Quote(name)} is not known", $"one of {Wording.Or(crops)} was expected (the nearest is {Wording.Quote(NearestName.Of(name, crops))}), or a section [crop] that defines it");

    public static Problem UnknownControl(ProblemLocation at, string name, IReadOnlyList<string> treatments) => Error("TK212", at,
        $"the control {Wording.Quote(name)} is none of the treatments", treatments.Count == 0 ? "the name of a treatment was expected" : $"one of {Wording.Or(treatments)} was expected");

    public static Problem NotAnalysis(ProblemLocation at, string text) => Error("TK213", at,
        $"'analysis' is {Wording.Quote(text)}", "the percentages of N, P2O5, K2O and, when there is sulfur, S were expected, written \"10-34-0\"");

    public static Problem NoUnitColumn(ProblemLocation at, string key, IReadOnlyList<string> known) => Error("TK214", at,
        $"{Wording.Quote(key)} under [units] is no column with a unit", $"the nearest known column is {Wording.Quote(NearestName.Of(key, known))}, of {string.Join(", ", known)}");

    public static Problem OtherCurrency(ProblemLocation at, string key, string found, string earlier) => Error("TK215", at,
        $"{Wording.Quote(key)} is in {Wording.Quote(found)} where {Wording.Quote(earlier)} was used before", "one currency was expected throughout");

    public static Problem DensityMissing(ProblemLocation at, string written, string? usual) => Error("TK216", at,
        $"the rate is the volume {Wording.Quote(written)} and there is no 'density'", $"the weight of a volume was expected, written density = \"11.65 lb/gal\"; without it the nutrients cannot be weighed{(usual is null ? "" : $"; {usual}")}");

    public static Problem SharesNotOne(ProblemLocation at, string key, double sum) => Error("TK217", at,
        $"the shares under {Wording.Quote(key)} add up to {Wording.Number(sum)}", "shares that add up to 1 were expected, such as { in-furrow = 0.4, 2x2 = 0.6 }");

    public static Problem AnalysisAboveWhole(ProblemLocation at, string text, double total) => Error("TK218", at,
        $"'analysis' is {Wording.Quote(text)}, {Wording.Number(total)} % in all", "100 % or less was expected");

    public static Problem UnknownMaterial(ProblemLocation at, string name, IReadOnlyList<string> known) => Error("TK219", at,
        $"the material {Wording.Quote(name)} is not known", $"one of {Wording.Or(known)} was expected; the nearest is {Wording.Quote(NearestName.Of(name, known))}");

    public static Problem MixtureAboveWhole(ProblemLocation at, double sum) => Error("TK220", at,
        $"the shares under 'made_from' add up to {Wording.Number(sum)}", "shares of the product's weight that add up to 1 or less were expected; the rest is water");

    public static Problem PriceWithoutDensity(ProblemLocation at, string written) => Error("TK221", at,
        $"'price' is {Wording.Quote(written)}, and the rate is not in that kind of unit", "a density that turns volume into weight was expected, or a price in the unit of the rate");

    public static Problem TimeWithoutWage(ProblemLocation at) => Error("TK222", at,
        "working time is given and there is no 'wage' under [money]", "what an hour costs was expected, written wage = \"25 $/h\"");

    public static Problem NoMeasure(ProblemLocation at, string key, IReadOnlyList<string> known) => Error("TK223", at,
        $"{Wording.Quote(key)} under [design.margin] is no measure", $"the nearest known measure is {Wording.Quote(NearestName.Of(key, known))}, of {string.Join(", ", known)}; one of your own is written own-NAME");

    public static Problem PlacementTwice(ProblemLocation at, string name) => Error("TK224", at,
        $"the placement {Wording.Quote(name)} is named twice", "each placement once was expected, with its whole share");

    private static Problem Error(string code, ProblemLocation at, string found, string expected) =>
        new(code, ProblemSeverity.Error, at, found, expected);
}
