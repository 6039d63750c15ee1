namespace TrialKit.Cli;

/// <summary>What each exit code of every command means.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The data have errors, all listed on standard error.</summary>
    public const int DataErrors = 1;

    /// <summary>The command line is wrong.</summary>
    public const int Usage = 2;

    /// <summary>The program failed: a file that cannot be read or written, or a defect.</summary>
    public const int Failure = 3;
}
