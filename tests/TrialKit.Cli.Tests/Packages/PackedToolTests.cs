using System.Diagnostics;
using System.IO.Compression;

namespace TrialKit.Cli.Tests.Packages;

/// <summary>The packages as a user gets them: packed, installed in an empty folder, and put to work there.</summary>
[Collection(nameof(PackedToolTests))]
public sealed class PackedToolTests : IDisposable
{
    private static readonly string Version = "0.0.0-test." + Environment.ProcessId.ToString(System.Globalization.CultureInfo.InvariantCulture);
    private static readonly string[] Packed = ["TrialKit", "TrialKit.Reporting", "TrialKit.DataFrames", "TrialKit.Cli"];

#if DEBUG
    private const string Configuration = "Debug";
#else
    private const string Configuration = "Release";
#endif

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Packages_InAnEmptyFolder_RunTheMainJobAndTheExample()
    {
        var packages = scratch.In("packages");
        foreach (var project in Packed)
        {
            Dotnet(Repository.Root, "pack", Path.Combine("src", project), "--no-build", "-c", Configuration, "-o", packages, $"-p:PackageVersion={Version}", "-v", "q");
        }

        AssertContents(packages);
        var empty = Directory.CreateDirectory(scratch.In("empty")).FullName;
        File.WriteAllText(Path.Combine(empty, "nuget.config"), Sources(packages));

        Dotnet(empty, "tool", "install", "TrialKit.Cli", "--version", Version, "--tool-path", "tools", "--configfile", "nuget.config");
        var report = Start(Path.Combine(empty, "tools", "trialkit"), empty, "report", Repository.Example("drag-chains"), "--output", "drag-chains.pdf");
        var own = scratch.In("own.pdf");
        Assert.Equal(ExitCode.Done, Cli.Run("report", Repository.Example("drag-chains"), "--output", own, "-q").Exit);

        Assert.Contains("Wrote drag-chains.pdf", report, StringComparison.Ordinal);
        Assert.Equal(File.ReadAllBytes(own), File.ReadAllBytes(Path.Combine(empty, "drag-chains.pdf")));

        // The example of the documentation, with the package in place of the project.
        var example = File.ReadAllText(Path.Combine(Repository.Root, "docs", "examples", "first-look.cs"));
        var withPackage = example.Replace("#:project ../../src/TrialKit.DataFrames/TrialKit.DataFrames.csproj", $"#:package TrialKit.DataFrames@{Version}", StringComparison.Ordinal);
        Assert.NotEqual(example, withPackage);
        File.WriteAllText(Path.Combine(empty, "first-look.cs"), withPackage);
        var printed = Dotnet(empty, "run", "first-look.cs", Repository.Example("drag-chains"));

        Assert.Matches(@"(?m)^t50 +-0\.\d\d d +p 0\.\d{4}", printed);
        Assert.Contains("t50 of none", printed, StringComparison.Ordinal);
    }

    private static void AssertContents(string packages)
    {
        foreach (var name in Packed)
        {
            using var package = ZipFile.OpenRead(Path.Combine(packages, $"{name}.{Version}.nupkg"));
            var entries = package.Entries.Select(entry => entry.FullName).ToArray();
            using var nuspec = new StreamReader(package.GetEntry(name + ".nuspec")!.Open());
            var about = nuspec.ReadToEnd();

            Assert.Contains("README.md", entries);
            Assert.Contains("LICENSE", entries);
            Assert.Contains("THIRD-PARTY-NOTICES.md", entries);
            Assert.Contains("<license type=\"expression\">MIT</license>", about, StringComparison.Ordinal);
            Assert.True(File.Exists(Path.Combine(packages, $"{name}.{Version}.snupkg")), $"{name} has no symbols");
            if (name != "TrialKit.Cli")
            {
                Assert.Contains($"lib/net10.0/{name}.dll", entries);
                Assert.Contains($"lib/net10.0/{name}.xml", entries);
            }
        }
    }

    // Packages of others come from where the build found them, or from the cache; ours from the folder alone.
    private string Sources(string packages) => $"""
        <configuration>
          <config>
            <add key="globalPackagesFolder" value="{scratch.In("cache")}" />
          </config>
          <fallbackPackageFolders>
            <add key="cache" value="{Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages")}" />
          </fallbackPackageFolders>
          <packageSources>
            <add key="packed" value="{packages}" />
          </packageSources>
        </configuration>
        """;

    private string Dotnet(string folder, params string[] arguments) => Start("dotnet", folder, arguments);

    private string Start(string program, string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var name in start.Environment.Keys.Where(name => name.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToArray())
        {
            start.Environment.Remove(name);
        }

        // The cache of this test is its own, whatever the machine's is.
        start.Environment.Remove("NUGET_PACKAGES");
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        start.Environment["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1";
        start.Environment["DOTNET_NOLOGO"] = "1";
        start.Environment["DOTNET_CLI_USE_MSBUILD_SERVER"] = "0";
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}:\n{output}\n{error.Result}");
        return output;
    }
}
