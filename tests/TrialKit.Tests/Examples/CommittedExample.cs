namespace TrialKit.Tests.Examples;

/// <summary>Holds a committed example to what its plan writes; with <c>TRIALKIT_REWRITE=1</c> writes it anew first.</summary>
internal static class CommittedExample
{
    public static void Check(ExamplePlan plan)
    {
        var folder = ExampleTrialWriter.FolderOf(plan);
        var written = ExampleTrialWriter.Write(plan);
        if (Environment.GetEnvironmentVariable("TRIALKIT_REWRITE") == "1")
        {
            foreach (var (file, text) in written)
            {
                File.WriteAllText(Path.Combine(folder, file), text);
            }
        }

        var committed = Directory.GetFiles(folder, "*.csv").Select(path => Path.GetFileName(path)).Where(file => file != "weather.csv").Order(StringComparer.Ordinal);
        Assert.Equal(written.Keys, committed);
        Assert.All(written, file => Assert.Equal(file.Value, File.ReadAllText(Path.Combine(folder, file.Key))));
    }
}
