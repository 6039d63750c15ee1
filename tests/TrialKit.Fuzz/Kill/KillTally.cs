namespace TrialKit.Fuzz.Kill;

/// <summary>What became of the files of a program that was killed.</summary>
internal sealed class KillTally
{
    /// <summary>Runs killed before they ended by themselves.</summary>
    public int Killed { get; set; }

    /// <summary>Runs that had ended before they could be killed.</summary>
    public int Ended { get; set; }

    /// <summary>Runs killed while a draft stood in the folder: in the middle of writing a file.</summary>
    public int WhileWriting { get; set; }

    /// <summary>Kills that were followed by a run that was left alone.</summary>
    public int RunAgain { get; set; }

    /// <summary>Files that were absent after a kill.</summary>
    public int Absent { get; set; }

    /// <summary>Files that were the old ones.</summary>
    public int Old { get; set; }

    /// <summary>Files that were the new ones.</summary>
    public int New { get; set; }

    /// <summary>Files that were neither, and runs after a kill that did not do their job.</summary>
    public List<string> Broken { get; } = [];
}
