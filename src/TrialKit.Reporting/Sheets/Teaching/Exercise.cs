using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Report;

namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>An exercise with its numbers: a sheet for the student, a key for the teacher, and the data as a trial folder.</summary>
/// <param name="Topic">What it is about.</param>
/// <param name="Seed">The seed its numbers were drawn with.</param>
/// <param name="Level">How much it asks.</param>
/// <param name="Paper">What it is made of.</param>
public sealed record Exercise(ExerciseTopic Topic, ulong Seed, ExerciseLevel Level, ExercisePaper Paper)
{
    private const string Carried = "Each number is rounded as the question says, a half away from zero, and the rounded number is carried on. At the right stands what comes out when nothing is rounded on the way.";

    /// <summary>The student's sheet: what is given, the questions, and room to work.</summary>
    public ReportDocument Student(PageSize size) => Sheet(
        size,
        Topic.Title,
        [
            new KeyFacts([.. Marks(), new("Name", "_____________________"), new("Date", "____________")]),
            .. Paper.Given,
            .. Paper.Cautions,
            new Heading(2, "Questions"),
            .. Paper.Questions.SelectMany((question, index) => (Block[])[new NumberedQuestion(index + 1, question.Text), .. question.Room.Select((room, i) => Whole(room, i == question.Room.Count - 1))]),
        ]);

    /// <summary>The key: each question worked from the numbers on the student's sheet.</summary>
    public ReportDocument Key(PageSize size) => Sheet(
        size,
        $"Key: {Topic.Title}",
        [
            new KeyFacts([.. Marks()]),
            new Paragraph(Carried, TextSize.Small),
            new Heading(2, "Answers"),
            .. Paper.Questions.SelectMany(Worked),
            new Heading(2, "A common wrong answer"),
            new Note(NoteWeight.Doubt, Paper.Wrong.Heading, Paper.Wrong.Why),
            .. Steps(Paper.Wrong.Steps),
            new Heading(2, "The truth behind the data"),
            new Paragraph(Paper.Drawn),
            new Table(
                null,
                [new("True of the field"), new("Value", Alignment: ColumnAlignment.Right), new("These data", Alignment: ColumnAlignment.Right)],
                [.. Paper.Truths.Select(truth => TableRow.Of(truth.Name, NumberText.Number(truth.Value, truth.Decimals), NumberText.Number(truth.Observed, truth.Decimals + 1)))]),
            .. Paper.Cautions,
            new Heading(2, "Sources"),
            new BulletList([.. Paper.Sources.Select(RichText.Of)]),
        ]);

    // The room of a question is not torn over two pages.
    private static Block Whole(Block room, bool isLast) => room switch
    {
        FormGrid form => form with { IsWhole = true, StaysWithNext = !isLast },
        AnswerRoom answers => answers with { StaysWithNext = !isLast },
        _ => room,
    };

    private IEnumerable<KeyFact> Marks() =>
    [
        new("Topic", Topic.Id),
        new("Level", Level == ExerciseLevel.First ? "first" : "second"),
        new("Seed", Seed.ToString(CultureInfo.InvariantCulture)),
    ];

    private ReportDocument Sheet(PageSize size, string title, IReadOnlyList<Block> blocks) => new(
        title,
        $"{title}, seed {Seed.ToString(CultureInfo.InvariantCulture)}",
        "en-US",
        size,
        new ReportFooter($"TrialKit {Library.Version}", Fingerprint.Of([.. Paper.Files.Select(Input)])),
        [new Heading(1, title), .. blocks]);

    private static ReportInput Input(ExerciseFile file) => new(file.Name, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(file.Text))), Rows: null);

    private static IEnumerable<Block> Worked(Question question, int index) =>
    [
        new NumberedQuestion(index + 1, question.Text),
        .. Steps(question.Steps),
        .. question.Remark is { } remark ? [new Paragraph(remark, TextSize.Small)] : Array.Empty<Block>(),
    ];

    private static IEnumerable<Block> Steps(IReadOnlyList<KeyStep> steps)
    {
        if (steps.Count > 0)
        {
            yield return new Table(
                null,
                [new("Step"), new("Working"), new("Answer", Alignment: ColumnAlignment.Right), new("Not rounded", Alignment: ColumnAlignment.Right)],
                [.. steps.Select(step => new TableRow([step.Label, step.Work, step.Answer, step.Full]))]);
        }
    }
}
