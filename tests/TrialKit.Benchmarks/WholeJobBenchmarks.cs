using BenchmarkDotNet.Attributes;
using TrialKit.Ingest;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;

namespace TrialKit.Benchmarks;

/// <summary>The steps of the main job on an example trial, warm: what is left of the whole program's time is its start.</summary>
[MemoryDiagnoser]
public class WholeJobBenchmarks
{
    private readonly string folder = ExampleFolder();
    private TrialAnalysis analysis = null!;

    [GlobalSetup]
    public void Analyse() => analysis = TrialAnalysis.Of(TrialReader.Read(folder).Trial!);

    [Benchmark]
    public TrialReading Ingest() => TrialReader.Read(folder);

    [Benchmark]
    public TrialAnalysis Analysis() => TrialAnalysis.Of(analysis.Trial);

    [Benchmark]
    public byte[] Report() => PdfReport.Render(TrialReport.Of(analysis, new ReportSettings(PageSize.Letter, [], [])));

    private static string ExampleFolder()
    {
        var place = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(place!.FullName, "TrialKit.sln")))
        {
            place = place.Parent;
        }

        return Path.Combine(place.FullName, "example-trials", "drag-chains");
    }
}
