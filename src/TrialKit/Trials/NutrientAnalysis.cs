using System.Globalization;

namespace TrialKit.Trials;

/// <summary>A guaranteed analysis in percent by weight: nitrogen, phosphate, potash, sulfur, and whatever else is named.</summary>
/// <param name="N">Nitrogen, % N.</param>
/// <param name="P2O5">Available phosphate, % P2O5.</param>
/// <param name="K2O">Soluble potash, % K2O.</param>
/// <param name="S">Sulfur, % S; 0 when not stated.</param>
public readonly record struct NutrientAnalysis(double N, double P2O5, double K2O, double S)
{
    private static readonly Nutrient[] Named = [.. Enum.GetValues<Nutrient>().Where(nutrient => nutrient > Nutrient.K2O)];

    /// <summary>Calcium, %.</summary>
    public double Ca { get; init; }

    /// <summary>Magnesium, %.</summary>
    public double Mg { get; init; }

    /// <summary>Zinc, %.</summary>
    public double Zn { get; init; }

    /// <summary>Boron, %.</summary>
    public double B { get; init; }

    /// <summary>Manganese, %.</summary>
    public double Mn { get; init; }

    /// <summary>Iron, %.</summary>
    public double Fe { get; init; }

    /// <summary>Copper, %.</summary>
    public double Cu { get; init; }

    /// <summary>Molybdenum, %.</summary>
    public double Mo { get; init; }

    /// <summary>Chloride, %.</summary>
    public double Cl { get; init; }

    /// <summary>What the analysis states above zero, in a fixed order.</summary>
    public IEnumerable<Nutrient> Stated
    {
        get
        {
            var analysis = this;
            return Enum.GetValues<Nutrient>().Where(nutrient => analysis.Percent(nutrient) > 0);
        }
    }

    /// <summary>The sum of all that is stated, %.</summary>
    public double Total
    {
        get
        {
            var analysis = this;
            return Enum.GetValues<Nutrient>().Sum(analysis.Percent);
        }
    }

    /// <summary>The percentage of one nutrient; 0 when not stated.</summary>
    public double Percent(Nutrient nutrient) => nutrient switch
    {
        Nutrient.N => N,
        Nutrient.P2O5 => P2O5,
        Nutrient.K2O => K2O,
        Nutrient.S => S,
        Nutrient.Ca => Ca,
        Nutrient.Mg => Mg,
        Nutrient.Zn => Zn,
        Nutrient.B => B,
        Nutrient.Mn => Mn,
        Nutrient.Fe => Fe,
        Nutrient.Cu => Cu,
        Nutrient.Mo => Mo,
        Nutrient.Cl => Cl,
        _ => throw Unknown(nutrient),
    };

    /// <summary>Reads an analysis as labels print it: <c>10-34-0</c>, <c>12-0-0-26S</c>, <c>9-18-9-0.5Zn-0.02B</c>; a fourth figure without a symbol is sulfur.</summary>
    /// <param name="text">The text.</param>
    /// <param name="analysis">What it states; its total is not held against 100 %.</param>
    /// <returns>False when the text is no analysis: a part that is no number from 0 to 100, a symbol that is not known, or a nutrient twice.</returns>
    public static bool TryParse(string text, out NutrientAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(text);
        analysis = default;
        var parts = text.Split(['-', ','], StringSplitOptions.TrimEntries);
        if (parts.Length < 3 || !TryNumber(parts[0], out var n) || !TryNumber(parts[1], out var p) || !TryNumber(parts[2], out var k))
        {
            return false;
        }

        var read = new NutrientAnalysis(n, p, k, 0);
        var seen = new HashSet<Nutrient>();
        foreach (var (part, index) in parts.Skip(3).Select((part, index) => (part, index)))
        {
            var digits = part.TrimEnd([.. "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz "]);
            var symbol = part[digits.Length..].Trim();
            var nutrient = symbol.Length == 0 && index == 0 ? Nutrient.S : Named.Cast<Nutrient?>().FirstOrDefault(named => Identifier.Same(named.ToString(), symbol));
            if (nutrient is not { } known || !TryNumber(digits, out var percent) || !seen.Add(known))
            {
                return false;
            }

            read = read.With(known, percent);
        }

        analysis = read;
        return true;
    }

    /// <summary>The analysis as the trade writes it, such as <c>10-34-0</c>, <c>12-0-0-26S</c> or <c>9-18-9-0.5Zn</c>.</summary>
    public override string ToString()
    {
        var analysis = this;
        return string.Create(CultureInfo.InvariantCulture, $"{N}-{P2O5}-{K2O}")
            + string.Concat(Named.Where(nutrient => analysis.Percent(nutrient) > 0).Select(nutrient => string.Create(CultureInfo.InvariantCulture, $"-{analysis.Percent(nutrient)}{nutrient}")));
    }

    private NutrientAnalysis With(Nutrient nutrient, double percent) => nutrient switch
    {
        Nutrient.S => this with { S = percent },
        Nutrient.Ca => this with { Ca = percent },
        Nutrient.Mg => this with { Mg = percent },
        Nutrient.Zn => this with { Zn = percent },
        Nutrient.B => this with { B = percent },
        Nutrient.Mn => this with { Mn = percent },
        Nutrient.Fe => this with { Fe = percent },
        Nutrient.Cu => this with { Cu = percent },
        Nutrient.Mo => this with { Mo = percent },
        Nutrient.Cl => this with { Cl = percent },
        _ => throw Unknown(nutrient),
    };

    private static bool TryNumber(string text, out double value) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value) && value is >= 0 and <= 100;

    private static ArgumentOutOfRangeException Unknown(Nutrient nutrient) =>
        new(nameof(nutrient), nutrient, $"Nutrient {nutrient} was found; one that an analysis names was expected.");
}
