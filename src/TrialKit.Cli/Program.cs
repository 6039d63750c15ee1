using System.Globalization;
using System.Text;
using TrialKit.Cli.Output;

namespace TrialKit.Cli;

internal static class Program
{
    private static int Main(string[] args)
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        using var terminal = Terminal.OfProcess();
        return CommandLine.Run(args, terminal);
    }
}
