namespace TrialKit.Fuzz.Mutation;

/// <summary>How many damages a file takes.</summary>
internal static class Damages
{
    private const int Most = 8;

    /// <summary>One in half of the cases, so that many files stay readable in part or whole; else up to eight.</summary>
    public static int Few(Random random) => random.Next(2) == 0 ? 1 : 1 + random.Next(Most);
}
