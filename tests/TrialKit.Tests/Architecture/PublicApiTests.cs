using PublicApiGenerator;

namespace TrialKit.Tests.Architecture;

/// <summary>The public API as a committed text: a change to it shows in the difference. TRIALKIT_REWRITE=1 writes it anew.</summary>
public class PublicApiTests
{
    private static string Committed => Path.Combine(ReferenceData.Repository, "tests", "TrialKit.Tests", "Architecture", "PublicApi.txt");

    [Fact]
    public void PublicApi_OfTheLibrary_IsAsCommitted()
    {
        var api = typeof(Library).Assembly.GeneratePublicApi(new ApiGeneratorOptions { IncludeAssemblyAttributes = false }).ReplaceLineEndings("\n");
        if (Environment.GetEnvironmentVariable("TRIALKIT_REWRITE") == "1")
        {
            File.WriteAllText(Committed, api);
        }

        Assert.Equal(File.ReadAllText(Committed), api);
    }
}
