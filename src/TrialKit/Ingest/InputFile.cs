using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using TrialKit.Ingest.Settings;

namespace TrialKit.Ingest;

/// <summary>A file that a trial was read from, with the mark of its content.</summary>
/// <param name="Name">Its name in the trial folder.</param>
/// <param name="Sha256">The SHA-256 of its bytes, in lower-case hexadecimal.</param>
/// <param name="Rows">Rows of data read from it; null for the settings.</param>
public sealed record InputFile(string Name, string Sha256, int? Rows)
{
    private const int FingerprintDigits = 12;

    /// <summary>The files of a reading, settings first, then the tables in their order.</summary>
    /// <param name="reading">The reading.</param>
    /// <exception cref="IOException">A file that was read cannot be read again.</exception>
    public static ImmutableArray<InputFile> Of(TrialReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var tables = reading.Tables.ToLookup(table => table.File, StringComparer.Ordinal);
        return
        [
            Mark(reading.Folder, SettingsReader.FileName, rows: null),
            .. tables.Select(file => Mark(reading.Folder, file.Key, file.Sum(table => table.Read))),
        ];
    }

    /// <summary>A short mark of some files together: the same files give the same mark, whatever folder they lie in.</summary>
    /// <param name="files">Name and SHA-256 of each.</param>
    /// <returns>Twelve hexadecimal digits.</returns>
    public static string Fingerprint(IEnumerable<(string Name, string Sha256)> files)
    {
        var text = string.Join('\n', files.OrderBy(file => file.Name, StringComparer.Ordinal).Select(file => $"{file.Sha256} {file.Name}"));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..FingerprintDigits];
    }

    private static InputFile Mark(string folder, string file, int? rows)
    {
        using var stream = File.OpenRead(Path.Combine(folder, file));
        return new(file, Convert.ToHexStringLower(SHA256.HashData(stream)), rows);
    }
}
