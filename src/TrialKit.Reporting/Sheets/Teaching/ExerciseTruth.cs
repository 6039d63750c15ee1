namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>Something that is true of the field the data of an exercise were drawn from, and what these data say of it.</summary>
/// <param name="Name">What it is, with its unit.</param>
/// <param name="Value">The true value.</param>
/// <param name="Observed">What this sheet's data come to; over many seeds its mean is the true value.</param>
/// <param name="Decimals">Decimals the key prints.</param>
public sealed record ExerciseTruth(string Name, double Value, double Observed, int Decimals = 1);
