using System.Text.RegularExpressions;
using TrialKit.Ingest;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Sheets.Teaching;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>What every topic owes a class: keys that follow from the sheet, data with the truth they claim, sheets that give nothing away.</summary>
public partial class ExerciseTests
{
    private const ulong KeySeeds = 100;
    private const ulong TruthSeeds = 1000;

    // Six or seven figures are printed; the derivations carry more.
    private const decimal SevenFigures = 2e-6m;

    // A mean of 1,000 sheets lies this many of its standard errors from the truth about once in 16,000 times.
    private const double StandardErrors = 4;

    public static TheoryData<string, ExerciseLevel> Sheets()
    {
        var data = new TheoryData<string, ExerciseLevel>();
        foreach (var topic in ExerciseTopics.All)
        {
            data.Add(topic.Id, ExerciseLevel.First);
            data.Add(topic.Id, ExerciseLevel.Second);
        }

        return data;
    }

    [Fact]
    public void Topics_EachOne_HasAnIdOfItsOwnAndADerivation()
    {
        Assert.Equal(ExerciseTopics.All.Select(topic => topic.Id).Order(StringComparer.Ordinal), DerivationList.All.Keys.Order(StringComparer.Ordinal));
        Assert.All(ExerciseTopics.All, topic => Assert.Matches("^[a-z]+(-[a-z0-9]+)*$", topic.Id));
        Assert.All(ExerciseTopics.All, topic => Assert.Same(topic, ExerciseTopics.Find($" {topic.Id.ToUpperInvariant()} ")));
        Assert.Null(ExerciseTopics.Find("no-such-topic"));
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Key_OfAHundredSeeds_FollowsFromTheStudentsSheet(string topic, ExerciseLevel level)
    {
        for (ulong seed = 0; seed < KeySeeds; seed++)
        {
            var exercise = Make(topic, seed, level);
            var sheet = SheetText.Of(exercise);
            var carried = DerivationList.All[topic](sheet, Hand.Pencil).ToDictionary(derived => derived.Id, StringComparer.Ordinal);
            var full = DerivationList.All[topic](sheet, Hand.Full).ToDictionary(derived => derived.Id, StringComparer.Ordinal);
            Assert.Equal(exercise.Paper.Key.Select(step => step.Id).Order(StringComparer.Ordinal), carried.Keys.Order(StringComparer.Ordinal));
            foreach (var step in exercise.Paper.Key)
            {
                var where = $"{topic}, {level}, seed {seed}, {step.Id}: {step.Work}";
                if (carried[step.Id].Number is { } number)
                {
                    Assert.True(SheetText.Number(step.Answer) == number, $"{where}: the key has {step.Answer}, the sheet gives {number}.");
                    var exact = full[step.Id].Number!.Value;
                    var printed = SheetText.Number(step.Full);
                    Assert.True(Math.Abs(printed - exact) <= SevenFigures * Math.Max(Math.Abs(exact), 1e-3m), $"{where}: not rounded the key has {step.Full}, the sheet gives {exact}.");
                }
                else
                {
                    Assert.True(step.Answer == carried[step.Id].Words, $"{where}: the key says '{step.Answer}', the sheet gives '{carried[step.Id].Words}'.");
                    Assert.True(step.Full == full[step.Id].Words, $"{where}: not rounded the key says '{step.Full}', the sheet gives '{full[step.Id].Words}'.");
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Key_AsText_PrintsEveryStep(string topic, ExerciseLevel level)
    {
        var exercise = Make(topic, 11, level);
        var text = SheetText.Of(exercise.Key(PageSize.Letter));

        Assert.All(exercise.Paper.Key, step => Assert.Contains(step.Answer, text, StringComparison.Ordinal));
        Assert.All(exercise.Paper.Key, step => Assert.Contains(step.Full, text, StringComparison.Ordinal));
        Assert.Contains(exercise.Paper.Wrong.Heading, text, StringComparison.Ordinal);
        Assert.All(exercise.Paper.Sources, source => Assert.Contains(source, text, StringComparison.Ordinal));
        Assert.NotEmpty(exercise.Paper.Sources);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Sheets_OfAThousandSeeds_HaveTheTruthTheyClaimAndAreNeverDegenerate(string topic, ExerciseLevel level)
    {
        var misses = new List<List<double>>();
        IReadOnlyList<ExerciseTruth> truths = [];
        for (ulong seed = 0; seed < TruthSeeds; seed++)
        {
            var paper = Make(topic, seed, level).Paper;
            truths = paper.Truths;
            misses.Add([.. truths.Select(truth => truth.Observed - truth.Value)]);
            CheckKey(paper, $"{topic}, {level}, seed {seed}");
        }

        Assert.NotEmpty(truths);
        for (var i = 0; i < truths.Count; i++)
        {
            var mean = misses.Average(sheet => sheet[i]);
            var error = Math.Sqrt(misses.Sum(sheet => (sheet[i] - mean) * (sheet[i] - mean)) / (misses.Count - 1) / misses.Count);
            Assert.True(error > 0, $"{topic}: {truths[i].Name} never varies.");
            Assert.True(Math.Abs(mean) <= StandardErrors * error, $"{topic}, {level}: {truths[i].Name} is off by {mean} in the mean, with a standard error of {error}.");
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void StudentSheet_OfManySeeds_GivesNoAnswerAway(string topic, ExerciseLevel level)
    {
        var sheets = Enumerable.Range(0, (int)KeySeeds).Select(seed => Make(topic, (ulong)seed, level)).ToArray();
        var questions = sheets.Select(sheet => Numbers(Questions(sheet))).ToArray();
        var given = sheets.Select(sheet => Numbers(SheetText.Of(sheet).Text)).ToArray();

        // What stands on every sheet of a topic belongs to its wording: levels, counts of pairs, numbers of days.
        var wording = questions.Aggregate((one, other) => [.. one.Intersect(other, StringComparer.Ordinal)]);
        foreach (var id in sheets[0].Paper.Key.Where(step => step.Number is not null).Select(step => step.Id))
        {
            var answers = sheets.Select(sheet => sheet.Paper.Key.FirstOrDefault(step => step.Id == id)?.Answer).ToArray();
            if (answers.Distinct(StringComparer.Ordinal).Count() < 2)
            {
                continue;
            }

            // One figure or two stand on most sheets by chance.
            var telling = Enumerable.Range(0, sheets.Length).Where(i => answers[i] is { Length: > 2 }).ToArray();
            Assert.False(telling.Length > 10 && telling.All(i => given[i].Contains(answers[i]!)), $"{topic}, {level}: the answer '{id}' stands on every student's sheet.");
            for (var i = 0; i < sheets.Length; i++)
            {
                Assert.False(
                    answers[i] is { Length: > 2 } answer && questions[i].Contains(answer) && !wording.Contains(answer),
                    $"{topic}, {level}, seed {sheets[i].Seed}: the questions hold {answers[i]}, the answer '{id}'.");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Files_OfAnExercise_AreATrialThatCanBeAnalysed(string topic, ExerciseLevel level)
    {
        using var folder = new ExerciseFolder(Make(topic, 3, level));
        var reading = TrialReader.Read(folder.Path);

        Assert.Empty(reading.Errors);
        Assert.NotEmpty(TrialAnalysis.Of(reading.Trial!).Measures);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Student_OnPaperAndOnScreen_HasRoomForAPencil(string topic, ExerciseLevel level)
    {
        var exercise = Make(topic, 5, level);

        Assert.All(exercise.Paper.Questions, question => Assert.NotEmpty(question.Room));
        Assert.Equal(Make(topic, 5, level).Student(PageSize.A4).Footer, exercise.Student(PageSize.A4).Footer);
        Assert.NotEmpty(PdfReport.Render(exercise.Student(PageSize.A4)));
        Assert.NotEmpty(HtmlReport.Render(exercise.Student(PageSize.A4)));
        Assert.NotEmpty(HtmlReport.Render(exercise.Key(PageSize.A4)));
    }

    private static void CheckKey(ExercisePaper paper, string where)
    {
        foreach (var step in paper.Key)
        {
            if (step.Number is not { } number)
            {
                continue;
            }

            Assert.True(double.IsFinite(number.Exact), $"{where}: {step.Id} is {number.Exact}.");
            var id = step.Id.Replace("wrong-", "", StringComparison.Ordinal);
            if (id is "p" || id.StartsWith("p-", StringComparison.Ordinal))
            {
                Assert.True(number.Exact is > 0 and <= 1 && number.Written is >= 0 and <= 1, $"{where}: {step.Id} is {step.Answer}, no probability.");
            }

            if (id is "variance" or "deviation" or "error" or "squares")
            {
                Assert.True(number.Written > 0 && number.Exact > 0, $"{where}: {step.Id} is {step.Answer}; nothing varies.");
            }
        }

        Assert.All(paper.Files.Where(file => file.Name is "stand-counts.csv" or "emergence.csv"), file => Assert.DoesNotContain(",-", file.Text, StringComparison.Ordinal));
    }

    private static Exercise Make(string topic, ulong seed, ExerciseLevel level) => ExerciseTopics.Find(topic)!.Make(seed, level);

    private static string Questions(Exercise exercise)
    {
        var text = SheetText.Of(exercise).Text;
        return text[text.IndexOf("\nQuestions\n", StringComparison.Ordinal)..text.LastIndexOf("\nTrialKit", StringComparison.Ordinal)];
    }

    private static HashSet<string> Numbers(string text) => [.. NumberPattern().Matches(text).Select(match => match.Value.TrimEnd('.', ','))];

    [GeneratedRegex(@"\u2212?[0-9][0-9.,]*", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NumberPattern();
}
