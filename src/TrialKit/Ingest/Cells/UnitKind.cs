namespace TrialKit.Ingest.Cells;

/// <summary>A physical quantity and the units that input may carry for it.</summary>
/// <param name="Name">The quantity as messages name it.</param>
/// <param name="Units">The units as printed; the first is the one shown for headers.</param>
/// <param name="Example">A quantity with its unit, as one writes it in <c>trial.toml</c>.</param>
internal sealed record UnitKind(string Name, IReadOnlyList<string> Units, string Example)
{
    private static readonly Dictionary<string, string> Spellings = new(StringComparer.Ordinal)
    {
        ["inch"] = "in",
        ["inches"] = "in",
        ["\""] = "in",
        ["foot"] = "ft",
        ["feet"] = "ft",
        ["'"] = "ft",
        ["yard"] = "yd",
        ["yards"] = "yd",
        ["centimeter"] = "cm",
        ["centimeters"] = "cm",
        ["centimetre"] = "cm",
        ["centimetres"] = "cm",
        ["meter"] = "m",
        ["meters"] = "m",
        ["metre"] = "m",
        ["metres"] = "m",
        ["lbs"] = "lb",
        ["pound"] = "lb",
        ["pounds"] = "lb",
        ["kilogram"] = "kg",
        ["kilograms"] = "kg",
        ["tonne"] = "t",
        ["tonnes"] = "t",
        ["degf"] = "f",
        ["fahrenheit"] = "f",
        ["°f"] = "f",
        ["degc"] = "c",
        ["celsius"] = "c",
        ["°c"] = "c",
        ["day"] = "d",
        ["days"] = "d",
        ["hour"] = "h",
        ["hours"] = "h",
        ["pct"] = "%",
        ["percent"] = "%",
        ["acre"] = "ac",
        ["acres"] = "ac",
        ["hectare"] = "ha",
        ["hectares"] = "ha",
        ["bushel"] = "bu",
        ["bushels"] = "bu",
        ["gallon"] = "gal",
        ["gallons"] = "gal",
        ["liter"] = "l",
        ["liters"] = "l",
        ["litre"] = "l",
        ["litres"] = "l",
        ["seed"] = "seeds",
        ["kernels"] = "seeds",
        ["plant"] = "plants",
    };

    /// <summary>The unit of the example.</summary>
    public string ExampleUnit => Example[(Example.IndexOf(' ', StringComparison.Ordinal) + 1)..];

    /// <summary>The unit as printed that a header or a quantity means, or null when it is none of this kind.</summary>
    /// <param name="text">The unit as written; case, spaces and the sign of division do not matter.</param>
    public string? Find(string text)
    {
        var key = Key(text);
        foreach (var unit in Units)
        {
            if (Key(unit) == key)
            {
                return unit;
            }
        }

        return null;
    }

    private static string Key(string unit)
    {
        var key = string.Concat(
            unit.ToLowerInvariant()
                .Split([' ', '/', '_', '-'], StringSplitOptions.RemoveEmptyEntries)
                .Where(part => part is not "per")
                .Select(part => Spellings.GetValueOrDefault(part, part)));
        return Spellings.GetValueOrDefault(key, key);
    }
}
