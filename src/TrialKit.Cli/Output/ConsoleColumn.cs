namespace TrialKit.Cli.Output;

/// <summary>A column of a console table.</summary>
/// <param name="Head">Its head, with the unit where one belongs to the whole column.</param>
/// <param name="IsNumber">Whether its cells stand to the right.</param>
internal sealed record ConsoleColumn(string Head, bool IsNumber = false);
