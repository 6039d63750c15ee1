using TrialKit.Ingest.Settings;
using TrialKit.Ingest.Tables;
using TrialKit.Ingest.Workbooks;

namespace TrialKit.Ingest;

/// <summary>Gives problems their place in the order of files: the settings, the workbook as a whole, then the tables.</summary>
/// <param name="problems">Takes the place.</param>
internal sealed class FileRanks(ProblemList problems)
{
    private static readonly IReadOnlyList<string> Order = [SettingsReader.FileName, PlanReader.FileName, Workbook.FileName, .. Schema.TableNames];

    /// <summary>Problems added from now on are of this file or table.</summary>
    public void Begin(string name)
    {
        problems.Rank = Order.TakeWhile(known => known != name).Count();
    }
}
