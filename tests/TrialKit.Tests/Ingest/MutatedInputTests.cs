using System.Globalization;
using TrialKit.Fuzz;
using TrialKit.Ingest;

namespace TrialKit.Tests.Ingest;

/// <summary>Whatever the files hold, the readers report it and never throw; the tool in tests/TrialKit.Fuzz runs as many cases as one likes.</summary>
public class MutatedInputTests
{
    private const int Seed = 20260504;
    private const int Cases = 2000;

    // The folders of the cases are small; on a busy machine a case still waits for its turn.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    [Fact]
    public void Run_TwoThousandDamagedFiles_KeepsEveryPromise()
    {
        var tally = FuzzRun.Run(new FuzzSettings(ReferenceData.Repository, Seed, First: 0, Cases) { ReportEvery = 200, Longest = Longest });

        Assert.Equal(Cases, tally.Counts.Sum(count => count.Value.Cases));
        Assert.Empty(tally.Broken.Select(entry => string.Create(CultureInfo.InvariantCulture, $"seed {Seed}, case {entry.Case}: {entry.Broken}")));
        Assert.True(tally.Counts.Sum(count => count.Value.Analysed) > Cases / 20, "Too few of the damaged trials read all the same to try what follows the reading.");
    }

    [Fact]
    public void Subjects_Undamaged_ReadAndKeepEveryPromise()
    {
        using var folders = new FuzzFolder();

        Assert.All(Fuzz.Corpus.Subjects.Of(ReferenceData.Repository), subject =>
        {
            var sound = new FuzzCase(0, subject, Fuzz.Mutation.MutationKind.Bytes, subject.Bytes);
            var outcome = folders.With(sound, folder => Promises.Check(folder, sound, writesReport: false));
            Assert.Equal(new Outcome(Broken: null, IsRead: true, IsAnalysed: true), outcome);
        });
    }

    [Fact]
    public void Of_SameSeedAndNumber_IsTheSameCase()
    {
        var subjects = Fuzz.Corpus.Subjects.Of(ReferenceData.Repository);

        Assert.All(Enumerable.Range(0, 90), number => Assert.Equal(FuzzCase.Of(subjects, Seed, number).Bytes, FuzzCase.Of(subjects, Seed, number).Bytes));
        Assert.NotEqual(FuzzCase.Of(subjects, Seed, 0).Bytes, FuzzCase.Of(subjects, Seed + 1, 0).Bytes);
    }

    [Fact]
    public void Read_BracketsWithinBrackets_AreRefused()
    {
        using var folder = TrialFolder.Sound().Write("trial.toml", "title = " + new string('[', 200_000));

        Assert.Equal(["trial.toml:1:73: error TK226: brackets within brackets go more than 64 deep; a line such as key = \"value\" or [section] was expected"], folder.Problems().Take(1));
    }

    /// <summary>Cases that undid the reader once.</summary>
    [Theory]
    [InlineData("a surrogate", "\\ud83c")]
    [InlineData("a surrogate in the long form", "\\U0000d83c")]
    [InlineData("beyond the last character", "\\UFFFFFFFF")]
    public void Read_EscapeOfNoCharacter_IsALocatedError(string name, string escape)
    {
        using var folder = TrialFolder.Sound().Replace("trial.toml", "North field", "North " + escape);

        var problem = folder.Read().Problems[0];

        Assert.True(problem is { Code: "TK201", Location.Line: 7 }, $"{name}: {problem}");
    }

    /// <summary>A length with a slip in it leads to a ratio whose interval no number can hold: it is said, and no table holds it.</summary>
    [Fact]
    public void Analyse_LengthThatIsASlip_GivesFiniteNumbersOnly()
    {
        using var folder = TrialFolder.Sound().Replace("stand-counts.csv", "A2,1,2026-05-20,17.424", "A2,1,2026-05-20,1000000");

        var analysis = TrialAnalysis.Of(folder.Read().Trial!);

        Assert.Contains(analysis.Counts.SelectMany(counts => counts.Findings), finding => finding.Id == "counts-not-fitted");
        TrialKit.Export.JsonResult.Write(analysis, [], Stream.Null);
    }

    [Theory]
    [InlineData("XX\u001bEATTLE1")]
    public void Read_StationOfControlCharacters_IsReportedOnOneLine(string station)
    {
        using var folder = TrialFolder.Empty().Write("a.csv", $"STATION,DATE,TMAX,TMIN\n{station},2012-05-01,60,40\nB,2012-05-02,60,40\n");

        Assert.All(WeatherReader.Read(Path.Combine(folder.Path, "a.csv"), new WeatherOptions { Unit = "F" }).Problems, problem => Assert.DoesNotContain(problem.ToString(), character => char.IsControl(character)));
    }

    [Fact]
    public void Read_LineOfBlanksInAStationsFile_IsNoRow()
    {
        var sound = File.ReadAllText(Path.Combine(ReferenceData.Root, "weather", "seattle.dly"));
        using var folder = TrialFolder.Empty().Write("a.dly", sound + "   \n").Write("b.dly", sound);

        Assert.Equal(WeatherReader.Read(Path.Combine(folder.Path, "b.dly")).Series!.Days, WeatherReader.Read(Path.Combine(folder.Path, "a.dly")).Series!.Days);
    }

    [Fact]
    public void Read_KeyOfManyParts_IsReadOrReportedInTime()
    {
        using var folder = TrialFolder.Sound().Write("trial.toml", string.Join('.', Enumerable.Repeat("a", 100_000)) + " = 1\n");

        Assert.Contains(folder.Read().Errors, problem => problem.Code == "TK202");
    }
}
