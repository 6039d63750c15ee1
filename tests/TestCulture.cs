using System.Globalization;
using System.Runtime.CompilerServices;

namespace TrialKit;

/// <summary>Puts every thread of a test run under the culture that TRIALKIT_TEST_CULTURE names, such as de-DE or ar-SA: the same tests then show that no output hangs on it.</summary>
internal static class TestCulture
{
#pragma warning disable CA2255 // The one place that runs before any test of an assembly, whichever is chosen.
    [ModuleInitializer]
#pragma warning restore CA2255
    internal static void Set()
    {
        if (Environment.GetEnvironmentVariable("TRIALKIT_TEST_CULTURE") is { Length: > 0 } name)
        {
            CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = new CultureInfo(name);
            CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.CurrentUICulture = new CultureInfo(name);
        }
    }
}
