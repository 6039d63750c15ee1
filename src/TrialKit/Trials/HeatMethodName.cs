using System.Globalization;
using System.Text.RegularExpressions;
using UnitsNet;

namespace TrialKit.Trials;

/// <summary>Reads the name of a heat method that spells out its rule and thresholds, such as <c>single sine 86/50 horizontal</c>.</summary>
/// <remarks>RULE UPPER/LOWER [F or C] [CUT-OFF], or RULE LOWER [F or C] without an upper threshold; degrees Fahrenheit unless C is written.</remarks>
internal static partial class HeatMethodName
{
    private static readonly (string Name, HeatRule Rule, string Source)[] Rules =
    [
        ("simple average", HeatRule.SimpleAverage, "McMaster & Wilhelm 1997, Agric. For. Meteorol. 87:291-300, without clipping"),
        ("mean clipped", HeatRule.MeanClipped, "McMaster & Wilhelm 1997, Agric. For. Meteorol. 87:291-300, method 1"),
        ("extremes clipped", HeatRule.ExtremesClipped, "McMaster & Wilhelm 1997, Agric. For. Meteorol. 87:291-300, method 2"),
        ("single sine", HeatRule.SingleSine, "Baskerville & Emin 1969, Ecology 50:514-517"),
        ("double sine", HeatRule.DoubleSine, "Allen 1976, Environ. Entomol. 5:388-396"),
        ("single triangle", HeatRule.SingleTriangle, "Sevacherian and others 1977, J. Econ. Entomol. 70:399-402"),
        ("double triangle", HeatRule.DoubleTriangle, "Sevacherian and others 1977, J. Econ. Entomol. 70:399-402; halves as in Allen 1976, Environ. Entomol. 5:388-396"),
        ("hourly", HeatRule.Hourly, "common practice: the mean of hourly excesses"),
    ];

    private const string CutOffSource = "; cut-off as in Roltsch and others 1999, Int. J. Biometeorol. 42:169-176";

    /// <summary>How such a name is written, for messages.</summary>
    public const string Form = "a rule with its thresholds such as \"single sine 86/50 horizontal\" (simple average, mean clipped, extremes clipped, single or double sine or triangle, hourly; UPPER/LOWER in F, or in C when C follows; none, horizontal, intermediate or vertical)";

    /// <summary>The method a name spells out; null when it spells out none.</summary>
    public static HeatMethod? Read(string name)
    {
        var match = Pattern().Match(name.Trim());
        if (!match.Success)
        {
            return null;
        }

        var (ruleName, rule, source) = Rules.First(known => Identifier.Same(known.Name, Spaces().Replace(match.Groups["rule"].Value, " ")));
        var first = Number(match.Groups["first"]);
        var second = match.Groups["second"].Success ? Number(match.Groups["second"]) : (double?)null;
        var (lower, upper) = second is { } low ? (low, first) : (first, (double?)null);
        var cutOff = match.Groups["cut"].Success ? Enum.Parse<HeatCutOff>(match.Groups["cut"].Value, ignoreCase: true) : HeatCutOff.Horizontal;
        var isCelsius = Identifier.Same(match.Groups["unit"].Value, "C");
        var method = new HeatMethod(string.Empty, rule, Degrees(lower, isCelsius), upper is { } top ? Degrees(top, isCelsius) : null, source) { CutOff = cutOff };

        // The plain mean has no upper threshold, a cut-off needs a curve and a threshold, and an upper threshold lies above the lower.
        if (upper <= lower || (rule == HeatRule.SimpleAverage && upper is not null)
            || (match.Groups["cut"].Success && (!method.HasCurve || upper is null)))
        {
            return null;
        }

        var thresholds = upper is { } high ? string.Create(CultureInfo.InvariantCulture, $"{high:R}/{lower:R}") : lower.ToString("R", CultureInfo.InvariantCulture);
        var hasCutOff = method.HasCurve && upper is not null;
        return method with
        {
            Name = $"{ruleName} {thresholds}{(isCelsius ? " C" : string.Empty)}{(hasCutOff ? " " + Word(cutOff) : string.Empty)}",
            Source = hasCutOff && cutOff != HeatCutOff.None ? source + CutOffSource : source,
        };
    }

    private static string Word(HeatCutOff cutOff) => cutOff switch
    {
        HeatCutOff.None => "none",
        HeatCutOff.Horizontal => "horizontal",
        HeatCutOff.Intermediate => "intermediate",
        _ => "vertical",
    };

    private static double Number(Group group) => double.Parse(group.ValueSpan, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static Temperature Degrees(double value, bool isCelsius) => isCelsius ? Temperature.FromDegreesCelsius(value) : Temperature.FromDegreesFahrenheit(value);

    [GeneratedRegex(@"^(?<rule>simple +average|mean +clipped|extremes +clipped|(single|double) +(sine|triangle)|hourly) +(?<first>-?[0-9]{1,3}(\.[0-9]{1,6})?)( */ *(?<second>-?[0-9]{1,3}(\.[0-9]{1,6})?))?( *(?<unit>[FC]))?( +(?<cut>none|horizontal|intermediate|vertical))?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Pattern();

    [GeneratedRegex(" +", RegexOptions.None, 1000)]
    private static partial Regex Spaces();
}
