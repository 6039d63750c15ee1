using System.Text;
using TrialKit.Ingest.Cells;

namespace TrialKit.Ingest.Toml;

/// <summary>A number with its unit, as <c>trial.toml</c> writes one: <c>30 in</c>.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit as printed.</param>
/// <param name="At">Where it stands.</param>
/// <param name="Written">The text as written.</param>
internal sealed record QuantityText(double Value, string Unit, ProblemLocation At, string Written)
{
    /// <summary>Splits a text into a number and what follows it.</summary>
    /// <returns>False when it does not begin with a number.</returns>
    public static bool TrySplit(string text, out double value, out string unit)
    {
        text = text.Trim();
        var length = 0;
        while (length < text.Length && (char.IsAsciiDigit(text[length]) || text[length] is '+' or '-' or '.' || IsExponent(text, length)))
        {
            length++;
        }

        unit = text[length..].Trim();
        return NumberCell.TryRead(Encoding.UTF8.GetBytes(text[..length]), decimalComma: false, out value);
    }

    private static bool IsExponent(string text, int at) =>
        text[at] is 'e' or 'E' && at + 1 < text.Length && (char.IsAsciiDigit(text[at + 1]) || text[at + 1] is '-' or '+');
}
