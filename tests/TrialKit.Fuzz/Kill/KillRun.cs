using System.Diagnostics;
using System.Globalization;

namespace TrialKit.Fuzz.Kill;

/// <summary>Starts the program, ends it at a random moment without a word, and looks at what it left: each file must be absent as before, the old one or the new one, and the next run must do its job.</summary>
/// <param name="program">The program's assembly, or the program itself.</param>
/// <param name="example">A trial folder.</param>
/// <param name="random">What decides.</param>
internal sealed class KillRun(string program, string example, Random random) : IDisposable
{
    // One in five is followed by a run that is left alone; 5 and the number of jobs have no common part, so that each job has its turn.
    private const int RunsAgain = 5;
    private const string Draft = ".part";
    private static readonly string[][] Jobs = [["report", "{trial}", "--output", "{out}/report.pdf"], ["report", "{trial}", "--output", "{out}/report.html"], ["analyze", "{trial}", "--output", "{out}"], ["figures", "{trial}", "--output", "{out}"]];

    private readonly string _root = Directory.CreateTempSubdirectory("trialkit-kill-").FullName;
    private readonly Dictionary<(int Job, bool IsNew), (SortedDictionary<string, byte[]> Files, TimeSpan Took)> _whole = [];

    /// <summary>Kills the program a number of times.</summary>
    public KillTally Run(int times, Action<int> progress)
    {
        var tally = new KillTally();
        Copy("old", "north forty");
        Copy("new", "south forty");
        for (var i = 0; i < times; i++)
        {
            Once(i, tally);
            progress(i + 1);
        }

        return tally;
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);

    private void Once(int number, KillTally tally)
    {
        var job = number % Jobs.Length;
        var hasOld = number / Jobs.Length % 2 == 0;
        var output = Directory.CreateDirectory(Path.Combine(_root, string.Create(CultureInfo.InvariantCulture, $"out-{number}"))).FullName;
        var (old, fresh) = (Whole(job, isNew: false).Files, Whole(job, isNew: true));
        foreach (var (file, bytes) in hasOld ? old : [])
        {
            File.WriteAllBytes(Path.Combine(output, file), bytes);
        }

        using (var process = Start(job, "new", output))
        {
            // Half of the moments are anywhere in the run; the other half follow the first draft, where a file is in the making.
            Wait(process, output, number / (2 * Jobs.Length) % 2 == 0 ? fresh.Took * (1.1 * random.NextDouble()) : null);
            tally.Ended += process.HasExited ? 1 : 0;
            tally.Killed += process.HasExited ? 0 : 1;
            process.Kill();
            process.WaitForExit();
        }

        tally.WhileWriting += Directory.EnumerateFiles(output, "*" + Draft).Any() ? 1 : 0;
        Look(number, output, hasOld ? old : [], fresh.Files, tally);
        if (number % RunsAgain == 0)
        {
            RunAgain(number, job, output, fresh.Files, tally);
        }

        Directory.Delete(output, recursive: true);
    }

    private void RunAgain(int number, int job, string output, SortedDictionary<string, byte[]> fresh, KillTally tally)
    {
        using var process = Start(job, "new", output);
        process.WaitForExit();
        tally.RunAgain++;
        if (process.ExitCode != 0 || !Same(Files(output), fresh))
        {
            tally.Broken.Add(string.Create(CultureInfo.InvariantCulture, $"kill {number}: the next run ended with {process.ExitCode} and left {string.Join(", ", Files(output).Keys)}"));
        }
    }

    private void Wait(Process process, string output, TimeSpan? moment)
    {
        if (moment is { } whole)
        {
            process.WaitForExit(whole);
            return;
        }

        while (!process.HasExited && !Directory.EnumerateFiles(output, "*" + Draft).Any())
        {
            Thread.Yield();
        }

        var watch = Stopwatch.StartNew();
        var delay = TimeSpan.FromMilliseconds(random.NextDouble() * random.Next(1, 60));
        while (watch.Elapsed < delay && !process.HasExited)
        {
            Thread.SpinWait(50);
        }
    }

    private static void Look(int number, string output, SortedDictionary<string, byte[]> old, SortedDictionary<string, byte[]> fresh, KillTally tally)
    {
        var found = Files(output);
        foreach (var file in found.Keys.Except(fresh.Keys, StringComparer.Ordinal).Except(old.Keys, StringComparer.Ordinal))
        {
            tally.Broken.Add(string.Create(CultureInfo.InvariantCulture, $"kill {number}: {file} is none of the program's"));
        }

        foreach (var (file, bytes) in fresh)
        {
            var before = old.GetValueOrDefault(file);
            if (!found.TryGetValue(file, out var now))
            {
                tally.Absent++;
                if (before is not null)
                {
                    tally.Broken.Add(string.Create(CultureInfo.InvariantCulture, $"kill {number}: {file} is gone"));
                }
            }
            else if (now.AsSpan().SequenceEqual(bytes))
            {
                tally.New++;
            }
            else if (before is not null && now.AsSpan().SequenceEqual(before))
            {
                tally.Old++;
            }
            else
            {
                tally.Broken.Add(string.Create(CultureInfo.InvariantCulture, $"kill {number}: {file} is neither the old one nor the new one, {now.Length} bytes"));
            }
        }
    }

    /// <summary>What a run that is left alone writes, and how long it takes.</summary>
    private (SortedDictionary<string, byte[]> Files, TimeSpan Took) Whole(int job, bool isNew)
    {
        if (!_whole.TryGetValue((job, isNew), out var whole))
        {
            var output = Directory.CreateDirectory(Path.Combine(_root, "whole")).FullName;
            var watch = Stopwatch.StartNew();
            using var process = Start(job, isNew ? "new" : "old", output);
            process.WaitForExit();
            if (process.ExitCode != 0)
            {
                throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"{string.Join(' ', Jobs[job])} ended with {process.ExitCode}; 0 was expected."));
            }

            whole = (Files(output), watch.Elapsed);
            _whole.Add((job, isNew), whole);
            Directory.Delete(output, recursive: true);
        }

        return whole;
    }

    private Process Start(int job, string trial, string output)
    {
        var isAssembly = program.EndsWith(".dll", StringComparison.OrdinalIgnoreCase);
        var start = new ProcessStartInfo(isAssembly ? "dotnet" : program) { RedirectStandardOutput = true, UseShellExecute = false };
        if (isAssembly)
        {
            start.ArgumentList.Add(program);
        }

        foreach (var argument in Jobs[job])
        {
            start.ArgumentList.Add(argument.Replace("{trial}", Path.Combine(_root, trial), StringComparison.Ordinal).Replace("{out}", output, StringComparison.Ordinal));
        }

        start.ArgumentList.Add("--quiet");
        return Process.Start(start)!;
    }

    private void Copy(string name, string place)
    {
        var folder = Directory.CreateDirectory(Path.Combine(_root, name)).FullName;
        foreach (var file in Directory.EnumerateFiles(example))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        }

        var settings = Path.Combine(folder, "trial.toml");
        File.WriteAllText(settings, File.ReadAllText(settings).Replace("north forty", place, StringComparison.Ordinal).Replace("label = \"Drag chains\"", $"label = \"Chains, {place}\"", StringComparison.Ordinal));
    }

    private static SortedDictionary<string, byte[]> Files(string folder) =>
        new(Directory.EnumerateFiles(folder).Where(file => !file.EndsWith(Draft, StringComparison.Ordinal)).ToDictionary(file => Path.GetFileName(file), File.ReadAllBytes, StringComparer.Ordinal), StringComparer.Ordinal);

    private static bool Same(SortedDictionary<string, byte[]> found, SortedDictionary<string, byte[]> expected) =>
        found.Keys.SequenceEqual(expected.Keys, StringComparer.Ordinal) && found.All(file => file.Value.AsSpan().SequenceEqual(expected[file.Key]));
}
