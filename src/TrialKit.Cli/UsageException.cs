namespace TrialKit.Cli;

/// <summary>The command line asks for something that cannot be; the message says what to write instead.</summary>
internal sealed class UsageException(string message) : Exception(message);
