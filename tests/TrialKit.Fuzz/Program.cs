using System.Diagnostics;
using System.Globalization;
using TrialKit.Fuzz.Kill;

namespace TrialKit.Fuzz;

internal static class Program
{
    private const string Usage = """
        Damaged files:  dotnet run -c Release --project tests/TrialKit.Fuzz -- [--cases N] [--seed N] [--first N] [--subject NAME] [--keep FILE]
        Killed runs:    dotnet run -c Release --project tests/TrialKit.Fuzz -- --kill PROGRAM [--cases N] [--seed N]
        """;

    private static readonly string[] Options = ["--cases", "--seed", "--first", "--subject", "--keep", "--kill"];

    private static int Main(string[] args)
    {
        var options = new Dictionary<string, string>(StringComparer.Ordinal) { ["--seed"] = "1", ["--first"] = "0", ["--subject"] = "" };
        for (var i = 0; i + 1 < args.Length; i += 2)
        {
            options[args[i]] = args[i + 1];
        }

        if (args.Length % 2 != 0 || options.Keys.Except(Options, StringComparer.Ordinal).Any())
        {
            Console.Error.WriteLine(Usage);
            return 2;
        }

        return options.TryGetValue("--kill", out var program) ? Kill(program, options) : Damage(options);
    }

    private static int Damage(Dictionary<string, string> options)
    {
        var settings = new FuzzSettings(Repository(), Number(options, "--seed", 1), Number(options, "--first", 0), Number(options, "--cases", 100_000)) { Subject = options["--subject"] };
        if (options.TryGetValue("--keep", out var file))
        {
            var tried = FuzzCase.Of(Corpus.Subjects.Of(settings.Repository, settings.Subject), settings.Seed, settings.First);
            File.WriteAllBytes(file, tried.Bytes);
            Console.WriteLine($"{file} is the damaged {tried.Subject.File} of the subject {tried.Subject.Name}.");
        }

        var watch = Stopwatch.StartNew();
        var tally = FuzzRun.Run(settings, done => Console.Error.WriteLine(done.ToString(CultureInfo.InvariantCulture)));
        FuzzPrinter.Print(settings, tally, watch.Elapsed, Console.Out);
        return tally.Broken.Any() ? 1 : 0;
    }

    private static int Kill(string program, Dictionary<string, string> options)
    {
        var seed = (int)Number(options, "--seed", 1);
        using var run = new KillRun(Path.GetFullPath(program), Path.Combine(Repository(), "example-trials", "drag-chains"), new Random(seed));
        var tally = run.Run((int)Number(options, "--cases", 200), done => Console.Error.WriteLine(done.ToString(CultureInfo.InvariantCulture)));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {tally.Killed} killed, {tally.WhileWriting} of them while a draft stood in the folder; {tally.Ended} had ended before; {tally.RunAgain} were run again"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"files: {tally.Absent} absent as before, {tally.Old} old, {tally.New} new; broken: {tally.Broken.Count}"));
        tally.Broken.ForEach(Console.WriteLine);
        return tally.Broken.Count > 0 ? 1 : 0;
    }

    private static long Number(Dictionary<string, string> options, string option, long standard) =>
        options.TryGetValue(option, out var text) ? long.Parse(text, CultureInfo.InvariantCulture) : standard;

    private static string Repository()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TrialKit.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("TrialKit.sln was not found above the program.");
    }
}
