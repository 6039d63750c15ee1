using System.Globalization;

namespace TrialKit.Reporting.Pdf;

/// <summary>Puts this thread under the invariant culture until disposed: the PDF package writes the sign of a negative coordinate as the thread's culture has it, and not every culture's sign is a hyphen.</summary>
internal sealed class NeutralCulture : IDisposable
{
    private readonly CultureInfo before = CultureInfo.CurrentCulture;

    public NeutralCulture() => CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

    public void Dispose() => CultureInfo.CurrentCulture = before;
}
