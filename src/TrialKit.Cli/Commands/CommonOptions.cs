using System.CommandLine;

namespace TrialKit.Cli.Commands;

/// <summary>Options that commands share.</summary>
internal static class CommonOptions
{
    public static Option<bool> Quiet() => new("--quiet", "-q") { Description = "Print nothing but errors and warnings." };
}
