using TrialKit.Ingest.Tables;
using TrialKit.Ingest.Toml;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads <c>plan.toml</c>, which keeps the seed that the strips were drawn with and the mark of the plan.</summary>
internal static class PlanReader
{
    /// <summary>The file's name.</summary>
    public const string FileName = "plan.toml";

    // The largest whole number that every reader of the file can hold exactly.
    private const long LargestSeed = (1L << 53) - 1;

    /// <summary>The seed and the mark; both null when there is no such file, or with an error added.</summary>
    public static (long? Seed, string? Id) Read(string folder, ProblemList problems)
    {
        if (!TrialFile.Exists(folder, FileName)
            || Utf8Text.Read(folder, FileName, problems, TrialFile.LongestSettings) is not { } text
            || TomlReader.Read(text, problems) is not { } map)
        {
            return (null, null);
        }

        var section = new TomlSection(map, FileName, problems);
        section.Require("seed", "seed = 481516");
        var seed = section.WholeNumber("seed", 0, LargestSeed);
        var id = section.Text("id");
        section.Text("program");
        section.Finish();
        return (seed, id);
    }
}
