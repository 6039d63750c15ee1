using System.Security.Cryptography;
using System.Text;

namespace TrialKit.Reporting.Report;

/// <summary>A short mark of all input files together: the same files give the same mark, whatever folder they lie in.</summary>
internal static class Fingerprint
{
    private const int Digits = 12;

    /// <summary>The mark; null where no file was read.</summary>
    public static string? Of(IReadOnlyList<ReportInput> inputs)
    {
        if (inputs.Count == 0)
        {
            return null;
        }

        var text = string.Join('\n', inputs.OrderBy(input => input.Name, StringComparer.Ordinal).Select(input => $"{input.Sha256} {input.Name}"));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..Digits];
    }
}
